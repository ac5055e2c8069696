package org.evenhand.page.answer;

import org.evenhand.model.Publication;
import org.evenhand.words.Words;

/** Where something that was taken from the page comes from, in one line: for a picture or a table in an article. */
final class SourceLine {

    private SourceLine() {}

    /** @param id of what was taken, on the page */
    static String of(Answer answer, String id) {
        return words(answer) + " " + answer.permalink(id);
    }

    /** The line but for its address. */
    static String words(Answer answer) {
        Publication publication = answer.context().publication();
        String version = Heads.version(answer.study());
        Words words = answer.words();
        String report = answer.study().id();
        String licence = publication.invented()
                ? words.say("quote.licence-invented", publication.licence())
                : publication.licence();
        return version.isEmpty()
                ? words.say("quote.source", publisher(publication), report, licence)
                : words.say("quote.source-version", publisher(publication), report, version, licence);
    }

    /** Title and publisher, or one of the two where they are the same. */
    static String publisher(Publication publication) {
        return publication.title().equals(publication.publisher())
                ? publication.title()
                : publication.title() + ", " + publication.publisher();
    }
}

package org.evenhand.page.overview;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.evenhand.check.CheckedStudy;
import org.evenhand.model.Finding;
import org.evenhand.model.Outcome;
import org.evenhand.model.Publication;
import org.evenhand.model.Severity;
import org.evenhand.model.Study;
import org.evenhand.page.FindingViews;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Caveat;
import org.evenhand.words.Words;

/** The feed of changes. Dates are those of the data, never of the build. Source: Atom, RFC 4287. */
public final class Feed {

    static final String PATH = "feed.xml";

    /** A feed is for what is new; the page of changes has all. */
    private static final int MOST = 100;

    private static final String MIDNIGHT = "T00:00:00Z";
    private static final LocalDate NEVER = LocalDate.EPOCH;

    private Feed() {}

    public static void build(PageContext context, History history, PageSink sink) {
        Publication publication = context.publication();
        StringBuilder feed = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        feed.append("<feed xmlns=\"http://www.w3.org/2005/Atom\" xml:lang=\"")
                .append(Xml.text(publication.language()))
                .append("\">\n");
        feed.append(Xml.element("  ", "id", context.frames().permanent(PATH)));
        feed.append(Xml.element("  ", "title", context.words().say("page.feed-title", publication.title())));
        if (publication.invented()) {
            feed.append(Xml.element("  ", "subtitle", context.words().say("overview.feed-invented")));
        }
        feed.append(Xml.element("  ", "updated", history.newest().orElse(NEVER) + MIDNIGHT));
        feed.append(link("  ", "self", context.frames().permanent(PATH)));
        feed.append(link("  ", "alternate", context.frames().permanent(Address.CHANGES)));
        feed.append(author("  ", publication.publisher()));
        feed.append(Xml.element("  ", "rights", publication.licence()));
        feed.append(Xml.element("  ", "generator", context.generator()));
        history.events().stream().limit(MOST).forEach(event -> entry(event, context, feed));
        sink.put(PATH, feed.append("</feed>\n").toString().getBytes(StandardCharsets.UTF_8));
    }

    private static void entry(History.Event event, PageContext context, StringBuilder feed) {
        Study study = event.study().evidence().study();
        String address = address(event.address(), context);
        feed.append("  <entry>\n");
        // An id is never used twice, and a page's own address may once name the page in another feed.
        feed.append(Xml.element("    ", "id", address + event.tail()));
        feed.append(Xml.element("    ", "title", study.question()));
        feed.append(Xml.element("    ", "updated", event.on() + MIDNIGHT));
        feed.append(link("    ", "alternate", address));
        study.authors().forEach(name -> feed.append(author("    ", name)));
        feed.append(Xml.element("    ", "summary", summary(event, study, context)));
        feed.append("  </entry>\n");
    }

    private static String summary(History.Event event, Study study, PageContext context) {
        Words words = context.words();
        String why = event.why().isEmpty() ? "" : " " + words.say("page.why", event.why());
        if (event.study().isWithheld()) {
            return event.what() + why;
        }
        Optional<String> answer = study.shortAnswer()
                .map(markdown -> context.prose().plain(markdown, Optional.of(event.study())))
                .filter(text -> !text.isBlank());
        return event.what()
                + why
                + answer.map(text -> " " + words.say("overview.feed-answer", text) + caveats(event.study(), words))
                        .orElse("");
    }

    /** What must travel with the figures of a short answer. */
    private static String caveats(CheckedStudy study, Words words) {
        List<Finding> findings = study.findings().stream()
                .filter(f -> f.severity() != Severity.NOTE && f.outcome() != Outcome.NOT_CHECKABLE)
                .toList();
        String page = Address.answer(study.evidence().study().id());
        String told = FindingViews.of(page, study.findings(), words).caveats(findings).stream()
                .map(Caveat::text)
                .collect(Collectors.joining(" "));
        return told.isEmpty() ? "" : " " + words.say("overview.feed-caveats", told);
    }

    private static String address(String path, PageContext context) {
        int fragment = path.indexOf('#');
        return fragment < 0
                ? context.frames().permanent(path)
                : context.frames().permanent(path.substring(0, fragment)) + path.substring(fragment);
    }

    private static String author(String indent, String name) {
        return indent + "<author>\n" + Xml.element(indent + "  ", "name", name) + indent + "</author>\n";
    }

    private static String link(String indent, String relation, String address) {
        return indent + "<link rel=\"" + relation + "\" href=\"" + Xml.text(address) + "\"/>\n";
    }
}

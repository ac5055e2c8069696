package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.evenhand.page.FileRows;
import org.evenhand.page.RawFile;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.FileRow;
import org.evenhand.page.view.Reproduction;
import org.evenhand.page.view.Snippet;
import org.evenhand.words.Words;

/** How somebody else gets the same page, and how it is cited. */
final class Reproductions {

    /** Typed in the results folder; nothing in it depends on where that lies. */
    private static final String COMMAND = "evenhand publish . --to DIR";

    private Reproductions() {}

    static Reproduction of(Answer answer) {
        Words words = answer.words();
        List<FileRow> files = new ArrayList<>();
        var root = answer.context().root();
        files.add(FileRows.of(
                root,
                RawFile.behind(answer.page(), answer.study().places().file().file(), words.say("table.question-raw")),
                words));
        answer.methods()
                .forEach(m -> files.add(FileRows.of(
                        root,
                        RawFile.behind(Address.method(m.id()), m.places().file().file(), words.say("table.method-raw")),
                        words)));
        answer.evidence()
                .runs()
                .forEach(r ->
                        RawFile.ofRun(r.measured(), words).forEach(raw -> files.add(FileRows.of(root, raw, words))));
        return new Reproduction(COMMAND, answer.context().generator(), files, List.of());
    }

    static List<Snippet> citations(Answer answer) {
        var publication = answer.context().publication();
        var study = answer.study();
        Optional<String> date = study.revisions().isEmpty()
                ? study.answered().map(Object::toString)
                : Optional.of(
                        study.revisions().get(study.revisions().size() - 1).on().toString());
        if (date.isEmpty()) {
            return List.of();
        }
        String year = date.get().substring(0, 4);
        String version = Heads.version(study);
        String address = answer.context().frames().permanent(answer.page());
        List<String> people = study.authors().isEmpty() ? List.of(publication.publisher()) : study.authors();
        String plain = answer.words()
                .say(
                        "table.citation",
                        String.join(", ", people),
                        year,
                        study.question(),
                        version,
                        date.get(),
                        publication.title(),
                        publication.publisher(),
                        address);
        String bibtex = "@techreport{" + study.id() + "-" + year + "-v" + version + ",\n"
                + "  author = {" + tex(String.join(" and ", people)) + "},\n"
                + "  title = {" + tex(study.question()) + "},\n"
                + "  institution = {" + tex(publication.publisher()) + "},\n"
                + "  year = {" + year + "},\n"
                + "  note = {Version " + version + ", " + date.get() + "},\n"
                + "  url = {" + address + "}\n}";
        return List.of(
                new Snippet("cite.plain", answer.words().say("table.plain-citation"), plain, Optional.empty()),
                new Snippet("cite.bibtex", "BibTeX", bibtex, Optional.empty()));
    }

    private static String tex(String text) {
        return text.replaceAll("([\\\\{}$&#%_^~])", "\\\\$1");
    }
}

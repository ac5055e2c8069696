package org.evenhand.command.preview;

import java.util.List;
import java.util.stream.Collectors;
import org.evenhand.check.CheckedFolder;
import org.evenhand.model.Finding;
import org.evenhand.page.view.Markup;

/** What the preview itself has to say, as HTML: a note at the foot of each page, and pages of its own. */
final class Notes {

    /** Where all findings stand. */
    static final String FINDINGS = Assets.OWN + "findings";

    private static final int IN_A_NOTE = 3;
    private static final int ON_A_PAGE = 2_000;

    private Notes() {}

    /** A note on what is wrong; empty if all is well. */
    static String note(Edition edition) {
        List<Finding> errors = edition.errors();
        String said;
        if (edition.fault().isPresent()) {
            said = "A fault of this program: " + edition.fault().get() + standsAsOf(edition);
        } else if (edition.checked().isEmpty()) {
            said = "The folder is being read. This page comes by itself.";
        } else if (!edition.isUpToDate()) {
            said = "As the folder stands, nothing can be published: the publication itself cannot be read."
                    + standsAsOf(edition);
        } else if (!errors.isEmpty()) {
            said = errors.size() == 1
                    ? "1 error keeps something from being published."
                    : errors.size() + " errors keep something from being published.";
        } else {
            return "";
        }
        String all = edition.checked().isEmpty() ? "" : " <a href=\"" + FINDINGS + "\">All findings</a>";
        return "<aside class=\"evenhand-preview\" aria-label=\"Preview\"><p><strong>" + text(said) + "</strong>" + all
                + "</p>" + list(errors, IN_A_NOTE) + "</aside>\n";
    }

    private static String standsAsOf(Edition edition) {
        return edition.site().isPresent() ? " What you see is the site as of " + edition.siteAt() + "." : "";
    }

    /** A page in place of one of the site. */
    static String page(Edition edition, String title, String said) {
        String home = edition.site().isPresent() ? "<p><a href=\"/\">The front page</a></p>" : "";
        return page(title, "<p>" + text(said) + "</p>" + home);
    }

    /** All that the checks say of the folder as it stands. */
    static String findings(Edition edition) {
        List<Finding> found = edition.checked().map(CheckedFolder::findings).orElse(List.of());
        String head = found.isEmpty() ? "<p>Nothing was found.</p>" : "";
        return page("Findings", head + list(found, ON_A_PAGE) + "<p><a href=\"/\">The front page</a></p>");
    }

    private static String page(String title, String content) {
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>" + text(title)
                + "</title>\n</head>\n<body class=\"evenhand-preview-page\">\n<main>\n<h1>" + text(title) + "</h1>\n"
                + content + "\n</main>\n</body>\n</html>\n";
    }

    private static String list(List<Finding> findings, int most) {
        if (findings.isEmpty()) {
            return "";
        }
        String rows = findings.stream().limit(most).map(Notes::row).collect(Collectors.joining("\n"));
        String rest = findings.size() > most ? "<p>and " + (findings.size() - most) + " more</p>" : "";
        return "<ul>\n" + rows + "\n</ul>" + rest;
    }

    private static String row(Finding finding) {
        String weight = switch (finding.outcome()) {
            case FOUND -> finding.severity().level();
            case WAIVED -> "waived";
            case NOT_CHECKABLE -> "not checkable";
        };
        return "<li class=\"" + weight.replace(' ', '-') + "\"><code>"
                + text(finding.place().toString()) + "</code>: "
                + weight + ": [" + text(finding.rule()) + "] " + text(finding.message()) + "<br>fix: "
                + text(finding.remedy()) + "</li>";
    }

    private static String text(String plain) {
        return Markup.text(plain).html();
    }
}

package org.evenhand.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.evenhand.check.Catalogue;
import org.evenhand.check.RuleFacts;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Links of the guides lead somewhere: to a file, to a heading, to the page of a rule that exists. */
class LinksTest {

    private static final Pattern LINK = Pattern.compile("(?<!!)\\[[^\\]]*]\\(([^)\\s]+)\\)");
    private static final Pattern ELSEWHERE = Pattern.compile("(https?|evidence|given):.*");
    private static final Path REPOSITORY = Path.of("..");

    private static final Set<String> RULES =
            Catalogue.facts().stream().map(RuleFacts::id).collect(Collectors.toSet());

    @ParameterizedTest
    @ValueSource(
            strings = {
                "README.md",
                "docs/README.md",
                "docs/getting-started.md",
                "docs/file-format.md",
                "docs/units.md",
                "docs/preview.md",
                "docs/publishing.md",
                "docs/first-log.md",
                "docs/tour-reviewer.md",
                "docs/tour-forum-helper.md",
                "docs/tour-laboratory.md",
                "docs/contributing-results.md",
                "docs/security.md",
                "docs/licences.md",
                "docs/CHANGELOG.md"
            })
    void everyLinkLeadsSomewhere(String file) {
        Path folder = Path.of(file).resolveSibling("");
        List<String> broken = new ArrayList<>();
        Matcher link = LINK.matcher(Guide.read(file).text());
        while (link.find()) {
            String target = link.group(1);
            if (!ELSEWHERE.matcher(target).matches() && !leadsSomewhere(file, folder, target)) {
                broken.add(target);
            }
        }
        assertEquals(List.of(), broken);
    }

    private static boolean leadsSomewhere(String file, Path folder, String target) {
        if (target.startsWith("#")) {
            return anchors(file).contains(target.substring(1));
        }
        if (target.matches("rules/[a-z-]+\\.md")) {
            return RULES.contains(target.substring("rules/".length(), target.length() - ".md".length()));
        }
        int hash = target.indexOf('#');
        if (hash >= 0) {
            String other = folder.resolve(target.substring(0, hash)).toString();
            return anchors(other).contains(target.substring(hash + 1));
        }
        return Files.exists(REPOSITORY.resolve(folder).resolve(target));
    }

    /** The headings as hosts of code make addresses of them: small letters, no punctuation, hyphens for spaces. */
    private static Set<String> anchors(String file) {
        Set<String> anchors = new TreeSet<>();
        Guide.read(file)
                .text()
                .lines()
                .filter(l -> l.matches("#+ .*"))
                .map(l -> l.replaceFirst("#+ ", "").toLowerCase(Locale.ROOT))
                .map(l -> l.replaceAll("[^\\p{L}\\p{N} _-]", "").replace(' ', '-'))
                .forEach(anchors::add);
        return anchors;
    }
}

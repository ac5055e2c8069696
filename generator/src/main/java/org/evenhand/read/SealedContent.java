package org.evenhand.read;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.model.Seal.Flaw;

/**
 * Whether a sealed file may stand on a site as it is. What was sealed by this program holds nothing that runs; what
 * somebody else put into the folder might. It is stricter than any browser: text that it cannot take apart is refused.
 */
final class SealedContent {

    private static final List<String> ENDINGS = List.of(
            ".html", ".json", ".csv", ".md", ".txt", ".css", ".woff2", ".svg", ".png", ".jpg", ".jpeg", ".webp");

    /** Elements that run, embed, send or redirect. */
    private static final Set<String> ACTIVE = Set.of(
            "script",
            "iframe",
            "frame",
            "frameset",
            "object",
            "embed",
            "applet",
            "form",
            "base",
            "portal",
            "foreignobject",
            "animate",
            "set",
            "animatemotion",
            "animatetransform");

    /** A block of linked data is no script: browsers do not run it. */
    private static final String DATA_BLOCK = "<script type=\"application/ld+json\">";

    private static final String POLICY = "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; ";
    private static final Pattern TAG = Pattern.compile("<([a-zA-Z][^\\s/<>]*+)([^<>]*+)>?");
    private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"|'[^']*'");
    private static final Pattern HANDLER = Pattern.compile("(?i)(?:^|[\\s/\"])on[a-z]+\\s*=");
    private static final Pattern TARGET = Pattern.compile(
            "(?i)[\\s/\"'](?:href|src|srcset|action|formaction|data|xlink:href)\\s*=\\s*[\"']?([^\"'\\s>]*)");
    private static final Pattern SAFE_SCHEME =
            Pattern.compile("(?i)(?:https?:|mailto:|data:image/(?:png|jpeg|webp);).*");

    private SealedContent() {}

    /**
     * Looks at a file.
     *
     * @param text of a page or a drawing; not looked at for others
     * @return what is wrong; nothing if it may stand
     */
    static Optional<Flaw> flaw(String path, String text) {
        String name = path.toLowerCase(Locale.ROOT);
        if (ENDINGS.stream().noneMatch(name::endsWith)) {
            return Optional.of(Flaw.KIND);
        }
        boolean isPage = name.endsWith(".html");
        if (isPage && (!path.endsWith("/index.html") || !text.contains(POLICY))) {
            return Optional.of(Flaw.WITHOUT_POLICY);
        }
        return (isPage || name.endsWith(".svg")) && isActive(text) ? Optional.of(Flaw.ACTIVE) : Optional.empty();
    }

    private static boolean isActive(String text) {
        Matcher tag = TAG.matcher(text.replace(DATA_BLOCK, "<data>"));
        while (tag.find()) {
            String element = tag.group(1).toLowerCase(Locale.ROOT);
            String attributes = tag.group(2);
            String names = QUOTED.matcher(attributes).replaceAll("\"\"").replace("\"\"", " ");
            boolean orders = element.equals("meta")
                    && names.toLowerCase(Locale.ROOT).contains("http-equiv")
                    && !tag.group().startsWith(POLICY);
            boolean isOpen = !tag.group().endsWith(">");
            boolean cannotTell = isOpen || names.indexOf('"') >= 0 || names.indexOf('\'') >= 0;
            if (ACTIVE.contains(element)
                    || orders
                    || cannotTell
                    || HANDLER.matcher(names).find()
                    || leadsAstray(attributes)) {
                return true;
            }
        }
        return text.contains("<!ENTITY");
    }

    private static boolean leadsAstray(String attributes) {
        Matcher target = TARGET.matcher(attributes);
        while (target.find()) {
            String to = target.group(1);
            String start = to.split("[/?#]", 2)[0];
            boolean isRelative = start.indexOf(':') < 0 && start.indexOf('&') < 0 && start.indexOf('\\') < 0;
            if (!isRelative && !SAFE_SCHEME.matcher(to).matches()) {
                return true;
            }
        }
        return false;
    }
}

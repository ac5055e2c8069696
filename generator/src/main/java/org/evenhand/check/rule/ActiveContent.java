package org.evenhand.check.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;
import org.evenhand.model.Place;
import org.evenhand.prose.ProseSource;
import org.evenhand.prose.ProseText;
import org.evenhand.words.Words;

/** Finds what a browser would run, or fetch on its own, in a text in Markdown. What stands in code is only shown. */
final class ActiveContent {

    private static final Set<String> SCHEMES = Set.of("javascript", "vbscript", "data", "blob", "file");
    private static final Set<String> ELEMENTS =
            Set.of("script", "iframe", "frame", "object", "embed", "applet", "style", "link", "meta", "base", "form");
    private static final Pattern TAG = Pattern.compile("<([a-z][a-z0-9-]*+)([^<>]*+)");
    private static final Pattern HANDLER = Pattern.compile("[\\s\"'/](on[a-z]++)\\s*+=");
    private static final Pattern ENTITY =
            Pattern.compile("&#(?:x([0-9a-f]{1,6})|([0-9]{1,7}));?|&(colon|tab|newline);");

    /**
     * A part of a text.
     *
     * @param what names the message that says what it is
     * @param detail the element, the handler or the kind of address; empty where it is none of them
     * @param line from 0
     * @param column from 0
     * @param length in characters, at least 1
     */
    record Part(String what, String detail, int line, int column, int length) {

        /** What it is, in words. */
        String said(Words words) {
            String key = "rules-reading.active-" + what;
            return detail.isEmpty() ? words.say(key) : words.say(key, detail);
        }
    }

    private record What(String name, String detail) {}

    private ActiveContent() {}

    /** In the order of the text. */
    static List<Part> in(String markdown) {
        List<Part> parts = new ArrayList<>();
        Optional<Node> tree = ProseText.tree(ProseSource.field(Place.of(""), markdown, ProseSource.Form.BLOCK));
        if (tree.isEmpty()) {
            return List.of(new Part("too-large", "", 0, 0, 1));
        }
        Node node = tree.get();
        // Down, across, up: without recursion, for a hostile text may be nested deeper than a stack.
        while (node != null) {
            look(node, parts);
            if (node.getFirstChild() != null) {
                node = node.getFirstChild();
                continue;
            }
            while (node != null && node.getNext() == null) {
                node = node.getParent();
            }
            node = node == null ? null : node.getNext();
        }
        return parts;
    }

    private static void look(Node node, List<Part> parts) {
        Optional<What> what = Optional.empty();
        if (node instanceof Link link) {
            what = scheme(link.getDestination()).map(s -> new What("link", s));
        } else if (node instanceof Image image) {
            what = scheme(image.getDestination()).map(s -> new What("picture", s));
        } else if (node instanceof HtmlInline html) {
            what = html(html.getLiteral());
        } else if (node instanceof HtmlBlock html) {
            what = html(html.getLiteral());
        }
        what.ifPresent(w -> parts.add(part(w, node)));
    }

    private static Part part(What what, Node node) {
        if (node.getSourceSpans().isEmpty()) {
            return new Part(what.name, what.detail, 0, 0, 1);
        }
        SourceSpan span = node.getSourceSpans().get(0);
        return new Part(
                what.name, what.detail, span.getLineIndex(), span.getColumnIndex(), Math.max(1, span.getLength()));
    }

    private static Optional<What> html(String literal) {
        String text = decoded(literal).toLowerCase(Locale.ROOT);
        Matcher tag = TAG.matcher(text);
        while (tag.find()) {
            if (ELEMENTS.contains(tag.group(1))) {
                return Optional.of(new What("element", tag.group(1)));
            }
            Matcher handler = HANDLER.matcher(tag.group(2));
            if (handler.find()) {
                return Optional.of(new What("handler", handler.group(1)));
            }
            for (String value : tag.group(2).split("=", -1)) {
                Optional<String> scheme = scheme(value.replaceAll("^[\\s\"']++", ""));
                if (scheme.isPresent()) {
                    return Optional.of(new What("address", scheme.get()));
                }
            }
        }
        return Optional.empty();
    }

    /** The scheme of an address if it is one that runs something; browsers skip blanks and control characters in it. */
    private static Optional<String> scheme(String address) {
        StringBuilder scheme = new StringBuilder();
        for (char c : decoded(address).toCharArray()) {
            if (c == ':') {
                return Optional.of(scheme.toString().toLowerCase(Locale.ROOT)).filter(SCHEMES::contains);
            }
            if (c > ' ') {
                scheme.append(c);
            }
            if (scheme.length() > 10) {
                break;
            }
        }
        return Optional.empty();
    }

    private static String decoded(String text) {
        return ENTITY.matcher(text).replaceAll(m -> Matcher.quoteReplacement(character(m)));
    }

    private static String character(java.util.regex.MatchResult entity) {
        if (entity.group(3) != null) {
            return entity.group(3).equals("colon") ? ":" : " ";
        }
        int code = entity.group(1) != null ? Integer.parseInt(entity.group(1), 16) : Integer.parseInt(entity.group(2));
        return Character.isValidCodePoint(code) ? Character.toString(code) : "";
    }
}

package org.evenhand.prose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.Text;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.html.HtmlWriter;
import org.evenhand.prose.EvidenceResolver.Found;
import org.evenhand.prose.EvidenceResolver.Missing;
import org.evenhand.prose.EvidenceResolver.Resolution;
import org.evenhand.read.Rules;

/** Renders prose as HTML: evidence links are resolved, everything active is taken out. */
public final class Prose {

    private static final int DEEPEST_HEADING = 6;

    private static final String WORD_JOINER = "\u2060";

    private final ProseSource source;
    private final EvidenceResolver resolver;
    private final EvidenceAddress address;
    private final PictureAddress pictures;
    private final int headingShift;
    private final FigureText figures;
    private final List<ProseFault> faults = new ArrayList<>();

    private Prose(
            ProseSource source,
            EvidenceResolver resolver,
            EvidenceAddress address,
            PictureAddress pictures,
            int headingShift) {
        this.source = source;
        this.resolver = resolver;
        this.address = address;
        this.pictures = pictures;
        this.headingShift = headingShift;
        this.figures = FigureText.in(resolver.language());
    }

    /** Renders a text that shows no pictures. */
    public static Rendered render(
            ProseSource source, EvidenceResolver resolver, EvidenceAddress address, int headingShift) {
        return render(source, resolver, address, PictureAddress.NONE, headingShift);
    }

    /**
     * Renders a text.
     *
     * @param source what was written; an inline source with more than one paragraph becomes one
     * @param resolver finds figures
     * @param address tells where on the site they stand
     * @param pictures tells where pictures stand
     * @param headingShift how many levels the author's headings are moved down, so that they fit below the page's own
     */
    public static Rendered render(
            ProseSource source,
            EvidenceResolver resolver,
            EvidenceAddress address,
            PictureAddress pictures,
            int headingShift) {
        return new Prose(source, resolver, address, pictures, headingShift).render();
    }

    private Rendered render() {
        Markdown.Tree tree = Markdown.parse(source);
        if (tree.document().isEmpty()) {
            String plain = source.text().length() > Markdown.LONGEST ? "" : source.text();
            return new Rendered(
                    "<p>" + escaped(plain) + "</p>\n", List.of(tree.fault().orElseThrow()));
        }
        Node document = tree.document().get();
        document.accept(new Rewriter());
        boolean inline = source.form() == ProseSource.Form.INLINE;
        if (inline) {
            OneParagraph.of(document);
        }
        HtmlRenderer renderer = HtmlRenderer.builder()
                .extensions(Markdown.EXTENSIONS)
                .escapeHtml(true)
                .percentEncodeUrls(true)
                .omitSingleParagraphP(inline)
                .nodeRendererFactory(context -> new FigureRenderer(context, figures))
                .nodeRendererFactory(PictureRenderer::new)
                .build();
        return new Rendered(renderer.render(document), faults.stream().sorted().toList());
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** A link that leads to a figure. */
    private static final class FigureLink extends CustomNode {
        private final String cssClass;
        private final String href;
        private final Evidence evidence;
        private final Optional<String> noteId;

        FigureLink(String cssClass, String href, Evidence evidence, Optional<String> noteId) {
            this.cssClass = cssClass;
            this.href = href;
            this.evidence = evidence;
            this.noteId = noteId;
        }
    }

    private static final class FigureRenderer implements NodeRenderer {
        private final HtmlNodeRendererContext context;
        private final FigureText figures;

        FigureRenderer(HtmlNodeRendererContext context, FigureText figures) {
            this.context = context;
            this.figures = figures;
        }

        @Override
        public Set<Class<? extends Node>> getNodeTypes() {
            return Set.of(FigureLink.class);
        }

        @Override
        public void render(Node node) {
            FigureLink link = (FigureLink) node;
            HtmlWriter writer = context.getWriter();
            String note = figures.note(link.evidence);
            Map<String, String> attributes = attributes("class", link.cssClass, "href", link.href);
            if (link.noteId.isEmpty()) {
                attributes.put("title", note);
            }
            // The mark parts neither from its figure nor from the full stop behind it.
            link.noteId.ifPresent(id -> writer.tag("span", attributes("class", "figure-bound")));
            writer.tag("a", attributes);
            for (Node child = node.getFirstChild(); child != null; child = child.getNext()) {
                context.render(child);
            }
            writer.tag("/a");
            link.noteId.ifPresent(id -> note(writer, id, note, link.evidence));
        }

        /** A button and what it opens; where a browser opens nothing, and on paper, the note stands in the sentence. */
        private void note(HtmlWriter writer, String id, String note, Evidence evidence) {
            writer.text(WORD_JOINER);
            writer.tag(
                    "button",
                    attributes(
                            "type",
                            "button",
                            "class",
                            "figure-mark",
                            "popovertarget",
                            id,
                            "aria-label",
                            figures.words().say("sentence.note-of", evidence.title())));
            writer.text("±");
            writer.tag("/button");
            writer.tag("/span");
            writer.tag("span", attributes("class", "figure-note", "id", id, "popover", "auto"));
            writer.text(note);
            writer.tag("/span");
            writer.text(WORD_JOINER);
        }

        private static Map<String, String> attributes(String... namesAndValues) {
            Map<String, String> attributes = new LinkedHashMap<>();
            for (int i = 0; i < namesAndValues.length; i += 2) {
                attributes.put(namesAndValues[i], namesAndValues[i + 1]);
            }
            return attributes;
        }
    }

    /** Changes the tree in place; it is of no further use than to be written. */
    private final class Rewriter extends AbstractVisitor {

        private int notes;

        @Override
        public void visit(Heading heading) {
            heading.setLevel(Math.min(DEEPEST_HEADING, Math.max(1, heading.getLevel() + headingShift)));
            visitChildren(heading);
        }

        @Override
        public void visit(Paragraph paragraph) {
            if (paragraph.getFirstChild() instanceof Image image
                    && image.getNext() == null
                    && source.form() == ProseSource.Form.BLOCK) {
                PictureReference reference = PictureReference.of(image);
                Optional<PictureAddress.Shown> shown = pictures.of(reference);
                if (shown.isPresent()) {
                    paragraph.insertBefore(new PictureRenderer.Picture(reference, shown.get()));
                    paragraph.unlink();
                    return;
                }
            }
            visitChildren(paragraph);
        }

        @Override
        public void visit(Image image) {
            // One that is not shown: what is to be seen in it is said in words.
            visitChildren(image);
            moveChildrenBefore(image, image);
            image.unlink();
        }

        @Override
        public void visit(HtmlBlock html) {
            faults.addAll(ActiveContent.inHtml(source, html, html.getLiteral()));
        }

        @Override
        public void visit(HtmlInline html) {
            faults.addAll(ActiveContent.inHtml(source, html, html.getLiteral()));
        }

        @Override
        public void visit(Link link) {
            visitChildren(link);
            String destination = link.getDestination();
            if (EvidenceLink.isBound(destination)) {
                bound(link);
                return;
            }
            ActiveContent.ofAddress(source, link, destination).ifPresent(fault -> {
                faults.add(fault);
                moveChildrenBefore(link, link);
                link.unlink();
            });
        }

        private void bound(Link link) {
            EvidenceLink parsed;
            try {
                parsed = EvidenceLink.parse(link.getDestination());
            } catch (EvidenceLink.MalformedException e) {
                unresolved(link, e.getMessage(), e.remedy());
                return;
            }
            Resolution resolution = resolver.resolve(parsed.address());
            if (resolution instanceof Missing missing) {
                unresolved(link, missing.message(), missing.remedy());
                return;
            }
            Evidence evidence = ((Found) resolution).evidence();
            String cssClass = evidence.kind() == Evidence.Kind.GIVEN ? "given" : "evidence";
            Optional<String> noteId = address.notes().map(prefix -> prefix + "." + ++notes);
            FigureLink figure = new FigureLink(cssClass, address.of(evidence.target()), evidence, noteId);
            link.insertBefore(figure);
            if (Passages.isEmpty(link)) {
                figure.appendChild(new Text(figures.of(evidence, parsed.form())));
            } else {
                for (Node child = link.getFirstChild(); child != null; child = link.getFirstChild()) {
                    figure.appendChild(child);
                }
            }
            link.unlink();
        }

        private void unresolved(Link link, String message, String remedy) {
            faults.add(
                    ProseFault.of(Rules.REFERENCE_UNRESOLVED, Passages.placeOfAddress(source, link), message, remedy));
            if (Passages.isEmpty(link)) {
                link.insertBefore(new Text(figures.words().say("sentence.no-figure")));
            }
            moveChildrenBefore(link, link);
            link.unlink();
        }

        private void moveChildrenBefore(Node parent, Node before) {
            for (Node child = parent.getFirstChild(); child != null; child = parent.getFirstChild()) {
                before.insertBefore(child);
            }
        }
    }
}

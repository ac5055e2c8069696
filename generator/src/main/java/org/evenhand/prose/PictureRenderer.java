package org.evenhand.prose;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.Node;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlWriter;

/** Writes a picture as a figure, with its credit below. */
final class PictureRenderer implements NodeRenderer {

    /** A picture in the place of its paragraph. */
    static final class Picture extends CustomBlock {
        private final PictureReference reference;
        private final PictureAddress.Shown shown;

        Picture(PictureReference reference, PictureAddress.Shown shown) {
            this.reference = reference;
            this.shown = shown;
        }
    }

    private final HtmlNodeRendererContext context;

    PictureRenderer(HtmlNodeRendererContext context) {
        this.context = context;
    }

    @Override
    public Set<Class<? extends Node>> getNodeTypes() {
        return Set.of(Picture.class);
    }

    @Override
    public void render(Node node) {
        Picture picture = (Picture) node;
        HtmlWriter writer = context.getWriter();
        writer.line();
        writer.tag("figure", Map.of("class", "picture"));
        Map<String, String> attributes = new LinkedHashMap<>();
        attributes.put("src", picture.shown.href());
        attributes.put("width", Integer.toString(picture.shown.width()));
        attributes.put("height", Integer.toString(picture.shown.height()));
        attributes.put("alt", picture.reference.shows());
        attributes.put("loading", "lazy");
        writer.tag("img", attributes);
        writer.tag("figcaption");
        writer.text(picture.reference.credit());
        writer.tag("/figcaption");
        writer.tag("/figure");
        writer.line();
    }
}

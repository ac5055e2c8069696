package org.evenhand.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.SourceSpan;
import org.commonmark.node.Text;

/**
 * A picture that a text names: {@code ![what is to be seen](file "credit")}.
 *
 * @param address as it is written, its escapes and entities resolved
 * @param shows what is to be seen, for those who cannot; empty if that is not said
 * @param credit who made it, and its licence; empty if that is not said
 * @param alone whether it makes up a paragraph; else it cannot be shown
 * @param line within the text, from 0
 * @param column within the line, from 0
 * @param length in characters, at least 1
 */
public record PictureReference(
        String address, String shows, String credit, boolean alone, int line, int column, int length) {

    /** All of a text, in its order; none if it is too large or too deep to be read. */
    public static List<PictureReference> in(ProseSource source) {
        List<PictureReference> found = new ArrayList<>();
        if (!source.text().contains("![")) {
            return found;
        }
        Markdown.parse(source)
                .document()
                .ifPresent(document -> document.accept(new AbstractVisitor() {
                    @Override
                    public void visit(Image image) {
                        found.add(of(image));
                    }
                }));
        return found;
    }

    static PictureReference of(Image image) {
        List<SourceSpan> spans = image.getSourceSpans();
        boolean alone =
                image.getParent() instanceof Paragraph && image.getNext() == null && image.getPrevious() == null;
        return new PictureReference(
                image.getDestination(),
                words(image),
                Objects.requireNonNullElse(image.getTitle(), "").strip(),
                alone,
                spans.isEmpty() ? 0 : spans.get(0).getLineIndex(),
                spans.isEmpty() ? 0 : spans.get(0).getColumnIndex(),
                spans.isEmpty() ? 1 : Math.max(1, spans.get(0).getLength()));
    }

    private static String words(Image image) {
        StringBuilder words = new StringBuilder();
        image.accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                words.append(text.getLiteral());
            }

            @Override
            public void visit(org.commonmark.node.Code code) {
                words.append(code.getLiteral());
            }

            @Override
            public void visit(SoftLineBreak line) {
                words.append(' ');
            }

            @Override
            public void visit(Image inner) {
                visitChildren((Node) inner);
            }
        });
        return words.toString().strip();
    }
}

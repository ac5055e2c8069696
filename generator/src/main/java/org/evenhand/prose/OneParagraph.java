package org.evenhand.prose;

import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Block;
import org.commonmark.node.Code;
import org.commonmark.node.CustomNode;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;

/** Makes one paragraph of a text that is to stand within another: its words stay, its blocks do not. */
final class OneParagraph extends AbstractVisitor {

    private final Paragraph one = new Paragraph();

    private OneParagraph() {}

    /** Changes the tree in place, unless it is one paragraph already. */
    static void of(Node document) {
        Node first = document.getFirstChild();
        if (first instanceof Paragraph && first.getNext() == null) {
            return;
        }
        OneParagraph gatherer = new OneParagraph();
        gatherer.visitChildren(document);
        for (Node block = document.getFirstChild(); block != null; block = document.getFirstChild()) {
            block.unlink();
        }
        document.appendChild(gatherer.one);
    }

    @Override
    public void visit(Paragraph paragraph) {
        take(paragraph);
    }

    @Override
    public void visit(Heading heading) {
        take(heading);
    }

    @Override
    public void visit(CustomNode node) {
        if (node instanceof TableCell) {
            take(node);
        } else {
            visitChildren(node);
        }
    }

    @Override
    public void visit(HtmlBlock html) {
        take(new Text(html.getLiteral()));
    }

    @Override
    public void visit(FencedCodeBlock code) {
        take(new Code(code.getLiteral()));
    }

    @Override
    public void visit(IndentedCodeBlock code) {
        take(new Code(code.getLiteral()));
    }

    private void take(Node node) {
        if (one.getFirstChild() != null) {
            one.appendChild(new SoftLineBreak());
        }
        if (node instanceof Block || node instanceof TableCell) {
            for (Node child = node.getFirstChild(); child != null; child = node.getFirstChild()) {
                one.appendChild(child);
            }
        } else {
            one.appendChild(node);
        }
    }
}

package org.evenhand.prose;

import java.util.List;
import java.util.Optional;
import org.commonmark.node.Node;

/**
 * A text, read once for all who look at it.
 *
 * <p>Reading does not need the figures: which of them the links lead to is found when the text is
 * {@linkplain Verification verified}.
 */
public final class ProseText {

    private final ProseSource source;
    private final List<Passage> passages;
    private final Optional<ProseFault> fault;

    private ProseText(ProseSource source, List<Passage> passages, Optional<ProseFault> fault) {
        this.source = source;
        this.passages = passages;
        this.fault = fault;
    }

    /** Reads a text; one that is too large or too deep has no passages, and a fault. */
    public static ProseText read(ProseSource source) {
        Markdown.Tree tree = Markdown.parse(source);
        List<Passage> passages =
                tree.document().map(d -> PassageReader.read(d, source.text())).orElse(List.of());
        return new ProseText(source, passages, tree.fault());
    }

    /** The tree of a text, for those who look at its parts; nothing if it is too large or too deep to be read. */
    public static Optional<Node> tree(ProseSource source) {
        return Markdown.parse(source).document();
    }

    ProseSource source() {
        return source;
    }

    List<Passage> passages() {
        return passages;
    }

    Optional<ProseFault> fault() {
        return fault;
    }
}

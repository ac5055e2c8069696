package org.evenhand.prose;

import java.util.ArrayList;
import java.util.List;
import org.evenhand.prose.Passage.Range;

/** Holds what sentences say against what was computed. For one study and one thread; make it once for all of its texts. */
public final class Verification {

    private final EvidenceResolver resolver;
    private final Context context;

    private Verification(EvidenceResolver resolver) {
        this.resolver = resolver;
        this.context = new Context(resolver);
    }

    /**
     * Prepares to verify texts.
     *
     * @param resolver finds the figures that they are bound to; also tells their language
     */
    public static Verification of(EvidenceResolver resolver) {
        return new Verification(resolver);
    }

    /** Verifies a single text; see {@link #verify(ProseSource)}. */
    public static List<ProseFault> verify(ProseSource source, EvidenceResolver resolver) {
        return of(resolver).verify(source);
    }

    /**
     * Verifies a text.
     *
     * @param source what was written
     * @return what does not hold, in the order of the text; addresses that lead nowhere are left to {@link Prose#render}
     */
    public List<ProseFault> verify(ProseSource source) {
        Markdown.Tree tree = Markdown.parse(source);
        if (tree.document().isEmpty()) {
            return List.of(tree.fault().orElseThrow());
        }
        List<ProseFault> faults = new ArrayList<>();
        for (Passage passage : PassageReader.read(tree.document().get(), source.text(), resolver)) {
            for (Range range : Sentences.of(passage, context.words())) {
                Sentence sentence = Sentence.of(source, passage, range, context);
                sentence.links().forEach(link -> LinkCheck.check(sentence, link, faults));
                if (!passage.heading() && !passage.quoted()) {
                    context.language().sentences.check(sentence, faults);
                }
            }
            context.language().unlinked.check(source, passage, context, faults);
        }
        return faults.stream().sorted().distinct().toList();
    }
}

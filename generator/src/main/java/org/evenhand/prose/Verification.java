package org.evenhand.prose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.evenhand.model.Limits;
import org.evenhand.model.Quota;
import org.evenhand.prose.EvidenceResolver.Found;
import org.evenhand.prose.EvidenceResolver.Missing;
import org.evenhand.prose.EvidenceResolver.Resolution;
import org.evenhand.prose.Passage.Address;
import org.evenhand.prose.Passage.Bound;
import org.evenhand.prose.Passage.Range;
import org.evenhand.read.Rules;
import org.evenhand.words.QuotaWords;

/** Holds what sentences say against what was computed. For one study and one thread; make it once for all of its texts. */
public final class Verification {

    private final EvidenceResolver resolver;
    private final Context context;
    private final Map<String, Resolution> resolved = new HashMap<>();

    private final Limits limits;

    private Verification(EvidenceResolver resolver, Limits limits) {
        this.resolver = resolver;
        this.limits = limits;
        this.context = new Context(resolver);
    }

    /**
     * Prepares to verify texts.
     *
     * @param resolver finds the figures that they are bound to; also tells their language
     */
    public static Verification of(EvidenceResolver resolver) {
        return of(resolver, Limits.DEFAULT);
    }

    /** The same, where a text may take only so much time. */
    public static Verification of(EvidenceResolver resolver, Limits limits) {
        return new Verification(resolver, limits);
    }

    /** What of a text is verified. */
    public enum Extent {
        /** Links, and what they say; for instructions, which are made of quantities and conditions. */
        LINKS,
        /** Claims that need evidence as well; for descriptions, in which quantities may stand unlinked. */
        LINKS_AND_CLAIMS,
        /** Quantities that are linked to nothing as well. */
        ALL
    }

    /** Verifies a single text; see {@link #verify(ProseText, Extent)}. */
    public static List<ProseFault> verify(ProseSource source, EvidenceResolver resolver) {
        return of(resolver).verify(ProseText.read(source), Extent.ALL);
    }

    /**
     * Verifies a text.
     *
     * @return what does not hold, and addresses that lead nowhere, in the order of the text
     */
    public List<ProseFault> verify(ProseText text, Extent extent) {
        List<ProseFault> faults = new ArrayList<>();
        text.fault().ifPresent(faults::add);
        Limits.Timing timing = limits.begin();
        for (Passage read : text.passages()) {
            if (timing.isOver()) {
                faults.add(tooSlow(text.source()));
                break;
            }
            Passage passage = bound(read, text.source(), faults);
            for (Range range : Sentences.of(passage, context.words())) {
                Sentence sentence = Sentence.of(text.source(), passage, range, context);
                sentence.links().forEach(link -> LinkCheck.check(sentence, link, faults));
                if (extent != Extent.LINKS && !passage.heading() && !passage.quoted()) {
                    context.language().sentences.check(sentence, faults);
                }
            }
            if (extent == Extent.ALL) {
                context.language().unlinked.check(text.source(), passage, context, faults);
            }
        }
        return faults.stream().sorted().distinct().toList();
    }

    private ProseFault tooSlow(ProseSource source) {
        Quota quota = Quota.FILE_SECONDS;
        var words = context.figures().words();
        return ProseFault.of(
                Rules.SIZE_LIMIT,
                source.place(0, 1),
                context.say("prose.too-slow", QuotaWords.read(limits, quota, words)),
                context.say("prose.too-slow.remedy", QuotaWords.raising(quota, words)));
    }

    private Passage bound(Passage passage, ProseSource source, List<ProseFault> faults) {
        if (passage.addresses().isEmpty()) {
            return passage;
        }
        List<Bound> links = new ArrayList<>();
        for (Address address : passage.addresses()) {
            try {
                EvidenceLink link = EvidenceLink.parse(address.destination());
                Resolution resolution = resolved.computeIfAbsent(link.address(), resolver::resolve);
                if (resolution instanceof Found found) {
                    int start = Passages.start(address.link());
                    int end = Passages.end(address.link());
                    links.add(new Bound(address.start(), address.end(), found.evidence(), link.form(), start, end));
                } else {
                    Missing missing = (Missing) resolution;
                    faults.add(unresolved(source, address, missing.message(), missing.remedy()));
                }
            } catch (EvidenceLink.MalformedException e) {
                faults.add(unresolved(source, address, e.getMessage(), e.remedy()));
            }
        }
        return passage.bound(links);
    }

    private static ProseFault unresolved(ProseSource source, Address address, String message, String remedy) {
        return ProseFault.of(
                Rules.REFERENCE_UNRESOLVED, Passages.placeOfAddress(source, address.link()), message, remedy);
    }
}

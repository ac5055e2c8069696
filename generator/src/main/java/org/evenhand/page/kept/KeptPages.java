package org.evenhand.page.kept;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.evenhand.model.Seal;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;
import org.evenhand.page.view.Address;
import org.evenhand.read.DigestList;
import org.evenhand.read.Seals;

/** All pages that stay although what they told of has changed or gone. */
public final class KeptPages {

    private static final String MANIFEST = "manifest-sha256.txt";

    private final PageContext context;
    private final PageSink sink;
    private final List<Seal> seals = new ArrayList<>();
    private final SortedSet<String> linked = new TreeSet<>();

    public KeptPages(PageContext context, PageSink sink) {
        this.context = context;
        this.sink = sink;
    }

    /** Writes the sealed versions of the results folder. */
    public void ofFolder() {
        context.checked().folder().seals().values().forEach(seals::addAll);
        linked.addAll(SealedPages.build(seals, context.root().resolve(Seals.FOLDER), context, sink));
    }

    /**
     * Writes the sealed versions of a former site that the folder does not have, and learns of its addresses.
     *
     * @param made what the site has so far
     * @throws UncheckedIOException if the former site cannot be read
     */
    public void ofFormer(Path site, Set<String> made) {
        List<Seal> others = Seals.of(site).values().stream()
                .flatMap(Collection::stream)
                .filter(Seal::isWhole)
                .filter(seal -> !made.contains(seal.page()))
                .toList();
        linked.addAll(SealedPages.build(others, site, context, (path, bytes) -> {
            if (!made.contains(path)) {
                sink.put(path, bytes);
            }
        }));
        seals.addAll(others);
        try {
            DigestList.read(site.resolve(MANIFEST)).keySet().stream()
                    .filter(path -> path.endsWith("/" + Address.INDEX))
                    .forEach(linked::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes a page for each address that is promised and that nothing else stands at. */
    public void gone(Set<String> made) {
        GonePages gone = new GonePages(context, seals);
        linked.addAll(gone.ofSealed());
        linked.removeAll(made);
        seals.forEach(seal -> linked.remove(seal.page()));
        gone.build(linked, sink);
    }
}

package org.evenhand.page.kept;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.evenhand.model.Seal;
import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Banner;
import org.evenhand.page.view.GonePage;
import org.evenhand.page.view.Link;
import org.evenhand.read.SealedPage;
import org.evenhand.words.Words;

/** Puts sealed versions onto the site as they are, but for the banner at their head. */
public final class SealedPages {

    private final PageContext context;
    private final Path tree;
    private final PageSink sink;
    private final Set<String> assets = new HashSet<>();
    private final SortedSet<String> linked = new TreeSet<>();

    private SealedPages(PageContext context, Path tree, PageSink sink) {
        this.context = context;
        this.tree = tree;
        this.sink = sink;
    }

    /**
     * Writes sealed versions.
     *
     * @param tree the sealed folder of a results folder, or a former site
     * @return the pages to which they lead
     * @throws UncheckedIOException if a file cannot be read any more
     */
    public static SortedSet<String> build(List<Seal> seals, Path tree, PageContext context, PageSink sink) {
        SealedPages pages = new SealedPages(context, tree, sink);
        seals.forEach(pages::put);
        return pages.linked;
    }

    private void put(Seal seal) {
        if (!seal.isWhole()) {
            sink.put(seal.page(), context.render("gone", damaged(seal)));
            return;
        }
        for (String path : seal.files().keySet()) {
            if (path.equals(seal.page())) {
                sink.put(path, page(seal));
            } else if (path.startsWith(seal.folder()) || assets.add(path)) {
                sink.put(path, read(path));
            }
        }
        sink.put(seal.list(), read(seal.list()));
    }

    private byte[] page(Seal seal) {
        String sealed = SealedPage.withoutBanner(new String(read(seal.page()), StandardCharsets.UTF_8));
        Relinking.targets(sealed, seal.page()).stream()
                .filter(Relinking.Target::isPage)
                .forEach(t -> linked.add(t.path()));
        Banner banner = new Banner(
                context.frames().of(seal.page(), seal.question(), ""),
                Standing.of(seal, context.checked(), context.words()));
        String text = new String(context.render("banner", banner), StandardCharsets.UTF_8);
        return SealedPage.withBanner(sealed, text).getBytes(StandardCharsets.UTF_8);
    }

    private GonePage damaged(Seal seal) {
        Words words = context.words();
        String title = words.say("kept.damaged", seal.version(), seal.study());
        return new GonePage(
                context.frames().of(seal.page(), title, words.say("kept.damaged-about")),
                title,
                words.say("kept.damaged-text", said(seal.faults().get(0))),
                List.of(Link.to(words.say("kept.now"), Address.answer(seal.study()))));
    }

    private String said(Seal.Fault fault) {
        return context.words().say("seal." + fault.flaw().id(), fault.path());
    }

    private byte[] read(String path) {
        try {
            return Files.readAllBytes(tree.resolve(path));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + path, e);
        }
    }
}

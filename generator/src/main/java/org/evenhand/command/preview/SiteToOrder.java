package org.evenhand.command.preview;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Predicate;
import org.evenhand.cache.Cache;
import org.evenhand.check.CheckedFolder;
import org.evenhand.page.PageSink;
import org.evenhand.page.Pages;
import org.evenhand.page.Templates;
import org.evenhand.page.view.Address;

/** The site of a checked folder, each page made when it is first asked for. Safe for use by many threads. */
final class SiteToOrder {

    private final CheckedFolder checked;
    private final Path root;
    private final Templates templates;
    private final String generator;
    private final Cache cache;
    private final Map<String, Content> made = new ConcurrentHashMap<>();
    private final FutureTask<Set<String>> addresses = new FutureTask<>(this::allAddresses);
    private volatile boolean given;

    /** @param checked a folder that says who publishes */
    SiteToOrder(CheckedFolder checked, Path root, Templates templates, String generator, Cache cache) {
        this.checked = checked;
        this.root = root;
        this.templates = templates;
        this.generator = generator;
        this.cache = cache;
    }

    /**
     * A file of the site.
     *
     * @param path from the site's root, with "/" between the parts
     * @return nothing if the site has no such file
     */
    Optional<Content> file(String path) {
        if (!made.containsKey(path)) {
            make(path, page -> isBeside(page, path));
        }
        // Whoever makes pages need not keep their files beside them: the slow way finds those too.
        if (!made.containsKey(path) && isKnown(path)) {
            make(path, page -> true);
        }
        return Optional.ofNullable(made.get(path));
    }

    /**
     * Makes everything once and keeps the addresses alone; afterwards it is quick to say what is not there.
     *
     * @throws RuntimeException if something cannot be made
     */
    void makeAll() {
        try {
            addresses();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause().getMessage(), e.getCause());
        }
    }

    /** Nobody will ask any more: a making of everything that goes on ends soon. */
    void giveUp() {
        given = true;
    }

    private synchronized void make(String path, Predicate<String> wanted) {
        if (!made.containsKey(path)) {
            build(wanted, put -> put.equals(path) || !isAtRoot(put) && !isAtRoot(path));
        }
    }

    private boolean isKnown(String path) {
        try {
            return addresses().contains(path);
        } catch (ExecutionException e) {
            return false; // makeAll has told it
        }
    }

    private Set<String> addresses() throws ExecutionException {
        addresses.run();
        try {
            return addresses.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Set.of();
        }
    }

    /** Whether a path is that of the page, or within the page's folder. What stands at the root may be about all. */
    private static boolean isBeside(String page, String path) {
        String folder = page.substring(0, page.lastIndexOf('/') + 1);
        return isAtRoot(path) || path.equals(page) || !folder.isEmpty() && path.startsWith(folder);
    }

    /** The front page is as any other; the rest may tell of every file of the site. */
    private static boolean isAtRoot(String path) {
        return path.indexOf('/') < 0 && !path.equals(Address.INDEX);
    }

    private Set<String> allAddresses() {
        Set<String> all = ConcurrentHashMap.newKeySet();
        build(page -> true, path -> {
            if (given) {
                throw new IllegalStateException("the folder has changed meanwhile");
            }
            all.add(path);
            return false;
        });
        return all;
    }

    private void build(Predicate<String> wanted, Predicate<String> kept) {
        Pages.build(checked, root, templates, generator, Optional.empty(), cache, new PageSink() {

            @Override
            public void put(String path, byte[] bytes) {
                if (kept.test(path)) {
                    made.put(path, new Content.Bytes(bytes));
                }
            }

            @Override
            public void copy(String path, Path source, String sha256) {
                if (kept.test(path)) {
                    made.put(path, new Content.Raw(source));
                }
            }

            @Override
            public boolean wants(String page) {
                return wanted.test(page);
            }
        });
    }
}

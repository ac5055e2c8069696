package org.evenhand.page.kept;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.CheckedStudy;
import org.evenhand.model.Seal;
import org.evenhand.page.PageSink;
import org.evenhand.page.Pages;
import org.evenhand.page.Templates;
import org.evenhand.page.view.Address;
import org.evenhand.read.DigestList;
import org.evenhand.read.SealedPage;
import org.evenhand.read.Sha256;

/**
 * Freezes an answer as it is published now, under the address of its version.
 *
 * <p>The page is that of the answer but for its links. Those to itself stay within it; style sheet and fonts are frozen with
 * it; those to other pages lead there, whatever these may say later; those to files that may change become plain text,
 * beside which the digest stands. It runs nothing, so that no script is frozen either.
 */
public final class Freezing {

    private static final String ASSETS = "assets/";
    private static final int SHORT = 16;
    private static final Pattern SCRIPT = Pattern.compile("<script\\b[^<>]*+>");
    private static final String SCRIPT_END = "</script>";

    private final String answer;
    private final Seal named;
    private final SortedMap<String, byte[]> site;
    private final SortedMap<String, byte[]> frozen = new TreeMap<>();
    private final String assets;

    private Freezing(CheckedStudy study, SortedMap<String, byte[]> site) {
        String id = study.evidence().study().id();
        this.answer = Address.answer(id);
        this.named = new Seal(
                id,
                study.evidence().study().version(),
                study.evidence().study().question(),
                new TreeMap<>(),
                java.util.List.of());
        this.site = site;
        this.assets = assetsFolder();
    }

    /**
     * Freezes the present version of an answer.
     *
     * @param study that is to be frozen; not withheld
     * @return its files by their path below the sealed folder; the list of their digests among them
     */
    public static SortedMap<String, byte[]> of(
            CheckedStudy study, CheckedFolder checked, Path root, Templates templates, String generator) {
        Kept kept = new Kept(study.evidence().study().id());
        Pages.build(checked, root, templates, generator, kept);
        Freezing freezing = new Freezing(study, kept.files);
        String base = checked.folder().publication().orElseThrow().baseUrl();
        freezing.freeze(base, new Inputs(checked, root).of(study));
        return freezing.frozen;
    }

    private void freeze(String base, SortedMap<String, String> inputs) {
        String folder = folder(answer);
        site.forEach((path, bytes) -> {
            if (path.startsWith(ASSETS)) {
                frozen.put(asset(path), bytes);
            } else if (path.startsWith(folder) && !path.equals(answer)) {
                frozen.put(named.folder() + path.substring(folder.length()), bytes);
            }
        });
        String page = new String(site.get(answer), StandardCharsets.UTF_8);
        page = withoutScripts(page);
        page = Relinking.rewritten(page, answer, this::rewritten);
        // The address by which this version is cited is its own.
        page = page.replaceAll(
                Pattern.quote(base + folder) + "(?!v/)", Matcher.quoteReplacement(base + named.folder()));
        frozen.put(named.page(), SealedPage.withPlace(page).getBytes(StandardCharsets.UTF_8));
        frozen.put(named.folder() + Seal.INPUTS, DigestList.write(inputs).getBytes(StandardCharsets.UTF_8));
        SortedMap<String, String> digests = new TreeMap<>();
        frozen.forEach((path, bytes) -> digests.put(path, Sha256.of(bytes)));
        frozen.put(named.list(), DigestList.write(digests).getBytes(StandardCharsets.UTF_8));
    }

    /** Blocks of linked data stay: browsers do not run them. */
    private static String withoutScripts(String page) {
        StringBuilder kept = new StringBuilder(page.length());
        Matcher script = SCRIPT.matcher(page);
        int from = 0;
        while (script.find()) {
            int end = page.indexOf(SCRIPT_END, script.end());
            if (end < 0) {
                break;
            }
            end += SCRIPT_END.length();
            if (!script.group().contains("application/ld+json")) {
                kept.append(page, from, script.start());
                from = page.startsWith("\n", end) ? end + 1 : end;
            }
            script.region(end, page.length());
        }
        return kept.append(page, from, page.length()).toString();
    }

    private Optional<String> rewritten(Relinking.Target target) {
        String path = target.path();
        String page = named.page();
        if (path.equals(answer) && !target.fragment().isEmpty()) {
            return Optional.of(target.fragment());
        }
        if (path.startsWith(ASSETS)) {
            return Optional.of(Relinking.way(page, asset(path)));
        }
        if (path.startsWith(folder(answer)) && site.containsKey(path) && !path.equals(answer)) {
            return Optional.of(Relinking.way(
                    page, named.folder() + path.substring(folder(answer).length())));
        }
        // Other pages may lose the place that is meant, but not their address.
        boolean isFound = target.isPage() || target.element().equals("link") || path.equals("manifest-sha256.txt");
        if (isFound || path.equals("feed.xml")) {
            return Optional.of(Relinking.way(page, path));
        }
        if (!target.element().equals("a") && site.containsKey(path)) {
            String copy = named.folder() + "files/" + path.replace('/', '-');
            frozen.put(copy, site.get(path));
            return Optional.of(Relinking.way(page, copy));
        }
        return Optional.empty();
    }

    /** Named by content: versions that look alike share one folder, and no other ever comes to lie in it. */
    private String assetsFolder() {
        SortedMap<String, String> digests = new TreeMap<>();
        site.forEach((path, bytes) -> {
            if (path.startsWith(ASSETS)) {
                digests.put(path, Sha256.of(bytes));
            }
        });
        return Sha256.of(DigestList.write(digests).getBytes(StandardCharsets.UTF_8))
                .substring(0, SHORT);
    }

    private String asset(String path) {
        return ASSETS + assets + "/" + path.substring(ASSETS.length());
    }

    private static String folder(String page) {
        return page.substring(0, page.lastIndexOf('/') + 1);
    }

    /** Keeps of a site what a sealed version may need. */
    private static final class Kept implements PageSink {

        private static final Pattern DRAWN = Pattern.compile(".*\\.(?:png|jpe?g|webp|svg)");

        private final String answer;
        private final SortedMap<String, byte[]> files = new ConcurrentSkipListMap<>();

        private Kept(String study) {
            this.answer = folder(Address.answer(study));
        }

        private boolean isNeeded(String path) {
            boolean isSealed = path.startsWith(answer + "v/") || path.matches(ASSETS + "[0-9a-f]{" + SHORT + "}/.*");
            boolean isScript = path.endsWith(".js");
            return !isSealed
                    && !isScript
                    && (path.startsWith(answer)
                            || path.startsWith(ASSETS)
                            || DRAWN.matcher(path).matches());
        }

        @Override
        public void put(String path, byte[] bytes) {
            if (isNeeded(path)) {
                files.put(path, bytes);
            }
        }

        @Override
        public void copy(String path, Path source, String sha256) throws IOException {
            if (isNeeded(path)) {
                byte[] bytes = Files.readAllBytes(source);
                if (!Sha256.of(bytes).equals(sha256)) {
                    throw new UncheckedIOException(
                            new IOException(source.getFileName() + " changed while it was sealed; seal again"));
                }
                files.put(path, bytes);
            }
        }
    }
}

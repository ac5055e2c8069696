package org.evenhand.docs;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/**
 * The libraries that Maven resolved for this build, told by the class path of the tests and by what each declares of itself.
 *
 * @param all by "group:name"
 * @param packed those that come with the program: what it declares for other than tests, and what that needs in turn
 */
record Materials(SortedMap<String, Library> all, Set<String> packed) {

    /** How licences call themselves, by their SPDX identifiers (spdx.org/licenses). */
    private static final Map<String, String> SPDX = Map.ofEntries(
            Map.entry("apache", "Apache-2.0"),
            Map.entry("bsd-2-clause", "BSD-2-Clause"),
            Map.entry("bsd", "BSD-3-Clause"),
            Map.entry("mit", "MIT"),
            Map.entry("eclipse public license - version 1.0", "EPL-1.0"),
            Map.entry("eclipse public license", "EPL-2.0"),
            Map.entry("mozilla", "MPL-2.0"),
            Map.entry("unicode-3.0", "Unicode-3.0"),
            Map.entry("no copyright", "public domain"),
            Map.entry("dual license consisting of the cddl", "CDDL-1.1 OR GPL-2.0-only"));

    /** Those whose licence stands elsewhere than in what they declare. */
    private static final Map<String, String> KNOWN = Map.of("isorelax:isorelax", "MIT (from memory: it declares none)");

    /**
     * A library.
     *
     * @param licence as SPDX writes it
     * @param needs those that it needs to run, by "group:name"
     */
    record Library(String group, String name, String version, String licence, Path jar, Set<String> needs) {
        String id() {
            return group + ":" + name;
        }
    }

    static Materials ofThisBuild() {
        SortedMap<String, Library> all = new TreeMap<>();
        for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
            Path jar = Path.of(entry);
            Path pom = jar.resolveSibling(jar.getFileName().toString().replaceFirst("\\.jar$", ".pom"));
            // What runs the tests is put on the class path by Maven's plug-in, and is no library of ours.
            if (entry.endsWith(".jar") && Files.isRegularFile(pom)) {
                Library library = library(jar, pom);
                all.put(library.id(), library);
            }
        }
        Set<String> declared = new TreeSet<>();
        dependencies(read(Path.of("pom.xml")), declared, Set.of("test"));
        return new Materials(all, needed(all, declared));
    }

    /** Those that the program declares, tests included. */
    static Set<String> declared() {
        Set<String> declared = new TreeSet<>();
        dependencies(read(Path.of("pom.xml")), declared, Set.of());
        return declared;
    }

    /** What some libraries need, and themselves. */
    Set<String> needed(Set<String> from) {
        return needed(all, from);
    }

    private static Set<String> needed(SortedMap<String, Library> all, Set<String> from) {
        Set<String> needed = new TreeSet<>();
        Deque<String> open = new ArrayDeque<>(from);
        while (!open.isEmpty()) {
            String id = open.removeFirst();
            if (all.containsKey(id) && needed.add(id)) {
                open.addAll(all.get(id).needs());
            }
        }
        return needed;
    }

    private static Library library(Path jar, Path pom) {
        Path version = jar.getParent();
        Path name = version.getParent();
        Document document = read(pom);
        String group = Optional.ofNullable(document.selectFirst("project > groupId"))
                .or(() -> Optional.ofNullable(document.selectFirst("project > parent > groupId")))
                .orElseThrow()
                .text();
        String id = group + ":" + name.getFileName();
        Set<String> needs = new TreeSet<>();
        dependencies(document, needs, Set.of("test", "provided", "system"));
        // A name that stands for the group of the library itself.
        Set<String> plain = new TreeSet<>();
        needs.forEach(n -> plain.add(n.replaceAll("\\$\\{(project|pom)\\.(parent\\.)?groupId}", group)));
        String licence =
                KNOWN.getOrDefault(id, KNOWN.containsKey(id) ? "" : licence(document, name.getParent(), group));
        return new Library(
                group, name.getFileName().toString(), version.getFileName().toString(), licence, jar, plain);
    }

    private static void dependencies(Document pom, Set<String> to, Set<String> without) {
        for (Element each : pom.select("project > dependencies > dependency")) {
            String scope = text(each, "scope");
            if (!without.contains(scope) && !text(each, "optional").equals("true")) {
                to.add(text(each, "groupId") + ":" + text(each, "artifactId"));
            }
        }
    }

    /** Of the library or of the parent that it inherits from. */
    private static String licence(Document pom, Path groupFolder, String group) {
        List<String> names = pom.select("project > licenses > license > name").eachText();
        if (names.isEmpty()) {
            Element parent = pom.selectFirst("project > parent");
            Path repository = groupFolder;
            for (int i = 0; i < group.split("\\.").length; i++) {
                repository = repository.getParent();
            }
            if (parent == null) {
                return "none stated";
            }
            String name = text(parent, "artifactId");
            String version = text(parent, "version");
            Path folder = repository.resolve(text(parent, "groupId").replace('.', '/'));
            Path file = folder.resolve(name).resolve(version).resolve(name + "-" + version + ".pom");
            return licence(read(file), folder, text(parent, "groupId"));
        }
        List<String> identifiers = new ArrayList<>();
        for (String name : names) {
            String lower = name.toLowerCase(java.util.Locale.ROOT).replaceFirst("^the ", "");
            identifiers.add(SPDX.entrySet().stream()
                    .filter(e -> lower.startsWith(e.getKey()))
                    .max(Map.Entry.comparingByKey(java.util.Comparator.comparingInt(String::length)))
                    .orElseThrow(() -> new IllegalStateException("unknown licence: " + name))
                    .getValue());
        }
        return String.join(", ", identifiers);
    }

    private static String text(Element of, String name) {
        Element child = of.selectFirst("> " + name);
        return child == null ? "" : child.text();
    }

    private static Document read(Path pom) {
        try {
            return Jsoup.parse(Files.readString(pom), "", Parser.xmlParser());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package org.evenhand.page;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.FileTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.TemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.evenhand.read.Sha256;
import org.evenhand.words.Words;

/**
 * The page templates and the files they refer to, from the program or from a folder that overrides some of them.
 *
 * <p>A template sees data, and the two functions of {@link TemplateWords}: it can make no object, call no other method and
 * reach no file outside its folder. Text is
 * escaped for HTML unless it is {@link org.evenhand.page.view.Markup}. Safe for use by many threads at once.
 */
public final class Templates {
    private static final String BUNDLED = "/org/evenhand/templates";

    /** Files that pages refer to, as paths from the site's root; the site copies each to that path. */
    public static final List<String> ASSETS = List.of(
            "assets/compare.js",
            "assets/copy.js",
            "assets/evenhand.css",
            "assets/find.js",
            "assets/fonts/archivo-OFL.txt",
            "assets/fonts/archivo-latin-ext.woff2",
            "assets/fonts/archivo-latin.woff2",
            "assets/fonts/stix-two-text-OFL.txt",
            "assets/fonts/stix-two-text-latin-ext.woff2",
            "assets/fonts/stix-two-text-latin.woff2",
            "assets/logs.js",
            "assets/tables.js");

    private final Configuration configuration;
    private final Optional<Path> overrides;

    private Templates(TemplateLoader loader, Optional<Path> overrides) {
        this.configuration = strict(loader);
        this.overrides = overrides;
    }

    /** The templates that come with the program. */
    public static Templates bundled() {
        return new Templates(new ClassTemplateLoader(Templates.class, BUNDLED), Optional.empty());
    }

    /**
     * The templates that come with the program, except those that the folder holds under the same name.
     *
     * @throws UncheckedIOException if the folder cannot be read
     */
    public static Templates overriddenBy(Path folder) {
        try {
            TemplateLoader own = new FileTemplateLoader(folder.toFile());
            TemplateLoader bundled = new ClassTemplateLoader(Templates.class, BUNDLED);
            return new Templates(new MultiTemplateLoader(new TemplateLoader[] {own, bundled}), Optional.of(folder));
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot read the template folder " + folder, cause);
        }
    }

    /**
     * Fills a template.
     *
     * @param name without its ending, such as {@code answer}
     * @param view the record that the template was written for; its components are the template's variables
     * @param words that {@code say} and {@code day} take theirs from
     * @return HTML with line feeds
     * @throws IllegalStateException if the template is missing or faulty, or asks for what the view does not hold; the
     *     message names template, line and column
     */
    public String render(String name, Record view, Words words) {
        StringWriter page = new StringWriter(1 << 14);
        try {
            Template template = configuration.getTemplate(name + ".ftlh");
            Map<String, Object> seen = new HashMap<>(TemplateWords.in(words));
            seen.putAll(ViewMap.of(view));
            template.process(seen, page);
        } catch (IOException | TemplateException cause) {
            throw new IllegalStateException("template " + name + ": " + cause.getMessage(), cause);
        }
        return page.toString();
    }

    /**
     * The bytes of one of {@link #ASSETS}.
     *
     * @throws IllegalArgumentException if there is no such file
     */
    public byte[] asset(String path) {
        if (!ASSETS.contains(path)) throw new IllegalArgumentException("no such file: " + path);
        try {
            Optional<Path> own = overrides.map(folder -> folder.resolve(path)).filter(Files::isRegularFile);
            if (own.isPresent()) return Files.readAllBytes(own.get());
            try (InputStream bundled = Templates.class.getResourceAsStream(BUNDLED + "/" + path)) {
                if (bundled == null) throw new IllegalArgumentException("no such file: " + path);
                return bundled.readAllBytes();
            }
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    /**
     * What tells these templates from any others of this program: the digests of the files that override, by path.
     *
     * @throws UncheckedIOException if their folder cannot be read
     */
    SortedMap<String, String> overriding() {
        SortedMap<String, String> digests = new TreeMap<>();
        if (overrides.isPresent()) {
            try (Stream<Path> files = Files.walk(overrides.get())) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    digests.put(overrides.get().relativize(file).toString(), Sha256.of(file));
                }
            } catch (IOException cause) {
                throw new UncheckedIOException(cause);
            }
        }
        return digests;
    }

    private static Configuration strict(TemplateLoader loader) {
        Configuration configuration = new Configuration(Configuration.VERSION_2_3_35);
        configuration.setTemplateLoader(loader);
        configuration.setDefaultEncoding("UTF-8");
        configuration.setLocale(Locale.ROOT);
        configuration.setTimeZone(TimeZone.getTimeZone("UTC"));
        configuration.setNumberFormat("computer");
        configuration.setRecognizeStandardFileExtensions(true);
        configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setWrapUncheckedExceptions(true);
        // Looking for "answer_en.ftlh" first would make the page depend on the locale.
        configuration.setLocalizedLookup(false);
        configuration.setObjectWrapper(new SimpleObjectWrapper(Configuration.VERSION_2_3_35));
        return configuration;
    }
}

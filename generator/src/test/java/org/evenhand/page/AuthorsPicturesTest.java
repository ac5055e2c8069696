package org.evenhand.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.FolderChecker;
import org.evenhand.model.Limits;
import org.evenhand.model.Quota;
import org.evenhand.page.kept.Freezing;
import org.evenhand.picture.MadePictures;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures of a results folder on the pages of its site. */
class AuthorsPicturesTest {

    private static final String PLACE = "GPS-52.3791N-004.9003E";

    @TempDir
    private Path folder;

    @BeforeEach
    void copySample() throws IOException {
        try (Stream<Path> files = Files.walk(SampleSiteFiles.SAMPLE)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path target =
                        folder.resolve(SampleSiteFiles.SAMPLE.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
        Files.write(
                folder.resolve("studies/cable/set up.jpg"),
                MadePictures.photographed(MadePictures.fields(40), 6, PLACE));
        append("studies/cable/study.md", "![The *cable* & its \"plug\"](set%20up.jpg \"O. Marsh, CC0-1.0\")");
    }

    private void append(String file, String text) {
        try {
            Path path = folder.resolve(file);
            Files.writeString(path, Files.readString(path) + "\n" + text + "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private SortedMap<String, byte[]> site() {
        return SampleSiteFiles.build(FolderChecker.check(folder), folder);
    }

    private static Document page(SortedMap<String, byte[]> site, String path) {
        return Jsoup.parse(new String(site.get(path), StandardCharsets.UTF_8));
    }

    @Test
    void aPictureOfATextIsShownUprightWithItsWordsAndWithoutItsPosition() throws IOException {
        SortedMap<String, byte[]> site = site();
        Element figure = page(site, "answers/cable/index.html").selectFirst("figure.picture:has(img[src*=set-up])");
        Element image = figure.selectFirst("img");
        assertEquals("The cable & its \"plug\"", image.attr("alt"));
        assertEquals("O. Marsh, CC0-1.0", figure.selectFirst("figcaption").text());
        assertEquals("40", image.attr("width"));
        assertEquals("80", image.attr("height"));
        assertTrue(image.attr("src").endsWith("answers/cable/pictures/set-up-jpg.png"), image::toString);
        byte[] png = site.get("answers/cable/pictures/set-up-jpg.png");
        assertEquals(40, ImageIO.read(new ByteArrayInputStream(png)).getWidth());
        site.forEach(
                (path, bytes) -> assertTrue(!new String(bytes, StandardCharsets.ISO_8859_1).contains(PLACE), path));
        assertArrayEquals(png, site().get("answers/cable/pictures/set-up-jpg.png"));
    }

    @Test
    void aSealedVersionKeepsItsPictures() {
        CheckedFolder checked = FolderChecker.check(folder);
        SortedMap<String, byte[]> sealed =
                Freezing.of(checked.studies().get("cable"), checked, folder, Templates.bundled(), "Evenhand test");
        String page = sealed.keySet().stream()
                .filter(path -> path.endsWith("/index.html"))
                .findFirst()
                .orElseThrow();
        String source = page(new TreeMap<>(sealed), page)
                .selectFirst("figure.picture img[src*=set-up]")
                .attr("src");
        String file = Path.of(page).resolveSibling(source).normalize().toString();
        assertArrayEquals(site().get("answers/cable/pictures/set-up-jpg.png"), sealed.get(file), file);
    }

    @Test
    void aListedPictureIsShownOnThePageOfItsItem() throws IOException {
        Path item = Files.list(folder.resolve("items")).sorted().findFirst().orElseThrow();
        String name = item.getFileName().toString().replace(".yaml", "");
        Files.write(folder.resolve("items/front.png"), MadePictures.written(MadePictures.fields(8), "png"));
        append(
                "items/" + item.getFileName(),
                "pictures: [{ file: front.png, shows: Its front, by: O. Marsh, licence: CC0-1.0 }]");
        SortedMap<String, byte[]> site = site();
        Element image = page(site, "items/" + name + "/index.html").selectFirst("figure.picture img");
        assertEquals("Its front", image.attr("alt"));
        assertTrue(site.containsKey("items/" + name + "/pictures/front.png"));
    }

    @Test
    void aPictureThatIsUnfitWithholdsItsStudyAndIsNotPublished() throws IOException {
        Files.writeString(folder.resolve("studies/cable/plug.svg"), "<svg onload='alert(1)'/>");
        append("studies/cable/study.md", "![The plug](plug.svg \"O. Marsh, CC0-1.0\")");
        CheckedFolder checked = FolderChecker.check(folder);
        assertTrue(checked.studies().get("cable").isWithheld());
        SampleSiteFiles.build(checked, folder).keySet().forEach(path -> assertTrue(!path.contains("plug"), path));
    }

    @Test
    void twoPicturesThatWouldHaveOneAddressAreRefused() throws IOException {
        byte[] png = MadePictures.written(MadePictures.fields(8), "png");
        Files.write(folder.resolve("studies/cable/a b.png"), png);
        Files.write(folder.resolve("studies/cable/a-b.png"), png);
        append("studies/cable/study.md", "![One](a%20b.png \"me, CC0-1.0\")\n\n![Other](a-b.png \"me, CC0-1.0\")");
        assertEquals(List.of("id-collision"), rules(FolderChecker.check(folder)));
    }

    @Test
    void aLimitThatIsLoweredOrRaisedHoldsForPictures() {
        Limits few = Limits.DEFAULT.with(Quota.PICTURE_PIXELS, 100);
        assertEquals(List.of("size-limit"), rules(FolderChecker.check(folder, java.util.Optional.empty(), few)));
    }

    private static List<String> rules(CheckedFolder checked) {
        return checked.studies().get("cable").findings().stream()
                .map(f -> f.rule())
                .filter(r -> List.of("id-collision", "size-limit", "picture-unfit", "path-outside")
                        .contains(r))
                .distinct()
                .toList();
    }
}

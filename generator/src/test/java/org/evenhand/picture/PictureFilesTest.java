package org.evenhand.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import javax.imageio.ImageIO;
import org.evenhand.chart.Raster;
import org.evenhand.model.Limits;
import org.evenhand.model.Quota;
import org.evenhand.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is read of pictures, and what is refused.
 *
 * <p>The pictures come from the writers of the Java platform. Where pixels are expected, they are those that were drawn;
 * what we write is read back by the platform's own reader.
 */
class PictureFilesTest {

    @TempDir
    private Path folder;

    private Pixels read(String name, byte[] bytes) throws Exception {
        Files.write(folder.resolve(name), bytes);
        return PictureFiles.read(folder, name, Limits.DEFAULT);
    }

    private String refused(String name, byte[] bytes) {
        UnfitException e = assertThrows(UnfitException.class, () -> read(name, bytes));
        assertTrue(!e.remedy(Words.english()).isBlank());
        return e.rule() + ": " + e.getMessage();
    }

    private static byte[] png() {
        return MadePictures.written(MadePictures.fields(40), "png");
    }

    private static byte[] jpeg() {
        return MadePictures.written(MadePictures.fields(40), "jpeg");
    }

    /** Which field it is, of {@link MadePictures#fields}: R, G, B or W. */
    private static char colourAt(Pixels pixels, int x, int y) {
        int rgb = pixels.rgb()[y * pixels.width() + x];
        boolean red = (rgb >> 16 & 255) > 128;
        boolean green = (rgb >> 8 & 255) > 128;
        boolean blue = (rgb & 255) > 128;
        return red && green && blue ? 'W' : red ? 'R' : green ? 'G' : blue ? 'B' : '?';
    }

    private static String corners(Pixels pixels) {
        int right = pixels.width() - 5;
        int bottom = pixels.height() - 5;
        return "" + colourAt(pixels, 4, 4) + colourAt(pixels, right, 4) + colourAt(pixels, 4, bottom)
                + colourAt(pixels, right, bottom);
    }

    @Test
    void everyPixelOfADrawingIsKept() throws Exception {
        BufferedImage image = MadePictures.fields(40);
        Pixels pixels = read("a.png", png());
        assertEquals(80, pixels.width());
        assertEquals(40, pixels.height());
        for (int i = 0; i < pixels.rgb().length; i++) {
            assertEquals(image.getRGB(i % 80, i / 80) & 0xFFFFFF, pixels.rgb()[i]);
        }
    }

    @Test
    void whatIsWrittenIsReadByThePlatformAsTheSamePixels() throws Exception {
        Random random = new Random(7);
        for (int colours : new int[] {3, 100_000}) {
            int[] rgb = new int[61 * 47];
            for (int i = 0; i < rgb.length; i++) {
                int wave = (int) (127 + 120 * StrictMath.sin(i % 61 / 9.0)) << 8 | i / 47;
                rgb[i] = colours == 3 ? random.nextInt(3) * 0x10305 : wave + random.nextInt(1 << 18);
            }
            byte[] png = Raster.of(rgb, 61, 47).png();
            BufferedImage back = ImageIO.read(new ByteArrayInputStream(png));
            int[] found = back.getRGB(0, 0, 61, 47, null, 0, 61);
            for (int i = 0; i < rgb.length; i++) {
                assertEquals(rgb[i], found[i] & 0xFFFFFF);
            }
        }
    }

    /** Samples of 16 and 1 bit, grey, and opacity; each is drawn by the platform. */
    @Test
    void picturesOfAllDepthsComeOutInTheirColoursOnWhite() throws Exception {
        for (int type : new int[] {
            BufferedImage.TYPE_INT_ARGB,
            BufferedImage.TYPE_BYTE_GRAY,
            BufferedImage.TYPE_USHORT_GRAY,
            BufferedImage.TYPE_BYTE_BINARY,
            BufferedImage.TYPE_BYTE_INDEXED
        }) {
            BufferedImage image = new BufferedImage(20, 10, type);
            for (int x = 0; x < 10; x++) {
                for (int y = 0; y < 10; y++) {
                    image.setRGB(x, y, 0xFF000000);
                    image.setRGB(10 + x, y, type == BufferedImage.TYPE_INT_ARGB ? 0x00123456 : 0xFFFFFFFF);
                }
            }
            Pixels pixels = read("depth.png", MadePictures.written(image, "png"));
            assertEquals(0x000000, pixels.rgb()[5], () -> "type " + type);
            assertEquals(0xFFFFFF, pixels.rgb()[15], () -> "type " + type);
        }
    }

    @Test
    void aLargePictureIsReducedToTheMeanOfWhatEachPixelCovers() throws Exception {
        int side = 3 * Decoder.LONGEST_SIDE;
        BufferedImage image = new BufferedImage(side, 6, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < side; x++) {
            for (int y = 0; y < 6; y++) {
                // Of nine pixels each, three are white: a third of 255.
                image.setRGB(x, y, x % 3 == 0 ? 0xFFFFFF : 0);
            }
        }
        Pixels pixels = read("large.png", MadePictures.written(image, "png"));
        assertEquals(Decoder.LONGEST_SIDE, pixels.width());
        assertEquals(2, pixels.height());
        for (int rgb : pixels.rgb()) {
            assertEquals(0x555555, rgb);
        }
    }

    /** Which corner shows what: Exif 2.32 (CIPA DC-008), tag 0x0112, where 1 is R G above B W. */
    @ParameterizedTest
    @CsvSource({"1, RGBW", "2, GRWB", "3, WBGR", "4, BWRG", "5, RBGW", "6, BRWG", "7, WGBR", "8, GWRB"})
    void aPhotographIsShownAsTheCameraWasHeld(int orientation, String corners) throws Exception {
        Pixels pixels = read("a.jpg", MadePictures.photographed(MadePictures.fields(40), orientation, "nowhere"));
        assertEquals(corners, corners(pixels));
        assertEquals(orientation < 5 ? 80 : 40, pixels.width());
    }

    @Test
    void nothingButPixelsIsHandedOn() throws Exception {
        String place = "GPS-52.3791N-004.9003E";
        byte[] jpeg = MadePictures.photographed(MadePictures.fields(40), 1, place);
        byte[] png = MadePictures.withChunk(
                MadePictures.withChunk(png(), "tEXt", ("Comment\0" + place).getBytes(StandardCharsets.ISO_8859_1)),
                "eXIf",
                place.getBytes(StandardCharsets.ISO_8859_1));
        assertTrue(new String(jpeg, StandardCharsets.ISO_8859_1).contains(place));
        assertTrue(new String(png, StandardCharsets.ISO_8859_1).contains(place));
        for (String name : new String[] {"a.jpg", "a.png"}) {
            Pixels pixels = read(name, name.endsWith("jpg") ? jpeg : png);
            byte[] published =
                    Raster.of(pixels.rgb(), pixels.width(), pixels.height()).png();
            String text = new String(published, StandardCharsets.ISO_8859_1);
            assertTrue(!text.contains("GPS") && !text.contains("Exif") && !text.contains("tEXt"), name);
        }
        // What is noted does not change what is seen.
        assertArrayEquals(read("b.png", png()).rgb(), read("a.png", png).rgb());
        assertArrayEquals(read("b.jpg", jpeg()).rgb(), read("a.jpg", jpeg).rgb());
    }

    @Test
    void whatHidesBehindThePictureIsNotHandedOn() throws Exception {
        byte[] page = "<html><script>alert(1)</script>PK\u0003\u0004".getBytes(StandardCharsets.ISO_8859_1);
        for (String name : new String[] {"a.png", "a.jpg"}) {
            byte[] own = name.endsWith("png") ? png() : jpeg();
            assertArrayEquals(
                    read(name, own).rgb(),
                    read(name, MadePictures.joined(own, page)).rgb());
        }
    }

    @Test
    void aPictureThatClaimsTooManyPixelsIsRefusedBeforeItIsDecoded() throws Exception {
        byte[] bomb = MadePictures.claiming(png(), 60_000, 60_000);
        long before = System.nanoTime();
        assertEquals(
                "size-limit: the picture has 60000 × 60000 pixels; 40000000 pixels of a picture are read",
                refused("bomb.png", bomb));
        // Decoding 3.6 thousand million pixels takes minutes, and more memory than there is.
        assertTrue(System.nanoTime() - before < 5_000_000_000L);
        // The near miss: as many pixels as are read, and one limit lower.
        Limits exactly = Limits.DEFAULT.with(Quota.PICTURE_PIXELS, 80 * 40);
        Files.write(folder.resolve("a.png"), png());
        assertEquals(80, PictureFiles.read(folder, "a.png", exactly).width());
        assertThrows(
                UnfitException.class,
                () -> PictureFiles.read(folder, "a.png", Limits.DEFAULT.with(Quota.PICTURE_PIXELS, 80 * 40 - 1)));
        assertThrows(
                UnfitException.class,
                () -> PictureFiles.read(folder, "a.png", Limits.DEFAULT.with(Quota.PICTURE_BYTES, 50)));
    }

    @Test
    void aPictureThatClaimsMorePixelsThanItHasIsDamaged() {
        assertTrue(refused("more.png", MadePictures.claiming(png(), 800, 400))
                .startsWith("picture-unfit: the picture is damaged"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a.png", "a.jpg"})
    void aPictureThatIsCutShortAnywhereIsRefused(String name) {
        byte[] whole = name.endsWith("png") ? png() : jpeg();
        for (int length = 3; length < whole.length; length += 7) {
            byte[] cut = java.util.Arrays.copyOf(whole, length);
            assertTrue(refused(name, cut).startsWith("picture-unfit: "), "of " + length + " bytes");
        }
    }

    /** Fuzzing in little: whatever is spoilt, a picture or a refusal comes out, and nothing else. */
    @ParameterizedTest
    @ValueSource(strings = {"a.png", "a.jpg"})
    void aPictureWithSpoiltBytesIsReadOrRefused(String name) throws Exception {
        byte[] whole =
                name.endsWith("png") ? png() : MadePictures.photographed(MadePictures.fields(40), 6, "somewhere");
        Random random = new Random(20260301);
        for (int i = 0; i < 1500; i++) {
            byte[] spoilt = whole.clone();
            for (int j = 0; j <= i % 4; j++) {
                spoilt[random.nextInt(spoilt.length)] = (byte) random.nextInt(256);
            }
            try {
                Pixels pixels = read(name, spoilt);
                assertTrue(pixels.width() > 0);
            } catch (UnfitException e) {
                assertTrue(!e.getMessage().isBlank());
            }
        }
    }

    @Test
    void picturesOfOtherKindsAreRefusedByName() {
        assertTrue(refused("a.gif", MadePictures.written(MadePictures.fields(8), "gif"))
                .contains("GIF is not shown"));
        byte[] moving = MadePictures.withChunk(png(), "acTL", new byte[] {0, 0, 0, 2, 0, 0, 0, 0});
        assertTrue(refused("a.png", moving).contains("moves"));
        String svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" onload=\"alert(1)\"/>";
        for (String name : new String[] {"a.svg", "a.png"}) {
            assertTrue(refused(name, svg.getBytes(StandardCharsets.UTF_8)).contains("SVG"));
            assertTrue(refused(name, ("\uFEFF<?xml version=\"1.0\"?>" + svg).getBytes(StandardCharsets.UTF_8))
                    .contains("SVG"));
        }
        assertTrue(refused("a.png", new byte[] {'R', 'I', 'F', 'F', 0, 0, 0, 0, 'W', 'E', 'B', 'P'})
                .contains("WebP"));
        assertTrue(refused("a.png", new byte[0]).contains("no picture"));
    }

    @Test
    void aNameThatSaysAnotherKindIsRefused() {
        assertTrue(refused("a.jpg", png()).contains("is a PNG, and its name says otherwise"));
        assertTrue(refused("a.png", jpeg()).contains("is a JPEG, and its name says otherwise"));
        assertTrue(refused("a.html", png()).contains("name says otherwise"));
    }

    /** A frame of four components: ITU-T T.81, B.2.2. */
    @Test
    void coloursForPrintAreRefused() {
        byte[] jpeg = jpeg();
        int frame = 0;
        while (!(jpeg[frame] == (byte) 0xFF && jpeg[frame + 1] == (byte) 0xC0)) {
            frame++;
        }
        byte[] four = new byte[jpeg.length + 3];
        System.arraycopy(jpeg, 0, four, 0, frame + 19);
        System.arraycopy(jpeg, frame + 16, four, frame + 19, 3);
        System.arraycopy(jpeg, frame + 19, four, frame + 22, jpeg.length - frame - 19);
        four[frame + 3] = 20;
        four[frame + 9] = 4;
        assertTrue(refused("print.jpg", four).contains("CMYK"), refused("print.jpg", four));
    }

    @Test
    void aGreyJpegIsShown() throws Exception {
        BufferedImage grey = new BufferedImage(16, 16, BufferedImage.TYPE_BYTE_GRAY);
        for (int i = 0; i < 256; i++) {
            grey.getRaster().setSample(i % 16, i / 16, 0, 128);
        }
        for (int rgb : read("grey.jpg", MadePictures.written(grey, "jpeg")).rgb()) {
            assertEquals(128, rgb & 255, 2);
            assertEquals(rgb & 255, rgb >> 16 & 255);
        }
    }

    /** Equal fields come through JPEG within a few steps of 256: common practice, no source. */
    @Test
    void theColoursOfAJpegAreThoseThatWereDrawn() throws Exception {
        Pixels pixels = read("a.jpg", jpeg());
        Color red = new Color(pixels.rgb()[4 * 80 + 4]);
        assertTrue(red.getRed() > 245 && red.getGreen() < 10 && red.getBlue() < 10, red::toString);
    }

    @Test
    void nothingOutsideTheFolderIsRead(@TempDir Path elsewhere) throws IOException {
        Files.write(elsewhere.resolve("secret.png"), png());
        Files.createSymbolicLink(folder.resolve("link.png"), elsewhere.resolve("secret.png"));
        UnfitException e =
                assertThrows(UnfitException.class, () -> PictureFiles.read(folder, "link.png", Limits.DEFAULT));
        assertEquals("path-outside", e.rule());
        for (String path : new String[] {"../../a.png", "/etc/a.png", "..\\a.png", "C:/a.png", "a\0.png"}) {
            UnfitException outside =
                    assertThrows(UnfitException.class, () -> PictureFiles.within("items/board.yaml", path), path);
            assertEquals("path-outside", outside.rule());
        }
    }

    @Test
    void aWayRoundWithinTheFolderIsAllowed() throws Exception {
        assertEquals("pictures/a.png", PictureFiles.within("items/board.yaml", "./x/../../pictures/a.png"));
        assertEquals("items/a b%.png", PictureFiles.addressed("items/board.yaml", "a%20b%25.png"));
        Files.write(folder.resolve("own.png"), png());
        Files.createSymbolicLink(folder.resolve("inside.png"), folder.resolve("own.png"));
        assertEquals(80, PictureFiles.read(folder, "inside.png", Limits.DEFAULT).width());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "https://elsewhere.example/a.png",
                "//elsewhere.example/a.png",
                "data:image/png;base64,AAAA",
                "javascript:alert(1)",
                "file:///etc/passwd"
            })
    void nothingIsFetchedFromElsewhere(String address) {
        UnfitException e =
                assertThrows(UnfitException.class, () -> PictureFiles.addressed("studies/a/study.md", address));
        assertTrue(e.getMessage().contains("from elsewhere"));
    }

    @Test
    void aPublishedNameIsAnAddressOnEveryMachine() throws Exception {
        assertEquals("img-0042-jpg.png", PictureFiles.published("items/a.yaml", "items/IMG 0042.JPG"));
        assertEquals("set-up.png", PictureFiles.published("studies/a/study.md", "studies/a/set-up.png"));
        assertEquals("pictures-lid.png", PictureFiles.published("items/a.yaml", "pictures/lid.png"));
        assertThrows(UnfitException.class, () -> PictureFiles.published("items/a.yaml", "items/图.png"));
    }
}

package org.evenhand.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import javax.imageio.ImageIO;
import org.evenhand.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Read back with the PNG reader and the inflater of the Java runtime, which share nothing with the writer. */
class PngTest {

    /** With few colours it is the same in every pixel; else no pixel is off by what an eye sees in a smooth edge. */
    @Test
    void the_picture_read_back_is_the_picture_drawn() throws IOException {
        for (Map.Entry<String, Figure> sample : Samples.all().entrySet()) {
            BufferedImage drawn = Png.paint(sample.getValue().layout(Words.english()), 600, 2);
            BufferedImage read =
                    ImageIO.read(new ByteArrayInputStream(Charts.png(sample.getValue(), 600, 2, Words.english())));
            assertEquals(2 * (600 + 2 * 12), read.getWidth());
            assertEquals(
                    new PixelSize(read.getWidth(), read.getHeight()),
                    Charts.pixels(sample.getValue(), 600, 2, Words.english()));
            assertEquals(drawn.getHeight(), read.getHeight());
            int[] expected = pixels(drawn);
            int allowed = Arrays.stream(expected).distinct().count() > 256 ? 20 : 0;
            int[] found = pixels(read);
            for (int i = 0; i < expected.length; i++) {
                for (int shift = 0; shift <= 16; shift += 8) {
                    int off = (expected[i] >> shift & 255) - (found[i] >> shift & 255);
                    assertTrue(Math.abs(off) <= allowed, sample.getKey() + ": off by " + off + " at " + i);
                }
            }
        }
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    /** The very same on Java 17 and 25: that no rasteriser, font or compressor of a machine has a say. */
    @ParameterizedTest
    @ValueSource(strings = {"levels", "plate"})
    void it_has_the_bytes_of_the_reviewed_one(String name) throws IOException {
        byte[] png = Charts.png(Samples.all().get(name), Charts.COLUMN, 1, Words.english());
        Path drawn = Path.of("target", "charts", name + ".png");
        Files.createDirectories(drawn.getParent());
        Files.write(drawn, png);
        try (InputStream in = PngTest.class.getResourceAsStream(name + ".png")) {
            assertNotNull(in, "no reviewed picture " + name + ".png");
            assertArrayEquals(in.readAllBytes(), png);
        }
    }

    /** Source: PNG Specification, 11.3.4.3: 96 pixels in an inch of 0.0254 m are 3780 in a metre. */
    @Test
    void it_says_how_large_it_is_meant_to_be() {
        byte[] png = Charts.png(Samples.proportions(), 600, 1, Words.english());
        // Signature 8, header chunk 25, then length and name of the next chunk.
        assertEquals("pHYs", new String(png, 37, 4, java.nio.charset.StandardCharsets.US_ASCII));
        assertEquals(3780, java.nio.ByteBuffer.wrap(png).getInt(41));
    }

    @Test
    void any_bytes_come_back_from_the_compressor() throws DataFormatException {
        Random random = new Random(7);
        byte[] noise = new byte[70_000];
        random.nextBytes(noise);
        byte[] runs = new byte[200_000];
        for (int i = 0; i < runs.length; i++) {
            runs[i] = (byte) (i % 1801 < 1700 ? 0 : random.nextInt(3));
        }
        byte[] far = new byte[40_000];
        System.arraycopy(noise, 0, far, 0, 300);
        System.arraycopy(noise, 0, far, 32_768, 300);
        for (byte[] data : new byte[][] {{}, {1}, {1, 1}, {5, 5, 5, 5}, noise, runs, far}) {
            assertArrayEquals(data, inflate(Deflate.zlib(data, 1801)));
        }
        assertTrue(Deflate.zlib(runs, 1801).length < 20_000);
    }

    private static byte[] inflate(byte[] zlib) throws DataFormatException {
        Inflater inflater = new Inflater();
        inflater.setInput(zlib);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] part = new byte[8192];
        while (!inflater.finished()) {
            int n = inflater.inflate(part);
            assertTrue(n > 0 || inflater.finished(), "the stream ends early");
            out.write(part, 0, n);
        }
        inflater.end();
        return out.toByteArray();
    }
}

package org.evenhand.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Read back with the PNG reader and the inflater of the Java runtime, which share nothing with the writer. */
class PngTest {

    @Test
    void the_picture_read_back_is_the_picture_drawn() throws IOException {
        BufferedImage drawn = Png.paint(Samples.sound().layout(), 600, 2);
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(Charts.png(Samples.sound(), 600, 2)));
        assertEquals(2 * (600 + 2 * 12), read.getWidth());
        assertEquals(drawn.getHeight(), read.getHeight());
        int[] expected = drawn.getRGB(0, 0, drawn.getWidth(), drawn.getHeight(), null, 0, drawn.getWidth());
        assertArrayEquals(expected, read.getRGB(0, 0, read.getWidth(), read.getHeight(), null, 0, read.getWidth()));
    }

    @Test
    void it_has_the_bytes_of_the_reviewed_one() throws IOException {
        byte[] png = Charts.png(Samples.levels(), Charts.COLUMN, 1);
        Path drawn = Path.of("target", "charts", "levels.png");
        Files.createDirectories(drawn.getParent());
        Files.write(drawn, png);
        try (InputStream in = PngTest.class.getResourceAsStream("levels.png")) {
            assertArrayEquals(in.readAllBytes(), png);
        }
    }

    /** Source: PNG Specification, 11.3.4.3: 96 pixels in an inch of 0.0254 m are 3780 in a metre. */
    @Test
    void it_says_how_large_it_is_meant_to_be() {
        byte[] png = Charts.png(Samples.proportions(), 600, 1);
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
            assertArrayEquals(data, inflate(FixedDeflate.zlib(data, 1801)));
        }
        assertTrue(FixedDeflate.zlib(runs, 1801).length < 20_000);
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

package org.evenhand.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Pictures for the tests, made by the Java platform's writers and then altered byte by byte. */
public final class MadePictures {

    private MadePictures() {}

    /** Four fields: red and green above, blue and white below; twice as wide as high. */
    public static BufferedImage fields(int height) {
        BufferedImage image = new BufferedImage(2 * height, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        Color[] colours = {Color.RED, Color.GREEN, Color.BLUE, Color.WHITE};
        for (int i = 0; i < 4; i++) {
            g.setColor(colours[i]);
            g.fillRect(i % 2 * height, i / 2 * height / 2, height, height / 2);
        }
        g.dispose();
        return image;
    }

    public static byte[] written(BufferedImage image, String format) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            if (!ImageIO.write(image, format, out)) {
                throw new IllegalArgumentException("no writer of " + format);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /**
     * A JPEG with what a telephone notes: how it was held, and where it was.
     *
     * @param orientation 1 to 8
     * @param place the text that stands for the position
     */
    public static byte[] photographed(BufferedImage image, int orientation, String place) {
        byte[] jpeg = written(image, "jpeg");
        byte[] text = (place + "\0").getBytes(StandardCharsets.US_ASCII);
        // Exif 2.32, 4.6: a directory with the orientation and the way to the positions, whose datum is a text.
        ByteBuffer tiff =
                ByteBuffer.allocate(8 + 2 + 24 + 4 + 2 + 12 + 4 + text.length).order(ByteOrder.LITTLE_ENDIAN);
        tiff.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8);
        tiff.putShort((short) 2);
        tiff.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        tiff.putShort((short) 0x8825).putShort((short) 4).putInt(1).putInt(38);
        tiff.putInt(0);
        tiff.putShort((short) 1);
        tiff.putShort((short) 0x001B).putShort((short) 2).putInt(text.length).putInt(56);
        tiff.putInt(0).put(text);
        byte[] header = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
        ByteBuffer whole = ByteBuffer.allocate(jpeg.length + 4 + header.length + tiff.capacity());
        whole.put(jpeg, 0, 2).put((byte) 0xFF).put((byte) 0xE1);
        whole.putShort((short) (2 + header.length + tiff.capacity()));
        whole.put(header).put(tiff.array()).put(jpeg, 2, jpeg.length - 2);
        return whole.array();
    }

    /** A PNG with a chunk more, in front of its data. */
    public static byte[] withChunk(byte[] png, String type, byte[] data) {
        int afterHeader = 8 + 25;
        ByteBuffer whole = ByteBuffer.allocate(png.length + 12 + data.length);
        whole.put(png, 0, afterHeader).put(chunk(type, data)).put(png, afterHeader, png.length - afterHeader);
        return whole.array();
    }

    /** A PNG whose header claims another size; its checksum fits. */
    public static byte[] claiming(byte[] png, int width, int height) {
        byte[] header = new byte[13];
        System.arraycopy(png, 16, header, 0, 13);
        ByteBuffer.wrap(header).putInt(width).putInt(height);
        byte[] claiming = png.clone();
        System.arraycopy(chunk("IHDR", header), 0, claiming, 8, 25);
        return claiming;
    }

    private static byte[] chunk(String type, byte[] data) {
        CRC32 crc = new CRC32();
        crc.update(type.getBytes(StandardCharsets.US_ASCII));
        crc.update(data);
        return ByteBuffer.allocate(12 + data.length)
                .putInt(data.length)
                .put(type.getBytes(StandardCharsets.US_ASCII))
                .put(data)
                .putInt((int) crc.getValue())
                .array();
    }

    /** Both, one behind the other. */
    public static byte[] joined(byte[] one, byte[] other) {
        return ByteBuffer.allocate(one.length + other.length)
                .put(one)
                .put(other)
                .array();
    }
}

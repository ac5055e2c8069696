package org.evenhand.picture;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Decodes a picture, lays it on white and reduces it to the size of a page.
 *
 * <p>Samples are taken as sRGB, without any conversion of colours by the platform: what conversions give may differ from
 * one machine to another.
 */
final class Decoder {

    /** As many pixels as a wide column shows sharply; a photograph is then some 2 MB of PNG at most. */
    static final int LONGEST_SIDE = 1200;

    private Decoder() {}

    static Pixels decode(Source source) throws UnfitException {
        BufferedImage image = image(source);
        return reduced(image).upright(source.orientation());
    }

    private static BufferedImage image(Source source) throws UnfitException {
        ImageReader reader =
                ImageIO.getImageReadersByFormatName(source.format()).next();
        AtomicBoolean warned = new AtomicBoolean();
        reader.addIIOReadWarningListener((from, warning) -> warned.set(true));
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(source.bytes()))) {
            reader.setInput(in, true, true);
            BufferedImage image = reader.read(0);
            if (warned.get()) {
                throw UnfitException.damaged("part-missing");
            }
            return image;
        } catch (IOException | RuntimeException e) {
            // The decoders of the platform tell of spoilt data by exceptions of many kinds.
            throw UnfitException.damaged("undecodable");
        } finally {
            reader.dispose();
        }
    }

    /** Each pixel of the result is the mean of those that it covers, rounded half up. */
    private static Pixels reduced(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        int longest = Math.max(width, height);
        int w = longest <= LONGEST_SIDE ? width : (int) Math.max(1, (long) width * LONGEST_SIDE / longest);
        int h = longest <= LONGEST_SIDE ? height : (int) Math.max(1, (long) height * LONGEST_SIDE / longest);
        int[] rgb = new int[w * h];
        int[] row = new int[width];
        Row source = new Row(image);
        for (int y = 0; y < h; y++) {
            long[] sums = new long[3 * w];
            int top = (int) ((long) y * height / h);
            int bottom = (int) ((long) (y + 1) * height / h);
            for (int from = top; from < bottom; from++) {
                source.read(from, row);
                for (int x = 0; x < w; x++) {
                    for (int i = (int) ((long) x * width / w); i < (int) ((long) (x + 1) * width / w); i++) {
                        sums[3 * x] += row[i] >> 16 & 255;
                        sums[3 * x + 1] += row[i] >> 8 & 255;
                        sums[3 * x + 2] += row[i] & 255;
                    }
                }
            }
            for (int x = 0; x < w; x++) {
                int across = (int) ((long) (x + 1) * width / w) - (int) ((long) x * width / w);
                long count = (long) across * (bottom - top);
                rgb[y * w + x] = mean(sums[3 * x], count) << 16
                        | mean(sums[3 * x + 1], count) << 8
                        | mean(sums[3 * x + 2], count);
            }
        }
        return new Pixels(rgb, w, h);
    }

    private static int mean(long sum, long count) {
        return (int) ((2 * sum + count) / (2 * count));
    }

    /** Reads rows as opaque colours, from samples of any depth: grey or three colours, with or without opacity. */
    private static final class Row {

        private static final int WHITE = 255;

        private final BufferedImage image;
        private final Raster raster;
        private final int bands;
        private int[] samples;

        Row(BufferedImage image) {
            this.image = image;
            this.raster = image.getRaster();
            this.bands = raster.getNumBands();
        }

        void read(int y, int[] to) {
            samples = raster.getPixels(0, y, to.length, 1, samples);
            for (int x = 0; x < to.length; x++) {
                to[x] = image.getColorModel() instanceof IndexColorModel palette
                        ? indexed(palette.getRGB(samples[x]))
                        : direct(x * bands);
            }
        }

        private static int indexed(int argb) {
            return onWhite(argb >> 16 & 255, argb >> 8 & 255, argb & 255, argb >>> 24);
        }

        private int direct(int at) {
            boolean isGrey = bands < 3;
            int opacity = bands == 2 || bands == 4 ? sample(at, bands - 1) : WHITE;
            return onWhite(sample(at, 0), sample(at, isGrey ? 0 : 1), sample(at, isGrey ? 0 : 2), opacity);
        }

        /** In 0 to 255. */
        private int sample(int at, int band) {
            int bits = raster.getSampleModel().getSampleSize(band);
            return bits == 8 ? samples[at + band] : (int) (samples[at + band] * 255L / ((1L << bits) - 1));
        }

        private static int onWhite(int red, int green, int blue, int opacity) {
            return on(red, opacity) << 16 | on(green, opacity) << 8 | on(blue, opacity);
        }

        private static int on(int value, int opacity) {
            return (value * opacity + WHITE * (WHITE - opacity) + WHITE / 2) / WHITE;
        }
    }
}

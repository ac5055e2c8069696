package org.evenhand.picture;

/**
 * What is to be seen of a picture, opaque.
 *
 * @param rgb row by row from the top, each {@code 0xRRGGBB}; not to be altered
 * @param width at least 1
 * @param height at least 1
 */
public record Pixels(int[] rgb, int width, int height) {

    public Pixels {
        if (!(width > 0 && height > 0 && rgb.length == width * height)) {
            throw new IllegalArgumentException(rgb.length + " pixels are no " + width + " × " + height);
        }
    }

    /**
     * Turned and mirrored as a camera says that it was held.
     *
     * @param orientation 1 to 8; 1 leaves it alone. Source: Exif 2.32 (CIPA DC-008), tag 0x0112
     */
    Pixels upright(int orientation) {
        if (orientation == 1) {
            return this;
        }
        boolean onItsSide = orientation >= 5;
        int w = onItsSide ? height : width;
        int h = onItsSide ? width : height;
        int[] turned = new int[rgb.length];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                // Where row 0 and column 0 of what is stored lie, to be seen: 1 top left, 2 top right, 3 bottom right,
                // 4 bottom left, then the same with rows and columns exchanged: 5 left top, 6 right top, and so on.
                int row = onItsSide ? x : y;
                int column = onItsSide ? y : x;
                boolean rowsFromEnd = orientation == 3 || orientation == 4 || orientation == 6 || orientation == 7;
                boolean columnsFromEnd = orientation == 2 || orientation == 3 || orientation == 7 || orientation == 8;
                row = rowsFromEnd ? height - 1 - row : row;
                column = columnsFromEnd ? width - 1 - column : column;
                turned[y * w + x] = rgb[row * width + column];
            }
        }
        return new Pixels(turned, w, h);
    }
}

package org.evenhand.chart;

/**
 * Writes rows of true colour as differences from what stands beside and above, whichever come out smallest.
 *
 * <p>Source: W3C PNG Specification, third edition, 9.2 for the filters and 12.7 for the way to choose one.
 */
final class PngFilter {

    private static final int PIXEL = 3;
    private static final int KINDS = 5;

    private PngFilter() {}

    /**
     * Writes a row, its filter first.
     *
     * @param here its bytes
     * @param above those of the row before; zeros for the first
     */
    static void put(byte[] here, byte[] above, byte[] to, int at) {
        int best = 0;
        long least = Long.MAX_VALUE;
        for (int kind = 0; kind < KINDS; kind++) {
            long sum = 0;
            for (int i = 0; i < here.length; i++) {
                sum += Math.abs((int) filtered(kind, here, above, i));
            }
            if (sum < least) {
                least = sum;
                best = kind;
            }
        }
        to[at] = (byte) best;
        for (int i = 0; i < here.length; i++) {
            to[at + 1 + i] = filtered(best, here, above, i);
        }
    }

    private static byte filtered(int kind, byte[] here, byte[] above, int i) {
        int left = i < PIXEL ? 0 : here[i - PIXEL] & 255;
        int up = above[i] & 255;
        int expected = switch (kind) {
            case 0 -> 0;
            case 1 -> left;
            case 2 -> up;
            case 3 -> (left + up) / 2;
            default -> paeth(left, up, i < PIXEL ? 0 : above[i - PIXEL] & 255);
        };
        return (byte) (here[i] - expected);
    }

    private static int paeth(int left, int up, int upLeft) {
        int estimate = left + up - upLeft;
        int toLeft = Math.abs(estimate - left);
        int toUp = Math.abs(estimate - up);
        int toUpLeft = Math.abs(estimate - upLeft);
        return toLeft <= toUp && toLeft <= toUpLeft ? left : toUp <= toUpLeft ? up : upLeft;
    }
}

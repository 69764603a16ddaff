package fayline.store.file.picture;

import java.util.Locale;

/**
 * The size that a header claims, judged before anything is decoded.
 *
 * @param widthPx width
 * @param heightPx height
 */
record PictureSize(int widthPx, int heightPx) {
    /**
     * Checks a claimed size.
     *
     * @throws PictureRefusedException if it is none or too large
     */
    static PictureSize judged(long widthPx, long heightPx) throws PictureRefusedException {
        if (widthPx < 1 || heightPx < 1) {
            throw new PictureRefusedException(
                    "a picture of " + widthPx + " x " + heightPx + " pixels", "at least 1 x 1", "Take it once more.");
        }
        if (widthPx > PictureReader.MOST_SIDE_PX
                || heightPx > PictureReader.MOST_SIDE_PX
                || widthPx * heightPx > PictureReader.MOST_PIXELS) {
            throw new PictureRefusedException(
                    "a picture of " + grouped(widthPx) + " x " + grouped(heightPx) + " pixels",
                    "at most " + PictureReader.MOST_PIXELS / 1_000_000 + " million pixels and "
                            + grouped(PictureReader.MOST_SIDE_PX) + " on a side",
                    "Set the camera to a smaller size, or leave \"Keep the original\" unticked.");
        }
        return new PictureSize((int) widthPx, (int) heightPx);
    }

    private static String grouped(long n) {
        return String.format(Locale.ROOT, "%,d", n).replace(',', ' ');
    }

    int longEdgePx() {
        return Math.max(widthPx, heightPx);
    }
}

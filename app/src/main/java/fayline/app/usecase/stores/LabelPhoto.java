package fayline.app.usecase.stores;

import fayline.store.file.picture.PictureReader;
import fayline.store.file.picture.PictureRefusedException;
import fayline.store.file.picture.PixelRows;

/**
 * The photo of a label, looked at and not kept.
 *
 * @param widthPx its width
 * @param heightPx its height
 * @param rgb its pixels row by row from the upper left, red, green and blue in the lower three bytes
 * @param refused what was found instead of a photo; empty where it is one
 */
@SuppressWarnings("ArrayRecordComponent") // handed over once, never kept
public record LabelPhoto(int widthPx, int heightPx, int[] rgb, String refused) {
    /** Looks at a file as it was sent. */
    public static LabelPhoto of(byte[] sent) {
        try {
            PixelRows rows = PictureReader.pixels(sent);
            return new LabelPhoto(rows.widthPx(), rows.heightPx(), rows.rgb(), "");
        } catch (PictureRefusedException e) {
            return new LabelPhoto(0, 0, new int[0], e.found());
        }
    }
}

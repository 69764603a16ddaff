package fayline.store.file.picture;

/**
 * A picture upright, as numbers, for whoever looks for something in it.
 *
 * @param widthPx its width
 * @param heightPx its height
 * @param rgb its pixels row by row from the upper left, red, green and blue in the lower three bytes
 */
@SuppressWarnings("ArrayRecordComponent") // handed over once, never kept
public record PixelRows(int widthPx, int heightPx, int[] rgb) {}

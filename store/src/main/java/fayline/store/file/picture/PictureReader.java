package fayline.store.file.picture;

import fayline.flow.record.payload.Photo;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads what was sent as a picture: judged, cleaned, and made smaller unless the original is wanted. */
public final class PictureReader {
    /** The longest file, in bytes. */
    public static final int MOST_BYTES = 12_000_000;

    /** The most pixels that a header may claim. */
    public static final int MOST_PIXELS = 50_000_000;

    /** The most pixels along one side. */
    public static final int MOST_SIDE_PX = 20_000;

    /** The longer edge of a picture that is kept smaller than it was taken, in pixels. */
    public static final int LONG_EDGE_PX = 2_000;

    /** The longer edge of what is shown of a picture in a list, in pixels. */
    public static final int SMALL_EDGE_PX = 480;

    /** The longer edge of a picture in a book on paper, in pixels: 85 mm wide it has some 300 to the inch. */
    public static final int PRINTED_EDGE_PX = 1_000;

    private PictureReader() {}

    /**
     * A picture ready to be kept.
     *
     * @param bytes the file
     * @param sort what it is
     * @param widthPx its width as stored
     * @param heightPx its height as stored
     * @param original whether the pixels are those that were sent, all of them
     * @param location whether where it was taken was left in
     * @param leftOut what was left out that somebody may miss, a sentence each
     */
    @SuppressWarnings("ArrayRecordComponent") // copied on the way in and out
    public record Read(
            byte[] bytes,
            Photo.Sort sort,
            int widthPx,
            int heightPx,
            boolean original,
            boolean location,
            List<String> leftOut) {
        /** Copies bytes and list. */
        public Read {
            bytes = bytes.clone();
            leftOut = List.copyOf(leftOut);
        }

        @Override
        public byte[] bytes() {
            return bytes.clone();
        }
    }

    /**
     * Reads a picture.
     *
     * @param sent the file as sent
     * @param original whether its pixels and the camera's own data are to be kept as they are
     * @param location whether where it was taken may stay in an original
     * @throws PictureRefusedException if it is too large, cut, two files in one, or no picture of a sort that is taken
     */
    public static Read read(byte[] sent, boolean original, boolean location) throws PictureRefusedException {
        judgeLength(sent.length);
        if (JpegParts.begins(sent)) {
            JpegParts parts = JpegParts.of(sent);
            return original ? originalJpeg(parts, location) : ownJpeg(parts);
        }
        if (PngParts.begins(sent)) {
            PngParts parts = PngParts.of(sent);
            byte[] clean = parts.written();
            Pixels.smaller(clean, parts.size(), 1, SMALL_EDGE_PX);
            return original || parts.size().longEdgePx() <= LONG_EDGE_PX
                    ? whole(clean, Photo.Sort.PNG, parts.size(), original, false, List.of())
                    : smaller(clean, parts.size(), 1);
        }
        throw FileSort.refusal(sent);
    }

    /**
     * Refuses a file for its length alone, before it is read.
     *
     * @param bytes its length
     * @throws PictureRefusedException if it is too long
     */
    public static void judgeLength(long bytes) throws PictureRefusedException {
        if (bytes > MOST_BYTES) {
            throw new PictureRefusedException(
                    String.format(Locale.ROOT, "a file of %.1f MB", bytes / 1e6),
                    "at most " + MOST_BYTES / 1_000_000 + " MB",
                    "Leave \"Keep the original\" unticked: the phone then sends a smaller one.");
        }
    }

    private static Read originalJpeg(JpegParts parts, boolean location) throws PictureRefusedException {
        List<String> leftOut = new ArrayList<>();
        Optional<byte[]> said = parts.exif();
        Optional<byte[]> exif = location ? said : said.flatMap(ExifBlock::withoutLocation);
        if (said.isPresent() && exif.isEmpty()) {
            leftOut.add("The camera's own data could not be read, so all of it was left out.");
        }
        if (parts.behind() > 0) {
            leftOut.add(parts.behind() + " bytes behind the picture, which phones append, were left out.");
        }
        byte[] clean = parts.written(exif, true);
        Pixels.smaller(parts.written(Optional.empty(), false), parts.size(), 1, SMALL_EDGE_PX);
        boolean where = location && exif.filter(ExifBlock::tellsWhere).isPresent();
        return whole(clean, Photo.Sort.JPEG, parts.size(), true, where, leftOut);
    }

    /** What the phone made smaller itself is kept as it is; what nobody made smaller yet is made so here. */
    private static Read ownJpeg(JpegParts parts) throws PictureRefusedException {
        int orientation = parts.exif().map(ExifBlock::orientation).orElse(1);
        byte[] bare = parts.written(Optional.empty(), false);
        if (orientation != 1 || parts.size().longEdgePx() > LONG_EDGE_PX) {
            return smaller(bare, parts.size(), orientation);
        }
        Pixels.smaller(bare, parts.size(), 1, SMALL_EDGE_PX);
        return whole(parts.written(Optional.empty(), true), Photo.Sort.JPEG, parts.size(), false, false, List.of());
    }

    private static Read smaller(byte[] clean, PictureSize size, int orientation) throws PictureRefusedException {
        byte[] made = Pixels.smaller(clean, size, orientation, LONG_EDGE_PX);
        return whole(made, Photo.Sort.JPEG, JpegParts.of(made).size(), false, false, List.of());
    }

    private static Read whole(
            byte[] bytes, Photo.Sort sort, PictureSize size, boolean original, boolean location, List<String> leftOut) {
        return new Read(bytes, sort, size.widthPx(), size.heightPx(), original, location, leftOut);
    }

    /**
     * Reads a picture that this program kept before, from an exported folder.
     *
     * @param kept the file
     * @throws PictureRefusedException if it is not as this program writes them
     */
    public static Read kept(byte[] kept) throws PictureRefusedException {
        Read again = read(kept, true, true);
        if (!Arrays.equals(again.bytes, kept)) {
            throw new PictureRefusedException(
                    "a picture with more in it than this program keeps", "one as it was exported", "");
        }
        return again;
    }

    /**
     * A kept picture upright and small, as JPEG, for lists.
     *
     * @param kept the file
     * @throws PictureRefusedException if it cannot be decoded
     */
    public static byte[] small(byte[] kept) throws PictureRefusedException {
        return upright(kept, SMALL_EDGE_PX);
    }

    /**
     * A kept picture upright, as JPEG, for paper.
     *
     * @param kept the file
     * @throws PictureRefusedException if it cannot be decoded
     */
    public static byte[] printed(byte[] kept) throws PictureRefusedException {
        return upright(kept, PRINTED_EDGE_PX);
    }

    /**
     * The pixels of a picture that is not to be kept, upright and at most {@link #LONG_EDGE_PX} long.
     *
     * @param sent the file as sent
     * @throws PictureRefusedException if it is too large, no picture of a sort that is taken, or cannot be decoded
     */
    public static PixelRows pixels(byte[] sent) throws PictureRefusedException {
        Read read = read(sent, false, false);
        return Pixels.rows(upright(read.bytes(), LONG_EDGE_PX));
    }

    private static byte[] upright(byte[] kept, int edgePx) throws PictureRefusedException {
        if (PngParts.begins(kept)) {
            return Pixels.smaller(kept, PngParts.of(kept).size(), 1, edgePx);
        }
        JpegParts parts = JpegParts.of(kept);
        int orientation = parts.exif().map(ExifBlock::orientation).orElse(1);
        return Pixels.smaller(parts.written(Optional.empty(), false), parts.size(), orientation, edgePx);
    }

    static PictureRefusedException twoFiles(String first, String second, int bytes) {
        return new PictureRefusedException(
                "a " + first + " picture with " + bytes + " bytes behind its end (" + second + ")",
                "one picture and nothing else",
                "Take the picture anew, or leave \"Keep the original\" unticked.");
    }
}

package fayline.store.file.picture;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.zip.CRC32;

/**
 * The parts of a PNG file, walked as ISO/IEC 15948 clause 5 [png] gives them. Written again it holds what the picture needs
 * and nothing else: no texts, no camera's data, no further frames.
 */
final class PngParts {
    private static final String SIGN = "\u0089PNG\r\n\u001a\n";
    private static final int AROUND = 12;
    private static final Set<String> KEPT =
            Set.of("IHDR", "PLTE", "tRNS", "gAMA", "cHRM", "sRGB", "pHYs", "IDAT", "IEND");
    private static final Set<String> NEEDED = Set.of("IHDR", "PLTE", "IDAT", "IEND");

    private final byte[] file;
    private final PictureSize size;
    private final List<int[]> kept = new ArrayList<>();

    private PngParts(byte[] file, PictureSize size) {
        this.file = file;
        this.size = size;
    }

    static boolean begins(byte[] b) {
        return Bytes.says(b, 0, SIGN);
    }

    /**
     * Walks a file.
     *
     * @throws PictureRefusedException if it is cut, too large, damaged, or two files in one
     */
    static PngParts of(byte[] file) throws PictureRefusedException {
        int at = SIGN.length();
        if (file.length < at + AROUND + 13) {
            throw cut();
        }
        if (!Bytes.says(file, at + 4, "IHDR") || Bytes.u32(file, at, false) != 13) {
            throw damaged("no size at its beginning");
        }
        PngParts walked =
                new PngParts(file, PictureSize.judged(Bytes.u32(file, at + 8, false), Bytes.u32(file, at + 12, false)));
        walked.walk(at);
        return walked;
    }

    PictureSize size() {
        return size;
    }

    private void walk(int start) throws PictureRefusedException {
        int at = start;
        String name = "";
        while (!name.equals("IEND")) {
            if (at + AROUND > file.length) {
                throw cut();
            }
            long to = at + AROUND + Bytes.u32(file, at, false);
            if (to > file.length) {
                throw cut();
            }
            name = new String(file, at + 4, 4, StandardCharsets.ISO_8859_1);
            if (name.charAt(0) < 'a' && !NEEDED.contains(name)) {
                throw damaged("a part that no camera writes");
            }
            if (NEEDED.contains(name) && !isSound(at, (int) to)) {
                throw damaged("a part whose check sum is wrong");
            }
            if (KEPT.contains(name)) {
                kept.add(new int[] {at, (int) to});
            }
            at = (int) to;
        }
        if (at < file.length) {
            throw PictureReader.twoFiles("PNG", FileSort.nameOf(file, at), file.length - at);
        }
    }

    private boolean isSound(int from, int to) {
        CRC32 sum = new CRC32();
        sum.update(file, from + 4, to - from - 8);
        return sum.getValue() == Bytes.u32(file, to - 4, false);
    }

    private static PictureRefusedException cut() {
        return new PictureRefusedException("a PNG picture that breaks off", "a whole one", "Send it once more.");
    }

    private static PictureRefusedException damaged(String with) {
        return new PictureRefusedException("a PNG picture with " + with, "a sound one", "Take it once more.");
    }

    /** The picture alone. */
    byte[] written() {
        ByteArrayOutputStream out = new ByteArrayOutputStream(file.length);
        out.writeBytes(SIGN.getBytes(StandardCharsets.ISO_8859_1));
        kept.forEach(k -> out.write(file, k[0], k[1] - k[0]));
        return out.toByteArray();
    }
}

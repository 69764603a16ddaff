package fayline.store.file.picture;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The parts of a JPEG file, walked from marker to marker as ITU-T T.81 annex B [jpeg-t81] gives them. What is no part of the
 * picture (remarks, previews, makers' own blocks, whatever stands behind the end) is left out when it is written again.
 */
final class JpegParts {
    private static final int START = 0xd8;
    private static final int END = 0xd9;
    private static final int SCAN = 0xda;
    private static final int EXIF = 0xe1;
    private static final String EXIF_WORD = "Exif\0\0";

    /** More scans than any camera writes; each costs a pass over the whole picture. */
    private static final int MOST_SCANS = 64;

    private final byte[] file;
    private final List<Part> parts = new ArrayList<>();
    private Optional<PictureSize> size = Optional.empty();
    private int scans;
    private int end;

    private record Part(int marker, int from, int to) {}

    private JpegParts(byte[] file) {
        this.file = file;
    }

    static boolean begins(byte[] b) {
        return b.length > 2 && Bytes.u8(b, 0) == 0xff && Bytes.u8(b, 1) == START;
    }

    /**
     * Walks a file.
     *
     * @throws PictureRefusedException if it is cut, too large, of a sort that is not taken, or two files in one
     */
    static JpegParts of(byte[] file) throws PictureRefusedException {
        JpegParts walked = new JpegParts(file);
        walked.walk();
        walked.judgeTail();
        return walked;
    }

    PictureSize size() {
        return size.orElseThrow();
    }

    /** How many bytes stand behind the picture's end. */
    int behind() {
        return file.length - end;
    }

    private void walk() throws PictureRefusedException {
        int at = 2;
        while (true) {
            if (at + 1 >= file.length) {
                throw cut();
            }
            if (Bytes.u8(file, at) != 0xff) {
                throw damaged("something between its parts");
            }
            while (at + 1 < file.length && Bytes.u8(file, at + 1) == 0xff) {
                at++;
            }
            if (at + 1 >= file.length) {
                throw cut();
            }
            int marker = Bytes.u8(file, at + 1);
            if (marker == END) {
                end = at + 2;
                break;
            }
            at = part(marker, at, at + 2);
        }
        if (size.isEmpty() || scans == 0) {
            throw damaged("no picture in it");
        }
    }

    /** Takes the part whose length stands at a place; where it ends. */
    private int part(int marker, int from, int at) throws PictureRefusedException {
        if (marker < 0xc0
                || (marker >= 0xd0 && marker <= START)
                || marker == 0xdc
                || marker == 0xde
                || marker == 0xdf) {
            throw damaged("a part that no camera writes (marker " + Integer.toHexString(marker) + ")");
        }
        if (at + 2 > file.length) {
            throw cut();
        }
        int to = at + Bytes.u16(file, at, false);
        if (to < at + 2) {
            throw damaged("a part of no length");
        }
        if (to > file.length) {
            throw cut();
        }
        if (isFrame(marker)) {
            frame(marker, at, to);
        } else if (marker == SCAN) {
            to = scan(to);
        }
        parts.add(new Part(marker, from, to));
        return to;
    }

    private static boolean isFrame(int marker) {
        return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
    }

    private void frame(int marker, int at, int to) throws PictureRefusedException {
        if (marker > 0xc2) {
            throw new PictureRefusedException(
                    "a JPEG picture of a rare sort (frame " + Integer.toHexString(marker) + ")",
                    "one as cameras and phones write it",
                    "Leave \"Keep the original\" unticked.");
        }
        if (to - at < 8) {
            throw damaged("a frame that is too short");
        }
        if (size.isPresent()) {
            throw damaged("two pictures in one");
        }
        size = Optional.of(PictureSize.judged(Bytes.u16(file, at + 5, false), Bytes.u16(file, at + 3, false)));
        int depth = Bytes.u8(file, at + 2);
        int colours = Bytes.u8(file, at + 7);
        if (depth != 8 || (colours != 1 && colours != 3)) {
            throw new PictureRefusedException(
                    "a JPEG picture of " + colours + " colours of " + depth + " bits",
                    "1 or 3 colours of 8 bits",
                    "Leave \"Keep the original\" unticked.");
        }
    }

    /** Passes over the coded pixels of a scan; where the next part begins. */
    private int scan(int from) throws PictureRefusedException {
        if (size.isEmpty()) {
            throw damaged("pixels before their size");
        }
        if (++scans > MOST_SCANS) {
            throw damaged("more than " + MOST_SCANS + " scans");
        }
        for (int i = from; i + 1 < file.length; i++) {
            int next = Bytes.u8(file, i + 1);
            boolean marker = Bytes.u8(file, i) == 0xff && next != 0 && next != 0xff && (next < 0xd0 || next > 0xd7);
            if (marker) {
                return i;
            }
        }
        throw cut();
    }

    private static PictureRefusedException cut() {
        return new PictureRefusedException(
                "a JPEG picture that breaks off", "a whole one", "Send it once more; if it stays so, take it anew.");
    }

    private static PictureRefusedException damaged(String with) {
        return new PictureRefusedException(
                "a JPEG picture with " + with, "one as cameras and phones write it", "Take it once more.");
    }

    /**
     * Phones append further pictures, a short film or noughts behind the picture; those are left out. Anything else makes it
     * two files in one.
     */
    private void judgeTail() throws PictureRefusedException {
        boolean phones = behind() == 0
                || Bytes.says(file, end, "\u00ff\u00d8\u00ff")
                || Bytes.says(file, end + 4, "ftyp")
                || Bytes.says(file, file.length - 4, "SEFT")
                || Bytes.onlyNoughts(file, end);
        if (!phones) {
            throw PictureReader.twoFiles("JPEG", FileSort.nameOf(file, end), behind());
        }
    }

    /** What the camera wrote of itself and the moment; without the leading word. Empty where it wrote nothing. */
    Optional<byte[]> exif() {
        return parts.stream()
                .filter(p -> p.marker() == EXIF && Bytes.says(file, p.from() + 4, EXIF_WORD))
                .findFirst()
                .map(p -> Arrays.copyOfRange(file, p.from() + 4 + EXIF_WORD.length(), p.to()));
    }

    /**
     * The picture alone.
     *
     * @param exif what goes with it of the camera's own data; empty for nothing
     * @param profile whether the colour profile goes with it
     */
    byte[] written(Optional<byte[]> exif, boolean profile) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(file.length);
        out.write(0xff);
        out.write(START);
        exif.ifPresent(e -> {
            int length = 2 + EXIF_WORD.length() + e.length;
            out.writeBytes(new byte[] {(byte) 0xff, (byte) EXIF, (byte) (length >> 8), (byte) length});
            out.writeBytes(EXIF_WORD.getBytes(StandardCharsets.ISO_8859_1));
            out.writeBytes(e);
        });
        for (Part p : parts) {
            if (belongs(p, profile)) {
                out.write(file, p.from(), p.to() - p.from());
            }
        }
        out.write(0xff);
        out.write(END);
        return out.toByteArray();
    }

    private boolean belongs(Part p, boolean profile) {
        int body = p.from() + 4;
        return switch (p.marker()) {
            case 0xe0 -> Bytes.says(file, body, "JFIF\0") && p.to() - p.from() == 18;
            case 0xe2 -> profile && Bytes.says(file, body, "ICC_PROFILE\0");
            case 0xee -> Bytes.says(file, body, "Adobe");
            case 0xfe -> false;
            default -> p.marker() < 0xe0;
        };
    }
}

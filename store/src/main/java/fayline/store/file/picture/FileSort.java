package fayline.store.file.picture;

import java.util.List;
import java.util.Optional;

/** What a file is by its first bytes, in words for whoever sent it. */
final class FileSort {
    private static final String TAKEN = "a JPEG or PNG picture";
    private static final String BY_SCRIPT =
            "With scripts on, the phone turns it into a JPEG itself where it can show it; "
                    + "else set the camera to JPEG, or send a picture of the screen that shows it.";

    /** First words of files by where they stand; from memory. */
    private static final List<Known> KNOWN = List.of(
            new Known(8, "WEBP", "a WebP picture", BY_SCRIPT),
            new Known(4, "ftypheic", "a HEIC picture", BY_SCRIPT),
            new Known(4, "ftypheix", "a HEIC picture", BY_SCRIPT),
            new Known(4, "ftypmif1", "a HEIF picture", BY_SCRIPT),
            new Known(4, "ftypavif", "an AVIF picture", BY_SCRIPT),
            new Known(4, "ftyp", "a film", "Take a photo in place of the film."),
            new Known(0, "GIF8", "a GIF picture", BY_SCRIPT),
            new Known(0, "II*\0", "a TIFF or raw picture", BY_SCRIPT),
            new Known(0, "MM\0*", "a TIFF or raw picture", BY_SCRIPT),
            new Known(0, "BM", "a BMP picture", BY_SCRIPT),
            new Known(0, "%PDF", "a PDF", "Take a photo of the page."),
            new Known(0, "PK\3\4", "a ZIP archive", "Send the pictures in it one by one."),
            new Known(0, "<", "a text with markup", ""));

    private FileSort() {}

    private record Known(int at, String word, String name, String remedy) {}

    private static Optional<Known> at(byte[] b, int from) {
        return KNOWN.stream()
                .filter(k -> Bytes.says(b, from + k.at(), k.word()))
                .findFirst();
    }

    /** What stands from a place on, in words. */
    static String nameOf(byte[] b, int from) {
        return at(b, from).map(Known::name).orElse("something unknown");
    }

    /** The refusal of a file that is neither JPEG nor PNG. */
    static PictureRefusedException refusal(byte[] b) {
        if (b.length == 0) {
            return new PictureRefusedException("an empty file", TAKEN, "Take it once more.");
        }
        Optional<Known> known = at(b, 0);
        return new PictureRefusedException(
                known.map(Known::name).orElse("a file of an unknown sort"),
                TAKEN,
                known.map(Known::remedy).orElse(""));
    }
}

package fayline.app.web.frame;

import fayline.app.usecase.view.Photos;
import fayline.flow.record.StepRecord;
import fayline.flow.record.payload.Photo;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * A picture as a page shows it.
 *
 * @param small the address of the small one
 * @param whole the address of the whole one
 * @param says what stands in its place where it cannot be seen
 * @param facts its size, and what was said of it
 */
public record PhotoView(String small, String whole, String says, String facts) {
    /** The longer edge of a picture that is kept smaller than it was taken. */
    public static final int LONG_EDGE_PX = Photos.LONG_EDGE_PX;

    /**
     * The pictures of a note.
     *
     * @param note the note
     * @param begins who noted it and when
     */
    public static List<PhotoView> of(StepRecord.Note note, String begins) {
        return of(note.photos(), begins);
    }

    /**
     * Pictures in order.
     *
     * @param all the pictures
     * @param begins what they are of, who sent them and when
     */
    public static List<PhotoView> of(List<Photo> all, String begins) {
        return IntStream.range(0, all.size())
                .mapToObj(i -> of(all.get(i), "Photo " + (i + 1) + " of " + all.size() + ". " + begins))
                .toList();
    }

    private static PhotoView of(Photo p, String says) {
        String address = "/photo/" + p.sha256();
        StringBuilder facts = new StringBuilder(String.format(
                Locale.ROOT, "%d \u00d7 %d, %.1f MB", p.widthPx(), p.heightPx(), Math.max(p.bytes(), 50_000) / 1e6));
        if (p.original()) {
            facts.append(p.location() ? ", original with the place" : ", original");
        }
        if (p.people() != Photo.People.UNSAID) {
            facts.append(", ").append(p.people().words());
        }
        return new PhotoView(address + "/small", address, says, facts.toString());
    }
}

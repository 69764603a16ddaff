package fayline.app.web.frame;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What somebody typed into a form, whether it was sent at once or kept on a phone first. */
public interface Typed {
    /** A field, stripped; empty where it is not there. */
    String field(String name);

    /** A field exactly as typed, with line ends as in files. */
    String text(String name);

    /** All values of a field. */
    List<String> fields(String name);

    /** A file that came with a form; its name is the sender's business and is never looked at. */
    interface Parcel {
        /** Its length in bytes. */
        long length();

        /** The whole file. */
        byte[] bytes();
    }

    /** The files of a field, those left empty passed over; none where the form came without files. */
    List<Parcel> parcels(String name);

    /** How far the record was on the page that the form stood on, as a sequence number; 0 where nobody knows. */
    default long seenHead() {
        String seen = field("seen-head");
        return seen.matches("[0-9]{1,15}") ? Long.parseLong(seen) : 0;
    }

    /** When it was typed, on a whole minute, where that is another moment than now. */
    Optional<Instant> moment();
}

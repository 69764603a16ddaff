package fayline.app.web.people;

import java.util.List;

/**
 * What stands around a page at the door; nothing of the shop is in it.
 *
 * @param title the page's title
 * @param csrf the session's token
 * @param refused why the last try was refused; empty for nothing
 * @param said what was just done; empty for nothing
 * @param theme {@code machine}, {@code day} or {@code night}
 * @param density {@code fitting}, {@code desk} or {@code bench}
 */
public record DoorFrame(String title, String csrf, List<String> refused, String said, String theme, String density) {
    /** Copies the list. */
    public DoorFrame {
        refused = List.copyOf(refused);
    }
}

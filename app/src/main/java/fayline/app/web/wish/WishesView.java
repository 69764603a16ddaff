package fayline.app.web.wish;

import java.util.List;

/**
 * What the page of all wishes shows.
 *
 * @param wishes those by which plans are bound
 * @param past those that bind nobody any more
 * @param costs address that tells what each costs; empty where that is told or there is nothing to tell
 * @param refused why the last form was refused, a sentence each
 */
public record WishesView(List<WishRow> wishes, List<WishRow> past, String costs, List<String> refused) {
    /** Copies the lists. */
    public WishesView {
        wishes = List.copyOf(wishes);
        past = List.copyOf(past);
        refused = List.copyOf(refused);
    }
}

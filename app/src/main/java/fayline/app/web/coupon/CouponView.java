package fayline.app.web.coupon;

import java.util.List;

/**
 * What the page of a part's witness pieces shows.
 *
 * @param part the part's id
 * @param name its name
 * @param coupons what is planned, with what came out
 * @param refused why something was not kept, a sentence each
 * @param typedFor the pieces whose value was refused; empty for none
 * @param typed that value
 */
public record CouponView(
        String part, String name, List<Row> coupons, List<String> refused, String typedFor, String typed) {
    /** Copies the lists. */
    public CouponView {
        coupons = List.copyOf(coupons);
        refused = List.copyOf(refused);
    }

    /**
     * Some witness pieces.
     *
     * @param id their id
     * @param name their name
     * @param test how they are tested, with its standard
     * @param tested how many of how many are tested
     * @param done whether none is missing
     * @param mean mean of the results; empty where there is none
     * @param deviation standard deviation; empty under two
     * @param variation standard deviation over mean; empty under two
     * @param bound what nine of ten such pieces bear; empty where none can be said
     * @param boundSays what must be said of it, or why there is none
     * @param allowable the allowable that they speak for; empty where none is named
     * @param hint what a result looks like
     * @param results each result
     */
    public record Row(
            String id,
            String name,
            String test,
            String tested,
            boolean done,
            String mean,
            String deviation,
            String variation,
            String bound,
            List<String> boundSays,
            String allowable,
            String hint,
            List<Result> results) {
        /** Copies the lists. */
        public Row {
            boundSays = List.copyOf(boundSays);
            results = List.copyOf(results);
        }
    }

    /**
     * One result.
     *
     * @param typed as typed
     * @param piece the mark of the piece; empty where none was said
     * @param said who read it, when, with what
     * @param entry its entry
     */
    public record Result(String typed, String piece, String said, long entry) {}
}

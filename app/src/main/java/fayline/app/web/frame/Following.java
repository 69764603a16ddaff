package fayline.app.web.frame;

import fayline.app.usecase.view.Latest;
import java.util.regex.Pattern;

/**
 * How a page follows the record while it is open.
 *
 * @param latest how far the record was before the page was made: the page shows at least that
 * @param live whether the page takes over what is new; what was typed and refused is shown once and stays as it is
 */
public record Following(Latest latest, boolean live) {
    /** Pages by which hands go, or on which two people may meet. What is weighed at leisure, as a forecast, stays still. */
    private static final Pattern PAGES = Pattern.compile(
            "/|/(weeks|airframe|shop|stores|definition|definition/file|wishes|people|me|fits|record)|/(card|wish|fit|chain)/.*");

    /** A page that was asked for. */
    static Following of(Visit visit, Latest latest) {
        return new Following(
                latest, visit.looks() && PAGES.matcher(visit.context().path()).matches());
    }
}

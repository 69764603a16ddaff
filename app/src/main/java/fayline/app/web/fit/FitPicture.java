package fayline.app.web.fit;

import fayline.app.web.frame.Sight;
import fayline.flow.result.fit.FitResult;

/** The fit drawn for a page. */
final class FitPicture {
    private FitPicture() {}

    /** Before and after, with the station at hand marked; empty where no place is known. */
    static String of(Sight sight, FitResult r, String station) {
        return "";
    }
}

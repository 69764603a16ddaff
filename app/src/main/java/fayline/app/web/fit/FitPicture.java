package fayline.app.web.fit;

import fayline.app.drawing.SvgRenderer;
import fayline.app.drawing.fit.FitPictures;
import fayline.app.drawing.fit.GapDrawing;
import fayline.app.drawing.fit.GapPicture;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.FitWay;
import java.util.Optional;

/** The fit drawn for a page, from the same rows and gaps that made the answer. */
final class FitPicture {
    private FitPicture() {}

    /** Before and after, by another way to judge the move where one is chosen, with the key; empty where no place is known. */
    static String of(Sight sight, FitResult r, Optional<FitWay> way) {
        return r.places().isEmpty() ? "" : SvgRenderer.forScreen().render(GapDrawing.of(picture(sight, r, way, "")));
    }

    /** The same beside the keypad: no key, and the station at hand marked; empty where no place is known. */
    static String small(Sight sight, FitResult r, String station) {
        return r.places().isEmpty()
                ? ""
                : SvgRenderer.forScreen().render(GapDrawing.withoutKey(picture(sight, r, Optional.empty(), station)));
    }

    private static GapPicture picture(Sight sight, FitResult r, Optional<FitWay> way, String station) {
        return FitPictures.gaps(
                r,
                sight.format(),
                way,
                station,
                mark -> "/fit/" + Visit.encoded(r.fit().id()) + "/read?at=" + Visit.encoded(mark));
    }
}

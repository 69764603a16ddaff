package fayline.flow.result.fit;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitBulge;
import fayline.flow.project.fit.FitStation;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** What is said beside the answer of a curved part: what counts in space, what in the plane, and where nothing was said of it. */
final class CurvedNotes {
    private static final String ABOUT = "curved";
    private static final String GEOMETRY = "geometry";

    private CurvedNotes() {}

    static List<Finding> of(Fit fit, FitPlaces places, boolean trimmed) {
        List<Finding> all = new ArrayList<>();
        if (!places.curved()) {
            return all;
        }
        add(all, "The part is curved: gap and flush are judged together, and all six motions of the part count.");
        List<String> silent = marks(fit, places, b -> !b.isSaid());
        if (!silent.isEmpty()) {
            add(
                    all,
                    "Nothing is said of the curve at " + String.join(", ", silent)
                            + ": there the gap counts in the plane, at height 0, and the surface looks straight out.");
        }
        List<String> level = marks(fit, places, b -> b.isSaid() && !b.isFacing());
        if (!level.isEmpty()) {
            add(
                    all,
                    "Only the height is said at " + String.join(", ", level)
                            + ": there the gap lies as the edge does seen from outside, and the surface looks straight out.");
        }
        if (!fit.holding().points().isEmpty() || !fit.holding().schemes().isEmpty()) {
            add(
                    all,
                    "Stops hold the part in its plane: what each must fill counts the whole move, but which pieces are chosen, and"
                            + " the chances, count errors in the plane alone. In and out it is set by its flush.");
        }
        if (trimmed) {
            add(all, "A depth to cut lies along the surface. Cut lines and areas are measured as seen from outside.");
        }
        return all;
    }

    private static List<String> marks(Fit fit, FitPlaces places, Predicate<FitBulge> which) {
        return fit.stations().stream()
                .filter(s -> places.stations().containsKey(s.id()) && which.test(s.bulge()))
                .map(FitStation::id)
                .toList();
    }

    private static void add(List<Finding> all, String sentence) {
        all.add(new Finding(Severity.NOTE, ABOUT, sentence, GEOMETRY));
    }
}

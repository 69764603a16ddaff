package fayline.app.drawing.fit;

import fayline.method.fitup.Station;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One station as it is drawn.
 *
 * @param id its mark
 * @param place where it lies; empty where only its name is known
 * @param beforeMm gap before; empty where it is missing
 * @param afterMm gap after; empty where it is missing or there is no after
 * @param lowerMm least gap allowed
 * @param nominalMm gap wanted
 * @param upperMm largest gap allowed
 * @param label the gap in the reader's unit, as it shall stand beside the pin; of the gap after where there is one
 * @param link the page it leads to; empty for none
 */
public record StationPicture(
        String id,
        Optional<Station> place,
        OptionalDouble beforeMm,
        OptionalDouble afterMm,
        double lowerMm,
        double nominalMm,
        double upperMm,
        String label,
        String link) {
    /** Far below what any gauge shows: the verdict beside the drawing rests on the move to first order, the drawing on the exact one. */
    private static final double ROUNDING_MM = 0.005;

    /**
     * Checks the tolerance.
     *
     * @throws IllegalArgumentException if lower, nominal and upper do not rise
     */
    public StationPicture {
        if (!(lowerMm <= nominalMm && nominalMm <= upperMm) || Double.isInfinite(upperMm - lowerMm)) {
            throw new IllegalArgumentException(
                    "station " + id + " with a gap from " + lowerMm + " by " + nominalMm + " to " + upperMm + " mm");
        }
    }

    /** The gap that counts: after, else before. */
    public OptionalDouble shownMm() {
        return afterMm.isPresent() ? afterMm : beforeMm;
    }

    /** What is wrong with the gap that counts: {@code tight}, {@code wide}, or nothing. */
    public String trouble() {
        if (shownMm().isEmpty()) {
            return "";
        }
        double gap = shownMm().getAsDouble();
        return gap < lowerMm - ROUNDING_MM ? "tight" : gap > upperMm + ROUNDING_MM ? "wide" : "";
    }

    /** The largest of everything that is drawn at this station, in mm. */
    double reachMm() {
        double reach = Math.max(Math.abs(upperMm), Math.abs(lowerMm));
        reach = Math.max(reach, Math.abs(beforeMm.orElse(0)));
        return Math.max(reach, Math.abs(afterMm.orElse(0)));
    }
}

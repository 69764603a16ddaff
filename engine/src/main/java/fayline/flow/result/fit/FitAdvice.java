package fayline.flow.result.fit;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.scheme.SchemeComparison;
import fayline.method.fitup.shim.ShimResult;
import fayline.method.fitup.space.FlushPlaneResult;
import fayline.method.fitup.space.PartMove;
import fayline.method.fitup.trim.TrimResult;
import fayline.method.fitup.trim.cut.CutPlanResult;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What to do now.
 *
 * @param state the state whose readings it rests on
 * @param rows the stations read, with the gap as it is at the reference temperature where growth is known, and the limits that now
 *     hold so that the nominal gap is there in the end
 * @param pivot the pivot of every move
 * @param pivotName its name
 * @param best the best move
 * @param sentence the move in words; empty where there is none
 * @param atMarks where marked places go, in words
 * @param ways the move by every way to judge it, the recommended one first
 * @param flush shift and tilt that bring a flat part flush, where three stations have a flush; of a curved part the best move does
 * @param flushes the flush wanted and read at each station that has a gap, in the order of the rows
 * @param points where the index points touch the neighbour, in the order of the shims
 * @param shims shims at the index points that hold it there; empty without index points
 * @param trim the least trim, where a move alone does not do
 * @param cut its cut lines, where there is an outline and something to cut
 * @param schemes the schemes side by side; empty where none is named
 * @param shop what the shop's temperature makes of the gaps: the rows are at the one at which their limits hold
 * @param readingMm standard uncertainty of what was read at each station, repeats together, apart from what readings share; empty
 *     where nobody gave it
 * @param findings what must be said
 */
public record FitAdvice(
        String state,
        List<FitRow> rows,
        Spot pivot,
        String pivotName,
        PartMove best,
        Phrase sentence,
        List<Phrase> atMarks,
        List<FitWay> ways,
        Optional<FlushPlaneResult> flush,
        List<StationFlush> flushes,
        List<Station> points,
        Optional<ShimResult> shims,
        Optional<TrimResult> trim,
        Optional<CutPlanResult> cut,
        Optional<SchemeComparison> schemes,
        ShopHeat shop,
        List<OptionalDouble> readingMm,
        List<Finding> findings) {
    /** Copies the lists. */
    public FitAdvice {
        rows = List.copyOf(rows);
        atMarks = List.copyOf(atMarks);
        ways = List.copyOf(ways);
        flushes = List.copyOf(flushes);
        points = List.copyOf(points);
        readingMm = List.copyOf(readingMm);
        findings = List.copyOf(findings);
    }

    /** The gaps to see in the shop after the best move, in mm, in the order of the rows; empty where there is no move. */
    public Optional<List<Double>> seenAfterMm() {
        return best.gapsMm().map(shop::seenMm);
    }

    /** The same after the move of another way to judge it, where one is chosen. */
    public Optional<List<Double>> seenAfterMm(Optional<FitWay> chosen) {
        return chosen.isEmpty()
                ? seenAfterMm()
                : chosen.flatMap(w -> w.aimed().move()).map(l -> shop.seenMm(l.gapsMm()));
    }
}

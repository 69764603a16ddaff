package fayline.method.fitup.chain;

import fayline.basis.finding.Finding;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.after.MoveCovariance;
import java.util.List;

/**
 * How the bench lies in the final frame, as marks tell it.
 *
 * @param placement where it lies
 * @param middle the middle of the marks in the final frame: the pivot of the covariance
 * @param covariance how well it is known
 * @param pulls what each mark's error does to it, in order
 * @param offMm how far each mark is from where the fit puts it
 * @param chiSquare sum of the squares of the offsets in their uncertainties
 * @param pValue how likely a sum so large is if nothing was misread
 * @param findings what must be said
 */
public record DatumFit(
        Placement placement,
        Spot middle,
        MoveCovariance covariance,
        List<MarkPull> pulls,
        List<Double> offMm,
        double chiSquare,
        double pValue,
        List<Finding> findings) {
    /** Copies the lists. */
    public DatumFit {
        pulls = List.copyOf(pulls);
        offMm = List.copyOf(offMm);
        findings = List.copyOf(findings);
    }

    /**
     * How far the marks alone may put a gap off: their covariance carried rigidly to a station of the final frame.
     *
     * @return standard deviation in mm
     */
    public double deviationMm(Station station) {
        double[] closes = {station.nx(), station.ny(), station.leverMm(middle)};
        double variance = 0;
        for (int i = 0; i < closes.length; i++) {
            for (int j = 0; j < closes.length; j++) {
                variance += closes[i] * covariance.rows().get(i).get(j) * closes[j];
            }
        }
        return Math.sqrt(variance);
    }
}

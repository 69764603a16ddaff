package fayline.flow.result.fit;

import fayline.basis.finding.Phrase;
import fayline.basis.units.Amount;
import fayline.method.fitup.odds.GapSource;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What the shop's temperature makes of gaps that are sought at another.
 *
 * @param stations the stations of the rows, by mark
 * @param shopDegC the temperature noted last with the readings; empty where none was
 * @param soughtDegC the temperature at which the limits hold and the move is sought; empty where gaps count as they were read
 * @param shiftMm how much wider each gap is in the shop, in mm, in the order of the rows; negative where it is narrower
 * @param perKelvinMm how much each gap widens for one kelvin of warming, in mm; empty where nothing is corrected
 * @param doubts how well that is known, as causes that act on all gaps at once; none where nothing is corrected
 */
public record ShopHeat(
        List<String> stations,
        OptionalDouble shopDegC,
        OptionalDouble soughtDegC,
        List<Double> shiftMm,
        List<Double> perKelvinMm,
        List<GapSource> doubts) {
    private static final int STEP_K = 10;
    private static final double LEAST_MM = 0.005;

    /** Copies the lists. */
    public ShopHeat {
        stations = List.copyOf(stations);
        shiftMm = List.copyOf(shiftMm);
        perKelvinMm = List.copyOf(perKelvinMm);
        doubts = List.copyOf(doubts);
    }

    /** A gap of a row as it is seen in the shop, in mm. */
    public double seenMm(int row, double gapMm) {
        return gapMm + shiftMm.get(row);
    }

    /** The gaps of all rows as they are seen in the shop, in mm. */
    List<Double> seenMm(List<Double> gapsMm) {
        return IntStream.range(0, gapsMm.size())
                .mapToObj(i -> seenMm(i, gapsMm.get(i)))
                .toList();
    }

    /** Whether any gap differs by as much as could be told. */
    public boolean matters() {
        return shiftMm.stream().anyMatch(s -> Math.abs(s) >= LEAST_MM);
    }

    /** How much of a gap is the shop's temperature, and what a warmer one would do, in words; empty where it does not matter. */
    public Phrase words() {
        if (!matters()) {
            return Phrase.NONE;
        }
        int most = largest(shiftMm);
        int liveliest = largest(perKelvinMm);
        return Phrase.of(
                "Read at %s, wanted at %s: that alone makes up to %s, at %s. Every %d K warmer make up to %s, at %s.",
                Amount.degC(shopDegC.orElseThrow()),
                Amount.degC(soughtDegC.orElseThrow()),
                Amount.signedMm(shiftMm.get(most), 2),
                stations.get(most),
                STEP_K,
                Amount.signedMm(STEP_K * perKelvinMm.get(liveliest), 2),
                stations.get(liveliest));
    }

    private static int largest(List<Double> values) {
        int most = 0;
        for (int i = 1; i < values.size(); i++) {
            most = Math.abs(values.get(i)) > Math.abs(values.get(most)) ? i : most;
        }
        return most;
    }
}

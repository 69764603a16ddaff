package fayline.method.fitup.chain.correct;

import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.chain.correct.RemedyResult.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Compares what is left after the cure by the worst gap that each remedy reaches and by its cost. Least largest weighted
 * deviation [boyd-vandenberghe2004], then least material and motion.
 */
public final class RemedyCalculator {
    private static final double INSIDE = 1e-6;

    private RemedyCalculator() {}

    /**
     * Compares.
     *
     * @param rows gaps as they are, in the final frame; at least one
     * @param pivot pivot of a part that is hung again
     * @param remedies what can be done
     * @throws IllegalArgumentException if there are no gaps, or a remedy names a station that is none
     */
    public static RemedyResult calculate(List<FitRow> rows, Spot pivot, List<Remedy> remedies) {
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("no gaps to remedy");
        }
        List<String> ids = rows.stream().map(r -> r.station().id()).toList();
        for (Remedy r : remedies) {
            for (String id : r.mostMm().keySet()) {
                if (!ids.contains(id)) {
                    throw new IllegalArgumentException("remedy " + r.name() + " names a station " + id);
                }
            }
        }
        List<Outcome> outcomes = remedies.stream()
                .flatMap(r -> outcome(rows, pivot, r).stream())
                .sorted(Comparator.comparing((Outcome o) -> !o.fits())
                        .thenComparingDouble(o -> o.fits() ? o.cost() : alike(o.worstDeviation()))
                        .thenComparingDouble(o -> alike(o.worstDeviation()))
                        .thenComparingDouble(Outcome::cost))
                .toList();
        double before = rows.stream()
                .mapToDouble(r -> r.weight() * Math.abs(r.gapMm() - r.nominalMm()))
                .max()
                .orElse(0);
        return new RemedyResult(outcomes, before);
    }

    /** Without the last digits, which are the solver's. */
    private static double alike(double deviation) {
        return Math.rint(deviation / INSIDE) * INSIDE;
    }

    private static Optional<Outcome> outcome(List<FitRow> rows, Spot pivot, Remedy remedy) {
        if (remedy.kind() == Remedy.Kind.REMAKE) {
            return Optional.of(remade(rows, remedy));
        }
        List<Double> most = rows.stream()
                .map(r -> remedy.mostMm().getOrDefault(r.station().id(), 0.0))
                .toList();
        List<Double> none = GapProgram.none(rows.size());
        List<Mover> movers = remedy.room()
                .map(room -> List.of(Mover.of(remedy.name(), room, pivot, rows)))
                .orElse(List.of());
        boolean off = remedy.kind() == Remedy.Kind.TRIM;
        boolean on = remedy.kind() == Remedy.Kind.BUILD_UP || remedy.kind() == Remedy.Kind.FILL;
        return new GapProgram(rows, movers, off ? most : none, on ? most : none)
                .solve()
                .map(r -> {
                    GapProgram.Reached settled =
                            movers.isEmpty() ? toNominal(rows, r, off ? most : none, on ? most : none) : r;
                    int worst = settled.worst();
                    return new Outcome(
                            remedy.name(),
                            remedy.kind(),
                            remedy.cost(),
                            rows.get(worst).station().id(),
                            settled.gapsMm().get(worst),
                            settled.weighted(worst),
                            settled.outside(),
                            settled.gapsMm(),
                            settled.offMm(),
                            settled.onMm(),
                            settled.moves().stream().findFirst());
                });
    }

    /** Without motion each station stands alone: one that is outside is worked to its nominal, as far as it can be. */
    private static GapProgram.Reached toNominal(
            List<FitRow> rows, GapProgram.Reached r, List<Double> mostOff, List<Double> mostOn) {
        List<Double> gaps = new ArrayList<>();
        List<Double> off = new ArrayList<>();
        List<Double> on = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            FitRow row = rows.get(i);
            boolean outside = row.gapMm() < row.lowerMm() - INSIDE || row.gapMm() > row.upperMm() + INSIDE;
            double wanted = outside ? row.nominalMm() - row.gapMm() : 0;
            double cut = Math.max(r.offMm().get(i), Math.min(mostOff.get(i), Math.max(0, wanted)));
            double built = Math.max(r.onMm().get(i), Math.min(mostOn.get(i), Math.max(0, -wanted)));
            off.add(cut);
            on.add(built);
            gaps.add(row.gapMm() + cut - built);
        }
        return new GapProgram.Reached(rows, List.<Move>of(), gaps, off, on);
    }

    private static Outcome remade(List<FitRow> rows, Remedy remedy) {
        List<Double> nominals = rows.stream().map(FitRow::nominalMm).toList();
        double off = remedy.expectedOffMm();
        double heaviest = rows.stream().mapToDouble(FitRow::weight).max().orElse(1);
        List<String> outside = rows.stream()
                .filter(r -> r.nominalMm() - off < r.lowerMm() - INSIDE || r.nominalMm() + off > r.upperMm() + INSIDE)
                .map(r -> r.station().id())
                .toList();
        return new Outcome(
                remedy.name(),
                remedy.kind(),
                remedy.cost(),
                "",
                nominals.get(0) + off,
                heaviest * off,
                outside,
                nominals,
                GapProgram.none(rows.size()),
                GapProgram.none(rows.size()),
                Optional.empty());
    }
}

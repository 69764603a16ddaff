package fayline.method.fitup.chain.correct;

import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.chain.correct.RemedyResult.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Compares what is left after the cure by the worst gap that each remedy reaches and by its cost, singly and in pairs. Least
 * largest weighted deviation [boyd-vandenberghe2004], then least material and motion. A part made again goes with nothing else.
 */
public final class RemedyCalculator {
    private static final double INSIDE = 1e-6;

    private final List<FitRow> rows;
    private final Spot pivot;

    private RemedyCalculator(List<FitRow> rows, Spot pivot) {
        this.rows = rows;
        this.pivot = pivot;
    }

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
        return new RemedyCalculator(rows, pivot).result(remedies);
    }

    private RemedyResult result(List<Remedy> remedies) {
        List<Outcome> singly =
                remedies.stream().flatMap(r -> outcome(List.of(r)).stream()).toList();
        List<Outcome> all = new ArrayList<>(singly);
        all.addAll(pairs(singly));
        all.sort(Comparator.comparing((Outcome o) -> !o.fits())
                .thenComparingDouble(o -> o.fits() ? o.cost() : alike(o.worstDeviation()))
                .thenComparingDouble(o -> alike(o.worstDeviation()))
                .thenComparingDouble(Outcome::cost));
        double before = rows.stream()
                .mapToDouble(r -> r.weight() * Math.abs(r.gapMm() - r.nominalMm()))
                .max()
                .orElse(0);
        return new RemedyResult(all, before);
    }

    /** Two together, where they do it, neither does alone, and no single one does it for as little. */
    private List<Outcome> pairs(List<Outcome> singly) {
        double cheapest = singly.stream()
                .filter(Outcome::fits)
                .mapToDouble(Outcome::cost)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        List<Remedy> tooLittle = singly.stream()
                .filter(o -> !o.fits())
                .map(o -> o.remedies().get(0))
                .filter(r -> r.kind() != Remedy.Kind.REMAKE)
                .toList();
        List<Outcome> all = new ArrayList<>();
        for (int a = 0; a < tooLittle.size(); a++) {
            for (int b = a + 1; b < tooLittle.size(); b++) {
                List<Remedy> both = List.of(tooLittle.get(a), tooLittle.get(b));
                if (both.get(0).cost() + both.get(1).cost() < cheapest) {
                    outcome(both).filter(Outcome::fits).ifPresent(all::add);
                }
            }
        }
        return all;
    }

    /** Without the last digits, which are the solver's. */
    private static double alike(double deviation) {
        return Math.rint(deviation / INSIDE) * INSIDE;
    }

    private Optional<Outcome> outcome(List<Remedy> remedies) {
        if (remedies.get(0).kind() == Remedy.Kind.REMAKE) {
            return Optional.of(remade(remedies.get(0)));
        }
        List<Mover> movers = remedies.stream()
                .flatMap(r -> r.room().map(room -> Mover.of(r.name(), room, pivot, rows)).stream())
                .toList();
        List<Double> mostOff = most(remedies, Set.of(Remedy.Kind.TRIM));
        List<Double> mostOn = most(remedies, Set.of(Remedy.Kind.BUILD_UP, Remedy.Kind.FILL));
        return new GapProgram(rows, movers, mostOff, mostOn).solve().map(r -> {
            GapProgram.Reached settled = movers.isEmpty() ? toNominal(r, mostOff, mostOn) : r;
            int worst = settled.worst();
            return new Outcome(
                    remedies,
                    rows.get(worst).station().id(),
                    settled.gapsMm().get(worst),
                    settled.weighted(worst),
                    settled.outside(),
                    settled.gapsMm(),
                    settled.offMm(),
                    settled.onMm(),
                    settled.moves());
        });
    }

    /** How much these remedies can do at each station together. */
    private List<Double> most(List<Remedy> remedies, Set<Remedy.Kind> kinds) {
        return rows.stream()
                .map(row -> remedies.stream()
                        .filter(r -> kinds.contains(r.kind()))
                        .mapToDouble(r -> r.mostMm().getOrDefault(row.station().id(), 0.0))
                        .sum())
                .toList();
    }

    /** Without motion each station stands alone: one that is outside is worked to its nominal, as far as it can be. */
    private GapProgram.Reached toNominal(GapProgram.Reached r, List<Double> mostOff, List<Double> mostOn) {
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

    private Outcome remade(Remedy remedy) {
        List<Double> nominals = rows.stream().map(FitRow::nominalMm).toList();
        double off = remedy.expectedOffMm();
        double heaviest = rows.stream().mapToDouble(FitRow::weight).max().orElse(1);
        List<String> outside = rows.stream()
                .filter(r -> r.nominalMm() - off < r.lowerMm() - INSIDE || r.nominalMm() + off > r.upperMm() + INSIDE)
                .map(r -> r.station().id())
                .toList();
        return new Outcome(
                List.of(remedy),
                "",
                nominals.get(0) + off,
                heaviest * off,
                outside,
                nominals,
                GapProgram.none(rows.size()),
                GapProgram.none(rows.size()),
                List.of());
    }
}

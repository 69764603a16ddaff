package fayline.flow.result.fit.chain;

import fayline.flow.project.chain.ChainLink;
import fayline.flow.project.chain.FitChain;
import fayline.flow.result.fit.chain.FitChainResult.Correcting;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.chain.Chain;
import fayline.method.fitup.chain.ChainCalculator;
import fayline.method.fitup.chain.ChainResult;
import fayline.method.fitup.chain.ChainStation;
import fayline.method.fitup.chain.DatumFit;
import fayline.method.fitup.chain.Link;
import fayline.method.fitup.chain.Placement;
import fayline.method.fitup.chain.correct.Correction;
import fayline.method.fitup.chain.correct.CorrectionCalculator;
import fayline.method.fitup.chain.correct.CorrectionResult;
import fayline.method.fitup.chain.correct.Neighbour;
import fayline.method.fitup.odds.ExpectedGap;
import fayline.method.fitup.odds.GapOddsCalculator;
import fayline.method.fitup.odds.GapSpread;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Where a correction goes, what each thing that moves does, and what that is on the bench. */
final class ChainCorrection {
    private static final double STRAIGHT_RAD = 1e-3;
    private static final double SAME_MM = 1;

    private final AskedChain question;
    private final Chain asked;
    private final List<Neighbour> neighbours;

    ChainCorrection(AskedChain question, Chain asked) {
        this.question = question;
        this.asked = asked;
        this.neighbours = question.neighbours(asked);
    }

    /** Whether anything can still move. */
    boolean possible() {
        return !neighbours.isEmpty() || asked.links().stream().anyMatch(Link::open);
    }

    Correcting correcting() {
        CorrectionResult result = CorrectionCalculator.calculate(new Correction(asked, neighbours));
        Optional<ChainResult> afterwards =
                result.chosen().map(w -> ChainCalculator.calculate(asked.withGaps(w.gapsMm())));
        return new Correcting(
                result,
                chances(result, afterwards),
                afterwards,
                result.chosen().map(this::told).orElse(List.of()));
    }

    /** The causes are the same whatever moves; only the gaps are others. The chosen way's chance is reckoned in full already. */
    private List<Double> chances(CorrectionResult result, Optional<ChainResult> afterwards) {
        Optional<GapSpread> base = afterwards.flatMap(ChainResult::spread);
        if (base.isEmpty()) {
            return List.of();
        }
        CorrectionResult.Way chosen = result.chosen().orElseThrow();
        List<GapSpread> spreads = result.ways().stream()
                .map(w -> moved(base.get(), chosen.gapsMm(), w.gapsMm()))
                .toList();
        List<Double> all = new ArrayList<>(GapOddsCalculator.calculateChances(spreads, asked.seed()));
        afterwards
                .flatMap(ChainResult::odds)
                .ifPresent(o -> all.set(result.ways().indexOf(chosen), o.joint().probability()));
        return all;
    }

    private static GapSpread moved(GapSpread base, List<Double> fromMm, List<Double> toMm) {
        List<ExpectedGap> gaps = new ArrayList<>();
        for (int i = 0; i < base.gaps().size(); i++) {
            gaps.add(base.gaps().get(i).shifted(toMm.get(i) - fromMm.get(i)));
        }
        return new GapSpread(gaps, base.sources());
    }

    private List<MoveTold> told(CorrectionResult.Way way) {
        List<MoveTold> all = new ArrayList<>();
        for (CorrectionResult.Part p : way.moves()) {
            Optional<Link> link = link(p.name());
            Placement placement = link.map(Link::placement).orElse(Placement.SAME);
            Spot pivot = link.map(Link::finalPivot).orElseGet(() -> neighbourPivot(p.name()));
            List<MoveTold.Reached> gaps = new ArrayList<>();
            for (int i = 0; i < asked.stations().size(); i++) {
                ChainStation s = asked.stations().get(i);
                if (link.isPresent()
                        ? asked.acts(asked.links().indexOf(link.get()), s)
                        : s.against().equals(p.name())) {
                    FitRow row = s.row();
                    double by = row.gapAfterMm(placement.toFinal(p.move()), pivot) - row.gapMm();
                    gaps.add(new MoveTold.Reached(s.id(), way.gapsMm().get(i), link.isPresent() ? by : -by));
                }
            }
            all.add(new MoveTold(
                    p.name(),
                    link.isEmpty(),
                    placement.toFinal(p.move()),
                    pivot,
                    pivot.distanceMm(question.middle()) < SAME_MM,
                    Math.abs(placement.turnRad()) < STRAIGHT_RAD
                            ? Optional.empty()
                            : Optional.of(new MoveTold.OnBench(p.move(), placement.toBench(pivot))),
                    gaps));
        }
        return all;
    }

    private Optional<Link> link(String name) {
        return asked.links().stream().filter(l -> l.name().equals(name)).findFirst();
    }

    private Spot neighbourPivot(String name) {
        return neighbours.stream()
                .filter(n -> n.name().equals(name))
                .map(Neighbour::pivot)
                .findFirst()
                .orElse(question.middle());
    }

    /** What was read, carried to each bench where a bond is still open. */
    List<CarriedToBench> carried(FitChain chain, Optional<Correcting> correction) {
        List<CarriedToBench> all = new ArrayList<>();
        for (ChainLink l : chain.links()) {
            question.laid(l)
                    .filter(f -> !l.done())
                    .ifPresent(f -> all.add(new CarriedToBench(
                            l.name(), f, AskedChain.sure(l), marks(l, f), stations(l, f, correction))));
        }
        return all;
    }

    private static List<CarriedToBench.Mark> marks(ChainLink l, DatumFit f) {
        List<CarriedToBench.Mark> all = new ArrayList<>();
        for (int i = 0; i < l.marks().size(); i++) {
            ChainLink.Mark m = l.marks().get(i);
            all.add(new CarriedToBench.Mark(
                    m.name(), m.bench(), m.place(), m.deviationMm(), f.offMm().get(i)));
        }
        return all;
    }

    private List<CarriedToBench.Station> stations(ChainLink l, DatumFit f, Optional<Correcting> correction) {
        Optional<MoveTold> move = correction.stream()
                .flatMap(c -> c.moves().stream())
                .filter(m -> m.name().equals(l.name()))
                .findFirst();
        List<CarriedToBench.Station> all = new ArrayList<>();
        for (ChainStation s : asked.stations()) {
            FitRow row = s.row();
            all.add(new CarriedToBench.Station(
                    s.id(),
                    f.placement().toBench(row.station().at()),
                    row.gapMm(),
                    row.nominalMm(),
                    move.isPresent() ? OptionalDouble.of(outward(row, move.get())) : OptionalDouble.empty(),
                    AskedChain.sure(l) ? OptionalDouble.of(f.deviationMm(row.station())) : OptionalDouble.empty()));
        }
        return all;
    }

    private static double outward(FitRow row, MoveTold move) {
        Move m = move.move();
        return row.gapMm() - row.gapAfterMm(m, move.pivot());
    }
}

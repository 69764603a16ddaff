package fayline.flow.result.fit;

import fayline.basis.finding.Phrase;
import fayline.basis.numeric.DenseMatrix;
import fayline.flow.project.fit.Fit;
import fayline.flow.result.fit.FitAfter.Pair;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.after.AsBuilt;
import fayline.method.fitup.after.AsBuiltCalculator;
import fayline.method.fitup.after.AsBuiltResult;
import fayline.method.fitup.after.BuiltGap;
import fayline.method.fitup.after.Lesson;
import fayline.method.fitup.after.LessonCalculator;
import fayline.method.fitup.after.MoveCovariance;
import fayline.method.fitup.motion.MoveWords;
import fayline.method.fitup.odds.GapOdds;
import fayline.method.fitup.reading.StationGap;
import fayline.method.fitup.scheme.Scheme;
import fayline.method.fitup.scheme.SchemeMotion;
import fayline.method.fitup.scheme.SchemeMotionCalculator;
import fayline.method.fitup.scheme.SchemeOutcome;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The bonded part against what its last dry fit foretold. */
final class After {
    private static final String IN_PLANE =
            " Counted in the plane: how it went in or out is among what no move explains.";

    private final Fit fit;
    private final Targets targets;
    private final Certainty certainty;

    After(Fit fit, Targets targets, Certainty certainty) {
        this.fit = fit;
        this.targets = targets;
        this.certainty = certainty;
    }

    /**
     * Compares, where the bonded state was read and a state before it gives a move.
     *
     * @param before what was advised at the state read before the bond
     * @param bonded the readings after it
     */
    Optional<FitAfter> of(FitAdvice before, StateReadings bonded) {
        if (before.best().found().isEmpty()) {
            return Optional.empty();
        }
        List<Double> foretold = before.best().found().get().gapsMm();
        Optional<SchemeOutcome> scheme = before.schemes()
                .flatMap(s -> s.schemes().stream()
                        .filter(o -> o.name().equals(fit.holding().chosen()))
                        .findFirst());
        Optional<GapOdds> odds = scheme.flatMap(SchemeOutcome::odds);
        List<Pair> pairs = new ArrayList<>();
        List<BuiltGap> gaps = new ArrayList<>();
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < before.rows().size(); i++) {
            FitRow row = before.rows().get(i);
            Optional<StationGap> read = bonded.stations().stream()
                    .filter(v -> v.station().id().equals(row.station().id()))
                    .findFirst()
                    .flatMap(StationValue::gap);
            if (read.isPresent()) {
                double seen = seenMm(before, bonded, row, foretold.get(i));
                pairs.add(new Pair(row.station().id(), seen, read.get().gapMm()));
                double variance =
                        odds.isPresent() ? odds.get().covarianceMm2().get(i).get(i) : 0;
                gaps.add(new BuiltGap(
                        row.station(),
                        seen,
                        Math.sqrt(variance),
                        read.get().gapMm(),
                        Math.hypot(read.get().wholeDeviationMm(), thermometerMm(bonded, row))));
                kept.add(i);
            }
        }
        if (pairs.isEmpty()) {
            return Optional.empty();
        }
        boolean sure = odds.isPresent() && gaps.stream().allMatch(g -> g.measuredUncertaintyMm() > 0);
        if (!sure) {
            return Optional.of(new FitAfter(
                    before.state(),
                    bonded.state().id(),
                    pairs,
                    Optional.empty(),
                    Optional.empty(),
                    fit.holding().chosen().isEmpty()
                            ? "Which scheme held the part is not said, so nothing can be told of chance."
                            : "Uncertainties are missing, so nothing can be told of chance.",
                    Phrase.NONE));
        }
        return Optional.of(compared(before, bonded, pairs, gaps, part(odds.get().covarianceMm2(), kept)));
    }

    /** A gap foretold for the reference temperature as it is to be seen at the temperature of the bonded readings. */
    private double seenMm(FitAdvice before, StateReadings bonded, FitRow row, double foretoldMm) {
        OptionalDouble sought = before.shop().soughtDegC();
        return sought.isPresent() && bonded.temperatureDegC().isPresent()
                ? targets.growth()
                        .broughtMm(
                                row.station().id(),
                                foretoldMm,
                                sought.getAsDouble(),
                                bonded.temperatureDegC().getAsDouble())
                : foretoldMm;
    }

    /** What the thermometer's error makes of a gap that was brought to another temperature. */
    private double thermometerMm(StateReadings bonded, FitRow row) {
        return targets.growth().soughtDegC().isPresent()
                        && bonded.temperatureDegC().isPresent()
                ? targets.growth().thermometerMm(row.station(), row.gapMm())
                : 0;
    }

    private FitAfter compared(
            FitAdvice before,
            StateReadings bonded,
            List<Pair> pairs,
            List<BuiltGap> gaps,
            List<List<Double>> covariance) {
        AsBuiltResult result = AsBuiltCalculator.calculate(new AsBuilt(before.pivot(), gaps, covariance));
        Optional<Lesson> lesson = result.motion()
                .flatMap(m -> prior(before).map(p -> LessonCalculator.calculate(List.of(m.fitted()), p)));
        MoveWords words = new MoveWords(targets.side(), before.pivot(), before.pivotName());
        return new FitAfter(
                before.state(),
                bonded.state().id(),
                pairs,
                Optional.of(result),
                lesson,
                result.reading().words() + (targets.places().curved() ? IN_PLANE : ""),
                lesson.map(l -> Phrase.of("Expect it again: %s. One build is one sample.", words.sentence(l.move())))
                        .orElse(Phrase.NONE));
    }

    /** How far off the chosen scheme was thought to put the part; empty where that has no breadth in some direction. */
    private Optional<MoveCovariance> prior(FitAdvice before) {
        Optional<Scheme> scheme = fit.holding().schemes().stream()
                .filter(s -> s.name().equals(fit.holding().chosen()))
                .findFirst();
        if (scheme.isEmpty()) {
            return Optional.empty();
        }
        SchemeMotion motion = SchemeMotionCalculator.calculate(
                new HeldPoints(targets.places()).held(scheme.get()), before.pivot(), certainty.allowed());
        if (!motion.missing().isEmpty()) {
            return Optional.empty();
        }
        DenseMatrix sum = DenseMatrix.zero(3, 3);
        for (SchemeMotion.MoveError e : motion.errors()) {
            if (e instanceof SchemeMotion.Along a) {
                sum = sum.plus(square(a.perMm(), a.spread().standardDeviation()));
            } else if (e instanceof SchemeMotion.InDisc d) {
                double each = d.radiusMm() / 2;
                sum = sum.plus(square(d.perMmX(), each)).plus(square(d.perMmY(), each));
            }
        }
        for (int i = 0; i < 3; i++) {
            if (!(sum.get(i, i) > 0)) {
                return Optional.empty();
            }
        }
        return Optional.of(new MoveCovariance(Arrays.stream(sum.toRows())
                .map(r -> Arrays.stream(r).boxed().toList())
                .toList()));
    }

    private static DenseMatrix square(Move m, double deviationMm) {
        DenseMatrix column =
                DenseMatrix.column(m.dxMm() * deviationMm, m.dyMm() * deviationMm, m.turnRad() * deviationMm);
        return column.times(column.transposed());
    }

    private static List<List<Double>> part(List<List<Double>> covariance, List<Integer> kept) {
        return kept.stream()
                .map(i -> kept.stream().map(j -> covariance.get(i).get(j)).toList())
                .toList();
    }
}

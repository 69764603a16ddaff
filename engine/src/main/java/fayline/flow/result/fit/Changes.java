package fayline.flow.result.fit;

import fayline.basis.finding.Phrase;
import fayline.basis.units.Amount;
import fayline.flow.result.fit.StateChange.Change;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.Vector;
import fayline.method.fitup.motion.SpaceWords;
import fayline.method.fitup.space.FlushMove;
import fayline.method.fitup.space.FlushPlaneCalculator;
import fayline.method.fitup.space.FlushPlaneResult;
import fayline.method.fitup.space.FlushReading;
import fayline.method.fitup.space.LiftLimits;
import fayline.method.fitup.space.PartMoveCalculator;
import fayline.method.fitup.space.PartQuestion;
import fayline.method.fitup.space.SpaceReading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The rigid move that best explains what changed between two states. What warmth alone does between two temperatures is taken out
 * first, lest a warm afternoon be learned as what the state did.
 */
final class Changes {
    static final String MIDDLE = "the middle of the stations";
    private static final int LEAST = 3;
    private static final double SAME_K = 2;
    private static final double LEAST_MM = 0.005;

    private Changes() {}

    static StateChange between(StateReadings before, StateReadings after, FitPlaces places, Targets targets) {
        Warmth warmth = new Warmth(before, after, targets.growth());
        List<Change> gaps = new ArrayList<>();
        List<FitRow> rows = new ArrayList<>();
        List<FlushReading> flush = new ArrayList<>();
        List<SpaceReading> flushes = new ArrayList<>();
        for (int i = 0; i < before.stations().size(); i++) {
            StationValue a = before.stations().get(i);
            StationValue b = after.stations().get(i);
            Station at = places.stations().get(a.station().id());
            if (a.gap().isPresent() && b.gap().isPresent()) {
                double from = warmth.then(a.station().id(), a.gap().get().gapMm());
                double to = b.gap().get().gapMm();
                gaps.add(new Change(a.station().id(), to - from));
                if (at != null) {
                    rows.add(FitRow.of(at, from, to, to, to));
                }
            }
            if (at != null && a.flushMm().isPresent() && b.flushMm().isPresent()) {
                double from = a.flushMm().getAsDouble();
                double to = b.flushMm().getAsDouble();
                flush.add(FlushReading.of(a.station().id(), at.at(), from, to));
                flushes.add(SpaceReading.flush(at, from, to));
            }
        }
        boolean curved = places.curved();
        Vector pivot = places.middleInSpace();
        Optional<PartQuestion> question = rows.size() < LEAST
                ? Optional.empty()
                : Optional.of(new PartQuestion(
                        rows,
                        curved ? flushes : List.of(),
                        curved,
                        pivot,
                        MoveLimits.WIDEST,
                        LiftLimits.WIDEST,
                        List.of()));
        Optional<SpaceMove> move = question.flatMap(PartMoveCalculator::leastSquares);
        return new StateChange(
                before.state().id(),
                after.state().id(),
                move,
                pivot,
                gaps,
                question.flatMap(q -> move.map(m -> PartMoveCalculator.restMm(q, m)))
                        .orElse(0.0),
                curved ? Optional.empty() : flush(flush, places.middle()),
                move.map(m -> new SpaceWords(targets.side(), pivot, MIDDLE).sentence(m))
                        .orElse(Phrase.NONE),
                warmth.words());
    }

    /** What warmth alone did between two states. */
    private static final class Warmth {
        private final OptionalDouble before;
        private final OptionalDouble after;
        private final Growth growth;
        private final boolean free;
        private double mostMm;
        private String mostAt = "";

        Warmth(StateReadings before, StateReadings after, Growth growth) {
            this.before = before.temperatureDegC();
            this.after = after.temperatureDegC();
            this.growth = growth;
            this.free = growth.freeIn(before.state().id())
                    && growth.freeIn(after.state().id());
        }

        private boolean noted() {
            return before.isPresent() && after.isPresent();
        }

        /** The earlier gap as it would have been at the later state's temperature. */
        double then(String station, double gapMm) {
            if (!free || !noted()) {
                return gapMm;
            }
            double brought = growth.broughtMm(station, gapMm, before.getAsDouble(), after.getAsDouble());
            if (Math.abs(brought - gapMm) > Math.abs(mostMm)) {
                mostMm = brought - gapMm;
                mostAt = station;
            }
            return brought;
        }

        Phrase words() {
            if (Math.abs(mostMm) >= LEAST_MM) {
                return Phrase.of(
                        "Read at %s, before that at %s: warmth alone makes up to %s, at %s. That is taken out here.",
                        Amount.degC(after.getAsDouble()),
                        Amount.degC(before.getAsDouble()),
                        Amount.signedMm(mostMm, 2),
                        mostAt);
            }
            if (!growth.known() && noted() && Math.abs(after.getAsDouble() - before.getAsDouble()) > SAME_K) {
                return Phrase.of(
                        "Read at %s, before that at %s, and how part and surround grow is not given: warmth may be among"
                                + " these changes.",
                        Amount.degC(after.getAsDouble()), Amount.degC(before.getAsDouble()));
            }
            return free && !noted()
                    ? Phrase.plain("The temperature was not noted in both states: warmth may be among these changes.")
                    : Phrase.NONE;
        }
    }

    private static Optional<FlushMove> flush(List<FlushReading> readings, Spot pivot) {
        if (readings.size() < LEAST) {
            return Optional.empty();
        }
        FlushPlaneResult r = FlushPlaneCalculator.calculate(readings, pivot);
        return r.rank() < LEAST
                ? Optional.empty()
                : Optional.of(r.leastSquares().move());
    }
}

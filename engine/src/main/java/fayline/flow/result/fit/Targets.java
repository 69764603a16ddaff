package fayline.flow.result.fit;

import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitStation;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Station;
import fayline.method.fitup.motion.Side;
import fayline.method.fitup.space.PartQuestion;
import fayline.method.fitup.space.SpaceReading;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What is wanted at each station, now: the nominal gap less what states to come will change. */
final class Targets {
    private final Fit fit;
    private final Side side;
    private final FitPlaces places;
    private final Growth growth;

    Targets(Fit fit, Side side, FitPlaces places) {
        this.fit = fit;
        this.side = side;
        this.places = places;
        this.growth = new Growth(fit, places);
    }

    Fit fit() {
        return fit;
    }

    FitPlaces places() {
        return places;
    }

    Growth growth() {
        return growth;
    }

    Side side() {
        return side;
    }

    /**
     * A row for each station that has a gap and a place, in order: the gap as it is at the temperature at which the limits hold.
     *
     * @param noted the temperature at which the gaps were read; where none was noted they count as they are
     */
    List<FitRow> rows(List<StationValue> values, OptionalDouble noted, List<LaterState> later) {
        OptionalDouble sought = growth.soughtDegC();
        List<FitRow> rows = new ArrayList<>();
        for (StationValue v : values) {
            Station at = places.stations().get(v.station().id());
            if (at != null && v.gap().isPresent()) {
                double read = v.gap().get().gapMm();
                double gap = sought.isPresent() && noted.isPresent()
                        ? growth.broughtMm(at.id(), read, noted.getAsDouble(), sought.getAsDouble())
                        : read;
                rows.add(row(v.station(), at, gap, later));
            }
        }
        return rows;
    }

    /** A row for every station that has a place, as if its gap were the wanted one. */
    List<FitRow> nominalRows(List<LaterState> later) {
        List<FitRow> rows = new ArrayList<>();
        for (FitStation s : fit.stations()) {
            Station at = places.stations().get(s.id());
            if (at != null) {
                FitRow row = row(s, at, 0, later);
                rows.add(row.withGap(row.nominalMm()));
            }
        }
        return rows;
    }

    private FitRow row(FitStation s, Station at, double gapMm, List<LaterState> later) {
        double change = later.stream().mapToDouble(l -> changeMm(l, at)).sum();
        double nominal = mm(fit.gapAt(s)) - change;
        double tolerance = mm(fit.gapToleranceAt(s));
        OptionalDouble minimum = fit.wanted()
                .minimumGap()
                .map(m -> OptionalDouble.of(mm(m) - change))
                .orElse(OptionalDouble.empty());
        return new FitRow(
                at,
                gapMm,
                nominal - tolerance,
                nominal,
                nominal + tolerance,
                minimum,
                s.weight(),
                places.edgeOf().getOrDefault(s.id(), ""));
    }

    /** How much a state to come will change the gap at a station. */
    static double changeMm(LaterState later, Station at) {
        return FitRow.of(at, later.gapMm(), 0, 0, 0).gapAfterMm(later.move(), later.pivot());
    }

    /** The flushes of a curved part, which count beside its gaps; of a flat part none, for its gaps do not know of them. */
    List<SpaceReading> flushes(List<StationValue> values, List<LaterState> later) {
        List<SpaceReading> all = new ArrayList<>();
        for (StationValue v : places.curved() ? values : List.<StationValue>of()) {
            Station at = places.stations().get(v.station().id());
            if (at != null && v.flushMm().isPresent()) {
                double nominal = flushMm(at, later);
                double tolerance = mm(fit.wanted().flushTolerance());
                all.add(SpaceReading.flush(at, v.flushMm().getAsDouble(), nominal)
                        .within(nominal - tolerance, nominal + tolerance)
                        .weighing(v.station().weight()));
            }
        }
        return all;
    }

    /** The flush wanted at a station now: of a curved part the nominal one less what states to come will change. */
    double flushMm(Station at, List<LaterState> later) {
        return mm(fit.wanted().flush())
                - (places.curved() ? later : List.<LaterState>of())
                        .stream()
                                .mapToDouble(l ->
                                        l.move().alongMm(at.place(), at.relief().surface(), l.pivot()))
                                .sum();
    }

    /** The question where the part must sit, in its plane or, where it is curved, in space. */
    PartQuestion question(List<FitRow> rows, List<SpaceReading> flushes, List<Double> uncertaintiesMm) {
        return new PartQuestion(
                rows, flushes, places.curved(), places.middleInSpace(), fit.room(), fit.lift(), uncertaintiesMm);
    }

    static double mm(Entered<Length> length) {
        return length.value().millimetres();
    }
}

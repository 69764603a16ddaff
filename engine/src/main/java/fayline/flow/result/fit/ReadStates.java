package fayline.flow.result.fit;

import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitState;
import fayline.flow.project.fit.FitStation;
import fayline.flow.reading.FitReading;
import fayline.flow.reading.FitReading.Kind;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.reading.ReadingCalculator;
import fayline.method.fitup.reading.StationGap;
import fayline.method.fitup.reading.StationReadings;
import fayline.method.fitup.reading.Suspect;
import fayline.method.fitup.reading.SuspectReadings;
import fayline.method.fitup.reading.SuspectReadingsCalculator;
import fayline.method.fitup.space.SpaceReading;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Puts readings to their states and stations. A state's last round counts; what was read before the part was moved stays told. */
final class ReadStates {
    private final Fit fit;
    private final FitPlaces places;
    private final Certainty certainty;
    private final Targets targets;

    ReadStates(Fit fit, FitPlaces places, Certainty certainty, Targets targets) {
        this.fit = fit;
        this.places = places;
        this.certainty = certainty;
        this.targets = targets;
    }

    /** The states with readings, in their order; what was never named by the fit comes first. */
    List<StateReadings> of(List<FitReading> readings) {
        Set<String> known =
                new LinkedHashSet<>(fit.states().stream().map(FitState::id).toList());
        List<FitState> order = new ArrayList<>();
        readings.stream()
                .map(FitReading::state)
                .filter(s -> !known.contains(s))
                .distinct()
                .forEach(s -> order.add(FitState.of(s, s.isEmpty() ? "As it lay" : s)));
        order.addAll(fit.states());
        List<StateReadings> all = new ArrayList<>();
        for (FitState state : order) {
            List<FitReading> mine = readings.stream()
                    .filter(r -> r.state().equals(state.id())
                            && fit.station(r.station()).isPresent())
                    .toList();
            if (!mine.isEmpty()) {
                StateReadings now = state(state, mine);
                all.add(
                        all.isEmpty()
                                ? now
                                : new StateReadings(
                                        now.state(),
                                        now.stations(),
                                        Optional.of(Changes.between(all.get(all.size() - 1), now, places, targets)),
                                        now.temperatureDegC(),
                                        now.findings()));
            }
        }
        return List.copyOf(all);
    }

    private StateReadings state(FitState state, List<FitReading> mine) {
        int round = mine.stream().mapToInt(FitReading::round).max().orElse(1);
        OneTemperature warm = new OneTemperature(
                fit,
                places,
                targets.growth(),
                state.id(),
                mine.stream()
                        .filter(r -> r.round() == round && r.kind().tellsGap())
                        .toList());
        List<StationValue> values = new ArrayList<>();
        for (FitStation s : fit.stations()) {
            List<FitReading> here =
                    mine.stream().filter(r -> r.station().equals(s.id())).toList();
            List<FitReading> counting =
                    here.stream().filter(r -> r.round() == round).toList();
            List<FitReading> gaps =
                    counting.stream().filter(r -> r.kind().tellsGap()).toList();
            Optional<StationGap> gap = gaps.isEmpty()
                    ? Optional.empty()
                    : Optional.of(ReadingCalculator.calculate(new StationReadings(
                            s.id(),
                            gaps.stream()
                                    .map(r -> warm.brought(r, certainty.gaugeReading(r)))
                                    .toList(),
                            certainty.sharedMm().orElse(0))));
            OptionalDouble flush = counting.stream()
                    .filter(r -> r.kind() == Kind.FLUSH)
                    .mapToDouble(FitReading::valueMm)
                    .average();
            values.add(new StationValue(s, gap, flush, here, List.of()));
        }
        OptionalDouble noted = warm.temperatureDegC(mine);
        return new StateReadings(state, suspected(values, noted), Optional.empty(), noted, warm.findings());
    }

    private List<StationValue> suspected(List<StationValue> values, OptionalDouble noted) {
        List<FitRow> rows = targets.rows(values, noted, List.of());
        if (rows.isEmpty()) {
            return values;
        }
        List<SpaceReading> flushes = targets.flushes(values, List.of());
        List<Double> u = new ArrayList<>(rows.stream()
                .map(r -> values.stream()
                        .filter(v -> v.station().id().equals(r.station().id()))
                        .findFirst()
                        .flatMap(StationValue::gap)
                        .map(StationGap::deviationMm)
                        .orElse(0.0))
                .toList());
        flushes.forEach(f -> u.add(certainty.readingMm().orElse(0)));
        List<Suspect> suspects =
                SuspectReadingsCalculator.calculate(new SuspectReadings(rows, u, flushes, places.curved()));
        return values.stream()
                .map(v -> new StationValue(
                        v.station(),
                        v.gap(),
                        v.flushMm(),
                        v.typed(),
                        suspects.stream()
                                .filter(s -> s.stationId().equals(v.station().id()))
                                .toList()))
                .toList();
    }
}

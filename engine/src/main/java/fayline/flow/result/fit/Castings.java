package fayline.flow.result.fit;

import fayline.flow.reading.FitReading;
import fayline.flow.reading.FitReading.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the bond line in the test castings of a state: those of its last round, as they were measured. */
final class Castings {
    private Castings() {}

    static Optional<CastLine> of(StateReadings state, FitPlaces places) {
        int round = state.stations().stream()
                .flatMap(v -> v.typed().stream())
                .mapToInt(FitReading::round)
                .max()
                .orElse(1);
        List<CastLine.Cast> casts = new ArrayList<>();
        for (StationValue v : state.stations()) {
            List<FitReading> cast = v.typed().stream()
                    .filter(r -> r.kind() == Kind.CASTING && r.round() == round)
                    .toList();
            cast.stream()
                    .mapToDouble(FitReading::valueMm)
                    .average()
                    .ifPresent(t -> casts.add(new CastLine.Cast(v.station().id(), t, cast.size())));
        }
        return casts.isEmpty() ? Optional.empty() : Optional.of(new CastLine(casts, mean(casts, places)));
    }

    /** By the run of edge that each speaks for; each alike where that is not known of all. */
    private static double mean(List<CastLine.Cast> casts, FitPlaces places) {
        List<String> ids = casts.stream().map(CastLine.Cast::station).toList();
        boolean placed = ids.stream().allMatch(places.stations()::containsKey);
        List<Double> runs = placed ? places.tributaryMm(ids) : List.of();
        boolean known = placed && runs.stream().allMatch(r -> r > 0);
        double sum = 0;
        double weights = 0;
        for (int i = 0; i < casts.size(); i++) {
            double w = known ? runs.get(i) : 1;
            sum += w * casts.get(i).thicknessMm();
            weights += w;
        }
        return sum / weights;
    }
}

package fayline.app.usecase.series;

import fayline.app.usecase.fit.FitSight;
import fayline.app.usecase.fit.LookAtFits;
import fayline.app.usecase.traveller.LeakDowns;
import fayline.app.usecase.view.ShopView;
import fayline.basis.units.Mass;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.basis.units.Vacuum;
import fayline.flow.reading.FitReading;
import fayline.flow.record.TakenReading;
import fayline.flow.result.expand.Names;
import fayline.flow.result.fit.FitAfter;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.quantity.PartResult;
import fayline.flow.result.series.Series;
import fayline.flow.result.series.SeriesPoint;
import fayline.flow.result.series.SeriesSort;
import fayline.flow.result.step.StepResult;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/** Looks at the readings of a project that come again and again, as series. */
public final class LookAtSeries {
    private LookAtSeries() {}

    /** Every sort that the program knows, also where nothing was read yet; gaps as bonded by what located the part. */
    public static List<Series> of(ShopView view) {
        List<Series> all = new ArrayList<>();
        all.add(Series.of(SeriesSort.LEAK, "", leaks(view)));
        all.add(Series.of(SeriesSort.MASS_OVER_COMPUTED, "", masses(view, LookAtSeries::overComputed)));
        all.add(Series.of(SeriesSort.MASS_OVER_TARGET, "", masses(view, LookAtSeries::overTarget)));
        all.add(Series.of(SeriesSort.RESIN, "", masses(view, LookAtSeries::resin)));
        Map<String, List<SeriesPoint>> gaps = gaps(view);
        if (gaps.isEmpty()) {
            all.add(Series.of(SeriesSort.GAP_ERROR, "", List.of()));
        }
        gaps.forEach((scheme, points) -> all.add(Series.of(SeriesSort.GAP_ERROR, scheme, points)));
        return List.copyOf(all);
    }

    private static List<SeriesPoint> leaks(ShopView view) {
        Names names = new Names(view.definition());
        Map<String, List<TakenReading>> all = view.record().readings(view.project()).stream()
                .filter(r -> r.kind().equals("vacuum"))
                .collect(Collectors.groupingBy(TakenReading::of));
        List<SeriesPoint> points = new ArrayList<>();
        for (StepResult step : view.result().steps()) {
            List<TakenReading> mine = all.getOrDefault(step.id(), all.getOrDefault(step.local(), List.of()));
            for (LeakDowns.Test t : LeakDowns.of(step, mine)) {
                lost(t).ifPresent(pa -> points.add(new SeriesPoint(
                        names.of(step.made()),
                        step.id(),
                        t.end().at(),
                        pa,
                        t.start().value() + ", " + t.end().value() + " " + t.minutes() + " min later",
                        t.end().seq())));
            }
        }
        return points;
    }

    private static Optional<Double> lost(LeakDowns.Test t) {
        try {
            Vacuum from =
                    QuantityParser.parse(t.start().value(), QuantityKind.VACUUM).value();
            Vacuum to =
                    QuantityParser.parse(t.end().value(), QuantityKind.VACUUM).value();
            return Optional.of((from.si() - to.si()) / t.minutes());
        } catch (UnreadableQuantityException e) {
            return Optional.empty();
        }
    }

    /** The first weighing of each part that has what is asked of it. */
    private static List<SeriesPoint> masses(ShopView view, BiFunction<PartResult, Mass, Optional<Double>> value) {
        Names names = new Names(view.definition());
        List<SeriesPoint> all = new ArrayList<>();
        for (PartResult part : view.result().parts()) {
            view.record().readings(view.project()).stream()
                    .filter(r ->
                            r.kind().equals("mass") && r.of().split("/", -1)[0].equals(part.part()))
                    .min(Comparator.comparing(TakenReading::at))
                    .ifPresent(r -> mass(r).flatMap(m -> value.apply(part, m))
                            .ifPresent(v -> all.add(new SeriesPoint(
                                    names.of(part.part()), part.part(), r.at(), v, r.value(), r.seq()))));
        }
        return all;
    }

    private static Optional<Mass> mass(TakenReading r) {
        try {
            Mass m = QuantityParser.parse(r.value(), QuantityKind.MASS).value();
            return m.kilograms() > 0 ? Optional.of(m) : Optional.empty();
        } catch (UnreadableQuantityException e) {
            return Optional.empty();
        }
    }

    private static Optional<Double> overComputed(PartResult part, Mass weighed) {
        double computed = part.asMade().kilograms();
        return computed > 0 ? Optional.of(weighed.kilograms() / computed - 1) : Optional.empty();
    }

    private static Optional<Double> overTarget(PartResult part, Mass weighed) {
        return part.target().map(t -> weighed.kilograms() / t.value().kilograms() - 1);
    }

    private static Optional<Double> resin(PartResult part, Mass weighed) {
        double dry = part.dry().kilograms();
        return dry > 0 && weighed.kilograms() > dry ? Optional.of(1 - dry / weighed.kilograms()) : Optional.empty();
    }

    private static Map<String, List<SeriesPoint>> gaps(ShopView view) {
        Map<String, List<SeriesPoint>> all = new TreeMap<>();
        for (FitSight sight : LookAtFits.all(view, false)) {
            FitResult fit = sight.result();
            String scheme = fit.fit().holding().chosen();
            fit.after()
                    .ifPresent(a -> a.stations()
                            .forEach(p -> all.computeIfAbsent(scheme, s -> new ArrayList<>())
                                    .add(new SeriesPoint(
                                            fit.fit().name() + ", " + p.station(),
                                            fit.fit().id(),
                                            read(fit, a, p.station()),
                                            p.readMm() - p.foretoldMm(),
                                            typed(fit, a, p.station()),
                                            entry(fit, a, p.station())))));
        }
        return all;
    }

    private static List<FitReading> readings(FitResult fit, FitAfter after, String station) {
        return fit.states().stream()
                .filter(s -> s.state().id().equals(after.to()))
                .flatMap(s -> s.stations().stream())
                .filter(v -> v.station().id().equals(station))
                .flatMap(v -> v.typed().stream())
                .filter(r -> r.kind().tellsGap())
                .toList();
    }

    private static Instant read(FitResult fit, FitAfter after, String station) {
        return readings(fit, after, station).stream()
                .map(FitReading::at)
                .max(Comparator.naturalOrder())
                .orElse(Instant.EPOCH);
    }

    private static long entry(FitResult fit, FitAfter after, String station) {
        return readings(fit, after, station).stream()
                .mapToLong(FitReading::seq)
                .max()
                .orElse(0);
    }

    private static String typed(FitResult fit, FitAfter after, String station) {
        return readings(fit, after, station).stream().map(FitReading::typed).collect(Collectors.joining("; "));
    }
}

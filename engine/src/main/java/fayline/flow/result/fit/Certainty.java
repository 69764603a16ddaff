package fayline.flow.result.fit;

import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitGauge;
import fayline.flow.reading.FitReading;
import fayline.method.fitup.reading.GaugeReading;
import fayline.method.fitup.scheme.Assumption;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** How sure readings are: what the fit says of its gauge, or the named defaults where these may be taken. */
final class Certainty {
    private static final double THINNEST_LEAF_MM = 0.05;
    private final Optional<FitGauge> gauge;
    private final boolean assume;
    private final Set<Assumption> taken = EnumSet.noneOf(Assumption.class);
    private final List<String> missing = new ArrayList<>();

    Certainty(Fit fit, boolean assume) {
        this.gauge = fit.gauge();
        this.assume = assume;
    }

    private OptionalDouble of(OptionalDouble given, Assumption otherwise, String what) {
        if (given.isPresent()) {
            return given;
        }
        if (assume) {
            taken.add(otherwise);
            return OptionalDouble.of(otherwise.valueMm());
        }
        if (!missing.contains(what)) {
            missing.add(what);
        }
        return OptionalDouble.empty();
    }

    /** Standard uncertainty of one reading, in mm. */
    OptionalDouble readingMm() {
        return of(
                gauge.map(FitGauge::deviationMm).orElse(OptionalDouble.empty()),
                Assumption.READING,
                "how sure one reading of the gauge is");
    }

    /**
     * Standard uncertainty of what was read at one station, all its repeats together, apart from what readings share; empty where
     * neither the gauge's is given nor every reading was taken between two leaves, which tell their own.
     */
    OptionalDouble readingMm(StationValue read) {
        return read.gap().isPresent() && (betweenLeaves(read) || readingMm().isPresent())
                ? OptionalDouble.of(read.gap().get().deviationMm())
                : OptionalDouble.empty();
    }

    private boolean betweenLeaves(StationValue read) {
        return read.typed().stream()
                .filter(r -> r.kind().tellsGap())
                .map(this::gaugeReading)
                .allMatch(GaugeReading::sharesBias);
    }

    /** Standard uncertainty that all readings share, in mm. */
    OptionalDouble sharedMm() {
        return of(
                gauge.map(FitGauge::sharedMm).orElse(OptionalDouble.empty()),
                Assumption.READING_COMMON,
                "how far all readings of one hand may be off together");
    }

    /** A reading as a gauge shows it. */
    GaugeReading gaugeReading(FitReading r) {
        if (r.noGoMm().isPresent() && r.noGoMm().getAsDouble() >= r.valueMm()) {
            return new GaugeReading.Feeler(r.valueMm(), r.noGoMm().getAsDouble(), Optional.empty());
        }
        if (r.valueMm() <= 0) {
            return new GaugeReading.Touches(THINNEST_LEAF_MM);
        }
        double u = readingMm().orElse(0);
        return r.kind() == FitReading.Kind.CASTING
                ? new GaugeReading.Cast(r.valueMm(), 0, u)
                : new GaugeReading.Direct(r.valueMm(), u);
    }

    Set<Assumption> allowed() {
        return assume ? EnumSet.allOf(Assumption.class) : Set.of();
    }

    Set<Assumption> taken() {
        return Set.copyOf(taken);
    }

    List<String> missing() {
        return List.copyOf(missing);
    }
}

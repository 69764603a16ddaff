package fayline.app.usecase.act;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import fayline.basis.units.Quantity;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.Definition;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.frame.FrameWidth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What looks like a slip of a key in a reading that is taken now: far beyond what such a thing can be. The reading is kept as typed all the same, and
 * the question stands where it was typed. All limits here: common practice, no source.
 */
public final class Doubts {
    private static final double TIMES = 8;
    private static final double LEAST_FAR_MM = 25;
    private static final double MASS_RATIO = 3;
    private static final double WIDTH_SHARE = 0.25;
    private static final double MOST_VACUUM_PA = 105_000;
    private static final double LEAST_VACUUM_PA = 20_000;
    private static final double COLDEST_K = 253.15;
    private static final double HOTTEST_K = 403.15;
    private static final double HOTTEST_AIR_K = 318.15;
    private static final double DRIEST = 0.08;
    private static final double DAMPEST = 1;

    private Doubts() {}

    /**
     * What is doubtful of a reading.
     *
     * @param d the definition
     * @param m the reading
     * @param reckoned the mass that was reckoned for what is weighed; empty where none was
     */
    static List<Finding> of(Definition d, Measured m, Optional<Mass> reckoned) {
        List<String> doubts = new ArrayList<>();
        String typed = m.values().getOrDefault("value", "");
        switch (m.kind()) {
            case "vacuum" ->
                si(typed, QuantityKind.VACUUM)
                        .filter(v -> v > MOST_VACUUM_PA || v < LEAST_VACUUM_PA)
                        .ifPresent(v -> doubts.add(slip(typed, "a bag is pulled to 0.2 to 1.05 bar below the air")));
            case "temperature" -> temperature(doubts, typed, HOTTEST_K);
            case "mass", "mix" -> reckoned.flatMap(r -> mass(typed, r)).ifPresent(doubts::add);
            case "climate" -> air(doubts, m);
            case "width" -> d.fits().find(m.of()).flatMap(f -> width(f, m)).ifPresent(doubts::add);
            default ->
                d.fits()
                        .find(m.of())
                        .flatMap(f -> si(typed, QuantityKind.LENGTH)
                                .flatMap(v -> ofFit(f, m.kind().equals("flush"), Length.ofMetres(v))))
                        .ifPresent(q -> doubts.add("\"" + typed + "\": " + q));
        }
        return doubts.stream()
                .map(s -> new Finding(Severity.CAUTION, m.of(), s, "common practice, no source"))
                .toList();
    }

    /**
     * What is doubtful of a reading at a station of a fit.
     *
     * @param fit the fit
     * @param flush whether it is a flush; else a gap or the film in one
     * @param read what was read
     */
    public static Optional<String> ofFit(Fit fit, boolean flush, Length read) {
        Length wanted = (flush ? fit.wanted().flush() : fit.wanted().gap()).value();
        Length tolerance = (flush ? fit.wanted().flushTolerance() : fit.wanted().gapTolerance()).value();
        double farMm =
                Math.max(LEAST_FAR_MM, TIMES * (Math.abs(wanted.millimetres()) + Math.abs(tolerance.millimetres())));
        return Math.abs(read.millimetres()) <= farMm
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "this is far from the %s wanted here. Look at the point and the unit, and read it again.",
                        (flush ? fit.wanted().flush() : fit.wanted().gap()).asTyped()));
    }

    private static Optional<String> width(Fit fit, Measured m) {
        String typed = m.values().getOrDefault("value", "");
        Optional<FrameWidth> width = fit.frame().widths().stream()
                .filter(w -> w.id().equals(m.station()))
                .findFirst();
        return width.flatMap(w -> si(typed, QuantityKind.LENGTH)
                .filter(v -> Math.abs(v - w.wanted().value().metres())
                        > WIDTH_SHARE * w.wanted().value().metres())
                .map(v -> slip(typed, "the width wanted is " + w.wanted().asTyped())));
    }

    private static Optional<String> mass(String typed, Mass reckoned) {
        return si(typed, QuantityKind.MASS)
                .filter(v -> reckoned.si() > 0 && (v > MASS_RATIO * reckoned.si() || v < reckoned.si() / MASS_RATIO))
                .map(v -> slip(typed, String.format(Locale.ROOT, "reckoned was %.3g kg", reckoned.kilograms())));
    }

    private static void air(List<String> doubts, Measured m) {
        for (String name : List.of("air", "surface")) {
            temperature(doubts, m.values().getOrDefault(name, ""), HOTTEST_AIR_K);
        }
        String humidity = m.values().getOrDefault("humidity", "");
        si(humidity, QuantityKind.FRACTION)
                .filter(v -> v < DRIEST || v > DAMPEST)
                .ifPresent(v -> doubts.add(slip(humidity, "the air of a shop holds 8 to 100 %")));
    }

    private static void temperature(List<String> doubts, String typed, double hottestK) {
        si(typed, QuantityKind.TEMPERATURE)
                .filter(v -> v < COLDEST_K || v > hottestK)
                .ifPresent(v -> doubts.add(
                        slip(typed, String.format(Locale.ROOT, "-20 to %.0f degC is usual here", hottestK - 273.15))));
    }

    private static String slip(String typed, String usual) {
        return "\"" + typed + "\": " + usual
                + ". Look at the point and the unit; a wrong one is corrected by a new entry.";
    }

    private static <Q extends Quantity> Optional<Double> si(String typed, QuantityKind<Q> kind) {
        if (typed.isBlank()) {
            return Optional.empty();
        }
        try {
            return Optional.of(QuantityParser.parse(typed, kind).value().si());
        } catch (UnreadableQuantityException e) {
            // "touches" is no number, and nothing is doubtful about it
            return Optional.empty();
        }
    }
}

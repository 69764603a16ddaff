package fayline.app.web.fit;

import fayline.app.web.frame.Visit;
import fayline.basis.units.UnitSystem;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitState;
import fayline.flow.reading.FitReading;
import fayline.flow.reading.FitReading.Kind;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * What is chosen once for a row of readings. It stands in the address, so that it survives a reload.
 *
 * @param state the state's id
 * @param kind what is read
 * @param unit the unit that a bare number gets: {@code mm}, {@code in} or {@code thou}
 * @param round which time round in this state
 * @param instrument what it is read with; empty where it is not said
 * @param temperature the temperature as typed; empty where it is not said
 * @param passed marks of stations passed over: skipped, or read oddly and kept all the same; they are not asked for by themselves
 */
public record FitSetup(
        String state, Kind kind, String unit, int round, String instrument, String temperature, List<String> passed) {
    /** Copies the list. */
    public FitSetup {
        passed = List.copyOf(passed);
    }

    /** The same for another kind of reading, nothing passed over and its instrument not said yet. */
    FitSetup reading(Kind other) {
        return new FitSetup(state, other, unit, round, other == kind ? instrument : "", temperature, List.of());
    }

    /** The units offered. */
    static final List<String> UNITS = List.of("mm", "in", "thou");

    /** What a screen asked for, what was done last where it did not say. */
    static FitSetup of(UnaryOperator<String> asked, Fit fit, List<FitReading> readings, UnitSystem units) {
        String state = fit.states().stream()
                .map(FitState::id)
                .filter(asked.apply("state")::equals)
                .findFirst()
                .orElseGet(() -> usualState(fit, readings));
        Kind kind = Stream.of(Kind.values())
                .filter(k -> k.word().equals(asked.apply("kind")))
                .findFirst()
                .orElse(Kind.GAP);
        String unit =
                UNITS.contains(asked.apply("unit")) ? asked.apply("unit") : units == UnitSystem.INCH ? "in" : "mm";
        int last = readings.stream()
                .filter(r -> r.state().equals(state))
                .mapToInt(FitReading::round)
                .max()
                .orElse(1);
        int round = asked.apply("round").matches("[1-9][0-9]{0,2}") ? Integer.parseInt(asked.apply("round")) : last;
        return new FitSetup(
                state,
                kind,
                unit,
                Math.min(round, last + 1),
                asked.apply("instrument"),
                asked.apply("temperature"),
                passed(fit, asked.apply("passed")));
    }

    private static List<String> passed(Fit fit, String typed) {
        return Stream.of(typed.split(",", -1))
                .filter(m -> fit.station(m).isPresent())
                .distinct()
                .toList();
    }

    private static String usualState(Fit fit, List<FitReading> readings) {
        List<String> order = fit.states().stream().map(FitState::id).toList();
        return readings.stream()
                .map(FitReading::state)
                .filter(order::contains)
                .max(java.util.Comparator.comparingInt(order::indexOf))
                .orElse(order.isEmpty() ? "" : order.get(0));
    }

    /** The address of a station's entry under this choice; of the first unread one where none is named. */
    String link(String fit, String station) {
        return "/fit/" + Visit.encoded(fit) + "/read?state=" + Visit.encoded(state) + "&kind=" + kind.word() + "&unit="
                + unit + (round > 1 ? "&round=" + round : "") + part("instrument", instrument)
                + part("temperature", temperature) + part("passed", passedMarks()) + part("at", station);
    }

    /** The same for another round. */
    FitSetup round(int other) {
        return new FitSetup(state, kind, unit, other, instrument, temperature, List.of());
    }

    /** The same for something else to read. */
    FitSetup kind(Kind other) {
        return new FitSetup(state, other, unit, round, instrument, temperature, List.of());
    }

    /** The same with one more station passed over. */
    FitSetup passing(String station) {
        List<String> all =
                Stream.concat(passed.stream(), Stream.of(station)).distinct().toList();
        return new FitSetup(state, kind, unit, round, instrument, temperature, all);
    }

    /** The stations passed over, as they stand in an address. */
    public String passedMarks() {
        return String.join(",", passed);
    }

    /** Whether a reading belongs to this choice. */
    boolean holds(FitReading r) {
        return r.state().equals(state) && r.kind() == kind && r.round() == round;
    }

    /** Text as it is kept: a bare number gets the unit, anything else stays. */
    String withUnit(String typed) {
        return withUnit(typed, unit);
    }

    /** The unit that a bare number gets. */
    public static String unit(UnitSystem units) {
        return units == UnitSystem.INCH ? "in" : "mm";
    }

    /** Text as it is kept: a bare number gets a unit, anything else stays. */
    public static String withUnit(String typed, String unit) {
        return typed.matches("[-+]?[0-9./ ]*[0-9.]") ? typed + " " + unit : typed;
    }

    /** The temperature as it is kept: a bare number is in degrees Celsius, or Fahrenheit where inches are read. */
    String temperatureWithUnit() {
        return temperature.matches("[-+]?[0-9.]+")
                ? temperature + (unit.equals("mm") ? " degC" : " degF")
                : temperature;
    }

    private static String part(String name, String value) {
        return value.isEmpty() ? "" : "&" + name + "=" + Visit.encoded(value);
    }
}

package fayline.flow.result.laminate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.units.Angle;
import fayline.basis.units.ArealMass;
import fayline.basis.units.Entered;
import fayline.basis.units.Force;
import fayline.basis.units.Fraction;
import fayline.basis.units.Length;
import fayline.basis.units.LineForce;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.Stress;
import fayline.basis.units.Temperature;
import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.design.Laminate;
import fayline.flow.project.design.LaminateLoad;
import fayline.flow.project.design.Ply;
import fayline.flow.project.stock.Lamina;
import fayline.flow.project.stock.Lamina.Status;
import fayline.flow.project.stock.Material;
import fayline.flow.project.stock.Price;
import fayline.flow.result.laminate.LaminateCheck.Verdict;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A laminate of two plies of tape along the load: 0.5 mm each, pulled with 100 N/mm, bears 900 MPa along: 9 times. */
class LaminateCheckTest {
    private static Stress mpa(double v) {
        return Stress.ofMegapascals(v);
    }

    private static Material tape(Status status, boolean bears, boolean expands) {
        OptionalDouble grows = expands ? OptionalDouble.of(8e-6) : OptionalDouble.empty();
        Lamina lamina = new Lamina(
                mpa(39_000),
                mpa(9_500),
                mpa(3_600),
                0.28,
                grows,
                grows,
                bears
                        ? Optional.of(new Lamina.Bears(mpa(900), mpa(500), mpa(32), mpa(110), mpa(50)))
                        : Optional.empty(),
                "invented",
                status,
                Optional.empty());
        return material("tape", Material.Kind.TAPE, "0.5 mm", Optional.of(lamina));
    }

    private static Material material(String id, Material.Kind kind, String thickness, Optional<Lamina> lamina) {
        Entered<Length> t = QuantityParser.parse(thickness, QuantityKind.LENGTH);
        Entered<ArealMass> w = QuantityParser.parse("500 g/m2", QuantityKind.AREAL_MASS);
        return new Material(
                id,
                "The " + id,
                kind,
                kind == Material.Kind.CORE ? Optional.empty() : Optional.of(w),
                Optional.of(t),
                Optional.of(QuantityParser.parse("80 kg/m3", QuantityKind.DENSITY)),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Price(7, "m2")),
                Optional.empty(),
                Optional.empty(),
                lamina);
    }

    private static LaminateLoad load(double nPerMm, double factor, double service) {
        LineForce none = new LineForce(0);
        return new LaminateLoad(
                "pull",
                LineForce.ofNewtonsPerMillimetre(nPerMm),
                none,
                none,
                new Force(0),
                new Force(0),
                new Force(0),
                Optional.of(Temperature.ofCelsius(60)),
                Optional.of(Temperature.ofCelsius(service)),
                factor,
                "invented");
    }

    private static LaminateCheck check(Material tape, boolean core, LaminateLoad... loads) {
        Ply ply = new Ply("tape", new Angle(0), 1, false);
        List<Ply> plies = core ? List.of(ply, new Ply("foam", new Angle(0), 1, true), ply) : List.of(ply, ply);
        return LaminateCheckCalculator.calculate(
                new Laminate("l", "Skin", "er", new Fraction(0.5), plies, List.of(loads)),
                new Catalog<>(List.of(tape, material("foam", Material.Kind.CORE, "10 mm", Optional.empty()))));
    }

    @Test
    void should_say_within_and_by_how_much_when_somebody_stands_for_every_figure() {
        LaminateCheck c = check(tape(Status.MEASURED, true, true), false, load(100, 2, 60));
        assertThat(c.verdict()).isEqualTo(Verdict.WITHIN);
        // By maximum stress and Hashin 9 times; Tsai-Wu asks 2 F11 R ... of its own and gives the same for one stress
        // alone.
        assertThat(c.smallest().orElseThrow().ratio().getAsDouble()).isCloseTo(9, within(1e-6));
        assertThat(c.smallest().orElseThrow().margin().getAsDouble()).isCloseTo(3.5, within(1e-6));
        assertThat(c.smallest().orElseThrow().mode()).contains("fibre");
        assertThat(c.stack().orElseThrow().exPa()).isCloseTo(39e9, within(1.0));
        assertThat(c.stack().orElseThrow().massKgPerM2().getAsDouble()).isCloseTo(2, within(1e-9));
        assertThat(c.stack().orElseThrow().costPerM2()).hasValue(14);
    }

    @Test
    void should_say_not_within_when_the_factor_is_not_reached_and_within_right_at_it() {
        Material tape = tape(Status.DATA_SHEET, true, true);
        assertThat(check(tape, false, load(100, 9.01, 60)).verdict()).isEqualTo(Verdict.NOT_WITHIN);
        assertThat(check(tape, false, load(100, 8.99, 60)).verdict()).isEqualTo(Verdict.WITHIN);
        assertThat(check(tape, false, load(10, 2, 60), load(100, 9.01, 60)).verdict())
                .isEqualTo(Verdict.NOT_WITHIN);
    }

    @Test
    void should_not_say_anything_by_assumed_figures_and_name_the_one_that_would_settle_it() {
        for (Status s : List.of(Status.ASSUMED, Status.UNSAID)) {
            LaminateCheck c = check(tape(s, true, true), false, load(100, 2, 60));
            assertThat(c.verdict()).isEqualTo(Verdict.CANNOT_SAY);
            assertThat(c.why()).contains("What would settle it first: what The tape bears", "fibre tension", "margin");
        }
    }

    @Test
    void should_not_say_anything_when_something_is_missing_and_say_what() {
        assertThat(check(tape(Status.MEASURED, false, true), false, load(100, 2, 60)))
                .satisfies(c -> assertThat(c.verdict()).isEqualTo(Verdict.CANNOT_SAY))
                .satisfies(c -> assertThat(c.why()).contains("what it bears is not entered"));
        assertThat(check(tape(Status.MEASURED, true, true), false))
                .satisfies(c -> assertThat(c.verdict()).isEqualTo(Verdict.CANNOT_SAY))
                .satisfies(c -> assertThat(c.why()).contains("Nobody has entered what it must bear"));
        // Cooled from cure, and nobody knows how it grows.
        assertThat(check(tape(Status.MEASURED, true, false), false, load(100, 2, -10))
                        .why())
                .contains("the expansion of a ply is not entered");
        assertThat(check(tape(Status.MEASURED, true, false), false, load(100, 2, 60))
                        .verdict())
                .isEqualTo(Verdict.WITHIN);
    }

    @Test
    void should_take_a_core_without_figures_as_carrying_nothing_in_its_plane() {
        LaminateCheck c = check(tape(Status.MEASURED, true, true), true, load(100, 2, 60));
        assertThat(c.verdict()).isEqualTo(Verdict.WITHIN);
        assertThat(c.smallest().orElseThrow().ratio().getAsDouble()).isCloseTo(9, within(0.01));
        assertThat(c.inputs()).anyMatch(i -> i.origin().contains("nothing in its plane"));
        assertThat(c.stack().orElseThrow().massKgPerM2().getAsDouble()).isCloseTo(2.8, within(1e-9));
    }
}

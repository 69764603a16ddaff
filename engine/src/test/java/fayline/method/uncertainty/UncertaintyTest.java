package fayline.method.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.checks.CheckTable;
import fayline.checks.CheckTable.Row;
import fayline.checks.FitCase;
import fayline.checks.FitCase.Node;
import fayline.method.uncertainty.Distribution.Shape;
import fayline.method.uncertainty.FirstOrder.Correlation;
import fayline.method.uncertainty.FirstOrder.Input;
import fayline.method.uncertainty.FirstOrderResult.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Propagation, trials and stacks against printed examples and exact results. */
class UncertaintyTest {
    private static final List<String> FOUR = List.of("X1", "X2", "X3", "X4");

    private static List<Draw> four(Shape shape) {
        return FOUR.stream()
                .<Draw>map(n -> new Draw.Single(n, Distribution.ofStandardDeviation(shape, 0, 1)))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"F24-montecarlo-additive-normal", "F25-montecarlo-additive-rectangular"})
    void should_match_the_reference_case_when_four_are_added(String file) {
        FitCase c = FitCase.read("checks/fitup/" + file);
        List<Draw> draws = new ArrayList<>();
        for (Node n : c.inputs().get("inputs").items()) {
            draws.add(new Draw.Single(
                    "X" + (draws.size() + 1),
                    Distribution.ofStandardDeviation(
                            n.text("distribution").equals("normal") ? Shape.NORMAL : Shape.RECTANGULAR,
                            n.number("mean"),
                            n.number("std"))));
        }
        MonteCarloResult r = MonteCarloCalculator.calculate(
                MonteCarlo.of(Formula.read(c.inputs().text("model"), FOUR), draws, 1));
        c.holds("estimate", c.expected(), r.estimate());
        c.holds("standardUncertainty", c.expected(), r.standardUncertainty());
        c.holds("low", c.expected(), r.symmetric().low());
        c.holds("high", c.expected(), r.symmetric().high());
        assertTrue(r.settled());
        assertTrue(r.blocks() >= 2 && r.blocks() <= 200);
    }

    /** A square of a normal falls from zero: its shortest interval begins there, the symmetric one above it. */
    @Test
    void should_begin_the_shortest_interval_at_the_peak_when_the_spread_is_one_sided() {
        Formula square = Formula.read("X*X", List.of("X"));
        List<Draw> draws = List.of(new Draw.Single("X", Distribution.normal(0, 1)));
        MonteCarloResult r = MonteCarloCalculator.calculate(new MonteCarlo(
                square,
                draws,
                0.95,
                MonteCarlo.Interval.SHORTEST,
                2,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                3));
        // Chi-square with one degree, printed: 95 % below 3.841; 2.5 % below 0.000982, 97.5 % below 5.024.
        assertEquals(0, r.shortest().low(), 1e-4);
        assertEquals(3.841, r.shortest().high(), 0.08);
        assertEquals(0.000982, r.symmetric().low(), 2e-4);
        assertEquals(5.024, r.symmetric().high(), 0.12);
    }

    /** Sum of two arcsines or triangles, a disc's components, correlated normals: variances are exact. */
    @ParameterizedTest
    @CsvSource({"RECTANGULAR,3", "TRIANGULAR,6", "ARCSINE,2", "NORMAL,1"})
    void should_have_the_variance_of_its_shape_when_drawn(Shape shape, double divisor) {
        List<Draw> draws = List.of(
                new Draw.Single("A", new Distribution(shape, 5, 0.6)),
                new Draw.Disc("B", "C", 1, 2, 0.4),
                new Draw.Correlated(
                        List.of("D", "E"), List.of(0.0, 0.0), List.of(List.of(0.04, 0.04), List.of(0.04, 0.04))));
        MonteCarloResult r = MonteCarloCalculator.calculate(
                MonteCarlo.of(Formula.read("A + B - C + D + E", List.of("A", "B", "C", "D", "E")), draws, 9));
        assertEquals(4, r.estimate(), 0.02);
        assertEquals(Math.sqrt(0.36 / divisor + 2 * 0.04 + 0.16), r.standardUncertainty(), 0.01, "disc: r2/4 each way");
    }

    @Test
    void should_not_depend_on_the_number_of_threads() throws Exception {
        MonteCarlo q =
                MonteCarlo.of(Formula.sum(FOUR), four(Shape.RECTANGULAR), 77).within(-3, 3);
        MonteCarloResult alone = in(1, q);
        assertEquals(alone, in(2, q));
        assertEquals(alone, in(7, q));
        assertEquals(alone.seed(), 77);
    }

    private static MonteCarloResult in(int threads, MonteCarlo q) throws Exception {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> MonteCarloCalculator.calculate(q)).get();
        } finally {
            pool.shutdown();
        }
    }

    @Test
    void should_count_a_chance_with_its_error_when_limits_are_given() {
        MonteCarloResult r = MonteCarloCalculator.calculate(
                MonteCarlo.of(Formula.sum(FOUR), four(Shape.NORMAL), 5).within(-2, 2));
        Chance c = r.inside().orElseThrow();
        assertEquals(0.682689, c.probability(), 0.005);
        assertTrue(2 * c.standardError() < 0.005);
        assertEquals("68 %", c.text());
    }

    @Test
    void should_say_no_more_than_the_trials_show_when_none_is_outside() {
        Chance c = MonteCarloCalculator.calculate(MonteCarlo.of(Formula.sum(FOUR), four(Shape.RECTANGULAR), 5)
                        .within(-8, 8))
                .inside()
                .orElseThrow();
        assertTrue(c.isAll());
        assertEquals(1 - 3.0 / c.trials(), c.least());
        assertTrue(c.text().startsWith("above"), c.text());
    }

    @Test
    void should_draw_three_blocks_when_one_digit_is_asked() {
        MonteCarloResult r = MonteCarloCalculator.calculate(new MonteCarlo(
                Formula.sum(FOUR),
                four(Shape.NORMAL),
                0.95,
                MonteCarlo.Interval.SYMMETRIC,
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                1));
        assertEquals(3, r.blocks());
    }

    @Test
    void should_be_half_a_unit_of_the_last_digit() {
        assertEquals(0.05, MonteCarloCalculator.halfDigit(2.0, 2), 1e-15);
        assertEquals(0.005, MonteCarloCalculator.halfDigit(0.13, 2), 1e-15);
        assertEquals(0.05, MonteCarloCalculator.halfDigit(0.9996, 2), 1e-15);
        assertEquals(5, MonteCarloCalculator.halfDigit(14, 1), 1e-15);
    }

    @Test
    void should_settle_at_once_when_nothing_varies() {
        MonteCarloResult r = MonteCarloCalculator.calculate(MonteCarlo.of(
                Formula.read("2*X", List.of("X")), List.of(new Draw.Single("X", Distribution.normal(3, 0))), 1));
        assertEquals(6, r.estimate());
        assertEquals(0, r.standardUncertainty());
        assertTrue(r.settled());
    }

    @ParameterizedTest
    @CsvSource({
        "1 + 2*3, 7",
        "-(1 - 4)*2, 6",
        "a - b - 1, -2",
        "8/4/2, 1",
        "a*cos(b*0) + sqrt(2*2), 3",
        "1.5e1 - .5, 14.5",
        "- a + b, 1"
    })
    void should_follow_the_order_of_arithmetic(String text, double value) {
        assertEquals(value, Formula.read(text, List.of("a", "b")).at(List.of(1.0, 2.0)), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a +", "a b", "(a", "a + c", "log(a)", "a ^ 2", "2 ** a", "a)"})
    void should_say_where_when_a_formula_cannot_be_read(String text) {
        String m = assertThrows(IllegalArgumentException.class, () -> Formula.read(text, List.of("a", "b")))
                .getMessage();
        assertTrue(String.valueOf(m).matches("(?s).*character.*expected.*"), m);
    }

    @Test
    void should_refuse_brackets_without_end() {
        assertThrows(IllegalArgumentException.class, () -> Formula.read("(".repeat(100_000), List.of()));
    }

    /** End-gauge comparison, JCGM 100 annex H.1. */
    @Test
    void should_match_the_end_gauge_when_inputs_are_independent() {
        Row row = CheckTable.rows("other/uncertainty.csv").get(0);
        List<Input> in = List.of(
                input("ls", row.raw("standard_length"), Distribution.normal(0, row.raw("u_standard"))),
                input(
                        "d",
                        row.raw("difference"),
                        Distribution.normal(0, row.raw("u_difference_repeat")),
                        Distribution.normal(0, row.raw("u_difference_random")),
                        Distribution.normal(0, row.raw("u_difference_systematic"))),
                input(
                        "alpha",
                        row.raw("expansion"),
                        Distribution.rectangular(0, row.raw("expansion_half_width_rectangular"))),
                input("da", 0, Distribution.rectangular(0, row.raw("expansion_difference_half_width_rectangular"))),
                input("dt", 0, Distribution.rectangular(0, row.raw("temperature_difference_half_width_rectangular"))),
                input(
                        "theta",
                        row.raw("mean_temperature_deviation"),
                        Distribution.normal(0, row.raw("u_mean_temperature")),
                        new Distribution(Shape.ARCSINE, 0, row.raw("cyclic_amplitude_arcsine"))));
        Outcome o = propagate(in, List.of(), "ls + d - ls*(da*theta + alpha*dt)")
                .results()
                .get(0);
        row.holds("length", o.value());
        row.holds("u", o.standardUncertainty());
        row.holds("component_temperature_difference", o.components().get(4).standardUncertainty());
        row.holds("component_expansion_difference", o.components().get(3).standardUncertainty());
    }

    /** Resistance and reactance, JCGM 100 annex H.2. */
    @Test
    void should_match_the_impedance_when_inputs_are_correlated() {
        Row row = CheckTable.rows("other/uncertainty.csv").get(1);
        List<Input> in = List.of(
                input("V", row.raw("V"), Distribution.normal(0, row.raw("u_V"))),
                input("I", row.raw("I"), Distribution.normal(0, row.raw("u_I"))),
                input("phi", row.raw("phi"), Distribution.normal(0, row.raw("u_phi"))));
        List<Correlation> together = List.of(
                new Correlation("V", "I", row.raw("r_V_I")),
                new Correlation("V", "phi", row.raw("r_V_phi")),
                new Correlation("phi", "I", row.raw("r_I_phi")));
        FirstOrderResult r = propagate(in, together, "V*cos(phi)/I", "V*sin(phi)/I", "V/I");
        List<String> names = List.of("R", "X", "Z");
        for (int k = 0; k < 3; k++) {
            row.holds(names.get(k), r.results().get(k).value());
            row.holds("u_" + names.get(k), r.results().get(k).standardUncertainty());
        }
        row.holds("r_R_X", r.correlations().get(0).get(1));
        row.holds("r_R_Z", r.correlations().get(0).get(2));
        row.holds("r_X_Z", r.correlations().get(2).get(1));
        assertTrue(r.findings().isEmpty());
    }

    @Test
    void should_warn_when_the_model_bends_over_the_uncertainty() {
        FirstOrderResult r = propagate(List.of(input("a", 0.1, Distribution.normal(0, 1))), List.of(), "a*a");
        assertFalse(r.findings().isEmpty());
    }

    private static Input input(String name, double value, Distribution... parts) {
        return new Input(name, value, List.of(parts));
    }

    private static FirstOrderResult propagate(List<Input> in, List<Correlation> together, String... formulas) {
        List<String> names = in.stream().map(Input::name).toList();
        return FirstOrderCalculator.calculate(new FirstOrder(
                in,
                together,
                IntStream.range(0, formulas.length)
                        .mapToObj(k -> new FirstOrder.Result("y" + k, Formula.read(formulas[k], names)))
                        .toList()));
    }

    @Test
    void should_match_the_printed_stack_when_seven_dimensions_add_up() {
        ToleranceStackResult r = ToleranceStackCalculator.calculate(new ToleranceStack(List.of(
                new ToleranceStack.Dimension("shaft", 1, 208, 0.036, -0.036),
                new ToleranceStack.Dimension("retainer ring", -1, 1.75, 0, -0.06),
                new ToleranceStack.Dimension("bearing", -1, 23, 0, -0.12),
                new ToleranceStack.Dimension("sleeve", 1, 20, 0.026, -0.026),
                new ToleranceStack.Dimension("case", -1, 200, 0.145, -0.145),
                new ToleranceStack.Dimension("sleeve", 1, 20, 0.026, -0.026),
                new ToleranceStack.Dimension("bearing", -1, 23, 0, -0.12))));
        // Row STK-01 of checks/other/tolerance_stack.csv; its source is named there.
        assertEquals(0.25, r.nominal(), 1e-9);
        assertEquals(0.017, r.lower(), 1e-9);
        assertEquals(0.783, r.upper(), 1e-9);
        assertEquals(0.4, r.mean(), 1e-9);
        assertEquals(0.383, r.worstCase(), 1e-9);
        assertEquals(0.17825, r.rss(), 6e-6);
        assertEquals(0.24046, r.inflatedRss(), 6e-6);
        assertEquals(1, r.shares().stream().mapToDouble(Double::doubleValue).sum(), 1e-12);
    }

    @Test
    void should_inflate_nothing_when_there_is_one_dimension() {
        ToleranceStackResult r = ToleranceStackCalculator.calculate(
                new ToleranceStack(List.of(new ToleranceStack.Dimension("a", -2, 5, 0.1, -0.3))));
        assertEquals(r.worstCase(), r.inflatedRss(), 1e-15);
        assertEquals(-10 + 0.6, r.upper(), 1e-12);
        assertEquals(-10 - 0.2, r.lower(), 1e-12);
    }
}

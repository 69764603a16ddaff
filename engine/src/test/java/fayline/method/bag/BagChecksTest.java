package fayline.method.bag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.checks.CheckTable;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of the bagging table, and properties; sources stand in the table. */
class BagChecksTest {
    static List<CheckTable.Row> rows() {
        return CheckTable.rows("shop/bagging.csv");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void should_hold_when_computed(CheckTable.Row row) {
        if (row.asks("area")) {
            row.holds("area", cover(rectangle(row), row.si("margin"), 1));
        } else if (row.asks("area_with_margin")) {
            Cover.Shape shape = new Cover.Convex(new Area(row.si("area")), new Length(row.si("perimeter")));
            row.holds("area_with_margin", cover(shape, row.si("margin"), 1));
        } else if (row.asks("strips")) {
            StripsResult.Lay lay = StripsCalculator.calculate(new Strips(
                            new Length(row.si("needed_width")),
                            new Length(row.si("length")),
                            new Length(row.si("roll_width")),
                            new Length(row.si("lap"))))
                    .along()
                    .orElseThrow();
            row.holds("strips", lay.strips());
            row.holds("run", lay.run().metres());
        } else if (row.asks("tape")) {
            BagEdgeResult edge = BagEdgeCalculator.calculate(BagEdge.tape(
                    side(row, 0),
                    side(row, 1),
                    (int) row.raw("pleats"),
                    new Length(row.si("pleat_height")),
                    new Length(row.si("roll_length")),
                    row.raw("spare")));
            row.holds("tape", edge.tape().orElseThrow().metres());
            row.holds("rolls", edge.rolls().orElseThrow());
        } else if (row.asks("film")) {
            BagEdgeResult edge = BagEdgeCalculator.calculate(BagEdge.film(
                    side(row, 0),
                    side(row, 1),
                    new Length(row.si("hand_edge")),
                    (int) row.raw("pleats_per_long_side"),
                    (int) row.raw("pleats_per_short_side"),
                    new Length(row.si("pleat_height"))));
            row.holds(
                    "film",
                    List.of(
                            edge.filmLength().orElseThrow().metres(),
                            edge.filmWidth().orElseThrow().metres()));
            row.holds("film_area", edge.filmArea().orElseThrow().squareMetres());
        } else {
            stack(row);
        }
    }

    private static void stack(CheckTable.Row row) {
        BagStackResult stack = BagStackCalculator.calculate(new BagStack(
                rectangle(row),
                row.raw("surface_factor"),
                new BagStack.Margins(
                        new Length(row.si("peel_margin")),
                        new Length(row.si("film_margin")),
                        new Length(row.si("breather_margin")),
                        new Length(0.06),
                        new Length(0.05)),
                0,
                new Length(0.1),
                new Length(7.6),
                0));
        row.holds("peel_ply", stack.peelPly().orElseThrow().squareMetres());
        row.holds("perforated_film", stack.perforatedFilm().orElseThrow().squareMetres());
        row.holds("breather", stack.breather().orElseThrow().squareMetres());
    }

    private static Cover.Rectangle rectangle(CheckTable.Row row) {
        return new Cover.Rectangle(new Length(row.si("length")), new Length(row.si("width")));
    }

    private static Length side(CheckTable.Row row, int i) {
        return new Length(row.list("tape_rectangle").get(i));
    }

    private static double cover(Cover.Shape shape, double margin, double factor) {
        return CoverCalculator.calculate(new Cover(shape, new Length(margin), factor))
                .area()
                .orElseThrow()
                .squareMetres();
    }

    @Test
    void should_cover_the_width_with_just_enough_strips_when_laid_at_random() {
        Random random = new Random(3);
        for (int i = 0; i < 500; i++) {
            double w = 0.2 + 4 * random.nextDouble();
            double roll = 0.6 + random.nextDouble();
            double lap = 0.1 * random.nextDouble();
            int n = StripsCalculator.calculate(
                            new Strips(new Length(w), new Length(2), new Length(roll), new Length(lap)))
                    .along()
                    .orElseThrow()
                    .strips();
            assertTrue(n * roll - (n - 1) * lap >= w - 1e-6, "covered");
            assertTrue(n == 1 || (n - 1) * roll - (n - 2) * lap < w, "not one too many");
        }
    }

    @Test
    void should_give_the_same_area_when_measured_in_inches() {
        double metric = cover(new Cover.Rectangle(new Length(0.508), new Length(0.254)), 0.0508, 1.1);
        double inch = cover(new Cover.Rectangle(Length.ofInches(20), Length.ofInches(10)), 2 * 0.0254, 1.1);
        assertEquals(metric, inch, 1e-12);
    }

    @Test
    void should_count_every_pleat_once_when_spread_over_the_sides() {
        for (int pleats = 0; pleats < 40; pleats++) {
            BagStackResult r = BagStackCalculator.calculate(BagStack.of(
                    new Cover.Convex(new Area(2.2), new Length(7.1)), 1, pleats, Length.ofMillimetres(150)));
            double bare = BagStackCalculator.calculate(BagStack.of(
                            new Cover.Convex(new Area(2.2), new Length(7.1)), 1, 0, Length.ofMillimetres(150)))
                    .tape()
                    .orElseThrow()
                    .metres();
            assertEquals(bare + 0.3 * pleats * 1.05, r.tape().orElseThrow().metres(), 1e-9);
        }
    }
}

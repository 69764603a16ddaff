package fayline.method.fitup.mirror;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.checks.FitCase;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.motion.MoveWords;
import fayline.method.fitup.motion.Side;
import fayline.method.fitup.outline.EdgePoint;
import fayline.method.fitup.outline.OutlineCalculator;
import fayline.method.fitup.outline.PartOutline;
import fayline.method.fitup.outline.RoundedPolygon;
import fayline.method.fitup.scheme.Locator;
import fayline.method.fitup.scheme.Scheme;
import fayline.method.fitup.scheme.Stop;
import fayline.method.fitup.shim.IndexPoint;
import fayline.method.fitup.shim.ShimCalculator;
import fayline.method.fitup.shim.ShimQuestion;
import fayline.method.fitup.shim.ShimResult;
import fayline.method.fitup.shim.ShimStock;
import fayline.method.fitup.space.FlushMove;
import fayline.method.fitup.trim.TrimCalculator;
import fayline.method.fitup.trim.TrimGoal;
import fayline.method.fitup.trim.TrimQuestion;
import fayline.method.fitup.trim.TrimResult;
import fayline.method.fitup.trim.TrimRow;
import fayline.method.fitup.trim.TrimRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The reference mirror, and that the mirror of an answer is the answer of the mirror. */
class OppositeHandTest {
    private static final String[] EDGES = {"lower", "aft", "upper", "forward"};

    @Test
    void should_hold_the_reference_mirror() {
        FitCase c = FitCase.read("checks/fitup/F35-mirror-opposite-hand");
        List<FitCase.Node> given = c.inputs().get("stations").items();
        List<FitRow> there = OppositeHand.rows(given.stream()
                .map(s -> FitRow.of(
                        new Station(
                                s.text("id"), new Spot(s.number("x"), s.number("y")), s.number("nx"), s.number("ny")),
                        s.number("gap"),
                        2.5,
                        3,
                        3.5))
                .toList());
        List<Double> trims =
                OppositeHand.turned(given.stream().map(s -> s.number("trim")).toList());
        List<FitCase.Node> wanted = c.expected().get("stations").items();
        for (int i = 0; i < wanted.size(); i++) {
            Station s = there.get(i).station();
            assertEquals(wanted.get(i).text("id"), s.id());
            c.holds("x", wanted.get(i), s.at().xMm());
            c.holds("y", wanted.get(i), s.at().yMm());
            c.holds("nx", wanted.get(i), s.nx());
            c.holds("ny", wanted.get(i), s.ny());
            c.holds("gap", wanted.get(i), there.get(i).gapMm());
            c.holds("trim", wanted.get(i), trims.get(i));
        }
        FitCase.Node m = c.inputs().get("move");
        Move move = OppositeHand.of(new Move(m.number("dx"), m.number("dy"), Math.toRadians(m.number("thetaDeg"))));
        c.holds("dx", c.expected().get("move"), move.dxMm());
        c.holds("dy", c.expected().get("move"), move.dyMm());
        c.holds("thetaDeg", c.expected().get("move"), move.turnDeg());
        FitCase.Node f = c.inputs().get("flushMove");
        FlushMove flush = OppositeHand.of(
                new FlushMove(f.number("dz"), Math.toRadians(f.number("rxDeg")), Math.toRadians(f.number("ryDeg"))));
        c.holds("dz", c.expected().get("flushMove"), flush.dzMm());
        c.holds("rxDeg", c.expected().get("flushMove"), Math.toDegrees(flush.rxRad()));
        c.holds("ryDeg", c.expected().get("flushMove"), Math.toDegrees(flush.ryRad()));
    }

    private static List<FitRow> seeded(long seed) {
        Random random = new Random(seed);
        List<FitRow> rows = new ArrayList<>();
        double[][] sides = {{0, -1}, {1, 0}, {0, 1}, {-1, 0}};
        for (int e = 0; e < 4; e++) {
            for (int k = 0; k < 3; k++) {
                double nx = sides[e][0];
                double ny = sides[e][1];
                double along = 150 * (k - 1) + 60 * (random.nextDouble() - 0.5);
                rows.add(new FitRow(
                        new Station("S" + (3 * e + k), new Spot(300 * nx - along * ny, 250 * ny + along * nx), nx, ny),
                        1.8 + 1.5 * random.nextDouble(),
                        2.5,
                        3,
                        3.5,
                        OptionalDouble.empty(),
                        1,
                        EDGES[e]));
            }
        }
        return rows;
    }

    @Test
    void should_say_the_same_words_on_both_hands() {
        Move move = new Move(0.6, -0.2, 0.0021);
        Spot pivot = new Spot(12, -7);
        Spot corner = new Spot(300, 200);
        MoveWords left = new MoveWords(Side.LEFT, pivot, "the middle");
        MoveWords right = new MoveWords(Side.RIGHT, OppositeHand.of(pivot), "the middle");
        assertEquals(
                left.sentence(move).toString(),
                right.sentence(OppositeHand.of(move)).toString());
        assertEquals(
                left.at(move, corner, "upper aft corner").toString(),
                right.at(OppositeHand.of(move), OppositeHand.of(corner), "upper aft corner")
                        .toString());
        assertTrue(left.sentence(move).toString().contains("0.6 mm aft, 0.2 mm down, turn 0.12 deg nose-down"));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void should_undo_itself_and_keep_gaps_under_the_mirrored_move(long seed) {
        Move move = new Move(0.4, -0.3, 0.002);
        Spot pivot = new Spot(12, -7);
        List<FitRow> here = seeded(seed);
        List<FitRow> there = OppositeHand.rows(here);
        assertEquals(here, OppositeHand.rows(there));
        assertEquals(move, OppositeHand.of(OppositeHand.of(move)));
        for (int i = 0; i < here.size(); i++) {
            assertEquals(
                    here.get(i).gapAfterMm(move, pivot),
                    there.get(here.size() - 1 - i).gapAfterMm(OppositeHand.of(move), OppositeHand.of(pivot)),
                    1e-12);
        }
        MoveLimits limits = new MoveLimits(-1, 2, -3, 4, -0.01, 0.02);
        assertEquals(new MoveLimits(-2, 1, -3, 4, -0.02, 0.01), OppositeHand.of(limits));
        assertEquals(limits, OppositeHand.of(OppositeHand.of(limits)));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void should_trim_the_mirror_image_as_the_mirror_of_the_trim(long seed) {
        TrimResult.Cut here = cut(seeded(seed));
        TrimResult.Cut there = cut(OppositeHand.rows(seeded(seed)));
        assertEquals(here.areaMm2(), there.areaMm2(), 1e-3);
        assertEquals(here.unique(), there.unique());
        assertEquals(here.edges().size(), there.edges().size());
        if (here.unique()) {
            List<Double> turned = OppositeHand.turned(there.depthsMm());
            for (int i = 0; i < turned.size(); i++) {
                assertEquals(here.depthsMm().get(i), turned.get(i), 2e-4);
            }
        }
    }

    private static TrimResult.Cut cut(List<FitRow> rows) {
        return TrimCalculator.calculate(new TrimQuestion(
                        rows.stream().map(r -> new TrimRow(r, 150, 3, 0)).toList(),
                        List.of(),
                        new Spot(0, 0),
                        MoveLimits.of(5, 5, Math.toRadians(1)),
                        new TrimRules(List.of(EDGES), TrimRules.SLOPE, 0, TrimGoal.LEAST_AREA)))
                .cut()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void should_shim_the_mirror_image_alike(long seed) {
        List<FitRow> rows = seeded(seed);
        List<IndexPoint> points = List.of(
                IndexPoint.shim(new Station("J1", new Spot(-200, -260), 0, -1), 2.7),
                IndexPoint.shim(new Station("J2", new Spot(190, -255), 0.1, -1), 3.4),
                IndexPoint.shim(new Station("J3", new Spot(-310, 20), -1, 0.05), 3.1));
        Move move = new Move(0.4, -0.3, 0.001);
        ShimStock stock = new ShimStock(List.of(0.1, 0.2, 0.5, 1.0, 2.0), 4, 0);
        Spot pivot = new Spot(5, 3);
        ShimResult here = ShimCalculator.calculate(new ShimQuestion(points, move, pivot, Optional.of(stock), rows));
        ShimResult there = ShimCalculator.calculate(new ShimQuestion(
                points.stream().map(OppositeHand::of).toList(),
                OppositeHand.of(move),
                OppositeHand.of(pivot),
                Optional.of(stock),
                OppositeHand.rows(rows)));
        for (int j = 0; j < 3; j++) {
            assertEquals(here.exactMm().get(j), there.exactMm().get(j), 1e-12);
        }
        assertEquals(
                here.best().orElseThrow().stacks(), there.best().orElseThrow().stacks());
        assertEquals(here.condition(), there.condition(), 1e-9);
    }

    @Test
    void should_take_stations_to_their_place_on_the_mirrored_outline() {
        PartOutline here = OutlineCalculator.calculate(new RoundedPolygon(
                        List.of(new Spot(-380, -230), new Spot(360, -260), new Spot(300, 240), new Spot(-300, 250)),
                        List.of(70.0, 60.0, 80.0, 90.0)))
                .outline()
                .orElseThrow();
        PartOutline there = OppositeHand.of(here);
        for (double s = 5; s < here.perimeterMm(); s += 97) {
            Station station = here.station("A", s, "").orElseThrow();
            Station image = OppositeHand.of(station);
            EdgePoint p = there.at(here.mirroredMm(s));
            assertEquals(image.at().xMm(), p.at().xMm(), 1e-9);
            assertEquals(image.at().yMm(), p.at().yMm(), 1e-9);
            assertEquals(image.nx(), p.nx(), 1e-9);
            assertEquals(image.ny(), p.ny(), 1e-9);
        }
    }

    @Test
    void should_mirror_every_kind_of_locator() {
        Stop stop = new Stop(new Station("J1", new Spot(100, 20), 1, 0.5), 30, 2);
        List<Locator> all = List.of(
                new Locator.TapeMark(stop, true, OptionalDouble.of(0.5), OptionalDouble.empty()),
                new Locator.Spacer(stop, OptionalDouble.of(0.06), 0.1),
                new Locator.Block(List.of(stop), OptionalDouble.of(0.03), OptionalDouble.of(0.08)),
                new Locator.Pins("pin", new Spot(1, 2), new Spot(3, 5), OptionalDouble.of(0.1), OptionalDouble.empty()),
                new Locator.Together(List.of(stop), List.of(List.of(0.01))));
        Scheme scheme = Scheme.of("mixed", all);
        Scheme there = OppositeHand.of(scheme);
        assertEquals(
                -100,
                ((Locator.Spacer) there.locators().get(1)).stop().contact().at().xMm());
        assertEquals(new Spot(-3, 5), ((Locator.Pins) there.locators().get(3)).pin2());
        assertTrue(((Locator.TapeMark) there.locators().get(0)).stop().contact().nx() < 0);
        // a normal made a unit vector twice may differ in the last place
        assertEquals(OppositeHand.of(there).locators().get(3), scheme.locators().get(3));
        assertEquals(
                30, ((Locator.Block) there.locators().get(2)).stops().get(0).travelMm());
        assertEquals(
                List.of(List.of(0.01)), ((Locator.Together) there.locators().get(4)).covarianceMm2());
    }
}

package fayline.flow.result.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.finding.Finding;
import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitCutting;
import fayline.flow.project.fit.FitGauge;
import fayline.flow.project.fit.FitHolding;
import fayline.flow.project.fit.FitState;
import fayline.flow.project.fit.FitStation;
import fayline.flow.project.fit.FitWanted;
import fayline.flow.reading.FitReading;
import fayline.flow.reading.FitReading.Kind;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.mirror.OppositeHand;
import fayline.method.fitup.motion.Side;
import fayline.method.fitup.move.MoveStatus;
import fayline.method.fitup.outline.RoundedPolygon;
import fayline.method.fitup.scheme.Locator;
import fayline.method.fitup.scheme.Scheme;
import fayline.method.fitup.scheme.Stop;
import fayline.method.fitup.shim.ShimStock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Invented panels; what they should answer is reckoned by hand beside each check. */
class FitCalculatorTest {
    private static final Instant MORNING = Instant.parse("2026-03-03T06:00:00Z");

    /** 640 by 420 mm, sharp corners, counter-clockwise from the lower forward one; stations as on a window. */
    private static final Map<String, Spot> PLACES = places();

    private static Map<String, Spot> places() {
        Map<String, Spot> all = new LinkedHashMap<>();
        all.put("L1", new Spot(-200, -210));
        all.put("L2", new Spot(200, -210));
        all.put("A1", new Spot(320, -100));
        all.put("A2", new Spot(320, 100));
        all.put("U1", new Spot(200, 210));
        all.put("U2", new Spot(-200, 210));
        all.put("F1", new Spot(-320, 100));
        all.put("F2", new Spot(-320, -100));
        return all;
    }

    private static Entered<Length> mm(String text) {
        return QuantityParser.parse(text, QuantityKind.LENGTH);
    }

    private static Fit fit(List<FitState> states, Optional<FitGauge> gauge, FitHolding holding) {
        return new Fit(
                "panel",
                "Panel",
                Optional.of("panel-left"),
                List.of("hull"),
                new FitWanted(mm("3 mm"), mm("0.5 mm"), mm("0 mm"), mm("0.5 mm"), Optional.empty()),
                PLACES.entrySet().stream()
                        .map(e -> new FitStation(
                                e.getKey(),
                                "",
                                Optional.of(e.getValue()),
                                Optional.empty(),
                                edge(e.getKey()),
                                "",
                                Optional.empty(),
                                Optional.empty(),
                                1))
                        .toList(),
                Optional.of(new RoundedPolygon(
                        List.of(new Spot(-320, -210), new Spot(320, -210), new Spot(320, 210), new Spot(-320, 210)),
                        List.of(0.0, 0.0, 0.0, 0.0))),
                List.of(new Fit.Mark("upper aft corner", new Spot(320, 210))),
                MoveLimits.of(5, 5, Math.toRadians(1)),
                gauge,
                states,
                holding,
                FitCutting.ANY,
                Optional.empty());
    }

    private static String edge(String id) {
        return switch (id.charAt(0)) {
            case 'L' -> "lower";
            case 'A' -> "aft";
            case 'U' -> "upper";
            default -> "forward";
        };
    }

    private static List<FitReading> read(String state, Map<String, Double> gaps) {
        List<FitReading> all = new ArrayList<>();
        gaps.forEach((id, g) -> all.add(new FitReading(
                all.size(),
                MORNING,
                "runa",
                Kind.GAP,
                id,
                state,
                g + " mm",
                g,
                OptionalDouble.empty(),
                "",
                OptionalDouble.empty(),
                1)));
        return all;
    }

    /** Gaps of 3 mm all round, had the part been moved by this from its place. */
    private static Map<String, Double> gapsAfter(Move move) {
        Map<String, Double> all = new LinkedHashMap<>();
        PLACES.forEach((id, at) -> {
            double nx = edge(id).equals("aft") ? 1 : edge(id).equals("forward") ? -1 : 0;
            double ny = edge(id).equals("upper") ? 1 : edge(id).equals("lower") ? -1 : 0;
            all.put(id, FitRow.of(new Station(id, at, nx, ny), 3, 2.5, 3, 3.5).gapAfterMm(move, new Spot(0, 0)));
        });
        return all;
    }

    private static FitResult answer(Fit fit, List<FitReading> readings, List<LearnedChange> learned, boolean assume) {
        return FitCalculator.calculate(new FitQuestion(fit, Side.LEFT, readings, learned, assume));
    }

    private static Stop stop(String id, double x, double y, double nx, double ny) {
        return Stop.fixed(new Station(id, new Spot(x, y), nx, ny));
    }

    private static FitHolding holding() {
        List<Stop> stops =
                List.of(stop("P1", -200, -210, 0, -1), stop("P2", 200, -210, 0, -1), stop("P3", 320, 0, 1, 0));
        return new FitHolding(
                stops.stream()
                        .map(s -> new FitHolding.Point(s, OptionalDouble.empty()))
                        .toList(),
                List.of(Scheme.of(
                        "spacers",
                        stops.stream()
                                .map(s -> (Locator) new Locator.Spacer(s, OptionalDouble.empty(), 0))
                                .toList())),
                "spacers",
                Optional.of(new ShimStock(List.of(0.5, 1.0, 2.0), 4, 0)));
    }

    @Test
    void should_tell_the_move_and_the_shims_when_the_part_lies_too_far_forward() {
        // The part lies 0.6 mm forward of its place: aft gap 3.6, forward gap 2.4. Moved 0.6 aft, the lower spacers are
        // 3.0 and
        // the aft one 3.6 - 0.6 = 3.0.
        FitResult r = answer(
                fit(FitState.USUAL, Optional.empty(), holding()),
                read("trimmed", gapsAfter(new Move(-0.6, 0, 0))),
                List.of(),
                false);
        FitAdvice a = r.advice().orElseThrow();
        assertThat(a.best().status()).isEqualTo(MoveStatus.OK);
        assertThat(a.sentence()).asString().startsWith("0.6 mm aft");
        assertThat(a.atMarks()).map(String::valueOf).containsExactly("upper aft corner goes 0.6 mm aft");
        assertThat(a.shims().orElseThrow().exactMm())
                .allSatisfy(s -> assertThat(s).isCloseTo(3, within(1e-6)));
        assertThat(a.trim()).isEmpty();
        assertThat(r.edges()).containsEntry("A1", "aft").containsEntry("L2", "lower");
    }

    @Test
    void should_show_no_chance_and_say_what_is_missing_until_defaults_are_taken() {
        List<FitReading> readings = read("trimmed", gapsAfter(Move.NONE));
        Fit fit = fit(FitState.USUAL, Optional.empty(), holding());
        FitResult unsure = answer(fit, readings, List.of(), false);
        assertThat(unsure.advice()
                        .orElseThrow()
                        .schemes()
                        .orElseThrow()
                        .schemes()
                        .get(0)
                        .odds())
                .isEmpty();
        assertThat(unsure.missing()).isNotEmpty();
        assertThat(unsure.assumed()).isEmpty();
        FitResult sure = answer(fit, readings, List.of(), true);
        assertThat(sure.advice()
                        .orElseThrow()
                        .schemes()
                        .orElseThrow()
                        .schemes()
                        .get(0)
                        .odds()
                        .orElseThrow()
                        .joint()
                        .probability())
                .isBetween(0.9, 1.0);
        assertThat(sure.assumed()).isNotEmpty();
        assertThat(sure.missing()).isEmpty();
    }

    @Test
    void should_aim_off_by_what_a_later_state_will_do_and_warn_by_its_name() {
        // Struts will push the part 0.4 mm aft. It lies perfect now, so it must go 0.4 mm forward.
        List<FitState> states = List.of(
                FitState.of("hung", "Hung"),
                new FitState(
                        "struts",
                        "Struts fitted",
                        Optional.of(
                                new FitState.Disturbance(new Move(0.4, 0, 0), 0, OptionalDouble.of(0.1), "drawing"))));
        FitResult r = answer(
                fit(states, Optional.empty(), FitHolding.NONE), read("hung", gapsAfter(Move.NONE)), List.of(), false);
        assertThat(r.advice().orElseThrow().sentence()).asString().startsWith("0.4 mm forward");
        assertThat(r.findings())
                .extracting(Finding::sentence)
                .anySatisfy(s -> assertThat(s)
                        .contains("Do not make the gap perfect now")
                        .contains("Struts fitted")
                        .contains("0.4 mm"));
        // Once struts are fitted and read, nothing is to come.
        FitResult later = answer(
                fit(states, Optional.empty(), FitHolding.NONE), read("struts", gapsAfter(Move.NONE)), List.of(), false);
        assertThat(later.later()).isEmpty();
        assertThat(later.advice().orElseThrow().sentence()).hasToString("Leave it where it is");
    }

    @Test
    void should_find_the_move_between_states_and_teach_the_opposite_hand_its_mirror() {
        Move hanging = new Move(0.3, -0.5, Math.toRadians(0.05));
        List<FitState> states = List.of(FitState.of("trimmed", "Trimmed"), FitState.of("hung", "Hung"));
        List<FitReading> readings = new ArrayList<>(read("trimmed", gapsAfter(Move.NONE)));
        readings.addAll(read("hung", gapsAfter(hanging)));
        FitResult left = answer(fit(states, Optional.empty(), FitHolding.NONE), readings, List.of(), false);
        StateChange change = left.states().get(1).since().orElseThrow();
        Move found = change.move().orElseThrow().inPlane();
        assertThat(found.dxMm()).isCloseTo(0.3, within(1e-3));
        assertThat(found.dyMm()).isCloseTo(-0.5, within(1e-3));
        assertThat(found.turnRad()).isCloseTo(hanging.turnRad(), within(1e-5));
        assertThat(change.restMm()).isCloseTo(0, within(1e-3));
        assertThat(change.words()).asString().contains("0.3 mm aft", "0.5 mm down", "nose-down");
        List<LearnedChange> taught = FitCalculator.teaches(left);
        assertThat(taught).hasSize(1);
        assertThat(taught.get(0).move().inPlane()).isEqualTo(OppositeHand.of(found));
        // The right hand, dry and perfect, is told to aim off the other way: in words the same on both hands.
        FitResult right = FitCalculator.calculate(new FitQuestion(
                fit(states, Optional.empty(), FitHolding.NONE),
                Side.RIGHT,
                read("trimmed", gapsAfter(Move.NONE)),
                taught,
                false));
        assertThat(right.later()).hasSize(1);
        assertThat(right.later().get(0).learned()).isTrue();
        assertThat(right.advice().orElseThrow().sentence())
                .asString()
                .contains("0.3 mm forward", "0.5 mm up", "nose-up");
    }

    @Test
    void should_offer_the_least_trim_when_the_part_is_too_long() {
        // Aft and forward gaps 2.1 each: 4.2 of the 5.0 needed, so 0.8 mm must come off, of a height of 420 mm.
        Map<String, Double> gaps = gapsAfter(Move.NONE);
        List.of("A1", "A2", "F1", "F2").forEach(id -> gaps.put(id, 2.1));
        FitResult r =
                answer(fit(FitState.USUAL, Optional.empty(), FitHolding.NONE), read("trimmed", gaps), List.of(), false);
        FitAdvice a = r.advice().orElseThrow();
        assertThat(a.best().status()).isEqualTo(MoveStatus.NO_FIT);
        assertThat(a.best().misfits()).isNotEmpty();
        assertThat(a.trim().orElseThrow().cut().orElseThrow().areaMm2()).isCloseTo(0.8 * 420, within(1e-3));
        assertThat(a.cut().orElseThrow().words()).asString().contains("0.8 mm").contains("edge only");
    }

    @Test
    void should_compare_the_bonded_part_with_what_was_foretold() {
        // It was foretold perfect and came out 0.5 mm aft, with spacers that hold to 0.06: the part moved as a whole.
        List<FitState> states = List.of(FitState.of("dry", "Dry fit"), FitState.of("bonded", "Bonded"));
        List<FitReading> readings = new ArrayList<>(read("dry", gapsAfter(Move.NONE)));
        readings.addAll(read("bonded", gapsAfter(new Move(0.5, 0, 0))));
        FitGauge gauge = new FitGauge("sticks", OptionalDouble.of(0.06), OptionalDouble.of(0.03));
        FitAfter after = answer(fit(states, Optional.of(gauge), holding()), readings, List.of(), true)
                .after()
                .orElseThrow();
        assertThat(after.words()).contains("moved as a whole");
        assertThat(after.result()
                        .orElseThrow()
                        .motion()
                        .orElseThrow()
                        .fitted()
                        .move()
                        .dxMm())
                .isCloseTo(0.5, within(0.02));
        double lesson = after.lesson().orElseThrow().move().dxMm();
        // The scheme was thought good to 0.06 mm fore and aft: variance 0.0036. Four stations see dx, before and after,
        // each to
        // 0.06 mm: 0.0018 together, and the scheme's own 0.0036: the fit is known to 0.0054. 0.5 * 36 / (36 + 54) =
        // 0.2.
        assertThat(lesson).isCloseTo(0.2, within(1e-3));
        assertThat(after.lessonWords()).asString().contains("mm aft").contains("one sample");
    }

    @Test
    void should_count_only_the_last_round_when_the_part_was_moved_and_read_again() {
        List<FitReading> readings = new ArrayList<>(read("trimmed", gapsAfter(new Move(-0.6, 0, 0))));
        for (FitReading r : read("trimmed", gapsAfter(Move.NONE))) {
            readings.add(new FitReading(
                    r.seq(),
                    r.at(),
                    r.by(),
                    r.kind(),
                    r.station(),
                    r.state(),
                    r.typed(),
                    r.valueMm(),
                    r.noGoMm(),
                    r.instrument(),
                    r.temperatureDegC(),
                    2));
        }
        FitResult r = answer(fit(FitState.USUAL, Optional.empty(), FitHolding.NONE), readings, List.of(), false);
        assertThat(r.advice().orElseThrow().sentence()).hasToString("Leave it where it is");
        assertThat(r.states().get(0).stations().get(0).typed()).hasSize(2);
    }

    @Test
    void should_say_how_sure_each_scheme_is_before_anything_is_read() {
        FitResult r = answer(fit(FitState.USUAL, Optional.empty(), holding()), List.of(), List.of(), true);
        assertThat(r.advice()).isEmpty();
        assertThat(r.beforehand().orElseThrow().best()).contains("spacers");
    }
}

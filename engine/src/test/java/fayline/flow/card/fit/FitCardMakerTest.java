package fayline.flow.card.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.finding.Severity;
import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.flow.plan.Plan;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Hand;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitCutting;
import fayline.flow.project.fit.FitGauge;
import fayline.flow.project.fit.FitHolding;
import fayline.flow.project.fit.FitState;
import fayline.flow.project.fit.FitStation;
import fayline.flow.project.fit.FitWanted;
import fayline.flow.reading.FitReading;
import fayline.flow.result.ProjectCalculator;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.SmallShop;
import fayline.flow.result.fit.FitCalculator;
import fayline.flow.result.fit.FitQuestion;
import fayline.flow.result.fit.frame.WidthsResult;
import fayline.flow.result.state.ShopState;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.motion.Side;
import fayline.method.fitup.scheme.Locator;
import fayline.method.fitup.scheme.Scheme;
import fayline.method.fitup.scheme.Stop;
import fayline.method.fitup.shim.ShimStock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** An invented lid in its opening, 600 by 400 mm; what its card must say is reckoned by hand beside each check. */
class FitCardMakerTest {
    private static final Definition SHOP = shop();
    private static final ProjectResult RESULT = ProjectCalculator.calculate(SHOP, ShopState.at(SmallShop.MONDAY));
    private static final Plan PLAN = new SerialPlanner().plan(RESULT.work());

    private static Definition shop() {
        SmallShop shop = new SmallShop();
        shop.moreParts.add(shop.shell("lid", Hand.LEFT, Optional.empty(), shop.shellMake));
        shop.joints.add(SmallShop.joint("seam", "shell", "lid"));
        return shop.build();
    }

    private static Entered<Length> mm(String text) {
        return QuantityParser.parse(text, QuantityKind.LENGTH);
    }

    private static FitStation station(String id, double x, double y, double nx, double ny) {
        return new FitStation(
                id,
                "at " + id,
                Optional.of(new Spot(x, y)),
                Optional.of(new FitStation.Normal(nx, ny)),
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                1);
    }

    private static Fit fit() {
        List<Stop> stops = List.of(
                Stop.fixed(new Station("P1", new Spot(-200, -200), 0, -1)),
                Stop.fixed(new Station("P2", new Spot(200, -200), 0, -1)),
                Stop.fixed(new Station("P3", new Spot(300, 0), 1, 0)));
        return new Fit(
                "lid-fit",
                "Lid",
                Optional.of("lid"),
                List.of("shell"),
                new FitWanted(mm("3 mm"), mm("0.5 mm"), mm("0 mm"), mm("0.5 mm"), Optional.of(mm("2.8 mm"))),
                List.of(
                        station("L1", -200, -200, 0, -1),
                        station("L2", 200, -200, 0, -1),
                        station("A1", 300, 0, 1, 0),
                        station("U1", 200, 200, 0, 1),
                        station("U2", -200, 200, 0, 1),
                        station("F1", -300, 0, -1, 0)),
                Optional.empty(),
                List.of(),
                MoveLimits.of(5, 5, Math.toRadians(1)),
                Optional.of(new FitGauge("taper gauge", OptionalDouble.of(0.06), OptionalDouble.of(0.05))),
                List.of(FitState.of("dry", "Dry"), FitState.of("bonded", "Bonded"), FitState.of("hung", "Hung")),
                new FitHolding(
                        stops.stream()
                                .map(s -> new FitHolding.Point(s, OptionalDouble.empty()))
                                .toList(),
                        List.of(Scheme.of(
                                "Spacers",
                                stops.stream()
                                        .map(s -> (Locator) new Locator.Spacer(s, OptionalDouble.of(0.06), 0))
                                        .toList())),
                        "Spacers",
                        Optional.of(new ShimStock(List.of(1.0, 2.0), 3, 0))),
                FitCutting.ANY,
                Optional.empty());
    }

    /** Gaps at L1, L2, A1, U1, U2, F1. */
    private static FitCard card(String state, double... gaps) {
        return card(state, List.of(), gaps);
    }

    /** The same with flushes at the first stations. */
    private static FitCard card(String state, List<Double> flushes, double... gaps) {
        List<FitReading> readings = new ArrayList<>();
        for (int i = 0; i < flushes.size(); i++) {
            readings.add(new FitReading(
                    100 + i,
                    SmallShop.MONDAY,
                    "runa",
                    FitReading.Kind.FLUSH,
                    fit().stations().get(i).id(),
                    state,
                    flushes.get(i) + " mm",
                    flushes.get(i),
                    OptionalDouble.empty(),
                    "",
                    OptionalDouble.of(20),
                    1));
        }
        for (int i = 0; i < gaps.length; i++) {
            readings.add(new FitReading(
                    i,
                    SmallShop.MONDAY,
                    "runa",
                    FitReading.Kind.GAP,
                    fit().stations().get(i).id(),
                    state,
                    gaps[i] + " mm",
                    gaps[i],
                    OptionalDouble.empty(),
                    "",
                    OptionalDouble.of(20),
                    1));
        }
        return FitCardMaker.make(
                SHOP,
                RESULT,
                PLAN,
                FitCalculator.calculate(new FitQuestion(fit(), Side.LEFT, readings, List.of(), false)),
                new WidthsResult(fit(), List.of()),
                Optional.empty());
    }

    @Test
    void should_say_go_and_how_to_set_it_when_a_move_brings_every_gap_inside() {
        // 0.6 mm too far forward and 0.4 mm too low: aft gap 3.6, forward 2.4, lower 2.6, upper 3.4.
        FitCard card = card("dry", 2.6, 2.6, 3.6, 3.4, 3.4, 2.4);
        assertThat(card.go()).as(card.reasons().toString()).isTrue();
        assertThat(card.set().orElseThrow().sentence())
                .asString()
                .contains("0.6 mm aft")
                .contains("0.4 mm up");
        // Every stop is then 3.0 from the part: 2 + 1 from stock.
        assertThat(card.holds()).extracting(FitCard.Hold::point).containsExactly("P1", "P2", "P3");
        assertThat(card.holds()).allSatisfy(h -> {
            assertThat(h.exactMm().orElseThrow()).isCloseTo(3, within(1e-6));
            assertThat(h.stack().orElseThrow().piecesMm()).containsExactly(2.0, 1.0);
            assertThat(h.forceN()).isEmpty();
        });
        assertThat(card.holds()).extracting(FitCard.Hold::near).containsExactly("L1", "L2", "A1");
        assertThat(card.located().orElseThrow().chance().orElseThrow()).isGreaterThan(0.9);
        // A gap never to be undercut of 2.8 narrows the limits of 2.5 to 3.5.
        assertThat(card.lastChance()).hasSize(6).allSatisfy(r -> {
            assertThat(r.expectedMm()).isCloseTo(3, within(1e-6));
            assertThat(r.lowerMm()).isEqualTo(2.8);
            assertThat(r.upperMm()).isEqualTo(3.5);
        });
        assertThat(card.lastChance().get(0).decides()).isTrue();
    }

    @Test
    void should_ask_for_the_flush_before_gel_and_say_how_a_flat_part_is_brought_flush() {
        // The whole lid stands 0.4 mm proud, read at four stations: 0.4 mm inboard brings every one of them to nought.
        FitCard card = card("dry", List.of(0.4, 0.4, 0.4, 0.4), 2.6, 2.6, 3.6, 3.4, 3.4, 2.4);
        assertThat(card.set().orElseThrow().atMarks()).map(String::valueOf).contains("Flush: 0.4 mm inboard");
        assertThat(card.lastChance()).allSatisfy(r -> {
            assertThat(r.flush().station()).isEqualTo(r.station());
            assertThat(r.flush().lowerMm()).isEqualTo(-0.5);
            assertThat(r.flush().upperMm()).isEqualTo(0.5);
        });
        assertThat(card.lastChance().stream().filter(r -> r.flush().readMm().isPresent()))
                .hasSize(4)
                .allSatisfy(r -> assertThat(r.flush().afterMm().orElseThrow()).isCloseTo(0, within(1e-9)));
        assertThat(card.lastChance().stream().filter(r -> r.flush().afterMm().isEmpty()))
                .hasSize(2);
    }

    @Test
    void should_take_adhesive_and_batches_from_the_joint_of_part_and_neighbour() {
        FitBond bond = card("dry", 3, 3, 3, 3, 3, 3).bond().orElseThrow();
        assertThat(bond.joint().id()).isEqualTo("seam");
        assertThat(bond.amounts()).isEqualTo(RESULT.joint("seam").orElseThrow());
        assertThat(bond.amounts().adhesive().kilograms()).isPositive();
        assertThat(bond.card().orElseThrow().mixes())
                .anyMatch(m -> m.list().system().equals("paste")
                        && m.list().batches() > 0
                        && m.list().total().kilograms()
                                >= bond.amounts().inJoint().kilograms());
        assertThat(bond.running()).isEmpty();
    }

    @Test
    void should_say_no_go_and_name_the_stations_when_no_move_does() {
        // The opening is 2 mm too wide along x: 4.0 at both ends is the best there is.
        FitCard card = card("dry", 3, 3, 5, 3, 3, 3);
        assertThat(card.go()).isFalse();
        assertThat(card.stops()).anyMatch(f -> f.sentence().startsWith("Station A1 ends at 4.0 mm"));
    }

    @Test
    void should_say_no_go_when_nothing_is_read_or_the_adhesive_has_set() {
        assertThat(card("dry").stops()).anyMatch(f -> f.sentence().startsWith("No gap is read yet"));
        assertThat(card("bonded", 3, 3, 3, 3, 3, 3).stops())
                .anyMatch(f -> f.sentence().startsWith("The adhesive has set"));
    }

    @Test
    void should_name_what_is_not_read_and_what_is_still_to_come() {
        FitCard card = card("dry", 3, 3, 3, 3);
        assertThat(card.reasons())
                .anyMatch(f -> f.severity() == Severity.CAUTION && f.sentence().contains("U2, F1"))
                .anyMatch(f -> f.severity() == Severity.NOTE && f.sentence().endsWith("Hung."));
    }

    private static Fit with(Hand hand, Optional<String> part, Optional<String> joint) {
        Fit f = fit();
        return new Fit(
                f.id(),
                f.name(),
                hand,
                part,
                joint,
                f.against(),
                f.wanted(),
                f.stations(),
                f.outline(),
                f.marks(),
                f.room(),
                f.gauge(),
                f.states(),
                f.holding(),
                f.cutting(),
                f.heat(),
                f.frame(),
                f.lift());
    }

    private static FitCard card(Fit fit) {
        return FitCardMaker.make(
                SHOP,
                RESULT,
                PLAN,
                FitCalculator.calculate(new FitQuestion(fit, Side.RIGHT, List.of(), List.of(), false)),
                new WidthsResult(fit, List.of()),
                Optional.empty());
    }

    @Test
    void should_tell_the_fits_own_hand_when_no_part_is_named_and_the_parts_before_it() {
        assertThat(card(with(Hand.RIGHT, Optional.empty(), Optional.empty())).hand())
                .isEqualTo(Hand.RIGHT);
        assertThat(card(with(Hand.RIGHT, Optional.of("lid"), Optional.empty())).hand())
                .isEqualTo(Hand.LEFT);
    }

    @Test
    void should_take_the_joint_that_the_fit_names_and_the_parts_own_where_it_names_none() {
        assertThat(card(with(Hand.LEFT, Optional.empty(), Optional.empty())).bond())
                .isEmpty();
        assertThat(card(with(Hand.LEFT, Optional.empty(), Optional.of("seam")))
                        .bond()
                        .orElseThrow()
                        .joint()
                        .id())
                .isEqualTo("seam");
        FitWork work = new FitWork(SHOP, RESULT);
        assertThat(work.joints(with(Hand.LEFT, Optional.of("lid"), Optional.empty())))
                .extracting(j -> j.id())
                .startsWith("seam");
    }
}

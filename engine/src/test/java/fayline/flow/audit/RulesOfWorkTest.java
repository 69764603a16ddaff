package fayline.flow.audit;

import static fayline.flow.audit.TinyShop.at;
import static fayline.flow.audit.TinyShop.stretch;
import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.audit.TinyShop.Step;
import fayline.flow.plan.CureClock;
import fayline.flow.plan.Place;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.plan.Worker;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Each rule of the work alone: what cannot be asked of a shop is named, and never brings the auditor down. */
class RulesOfWorkTest {
    private final TinyShop shop = new TinyShop();
    private final Step step = shop.step("a");

    RulesOfWorkTest() {
        shop.put("a", "mon 08:00", "ada");
        assertThat(shop.audit()).isEmpty();
    }

    private BrokenRule only(String rule) {
        List<BrokenRule> found = shop.audit();
        assertThat(found).extracting(BrokenRule::rule).as("%s", found).containsOnly(rule);
        return found.get(0);
    }

    private void names(String rule, String... words) {
        assertThat(shop.audit())
                .filteredOn(b -> b.rule().equals(rule))
                .isNotEmpty()
                .first()
                .satisfies(b -> assertThat(b.sentence()).contains(words).contains("expected"));
    }

    @Test
    void should_break_NamesAreGivenOnce_when_two_places_have_one_id() {
        shop.places.add(new Place("m-1", "Another", Place.Kind.STAND, "hall", true, true));
        assertThat(only("NamesAreGivenOnce").sentence()).contains("place m-1 twice");
    }

    @Test
    void should_break_NamesInTheWorkAreKnown_when_a_step_waits_for_a_stranger() {
        step.after("ghost");
        assertThat(only("NamesInTheWorkAreKnown").sentence()).contains("ghost");
    }

    @Test
    void should_break_NamesInTheWorkAreKnown_when_a_clock_or_delivery_is_missing() {
        step.alone = new Span(10, "ghost");
        assertThat(only("NamesInTheWorkAreKnown").sentence()).contains("clock ghost");
        step.alone = Span.NONE;
        step.awaits = List.of("d-9");
        assertThat(only("NamesInTheWorkAreKnown").sentence()).contains("d-9");
        step.awaits = List.of();
        shop.hold("h", Place.Kind.STAND, List.of("bench"), 1, "ghost");
        assertThat(only("NamesInTheWorkAreKnown").sentence()).contains("hold h");
    }

    @Test
    void should_break_NoStepWaitsForItself_when_steps_go_round_in_a_circle() {
        shop.step("b").after("a");
        shop.step("c").after("b");
        step.after("c");
        shop.put("b", "mon 09:00", "ada");
        shop.put("c", "mon 10:00", "ada");
        assertThat(shop.audit())
                .filteredOn(b -> b.rule().equals("NoStepWaitsForItself"))
                .singleElement()
                .satisfies(b -> assertThat(b.steps()).containsExactlyInAnyOrder("a", "b", "c"));
        step.after.clear();
        assertThat(shop.audit()).isEmpty();
        step.after("a");
        names("NoStepWaitsForItself", "a");
    }

    @Test
    void should_break_HoldsOfferEnoughPlaces_when_there_are_none() {
        shop.hold("h", Place.Kind.PORT, List.of(), 1, "a");
        names("HoldsOfferEnoughPlaces", "takes 1 of 0");
    }

    @Test
    void should_break_HoldsOfferEnoughPlaces_when_kinds_differ_or_it_spans_nothing() {
        shop.hold("h", Place.Kind.PORT, List.of("bench"), 1, "a");
        names("HoldsOfferEnoughPlaces", "bench", "PORT");
        shop.holds.clear();
        shop.hold("h", Place.Kind.PORT, List.of("p-1"), 1);
        assertThat(only("HoldsOfferEnoughPlaces").sentence()).contains("no step");
    }

    @Test
    void should_break_HoursAreInOrder_when_presence_overlaps() {
        shop.people.add(new Worker(
                "dee",
                "Dee",
                Set.of(),
                List.of(stretch("mon 08:00", "mon 12:00"), stretch("mon 11:00", "mon 16:00")),
                List.of()));
        assertThat(only("HoursAreInOrder").sentence()).contains("dee", "11:00");
    }

    @Test
    void should_break_HoursAreInOrder_when_a_break_lies_outside() {
        shop.people.add(new Worker(
                "dee",
                "Dee",
                Set.of(),
                List.of(stretch("mon 08:00", "mon 12:00")),
                List.of(stretch("mon 12:00", "mon 12:30"))));
        assertThat(only("HoursAreInOrder").sentence()).contains("break of dee");
    }

    @Test
    void should_break_ClocksRun_when_a_rate_is_zero_or_there_is_none() {
        shop.clocks.add(new CureClock("stuck", at("mon 06:00"), 60, List.of(1.0, 0.0)));
        step.alone = new Span(10, "stuck");
        assertThat(only("ClocksRun").sentence()).contains("stuck", "0.0");
        shop.clocks.set(1, new CureClock("stuck", at("mon 06:00"), 60, List.of()));
        only("ClocksRun");
    }

    @Test
    void should_break_StepsMakeSense_when_what_it_needs_does_not() {
        step.air = "damp";
        assertThat(only("StepsMakeSense").sentence()).contains("damp");
        step.air = "wet";
        step.interruptible = true;
        assertThat(only("StepsMakeSense").sentence()).contains("in one go");
        step.air = "quiet";
        step.interruptible = false;
        step.alone = new Span(Double.NaN, "");
        only("StepsMakeSense");
        step.alone = Span.NONE;
        step.skills = Map.of("laminate", 2);
        names("StepsMakeSense", "largest crew");
        step.skills = Map.of();
        step.hands(2, 30, 1, 60);
        only("StepsMakeSense");
        step.hands(1, 60);
        step.after("a", "middle", 0, Optional.empty(), Optional.empty());
        names("StepsMakeSense", "middle");
    }

    @Test
    void should_break_StepsMakeSense_when_two_windows_after_one_step_have_a_price() {
        step.hands(1, 60);
        shop.step("b").priced("a", 600, 10).priced("a", 700, 20);
        shop.put("b", "mon 09:00", "ada");
        assertThat(only("StepsMakeSense").sentence()).contains("two priced windows");
    }

    @Test
    void should_break_StatesAgreeWithWhatHappened_when_a_running_step_has_no_start() {
        step.state = WorkStep.State.RUNNING;
        names("StatesAgreeWithWhatHappened", "RUNNING");
        step.state = WorkStep.State.DONE;
        step.actual = new WorkStep.Actual(
                Optional.of(at("mon 08:00")), Optional.empty(), Optional.of(at("mon 07:00")), List.of(), List.of());
        names("StatesAgreeWithWhatHappened", "08:00");
    }
}

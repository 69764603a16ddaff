package fayline.flow.audit;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.plan.OppositeHands;
import fayline.flow.plan.OppositeHands.Crew;
import fayline.flow.plan.OppositeHands.Follow;
import fayline.flow.plan.PieceGroup;
import fayline.flow.plan.PieceGroup.Limit;
import fayline.flow.plan.PieceGroup.PieceSet;
import fayline.flow.plan.Place;
import fayline.flow.plan.Plan;
import fayline.flow.plan.SetChoice;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Actual;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.plan.WorkStep.State;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The rules of second hands and of sets, each kept and then broken alone. */
class SetsAndHandsRulesTest {
    private final TinyShop shop = new TinyShop();

    private List<String> broken(Work work, Plan plan) {
        return new PlanAuditor()
                .audit(work, plan).stream().map(BrokenRule::rule).distinct().toList();
    }

    private Work bothHands(Crew crew) {
        TinyShop.Step first = shop.step("left");
        first.hands = List.of(new CrewTime(1, 60), new CrewTime(2, 40));
        TinyShop.Step second = shop.step("right");
        second.hands = List.of(new CrewTime(1, 60), new CrewTime(2, 40));
        second.after.add(new Link("left", "hands-end", Span.NONE, Optional.empty(), Optional.empty()));
        return shop.work().withHands(new OppositeHands(List.of(new Follow("right", "left", crew)), List.of()));
    }

    @Test
    void should_ask_for_practised_hands_as_far_as_the_pair_says() {
        for (Crew crew : Crew.values()) {
            TinyShop fresh = new TinyShop();
            fresh.steps.clear();
            SetsAndHandsRulesTest one = new SetsAndHandsRulesTest();
            Work work = one.bothHands(crew);
            one.shop.put("left", "mon 08:00", "ada");
            one.shop.put("right", "mon 10:00", "ada");
            assertThat(one.broken(work, one.shop.plan())).isEmpty();
            one.shop.puts.remove(1);
            one.shop.put("right", "mon 10:00", "bo");
            assertThat(one.broken(work, one.shop.plan()))
                    .isEqualTo(crew == Crew.ANY ? List.of() : List.of("PractisedHandsDoTheSecond"));
            one.shop.puts.remove(1);
            one.shop.put("right", "mon 10:00", "ada", "bo");
            assertThat(one.broken(work, one.shop.plan())).isEmpty();
        }
    }

    @Test
    void should_tell_one_person_in_common_from_the_same_crew() {
        for (Crew crew : List.of(Crew.ONE, Crew.SAME)) {
            SetsAndHandsRulesTest one = new SetsAndHandsRulesTest();
            Work work = one.bothHands(crew);
            one.shop.put("left", "mon 08:00", "ada", "bo");
            one.shop.put("right", "mon 10:00", "ada", "cy");
            assertThat(one.broken(work, one.shop.plan()))
                    .isEqualTo(crew == Crew.ONE ? List.of() : List.of("PractisedHandsDoTheSecond"));
        }
    }

    @Test
    void should_let_anybody_do_it_when_nobody_of_the_first_crew_is_left() {
        Work work = bothHands(Crew.SAME);
        shop.steps.get(0).state = State.DONE;
        Instant at = TinyShop.at("mon 05:00");
        shop.steps.get(0).actual =
                new Actual(Optional.of(at), Optional.of(at), Optional.of(at), List.of("gone"), List.of());
        Work begun = shop.work().withHands(work.hands());
        TinyShop.Put put = shop.put("left", "mon 05:00");
        put.people = List.of("gone");
        put.handsEnd = at;
        put.end = at;
        put.stretches = List.of();
        shop.put("right", "mon 10:00", "bo");
        assertThat(broken(begun, shop.plan())).doesNotContain("PractisedHandsDoTheSecond");
    }

    @Test
    void should_refuse_a_pair_whose_second_does_not_wait_for_the_first() {
        Work work = bothHands(Crew.ONE);
        shop.steps.get(1).after.clear();
        Work loose = shop.work().withHands(work.hands());
        shop.put("left", "mon 08:00", "ada");
        shop.put("right", "mon 10:00", "ada");
        assertThat(broken(loose, shop.plan())).containsExactly("NamesInTheWorkAreKnown");
    }

    /** Six pieces, two to four in a set, of which the bench holds three, in sets that end at some pieces. */
    private static Work inSets(Work shop, int... ends) {
        List<WorkStep> steps = new ArrayList<>();
        List<PieceSet> sets = new ArrayList<>();
        int from = 1;
        for (int to : ends) {
            String made = "plate-" + from + "-" + to;
            sets.add(new PieceSet(made, from, to));
            steps.add(new WorkStep(
                    "x/" + made + "/1/coat",
                    "x",
                    made,
                    "coat",
                    "coat",
                    List.of(new CrewTime(1, 60)),
                    Map.of(),
                    "quiet",
                    false,
                    Span.NONE,
                    List.of(),
                    Optional.empty(),
                    List.of(),
                    List.of(),
                    false,
                    State.TODO,
                    Actual.NONE));
            from = to + 1;
        }
        PieceGroup group =
                new PieceGroup("x/plate", "Plates", 6, 2, 4, "the bench", sets, List.of(new Limit("bench", 3)));
        return shop.withSteps(
                        steps,
                        steps.stream()
                                .map(s -> new fayline.flow.plan.Hold(
                                        "h-" + s.id(), Place.Kind.STAND, List.of("bench", "saw"), 1, List.of(s.id())))
                                .toList())
                .withSets(new SetChoice(List.of(group), List.of()));
    }

    private static Plan plan(Work work, String place) {
        List<Plan.PlannedStep> planned = new ArrayList<>();
        Instant at = TinyShop.at("mon 08:00");
        for (WorkStep s : work.steps()) {
            Instant end = at.plusSeconds(3600);
            planned.add(new Plan.PlannedStep(
                    s.id(),
                    at,
                    end,
                    end,
                    List.of("ada"),
                    List.of(place),
                    List.of(new fayline.flow.plan.Worker.Stretch(at, end)),
                    List.of()));
            at = end;
        }
        return new Plan(planned, List.of(), Optional.of(at));
    }

    @Test
    void should_find_nothing_when_every_piece_is_in_one_set_of_a_fitting_size() {
        Work threes = inSets(shop.work(), 3, 6);
        assertThat(broken(threes, plan(threes, "bench"))).isEmpty();
        Work twos = inSets(shop.work(), 2, 4, 6);
        Work either = threes.withSets(new SetChoice(threes.sets().groups(), List.of(twos)));
        assertThat(broken(either, plan(twos, "bench"))).isEmpty();
    }

    @Test
    void should_break_SetsKeepTheirLimits_when_one_is_too_large_or_too_small_or_its_place_too_little() {
        Work four = inSets(shop.work(), 4, 6);
        assertThat(broken(four, plan(four, "saw"))).isEmpty();
        assertThat(broken(four, plan(four, "bench"))).containsExactly("SetsKeepTheirLimits");
        Work five = inSets(shop.work(), 5, 6);
        assertThat(new PlanAuditor().audit(five, plan(five, "saw")))
                .extracting(BrokenRule::sentence)
                .anySatisfy(s -> assertThat(s).contains("5 pieces", "at most 4"))
                .anySatisfy(s -> assertThat(s).contains("has 1 pieces", "at least 2"));
    }

    @Test
    void should_leave_a_small_set_alone_when_the_pieces_between_begun_sets_do_not_come_out() {
        Work begun = inSets(shop.work(), 3, 5, 6);
        List<WorkStep> steps = new ArrayList<>(begun.steps());
        Instant at = TinyShop.at("mon 05:00");
        for (int i = 0; i < 2; i++) {
            WorkStep s = steps.get(i);
            steps.set(
                    i,
                    new WorkStep(
                            s.id(),
                            s.project(),
                            s.made(),
                            s.title(),
                            s.kind(),
                            s.hands(),
                            s.skills(),
                            s.air(),
                            false,
                            s.alone(),
                            s.after(),
                            s.notBefore(),
                            s.awaits(),
                            s.watchMin(),
                            false,
                            State.DONE,
                            new Actual(
                                    Optional.of(at),
                                    Optional.of(at),
                                    Optional.of(at),
                                    List.of("ada"),
                                    List.of("bench"))));
        }
        Work work = begun.withSteps(steps, begun.holds());
        assertThat(broken(work, plan(work, "bench"))).doesNotContain("SetsKeepTheirLimits");
        assertThat(broken(begun, plan(begun, "bench"))).contains("SetsKeepTheirLimits");
    }

    @Test
    void should_break_EveryPieceIsInOneSet_when_a_plan_mixes_sets() {
        Work threes = inSets(shop.work(), 3, 6);
        Work twos = inSets(shop.work(), 2, 4, 6);
        Work either = threes.withSets(new SetChoice(threes.sets().groups(), List.of(twos)));
        List<Plan.PlannedStep> mixed =
                new ArrayList<>(plan(twos, "bench").steps().subList(0, 2));
        mixed.add(plan(threes, "bench").steps().get(1));
        Plan plan = new Plan(mixed, List.of(), plan(twos, "bench").finish());
        assertThat(new PlanAuditor().audit(either, plan))
                .filteredOn(b -> b.rule().equals("EveryPieceIsInOneSet"))
                .extracting(BrokenRule::sentence)
                .containsExactly("piece 4 of x/plate is in 2 sets; expected one");
    }
}

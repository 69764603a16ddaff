package fayline.flow.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.basis.units.Temperature;
import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.plan.Worker.Stretch;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.project.Definition;
import fayline.flow.result.ProjectCalculator;
import fayline.flow.result.SmallShop;
import fayline.flow.result.state.ShopState;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChangeTest {
    private static final Definition SHOP = new SmallShop().build();
    private static final LocalDate MONDAY = LocalDate.parse("2026-03-02");
    private static final LocalDate SATURDAY = LocalDate.parse("2026-03-07");

    private static Work work(Definition d) {
        return ProjectCalculator.calculate(d, ShopState.at(SmallShop.MONDAY)).work();
    }

    private static Instant finish(Work work) {
        Plan plan = new SerialPlanner().plan(work);
        assertThat(new PlanAuditor().audit(work, plan)).isEmpty();
        return plan.finish().orElseThrow();
    }

    private static boolean in(Work work, String person, LocalDate day) {
        return work.people().stream()
                .filter(p -> p.id().equals(person))
                .flatMap(p -> p.present().stream())
                .anyMatch(s -> s.from().atZone(ZoneOffset.UTC).toLocalDate().equals(day));
    }

    @Test
    void should_take_a_person_out_on_the_days_away_only() {
        Work away = work(new Change.Away("ada", MONDAY.plusDays(1), MONDAY.plusDays(2)).in(SHOP));
        assertThat(in(away, "ada", MONDAY)).isTrue();
        assertThat(in(away, "ada", MONDAY.plusDays(1))).isFalse();
        assertThat(in(away, "ada", MONDAY.plusDays(2))).isFalse();
        assertThat(in(away, "ada", MONDAY.plusDays(3))).isTrue();
        assertThat(in(work(SHOP), "ada", MONDAY.plusDays(1))).isTrue();
    }

    @Test
    void should_end_later_when_everybody_is_away() {
        Definition d = SHOP;
        for (var p : SHOP.shop().people()) {
            d = new Change.Away(p.id(), MONDAY, MONDAY.plusDays(6)).in(d);
        }
        assertThat(finish(work(d))).isAfter(finish(work(SHOP)));
    }

    @Test
    void should_cure_more_slowly_when_the_shop_is_colder() {
        Definition cold = new Change.ShopAir(Temperature.ofKelvins(283.15), MONDAY, 30).in(SHOP);
        Definition warm = new Change.ShopAir(Temperature.ofKelvins(303.15), MONDAY, 30).in(SHOP);
        assertThat(finish(work(cold))).isAfter(finish(work(SHOP)));
        assertThat(finish(work(warm))).isBefore(finish(work(cold)));
        assertThat(cold.climate().forecast()).hasSize(30);
    }

    @Test
    void should_add_a_day_at_usual_hours_to_the_crew_and_leave_other_days() {
        Work more = new Change.WorkingDay(SATURDAY).in(work(SHOP));
        Stretch usual = more.people().get(0).present().get(0);
        Stretch added = more.people().get(0).present().stream()
                .filter(s -> s.from().atZone(ZoneOffset.UTC).toLocalDate().equals(SATURDAY))
                .findFirst()
                .orElseThrow();
        assertThat(added.from().atZone(ZoneOffset.UTC).toLocalTime())
                .isEqualTo(usual.from().atZone(ZoneOffset.UTC).toLocalTime());
        assertThat(more.people().get(0).present())
                .hasSize(work(SHOP).people().get(0).present().size() + 1);
        assertThat(new Change.WorkingDay(MONDAY.plusDays(1)).in(work(SHOP))).isEqualTo(work(SHOP));
        assertThat(finish(more)).isBeforeOrEqualTo(finish(work(SHOP)));
    }

    @Test
    void should_offer_one_more_mould_wherever_the_mould_may_be_used() {
        Work more = new Change.MoreMoulds("m-shell").in(work(SHOP));
        assertThat(more.places()).extracting(p -> p.id()).contains("m-shell", "m-shell-more");
        assertThat(more.holds())
                .filteredOn(h -> h.candidates().contains("m-shell"))
                .isNotEmpty()
                .allSatisfy(h -> assertThat(h.candidates()).contains("m-shell-more"));
        assertThat(new Change.MoreMoulds("no-such").in(work(SHOP))).isEqualTo(work(SHOP));
        finish(more);
    }

    @Test
    void should_add_one_with_skills_and_hours_like_another() {
        Work more = work(new Change.OneMore("ada").in(SHOP));
        var ada = more.people().stream()
                .filter(p -> p.id().equals("ada"))
                .findFirst()
                .orElseThrow();
        var one = more.people().stream()
                .filter(p -> p.id().equals("one-more"))
                .findFirst()
                .orElseThrow();
        assertThat(one.skills()).isEqualTo(ada.skills());
        assertThat(one.present()).isEqualTo(ada.present());
    }

    @Test
    void should_move_only_what_has_not_arrived() {
        Definition late = new Change.LateDelivery("no-such", 7).in(SHOP);
        assertThat(late.deliveries().items()).isEqualTo(SHOP.deliveries().items());
        assertThat(List.of(late.hash())).containsExactly(SHOP.hash());
    }
}

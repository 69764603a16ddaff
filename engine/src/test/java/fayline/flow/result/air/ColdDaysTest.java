package fayline.flow.result.air;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.basis.units.Temperature;
import fayline.flow.plan.Plan;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.project.Definition;
import fayline.flow.result.ProjectCalculator;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.SmallShop;
import fayline.flow.result.state.ShopState;
import fayline.flow.whatif.Change;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class ColdDaysTest {
    private static final LocalDate MONDAY = LocalDate.parse("2026-03-02");

    private static List<ColdDay> cold(Definition d) {
        ProjectResult result = ProjectCalculator.calculate(d, ShopState.at(SmallShop.MONDAY));
        Plan plan = new SerialPlanner().plan(result.work());
        return ColdDays.of(d, result.air(), result.work(), plan);
    }

    private static Definition at(double celsius, LocalDate from, int days) {
        return new Change.ShopAir(Temperature.ofKelvins(celsius + 273.15), from, days).in(new SmallShop().build());
    }

    @Test
    void should_find_no_cold_day_in_a_warm_shop() {
        assertThat(cold(at(22, MONDAY, 14))).isEmpty();
    }

    @Test
    void should_name_the_working_days_below_the_shops_limit_with_what_is_wrong() {
        double limit = new SmallShop().build().shop().limits().coldest().kelvins() - 273.15;
        // Thursday to Monday: Saturday and Sunday are nobody's.
        List<ColdDay> days = cold(at(limit - 2, MONDAY.plusDays(3), 5));
        assertThat(days)
                .extracting(ColdDay::date)
                .containsExactly(MONDAY.plusDays(3), MONDAY.plusDays(4), MONDAY.plusDays(7));
        assertThat(days).allSatisfy(d -> {
            assertThat(d.why()).isNotEmpty();
            assertThat(d.expected()).isTrue();
        });
    }

    @Test
    void should_tell_wet_work_from_what_can_be_done_instead() {
        Definition frozen = at(5, MONDAY, 14);
        ProjectResult result = ProjectCalculator.calculate(frozen, ShopState.at(SmallShop.MONDAY));
        List<ColdDay> days = cold(frozen);
        assertThat(days.get(0).date()).isEqualTo(MONDAY);
        assertThat(days).anySatisfy(d -> assertThat(d.wet()).isNotEmpty());
        for (ColdDay d : days) {
            d.wet()
                    .forEach(s -> assertThat(result.step(s).orElseThrow().work().air())
                            .isEqualTo("wet"));
            d.instead()
                    .forEach(s -> assertThat(result.step(s).orElseThrow().work().air())
                            .isNotEqualTo("wet"));
        }
        // On Monday the release waits for nothing; the trim waits for a shell that is not made.
        assertThat(days.get(0).instead()).contains("wren-1/shell/1/release").doesNotContain("wren-1/shell/1/trim");
    }
}

package fayline.flow.result;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.plan.Work;
import fayline.flow.plan.WorkWish;
import fayline.flow.project.shop.LeadWish;
import fayline.flow.result.state.ShopState;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the definition says of wishes, as the work of one project and of several carries it. */
class WishesInWorkTest {
    private static LeadWish wish(String id, String step) {
        return new LeadWish(
                id,
                step,
                LeadWish.Kind.START,
                "",
                Optional.of(LocalDateTime.parse("2026-03-05T13:00")),
                Optional.empty(),
                "",
                "ada",
                Optional.empty(),
                "because");
    }

    private static Work work(SmallShop shop) {
        return ProjectCalculator.calculate(shop.build(), ShopState.at(SmallShop.MONDAY))
                .work();
    }

    @Test
    void should_carry_the_wishes_for_steps_that_are_there_and_leave_the_others_aside() {
        String step = work(new SmallShop()).steps().get(0).id();
        SmallShop shop = new SmallShop();
        shop.wishes.addAll(List.of(wish("a", step), wish("b", "other/part/1/step"), wish("c", step + "-gone")));
        assertThat(work(shop).wishes())
                .containsExactly(new WorkWish(
                        "a",
                        step,
                        WorkWish.Kind.START,
                        "",
                        Optional.of(Instant.parse("2026-03-05T13:00:00Z")),
                        Optional.empty(),
                        "ada",
                        "because"));
    }

    @Test
    void should_carry_them_once_when_projects_are_put_together() {
        SmallShop shop = new SmallShop();
        shop.wishes.add(wish("a", work(new SmallShop()).steps().get(0).id()));
        ProjectResult result = ProjectCalculator.calculate(shop.build(), ShopState.at(SmallShop.MONDAY));
        assertThat(ShopWork.combine(List.of(result)).wishes())
                .isEqualTo(result.work().wishes())
                .hasSize(1);
    }

    @Test
    void should_name_every_kind_of_wish_alike_in_the_definition_and_in_the_work() {
        assertThat(WorkWish.Kind.values())
                .extracting(Enum::name)
                .containsExactly(java.util.Arrays.stream(LeadWish.Kind.values())
                        .map(Enum::name)
                        .toArray(String[]::new));
    }
}

package fayline.flow.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.flow.project.Definition;
import fayline.flow.project.shop.Person;
import fayline.flow.record.made.MadeState;
import fayline.flow.record.stock.Order;
import fayline.flow.record.stock.Receipt;
import fayline.flow.record.stock.StockState;
import fayline.flow.result.cost.CostReport;
import fayline.flow.result.cost.CostRow;
import fayline.flow.result.cost.ProjectCosts;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.state.ShopState.StepFacts;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Costs to date, to go and at completion: sums that can be added up by hand. */
class CostsTest {
    private static final Instant NOW = SmallShop.MONDAY.plus(Duration.ofDays(10));
    private static final Instant BEGUN = Instant.parse("2026-03-03T08:00:00Z");

    private static CostReport costs(Definition d, ShopState state) {
        ProjectResult result = ProjectCalculator.calculate(d, state);
        return ProjectCosts.of(d, state, result, result.stores());
    }

    private static SmallShop paid(double... hourly) {
        SmallShop shop = new SmallShop();
        for (int i = 0; i < hourly.length; i++) {
            Person p = shop.people.get(i);
            shop.people.set(
                    i,
                    new Person(
                            p.id(),
                            p.name(),
                            p.skills(),
                            false,
                            p.hours(),
                            p.absences(),
                            OptionalDouble.of(hourly[i])));
        }
        return shop;
    }

    private static double hours(Definition d, ShopState state) {
        return ProjectCalculator.calculate(d, state).steps().stream()
                        .mapToInt(s -> s.personMinutes())
                        .sum()
                / 60.0;
    }

    @Test
    void should_reckon_what_is_to_come_at_the_mean_rate_and_the_prices_of_materials_when_nothing_is_begun() {
        Definition d = paid(30, 50).build();
        ShopState state = ShopState.at(NOW);
        CostReport r = costs(d, state);
        assertThat(r.hourly()).isEqualTo(40);
        assertThat(r.whole().toDate().all()).isZero();
        assertThat(r.whole().toGo().hands()).isCloseTo(40 * hours(d, state), within(1e-6));
        assertThat(r.whole().toGo().material())
                .isCloseTo(
                        ProjectCalculator.calculate(d, state)
                                .part("shell")
                                .orElseThrow()
                                .cost(),
                        within(1e-6));
        assertThat(r.row("shell").orElseThrow().atCompletion().all())
                .isCloseTo(r.whole().atCompletion().all(), within(1e-6));
    }

    private static StepFacts done(String... people) {
        return new StepFacts(
                BEGUN, Optional.of(BEGUN.plus(Duration.ofHours(2))), Optional.empty(), List.of(people), List.of(), 0);
    }

    @Test
    void should_book_hours_at_the_rates_of_those_who_worked_when_a_step_is_finished() {
        SmallShop shop = paid(30, 50);
        Definition d = shop.build();
        String first = shop.people.get(0).id();
        String second = shop.people.get(1).id();
        ShopState state = ShopState.at(NOW).withSteps(Map.of("shell/1/lay-up-1", done(first, second)));
        CostRow shell = costs(d, state).row("shell").orElseThrow();
        // Two people for two hours: 2 x 30 + 2 x 50.
        assertThat(shell.toDate().hands()).isCloseTo(160, within(1e-6));
        assertThat(shell.toDate().material()).isPositive();
    }

    @Test
    void should_charge_what_was_used_at_the_price_of_its_lot_when_it_has_one() {
        SmallShop shop = paid();
        shop.lots.add(SmallShop.lot("H-1", "er", "hardener", "5 kg", "2027-01-01"));
        Definition d = shop.build();
        ShopState begun = ShopState.at(NOW).withSteps(Map.of("shell/1/lay-up-1", done("ada")));
        double cheap = costs(d, withCloth(begun, "2 per m2")).whole().toDate().material();
        double dear = costs(d, withCloth(begun, "12 per m2")).whole().toDate().material();
        // Of the cloth the step takes 4.6 m2, as the test of the stores says.
        assertThat(dear - cheap).isCloseTo(10 * 4.6, within(1e-6));
    }

    private static ShopState withCloth(ShopState state, String price) {
        Receipt r =
                new Receipt(1, BEGUN, "ada", "L-1", "g-200", "", "30 m2", true, "2026-03-02", "", "", price, "", "");
        return state.withStores(MadeState.NONE, new StockState(List.of(r), List.of(), List.of(), List.of()));
    }

    @Test
    void should_count_an_order_as_to_go_until_it_is_accepted_and_name_one_without_a_price() {
        SmallShop shop = paid();
        Definition d = shop.build();
        Order open = order(d, "o-1", "480", List.of());
        Order unpriced = order(d, "o-2", "", List.of());
        ShopState state = ShopState.at(NOW)
                .withStores(MadeState.NONE, new StockState(List.of(), List.of(), List.of(), List.of(open, unpriced)));
        CostReport r = costs(d, state);
        assertThat(r.row("shell").orElseThrow().toGo().orders()).isEqualTo(480);
        assertThat(r.orders()).containsExactly("o-2");
        Order came = order(
                d,
                "o-1",
                "480",
                List.of(new Order.Arrival(9, NOW.minusSeconds(60), "ada", "", List.of(), true, "", "")));
        CostReport later = costs(
                d, state.withStores(MadeState.NONE, new StockState(List.of(), List.of(), List.of(), List.of(came))));
        assertThat(later.row("shell").orElseThrow().toDate().orders()).isEqualTo(480);
        assertThat(later.whole().atCompletion().orders()).isEqualTo(480);
    }

    private static Order order(Definition d, String id, String price, List<Order.Arrival> arrivals) {
        return new Order(
                5,
                BEGUN,
                "ada",
                d.facts().id(),
                id,
                "a fitting",
                "1",
                "",
                "",
                "",
                "2026-04-01",
                price,
                List.of("shell"),
                List.of(),
                arrivals);
    }

    @Test
    void should_say_what_a_budget_leaves_and_when_it_is_overrun() {
        CostRow row = new CostRow(
                "x",
                "X",
                "",
                new fayline.flow.result.cost.Cost(60, 30, 0),
                new fayline.flow.result.cost.Cost(0, 0, 20),
                OptionalDouble.of(100));
        assertThat(row.left().orElseThrow()).isEqualTo(-10);
    }

    @Test
    void should_hold_a_part_against_its_own_budget_whatever_its_assembly_may_cost() {
        SmallShop shop = paid(30, 50);
        double all =
                costs(shop.build(), ShopState.at(NOW)).whole().atCompletion().all();
        SmallShop tight = paid(30, 50);
        tight.budget = OptionalDouble.of(all - 7);
        CostReport r = costs(tight.build(), ShopState.at(NOW));
        assertThat(r.row("shell").orElseThrow().left().orElseThrow()).isCloseTo(-7, within(1e-6));
        assertThat(costs(shop.build(), ShopState.at(NOW))
                        .row("shell")
                        .orElseThrow()
                        .left())
                .isEmpty();
    }
}

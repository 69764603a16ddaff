package fayline.method.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.numeric.RandomStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RatesTest {
    private static final RatePrior USUAL = RatePrior.USUAL;

    private static BookedWork work(String kind, String person, int repeat, double booked) {
        return new BookedWork(kind + "/" + repeat, kind, List.of(person), repeat, 100, booked);
    }

    private static List<BookedWork> invented(long seed, int n, double scatter) {
        RandomStream chance = new RandomStream(seed, 0);
        List<BookedWork> works = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            String kind = i % 3 == 0 ? "bag" : i % 3 == 1 ? "lay-up" : "trim";
            double of = i % 3 == 0 ? 1.0 : i % 3 == 1 ? 1.6 : 0.8;
            String person = i % 2 == 0 ? "ada" : "bo";
            double who = i % 2 == 0 ? 1.1 : 1 / 1.1;
            works.add(work(kind, person, 1, 100 * of * who * Math.exp(scatter * chance.nextNormal())));
        }
        return works;
    }

    @Test
    void should_keep_the_recipes_rate_when_nothing_was_done() {
        Rates rates = RatesCalculator.calculate(List.of(), USUAL);
        assertThat(rates.kinds()).isEmpty();
        assertThat(rates.factor("lay-up", 1)).isEqualTo(1);
        assertThat(rates.scatter()).isCloseTo(USUAL.scatter(), within(1e-12));
    }

    @Test
    void should_move_a_little_for_one_time_and_nearly_all_the_way_for_many() {
        double one = RatesCalculator.calculate(List.of(work("bag", "ada", 1, 200)), USUAL)
                .factor("bag", 1);
        assertThat(one).isBetween(1.1, 1.6);
        List<BookedWork> many = Collections.nCopies(60, work("bag", "ada", 1, 200));
        Rates rates = RatesCalculator.calculate(many, USUAL);
        double kind = rates.factor("bag", 1);
        double person = rates.people().get(0).factor();
        // Nobody can say whether the kind or the only person who did it is slow; together they are.
        assertThat(kind * person).isCloseTo(2, within(0.05));
    }

    @Test
    void should_share_by_the_weights_when_one_kind_has_one_person() {
        // ln 2 seen once; kind counts 1, person 4: solve (1+1)k + p = ln 2, k + (1+4)p = ln 2 by hand: k = 4/9 ln 2.
        Rates rates = RatesCalculator.calculate(List.of(work("bag", "ada", 1, 200)), USUAL);
        assertThat(rates.factor("bag", 1)).isCloseTo(Math.pow(2, 4.0 / 9), within(1e-9));
        assertThat(rates.people().get(0).factor()).isCloseTo(Math.pow(2, 1.0 / 9), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void should_find_kinds_and_people_again_when_times_follow_them(long seed) {
        Rates rates = RatesCalculator.calculate(invented(seed, 300, 0.15), USUAL);
        assertThat(rates.factor("lay-up", 1) / rates.factor("bag", 1)).isCloseTo(1.6, within(0.12));
        assertThat(rates.factor("trim", 1) / rates.factor("bag", 1)).isCloseTo(0.8, within(0.06));
        assertThat(rates.people().get(0).factor() / rates.people().get(1).factor())
                .isCloseTo(1.21, within(0.07));
        assertThat(rates.scatter()).isCloseTo(0.15, within(0.03));
        assertThat(rates.kinds()).allSatisfy(k -> assertThat(k.factor()).isBetween(k.low(), k.high()));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void should_not_depend_on_the_order_when_times_are_shuffled(long seed) {
        List<BookedWork> works = invented(seed, 40, 0.3);
        List<BookedWork> shuffled = new ArrayList<>(works);
        Collections.shuffle(shuffled, new Random(seed));
        Rates a = RatesCalculator.calculate(works, USUAL);
        Rates b = RatesCalculator.calculate(shuffled, USUAL);
        a.kinds().forEach(k -> assertThat(b.factor(k.kind(), 1)).isCloseTo(k.factor(), within(1e-9)));
    }

    @Test
    void should_find_a_learning_curve_when_repeats_follow_one() {
        // Wright's curve of 85 %: each doubling of the count leaves 85 % of the time.
        double exponent = Math.log(0.85) / Math.log(2);
        RandomStream chance = new RandomStream(7, 0);
        List<BookedWork> works = new ArrayList<>();
        for (int n = 1; n <= 18; n++) {
            works.add(work("lay-up", "ada", n, 130 * Math.pow(n, exponent) * Math.exp(0.05 * chance.nextNormal())));
        }
        Rates rates = RatesCalculator.calculate(works, USUAL);
        var learned = rates.kind("lay-up").orElseThrow().repetition().orElseThrow();
        assertThat(learned.rate()).isCloseTo(0.85, within(0.03));
        assertThat(learned.chance()).isGreaterThan(0.9);
        assertThat(rates.factor("lay-up", 16)).isLessThan(rates.factor("lay-up", 2));
    }

    @Test
    void should_claim_no_learning_when_the_times_do_not_support_it() {
        List<BookedWork> flat = new ArrayList<>();
        for (int n = 1; n <= 12; n++) {
            flat.add(work("lay-up", "ada", n, n % 2 == 0 ? 140 : 100));
        }
        assertThat(RatesCalculator.calculate(flat, USUAL)
                        .kind("lay-up")
                        .orElseThrow()
                        .repetition())
                .isEmpty();
        List<BookedWork> few = List.of(work("trim", "ada", 1, 200), work("trim", "ada", 2, 100));
        assertThat(RatesCalculator.calculate(few, USUAL)
                        .kind("trim")
                        .orElseThrow()
                        .repetition())
                .isEmpty();
    }

    @Test
    void should_leave_out_and_show_a_time_that_cannot_be_right() {
        List<BookedWork> works = List.of(work("bag", "ada", 1, 100), work("bag", "bo", 1, 1500));
        Rates rates = RatesCalculator.calculate(works, USUAL);
        assertThat(rates.leftOut()).extracting(BookedWork::bookedMin).containsExactly(1500.0);
        assertThat(rates.counted()).hasSize(1);
    }

    @Test
    void should_refuse_a_time_that_is_none() {
        assertThatThrownBy(() -> new BookedWork("x", "bag", List.of(), 1, 100, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("positive minutes");
    }
}

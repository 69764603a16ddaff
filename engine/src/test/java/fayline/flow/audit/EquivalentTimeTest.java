package fayline.flow.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.flow.plan.CureClock;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The auditor's own reading of cure clocks: hand-reckoned spans, and properties over seeded clocks. */
class EquivalentTimeTest {
    private static final Instant FROM = Instant.parse("2026-03-02T06:00:00Z");

    private static Instant min(long minutes) {
        return FROM.plusSeconds(60 * minutes);
    }

    @Test
    void should_add_each_rate_for_itself_when_a_span_crosses_steps() {
        EquivalentTime time = EquivalentTime.of(new CureClock("c", FROM, 60, List.of(0.5, 2.0, 1.0)));
        // 30 min at 0.5, 60 at 2.0, 10 at 1.0: 15 + 120 + 10
        assertThat(time.between(min(30), min(130))).isCloseTo(145, within(1e-9));
        // before the first step its rate holds, after the last its own
        assertThat(time.between(min(-20), min(10))).isCloseTo(15, within(1e-9));
        assertThat(time.between(min(180), min(600))).isCloseTo(420, within(1e-9));
        assertThat(time.over(min(30), 145)).isEqualTo(min(130));
        assertThat(time.over(min(30), 144.5)).isEqualTo(min(130));
        assertThat(time.over(min(30), 0)).isEqualTo(min(30));
    }

    @Test
    void should_be_additive_and_find_the_first_minute_when_clocks_are_random() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<Double> rates =
                    random.doubles(1 + random.nextInt(40), 0.05, 4).boxed().toList();
            EquivalentTime time = EquivalentTime.of(new CureClock("c", FROM, 1 + random.nextInt(90), rates));
            Instant a = min(random.nextInt(3000) - 500);
            Instant b = a.plusSeconds(60L * random.nextInt(3000));
            Instant c = b.plusSeconds(60L * random.nextInt(3000));
            assertThat(time.between(a, c)).isCloseTo(time.between(a, b) + time.between(b, c), within(1e-6));
            double wanted = random.nextDouble() * 3000 + 1;
            Instant over = time.over(a, wanted);
            assertThat(time.between(a, over)).isGreaterThanOrEqualTo(wanted - 0.01);
            assertThat(time.between(a, over.minusSeconds(60))).isLessThan(wanted + 0.01);
        }
    }
}

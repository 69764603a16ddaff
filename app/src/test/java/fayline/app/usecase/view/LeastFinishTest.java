package fayline.app.usecase.view;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.planner.PlanBound;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LeastFinishTest {
    private static ShopView demo() throws Exception {
        return ReadFolder.read(Path.of("..", "demo", "ousel"), Optional.empty(), Clock.systemUTC());
    }

    @Test
    void should_lie_between_now_and_the_finish_when_the_demonstration_is_asked(@TempDir Path folder) throws Exception {
        ShopView view = demo();
        Instant least = new LeastFinish(folder).of(view.work(), view.plan()).orElseThrow();
        assertThat(least)
                .isAfter(view.now())
                .isBeforeOrEqualTo(view.plan().finish().orElseThrow());
    }

    @Test
    void should_compute_once_when_asked_twice_about_one_plan() throws Exception {
        ShopView view = demo();
        AtomicInteger asked = new AtomicInteger();
        PlanBound counting = (work, plan) -> {
            asked.incrementAndGet();
            return Optional.of(work.now());
        };
        LeastFinish least = new LeastFinish(counting);
        assertThat(least.of(view.work(), view.plan())).contains(view.now());
        assertThat(least.of(view.work(), view.plan())).contains(view.now());
        assertThat(asked).hasValue(1);
    }
}

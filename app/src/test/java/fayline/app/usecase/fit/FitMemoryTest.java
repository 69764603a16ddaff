package fayline.app.usecase.fit;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.fit.FitMemory.Question;
import fayline.flow.project.Definition;
import fayline.store.file.DefinitionFolder;
import fayline.store.file.DefinitionReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class FitMemoryTest {
    private static final FitSight SIGHT = sight();
    private final AtomicInteger worked = new AtomicInteger();

    private static FitSight sight() {
        try {
            Definition d = DefinitionReader.read(DefinitionFolder.from(Path.of("../demo/ousel")))
                    .definition()
                    .orElseThrow();
            return LookAtFits.sight(d, List.of(), d.fits().get("pane-left"), false);
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private FitSight fresh() {
        worked.incrementAndGet();
        return new FitSight(SIGHT.result(), SIGHT.opposite());
    }

    private static Question question(String head, boolean assume) {
        return new Question(head, "ousel-1", "pane-left", assume);
    }

    @Test
    void should_work_an_answer_out_once_while_nothing_it_rests_on_has_changed() {
        FitMemory memory = new FitMemory(4);
        FitSight first = memory.answer(question("a", false), this::fresh);
        assertThat(memory.answer(question("a", false), this::fresh)).isSameAs(first);
        assertThat(worked).hasValue(1);
        assertThat(memory.answer(question("a", true), this::fresh)).isNotSameAs(first);
        assertThat(memory.answer(question("b", false), this::fresh)).isNotSameAs(first);
        assertThat(worked).hasValue(3);
    }

    @Test
    void should_forget_the_answer_not_asked_for_longest_when_it_is_full() {
        FitMemory memory = new FitMemory(2);
        memory.answer(question("a", false), this::fresh);
        memory.answer(question("b", false), this::fresh);
        memory.answer(question("a", false), this::fresh);
        memory.answer(question("c", false), this::fresh);
        assertThat(memory.size()).isEqualTo(2);
        assertThat(worked).hasValue(3);
        memory.answer(question("a", false), this::fresh);
        assertThat(worked).hasValue(3);
        memory.answer(question("b", false), this::fresh);
        assertThat(worked).hasValue(4);
    }

    @Test
    void should_stay_bounded_and_answer_everyone_when_many_ask_at_once() throws Exception {
        FitMemory memory = new FitMemory(3);
        ExecutorService crowd = Executors.newFixedThreadPool(8);
        try {
            List<Callable<FitSight>> all = new ArrayList<>();
            for (int i = 0; i < 400; i++) {
                Question q = question("h" + i % 7, i % 2 == 0);
                all.add(() -> memory.answer(q, this::fresh));
            }
            for (Future<FitSight> f : crowd.invokeAll(all)) {
                assertThat(f.get().result()).isSameAs(SIGHT.result());
            }
        } finally {
            crowd.shutdown();
        }
        assertThat(memory.size()).isEqualTo(3);
    }
}

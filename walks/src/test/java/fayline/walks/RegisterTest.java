package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.walks.Register.Op;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

/** The judge of single texts: it finds each fault that is planted into a server, and none in a server without one. */
@Tag("fault")
class RegisterTest {
    private static final int SEEDS = Integer.getInteger("fayline.seeds", 10);
    private static final Map<String, String> FIRST = Map.of("a", "first", "b", "first");

    /** What is wrong with the server. */
    private enum Plant {
        NOTHING,
        /** A writing is acknowledged first and counts later. */
        LATE_COMMIT,
        /** An acknowledged writing never counts. */
        LOST_UPDATE,
        /** A writing counts a second time, over what came after it. */
        DOUBLE_APPLY,
        /** A reading is answered by what stood there before. */
        STALE_READ
    }

    private static Optional<String> judge(Op... ops) {
        Register register = new Register();
        for (Op op : ops) {
            register.add("a", op);
        }
        return register.fault(FIRST);
    }

    @Test
    void should_take_what_overlaps_in_either_order_and_what_follows_in_its_own() {
        Op one = new Op(true, "one", 1, 5);
        Op two = new Op(true, "two", 2, 6);
        assertThat(judge(one, two, new Op(false, "one", 7, 8))).isEmpty();
        assertThat(judge(one, two, new Op(false, "two", 7, 8))).isEmpty();
        assertThat(judge(one, two, new Op(false, "first", 7, 8))).isPresent();
        assertThat(judge(one, new Op(true, "two", 6, 7), new Op(false, "one", 8, 9)))
                .isPresent();
        assertThat(judge(one, two, new Op(false, "one", 7, 8), new Op(false, "two", 9, 10)))
                .isPresent();
    }

    @Test
    void should_let_a_writing_without_an_answer_count_late_or_never() {
        Op unheard = new Op(true, "one", 1, History.NEVER);
        assertThat(judge(unheard, new Op(false, "first", 5, 6))).isEmpty();
        assertThat(judge(unheard, new Op(false, "first", 5, 6), new Op(false, "one", 7, 8)))
                .isEmpty();
        assertThat(judge(unheard, new Op(false, "one", 5, 6), new Op(false, "first", 7, 8)))
                .isPresent();
    }

    @Test
    void should_find_nothing_when_the_server_is_sound() {
        for (int seed = 0; seed < 5 * SEEDS; seed++) {
            assertThat(new Model(seed, Plant.NOTHING).run()).as("seed %d", seed).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(value = Plant.class, mode = Mode.EXCLUDE, names = "NOTHING")
    void should_find_the_fault_that_is_planted(Plant plant) {
        for (int seed = 0; seed < SEEDS; seed++) {
            Model model = new Model(seed, plant);
            Optional<String> found = model.run();
            assertThat(model.planted).as("seed %d: planted", seed).isPositive();
            assertThat(found).as("%s, seed %d", plant, seed).isPresent();
        }
    }

    /** Twelve clients and two texts, in one thread with a clock of steps. */
    private static final class Model {
        private static final int CLIENTS = 12;
        private static final int STEPS = 1000;
        private final Random random;
        private final Plant plant;
        private final Register register = new Register();
        private final Map<String, List<String>> values = new HashMap<>();
        private final Map<Integer, Under> underWay = new HashMap<>();
        private final Map<Long, Under> late = new HashMap<>();
        private int planted;

        private Model(long seed, Plant plant) {
            this.random = new Random(seed);
            this.plant = plant;
            FIRST.forEach((t, v) -> values.put(t, new ArrayList<>(List.of(v))));
        }

        /** Something that a client asked for and has no answer to yet; an empty value is a reading. */
        private static final class Under {
            private final String text;
            private final String value;
            private final long invoked;
            private String read = "";
            private boolean done;
            private boolean late;

            private Under(String text, String value, long invoked) {
                this.text = text;
                this.value = value;
                this.invoked = invoked;
            }
        }

        private Optional<String> run() {
            for (long now = 1; now <= STEPS; now++) {
                Optional.ofNullable(late.remove(now))
                        .ifPresent(u -> held(u.text).add(u.value));
                step(random.nextInt(CLIENTS), now);
            }
            underWay.values().stream()
                    .filter(u -> !u.value.isEmpty())
                    .forEach(u -> register.add(u.text, new Op(true, u.value, u.invoked, History.NEVER)));
            return register.fault(FIRST);
        }

        private void step(int client, long now) {
            Under under = underWay.get(client);
            if (under == null) {
                String text = random.nextBoolean() ? "a" : "b";
                underWay.put(client, new Under(text, random.nextInt(3) == 0 ? client + "-" + now : "", now));
            } else if (!under.done) {
                under.late = act(under);
                under.done = true;
            } else {
                boolean write = !under.value.isEmpty();
                register.add(under.text, new Op(write, write ? under.value : under.read, under.invoked, now));
                underWay.remove(client);
                if (under.late) {
                    late.put(now + 80, under);
                }
            }
        }

        private List<String> held(String text) {
            return values.computeIfAbsent(text, t -> new ArrayList<>());
        }

        /** Whether it still has to count after it is acknowledged. */
        private boolean act(Under under) {
            List<String> held = held(under.text);
            if (under.value.isEmpty()) {
                boolean stale = held.size() > 8 && wrong(Plant.STALE_READ, 4);
                under.read = held.get(held.size() - 1 - (stale ? 6 : 0));
                return false;
            }
            if (wrong(Plant.LOST_UPDATE, 3)) {
                return false;
            }
            if (wrong(Plant.LATE_COMMIT, 2)) {
                return true;
            }
            held.add(under.value);
            if (held.size() > 8 && wrong(Plant.DOUBLE_APPLY, 3)) {
                held.add(held.get(held.size() - 6));
            }
            return false;
        }

        private boolean wrong(Plant what, int oneIn) {
            boolean now = plant == what && random.nextInt(oneIn) == 0;
            planted += now ? 1 : 0;
            return now;
        }
    }
}

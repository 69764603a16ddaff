package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.walks.History.Seen;
import fayline.walks.History.Sent;
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

/** The judge of histories: it finds each fault that is planted into a server, and none in a server without one. */
@Tag("fault")
class HistoryTest {
    private static final int SEEDS = Integer.getInteger("fayline.seeds", 10);

    /** What is wrong with the server. */
    private enum Plant {
        NOTHING,
        /** An entry is acknowledged first and comes to stand later, behind others. */
        LATE_COMMIT,
        /** An acknowledged entry is not there afterwards. */
        LOST_UPDATE,
        /** What is sent again is taken again. */
        DOUBLE_APPLY,
        /** A look is answered by what was known a while ago. */
        STALE_READ
    }

    @Test
    void should_find_nothing_when_the_server_is_sound() {
        for (int seed = 0; seed < 5 * SEEDS; seed++) {
            Model model = new Model(seed, Plant.NOTHING);
            assertThat(model.run()).as("seed %d", seed).isEmpty();
            assertThat(model.unheard)
                    .as("seed %d: answers that never came", seed)
                    .isPositive();
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

    /** Twelve clients, a wire that loses answers and a server, in one thread with a clock of steps. */
    private static final class Model {
        private static final int CLIENTS = 12;
        private static final int STEPS = 1200;
        private final Random random;
        private final Plant plant;
        private final History history = new History();
        private final List<String> record = new ArrayList<>();
        private final Map<Integer, Under> underWay = new HashMap<>();
        private int planted;
        private int unheard;
        private long now;

        private Model(long seed, Plant plant) {
            this.random = new Random(seed);
            this.plant = plant;
        }

        /** Something that a client asked for and has no answer to yet; an empty id is a look. */
        private static final class Under {
            private final String id;
            private final long invoked;
            private long place;
            private boolean done;

            private Under(String id, long invoked) {
                this.id = id;
                this.invoked = invoked;
            }
        }

        private Optional<String> run() {
            for (now = 1; now <= STEPS; now++) {
                step(random.nextInt(CLIENTS));
            }
            return history.fault(record);
        }

        private void step(int client) {
            Under under = underWay.get(client);
            if (under == null) {
                underWay.put(client, new Under(random.nextInt(4) == 0 ? "" : client + "-" + now, now));
            } else if (!under.done) {
                act(under);
                under.done = true;
            } else if (!under.id.isEmpty() && random.nextInt(8) == 0) {
                // the answer is lost on the way; the client sends it again
                unheard++;
                history.add(new Sent(under.id, under.invoked, History.NEVER, 0));
                underWay.put(client, new Under(under.id, now));
            } else {
                answer(client, under);
                underWay.remove(client);
            }
        }

        private void act(Under under) {
            if (under.id.isEmpty()) {
                under.place = look();
            } else if (record.contains(under.id) && !wrong(Plant.DOUBLE_APPLY, 1)) {
                under.place = record.indexOf(under.id) + 1L;
            } else {
                record.add(under.id);
                under.place = record.size();
            }
        }

        private long look() {
            int stale = 1 + random.nextInt(20);
            return record.size() > 50 && wrong(Plant.STALE_READ, 4) ? record.size() - 30 - stale : record.size();
        }

        private void answer(int client, Under under) {
            if (under.id.isEmpty()) {
                history.add(new Seen(client, under.invoked, now, under.place));
                return;
            }
            history.add(new Sent(under.id, under.invoked, now, under.place));
            if (wrong(Plant.LOST_UPDATE, 20)) {
                record.remove(under.id);
            } else if (record.size() > under.place && wrong(Plant.LATE_COMMIT, 4)) {
                // what came meanwhile moves up, and this one stands behind it
                record.remove(under.id);
                record.add(under.id);
            }
        }

        private boolean wrong(Plant what, int oneIn) {
            boolean now = plant == what && random.nextInt(oneIn) == 0;
            planted += now ? 1 : 0;
            return now;
        }
    }
}

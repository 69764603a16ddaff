package fayline.flow.planner.serial;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.Unplanned;
import fayline.flow.plan.Work;
import fayline.flow.planner.serial.Net.Need;
import fayline.flow.planner.serial.Net.Task;
import fayline.flow.planner.serial.StartSearch.Ask;
import fayline.flow.planner.serial.StartSearch.Found;
import fayline.flow.planner.serial.StartSearch.Obstacle;
import fayline.flow.planner.serial.StartSearch.Wanted;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Makes a plan out of wishes: steps are put in one after the other in the order of their wished starts, each as soon as all
 * before it allows, with the crew and places wished as far as they are free. Where a window would shut, what opened it goes
 * back to its wished start, then later. So the order and the choices may come from a coarser model, and what is made of them
 * keeps every rule to the minute.
 */
public final class WishedSchedule {
    private static final int MOST_ROUNDS = 400;
    private static final int SOFT_PUSHES = 4;

    private final Net net;
    private final Map<Integer, String> reasons = new LinkedHashMap<>();
    private final int[] rank;

    /**
     * For the plans of one work.
     *
     * @param work the work
     * @param base a plan of it; what it leaves unplanned stays unplanned, for the same reasons
     */
    public WishedSchedule(Work work, Plan base) {
        net = new Net(work);
        for (Unplanned u : base.unplanned()) {
            reasons.put(Objects.requireNonNull(net.taskOf.get(u.step())), u.reason());
        }
        rank = new int[net.tasks.size()];
        List<Integer> order = Blocks.topological(net);
        for (int i = 0; i < order.size(); i++) {
            rank[order.get(i)] = i;
        }
    }

    /**
     * What is wished for one step.
     *
     * @param step the step's id
     * @param start when its hands begin, in minutes of the work's {@link TimeLine}
     * @param crew how many; the people, where they are named
     * @param people who, or nobody for whom it may be
     * @param places where, as far as there is a wish
     * @param missed earlier steps whose priced windows may be missed; others are kept where that can be
     * @param stays whether it is put in before the others, and no sooner than wished
     */
    public record Wish(
            String step,
            int start,
            int crew,
            List<String> people,
            List<String> places,
            List<String> missed,
            boolean stays) {
        /** Copies the lists. */
        public Wish {
            people = List.copyOf(people);
            places = List.copyOf(places);
            missed = List.copyOf(missed);
        }

        /** A wish that gives way. */
        public Wish(String step, int start, int crew, List<String> people, List<String> places, List<String> missed) {
            this(step, start, crew, people, places, missed, false);
        }

        private Wish giving() {
            return new Wish(step, start, crew, people, places, missed, false);
        }

        /** The same, to stay. */
        public Wish staying() {
            return new Wish(step, start, crew, people, places, missed, true);
        }
    }

    /**
     * A plan's own times, crews and places as wishes.
     *
     * @param plan a plan of the work
     * @return one for each planned step that has not begun
     */
    public List<Wish> of(Plan plan) {
        return plan.steps().stream()
                .filter(p -> net.taskOf.containsKey(p.step())
                        && net.task(Objects.requireNonNull(net.taskOf.get(p.step())))
                                .isTodo())
                .map(p -> new Wish(
                        p.step(), net.time.floor(p.start()), p.people().size(), p.people(), p.places(), p.missed()))
                .toList();
    }

    /** Whether a step may come sooner than wished by others than wished. */
    public enum Sooner {
        BY_THE_SAME,
        BY_ANYBODY
    }

    /**
     * Makes a plan.
     *
     * @param wishes one for each step that the base plan plans and that has not begun
     * @param sooner who may do it sooner
     * @return the plan; empty where the order leads into a corner
     */
    public Optional<Plan> plan(List<Wish> wishes, Sooner sooner) {
        return new Putting(wishes, sooner, false)
                .go()
                .or(() -> new Putting(wishes, sooner, true).go())
                .or(() -> new Putting(wishes.stream().map(Wish::giving).toList(), sooner, false).go());
    }

    /**
     * Makes a plan, and gives an order up at the first corner.
     *
     * @param wishes one for each step that the base plan plans and that has not begun
     * @param sooner who may do it sooner
     * @return the plan; empty where the order leads into a corner
     */
    public Optional<Plan> planOnce(List<Wish> wishes, Sooner sooner) {
        return new Putting(wishes, sooner, false).go();
    }

    private final class Putting {
        private final List<Integer> order;
        private final Wish[] wishes = new Wish[net.tasks.size()];
        private final boolean[] wished = new boolean[net.tasks.size()];
        private final int[] notBefore = new int[net.tasks.size()];
        private final int[] pushes = new int[net.tasks.size()];
        /** Where each step comes in the order. */
        private final int[] place = new int[net.tasks.size()];

        private final Sooner sooner;
        private final Scene scene;
        private final StartSearch search;
        /** Places in the order, as they were put in. */
        private final List<Integer> in = new ArrayList<>();

        Putting(List<Wish> all, Sooner sooner, boolean asWished) {
            this.sooner = sooner;
            for (Wish w : all) {
                int task = Objects.requireNonNull(net.taskOf.get(w.step()));
                wishes[task] = w;
                wished[task] = true;
            }
            order = IntStream.range(0, wished.length)
                    .filter(t -> wished[t])
                    .boxed()
                    .sorted(Comparator.<Integer, Boolean>comparing(t ->
                                    !wishes[t].stays() && !net.task(t).asked.isDated())
                            .thenComparingInt(t -> wishes[t].start())
                            .thenComparingInt(t -> rank[t]))
                    .toList();
            Arrays.fill(place, -1);
            for (int i = 0; i < order.size(); i++) {
                place[order.get(i)] = i;
            }
            Arrays.fill(notBefore, -TimeLine.FOREVER);
            for (Wish w : all) {
                if (asWished || w.stays()) {
                    notBefore[Objects.requireNonNull(net.taskOf.get(w.step()))] = w.start();
                }
            }
            Board board = new Board(net);
            scene = new Scene(net, board);
            search = new StartSearch(net, board, scene);
            new Happened(net, board, scene).place();
        }

        Optional<Plan> go() {
            TreeSet<Integer> open =
                    new TreeSet<>(IntStream.range(0, order.size()).boxed().toList());
            Set<Integer> blocked = new HashSet<>();
            List<Scene.Mark> marks = new ArrayList<>();
            for (int round = 0; !open.isEmpty(); ) {
                int i = next(open, blocked);
                // Nobody can go on, or there is no end of going back: this order leads nowhere.
                if (i < 0 || round > MOST_ROUNDS) {
                    return Optional.empty();
                }
                Task task = net.task(order.get(i));
                Scene.Mark mark = scene.mark();
                Optional<Integer> back = put(task);
                if (back.isEmpty()) {
                    open.remove(i);
                    in.add(i);
                    marks.add(mark);
                    if (task.keeps.stream().anyMatch(scene::isClosed)) {
                        blocked.clear();
                    }
                } else if (back.get() == task.index) {
                    // Something that is not over yet is in its way: it waits for that.
                    blocked.add(i);
                } else {
                    int to = in.indexOf(place[back.get()]);
                    if (to < 0) {
                        return Optional.empty();
                    }
                    List<Integer> out = in.subList(to, in.size());
                    scene.backTo(marks.get(to), out.stream().map(order::get).toList());
                    open.addAll(out);
                    out.clear();
                    marks.subList(to, marks.size()).clear();
                    blocked.clear();
                    round++;
                }
            }
            List<Placement> placements = net.tasks.stream()
                    .filter(t -> scene.isPlaced(t.index))
                    .map(t -> scene.placed(t.index))
                    .toList();
            return Optional.of(PlanText.of(net, placements, reasons));
        }

        /** The first that is not blocked and waits for nothing; -1 where there is none. */
        private int next(Iterable<Integer> open, Set<Integer> blocked) {
            for (int i : open) {
                if (!blocked.contains(i) && waitsForNothing(net.task(order.get(i)))) {
                    return i;
                }
            }
            return -1;
        }

        private boolean waitsForNothing(Task task) {
            for (Need need : task.needs) {
                if (!scene.isPlaced(need.task())) {
                    return false;
                }
            }
            return true;
        }

        /** Puts a step in; else the step to go back to, itself where there is none. */
        private Optional<Integer> put(Task task) {
            int from = Math.max(task.earliest, notBefore[task.index]);
            for (Need need : task.needs) {
                from = Math.max(from, need.opensAt(net.time, scene.placed(need.task())));
            }
            Found found = search.find(ask(task, from));
            if (found.placement().isEmpty()) {
                return Optional.of(isTooLong(found) ? opener(found.keep()) : task.index);
            }
            Placement p = found.placement().get();
            for (Need need : task.needs) {
                Placement earlier = scene.placed(need.task());
                if (need.shuts() && p.start() > need.lastAt(net.time, earlier) && push(need, earlier, p)) {
                    return Optional.of(need.task());
                }
            }
            scene.place(p);
            return Optional.empty();
        }

        /**
         * Whether a step's stay was begun where something later has the place before it is over. Then it begins anew, and only
         * where there is room for as long as it is known to last now.
         */
        private boolean isTooLong(Found found) {
            boolean learns = found.obstacle() == Obstacle.HOLD
                    && !net.keep(found.keep()).begun
                    && found.minutes() > scene.least(found.keep());
            if (learns) {
                scene.needAtLeast(found.keep(), found.minutes());
            }
            return learns;
        }

        /** The step of a stay that was put in first. */
        private int opener(int keep) {
            return in.stream()
                    .map(order::get)
                    .filter(t -> net.task(t).keeps.contains(keep))
                    .findFirst()
                    .orElseThrow();
        }

        private Ask ask(Task task, int from) {
            Wish w = wishes[task.index];
            List<Integer> people = w.people().stream()
                    .map(net.personOf::get)
                    .filter(Objects::nonNull)
                    .toList();
            List<Integer> places = w.places().stream()
                    .map(net.placeOf::get)
                    .filter(Objects::nonNull)
                    .toList();
            int othersFrom = sooner == Sooner.BY_ANYBODY ? -TimeLine.FOREVER : w.start();
            return new Ask(
                    task,
                    from,
                    Integer.MAX_VALUE,
                    false,
                    false,
                    Optional.of(new Wanted(people, w.crew(), places, othersFrom)));
        }

        /** Moves what opened a window later. Not for a priced window that cannot be kept so. */
        private boolean push(Need need, Placement earlier, Placement late) {
            int u = need.task();
            boolean mayMiss = !need.isHard()
                    && (wishes[late.task()].missed().contains(net.task(u).step.id()) || pushes[u] >= SOFT_PUSHES);
            if (!wished[u] || mayMiss) {
                return need.isHard();
            }
            pushes[u]++;
            int wanted = net.time.back(late.start(), need.shut());
            int by = Math.max(5, wanted - need.momentOf(earlier));
            int exact = wishes[u].start();
            notBefore[u] = earlier.start() < exact ? exact : Math.max(notBefore[u], earlier.start() + by);
            return true;
        }
    }
}

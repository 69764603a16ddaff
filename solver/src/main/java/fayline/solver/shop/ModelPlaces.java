package fayline.solver.shop;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import fayline.flow.plan.Place;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.solver.shop.ShopCase.Item;
import fayline.solver.shop.ShopCase.Stay;
import fayline.solver.shop.ShopCase.Tie;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Stays at moulds, stands and ports, from their first start to their last end. Where all who want one of some places want any of
 * just those, they are counted; else each stay chooses its places.
 */
final class ModelPlaces {
    private final ShopCase shop;
    private final Standing standing;
    private final Range range;
    private final CpModel model;
    private final boolean hinted;
    private final StepVars[] vars;
    /** Stays that may move, by the set of places that they are counted with. */
    private final Map<Set<String>, List<Moving>> pooled = new LinkedHashMap<>();
    /** Stays that may move, by place. */
    private final Map<String, List<Moving>> atPlace = new LinkedHashMap<>();
    /** When a place is taken by stays that do not move. */
    private final Map<String, BitSet> taken = new HashMap<>();
    /** For each stay that chooses, which place it takes. */
    private final Map<Stay, Map<String, BoolVar>> choices = new HashMap<>();

    private record Moving(Stay stay, IntervalVar interval) {}

    ModelPlaces(ShopCase shop, Standing standing, Range range, CpModel model, boolean hinted, StepVars[] vars) {
        this.shop = shop;
        this.standing = standing;
        this.range = range;
        this.model = model;
        this.hinted = hinted;
        this.vars = vars;
    }

    void add() {
        Map<Stay, Set<String>> pools = pools();
        for (Stay stay : shop.stays) {
            if (stay.items().stream().anyMatch(range::isFree)) {
                move(stay, pools.get(stay));
            } else {
                take(stay);
            }
        }
        pooled.forEach(this::count);
        atPlace.forEach(this::exclude);
    }

    /** Which place a stay takes: nothing where there is no choice or none is made. */
    Optional<BoolVar> takes(Stay stay, String place) {
        return Optional.ofNullable(choices.getOrDefault(stay, Map.of()).get(place));
    }

    private Map<Stay, Set<String>> pools() {
        Map<String, Set<Set<String>>> setsOf = new HashMap<>();
        for (Stay stay : shop.stays) {
            Set<String> set = new TreeSet<>(stay.hold().candidates());
            set.forEach(p -> setsOf.computeIfAbsent(p, x -> new HashSet<>()).add(set));
        }
        Map<Stay, Set<String>> pools = new HashMap<>();
        for (Stay stay : shop.stays) {
            Set<String> set = new TreeSet<>(stay.hold().candidates());
            boolean alone =
                    set.stream().allMatch(p -> setsOf.getOrDefault(p, Set.of()).size() == 1);
            long rooms = set.stream()
                    .flatMap(p -> Optional.ofNullable(shop.places.get(p)).stream())
                    .map(Place::room)
                    .distinct()
                    .count();
            if (alone && rooms <= 1 && set.size() > 1) {
                pools.put(stay, set);
            }
        }
        return pools;
    }

    private void move(Stay stay, @Nullable Set<String> pool) {
        IntervalVar whole = model.newIntervalVar(
                from(stay), size(stay), to(stay), stay.hold().id());
        boolean settled = stay.begun() || stay.items().stream().anyMatch(i -> !range.isFree(i));
        List<String> candidates = stay.hold().candidates();
        if (pool != null) {
            pooled.computeIfAbsent(pool, p -> new ArrayList<>()).add(new Moving(stay, whole));
        } else if (settled || candidates.size() == stay.hold().count()) {
            List<String> where = settled ? standing.places(stay) : candidates;
            where.forEach(
                    p -> atPlace.computeIfAbsent(p, x -> new ArrayList<>()).add(new Moving(stay, whole)));
        } else {
            choose(stay, whole);
        }
    }

    private void choose(Stay stay, IntervalVar whole) {
        Map<String, BoolVar> takes = new LinkedHashMap<>();
        List<String> now = standing.places(stay);
        for (String place : new TreeSet<>(stay.hold().candidates())) {
            if (!suits(stay, place)) {
                continue;
            }
            BoolVar take = model.newBoolVar(stay.hold().id() + " at " + place);
            if (hinted) {
                model.addHint(take, now.contains(place));
            }
            takes.put(place, take);
            IntervalVar here = model.newOptionalIntervalVar(
                    whole.getStartExpr(), whole.getSizeExpr(), whole.getEndExpr(), take, take.getName());
            atPlace.computeIfAbsent(place, x -> new ArrayList<>()).add(new Moving(stay, here));
        }
        model.addEquality(
                LinearExpr.sum(takes.values().toArray(LinearArgument[]::new)),
                stay.hold().count());
        choices.put(stay, takes);
    }

    private boolean suits(Stay stay, String id) {
        Place place = shop.places.get(id);
        if (place == null || place.kind() != stay.hold().kind()) {
            return false;
        }
        boolean wet = stay.items().stream().anyMatch(i -> shop.items.get(i).is("wet"));
        boolean dust = stay.items().stream().anyMatch(i -> shop.items.get(i).is("dust"));
        return place.kind() != Place.Kind.STAND || ((!wet || place.wet()) && (!dust || place.dust()));
    }

    private LinearArgument from(Stay stay) {
        if (stay.begun()) {
            return LinearExpr.constant(Math.min(0, shop.slots.first));
        }
        Optional<Item> root = only(stay, true);
        if (root.isPresent()) {
            return start(root.get());
        }
        IntVar from = model.newIntVar(0, shop.slots.last, stay.hold().id() + " from");
        int now = Integer.MAX_VALUE;
        for (int i : stay.items()) {
            model.addLessOrEqual(from, start(shop.items.get(i)));
            now = Math.min(now, standing.start(i));
        }
        hint(from, now);
        return from;
    }

    private LinearArgument to(Stay stay) {
        if (stay.endless()) {
            return LinearExpr.constant(2L * shop.slots.last + 2);
        }
        Optional<Item> sink = only(stay, false);
        if (sink.isPresent() && !stay.begun()) {
            return end(sink.get());
        }
        IntVar to = model.newIntVar(0, 2L * shop.slots.last + 2, stay.hold().id() + " to");
        int now = 0;
        for (int i : stay.items()) {
            model.addGreaterOrEqual(to, end(shop.items.get(i)));
            now = Math.max(now, standing.end(i));
        }
        for (String id : stay.hold().steps()) {
            PlannedStep p = shop.happened.get(id);
            if (p != null) {
                int past = Slots.up(shop.time.floor(p.end()));
                model.addGreaterOrEqual(to, past);
                now = Math.max(now, past);
            }
        }
        hint(to, now);
        return to;
    }

    private IntVar size(Stay stay) {
        IntVar size = model.newIntVar(0, 3L * shop.slots.last + 3, stay.hold().id() + " size");
        int from = stay.begun()
                ? Math.min(0, shop.slots.first)
                : stay.items().stream().mapToInt(standing::start).min().orElse(0);
        int to = stay.items().stream().mapToInt(standing::end).max().orElse(0);
        for (String id : stay.hold().steps()) {
            PlannedStep p = shop.happened.get(id);
            to = p == null ? to : Math.max(to, Slots.up(shop.time.floor(p.end())));
        }
        hint(size, (stay.endless() ? 2 * shop.slots.last + 2 : to) - from);
        return size;
    }

    private LinearArgument start(Item item) {
        StepVars v = vars[item.index];
        return v == null ? LinearExpr.constant(standing.start(item.index)) : v.start();
    }

    private LinearArgument end(Item item) {
        StepVars v = vars[item.index];
        return v == null ? LinearExpr.constant(standing.end(item.index)) : v.end();
    }

    private void hint(IntVar of, int value) {
        if (hinted) {
            model.addHint(of, value);
        }
    }

    /** The one step that comes before, or after, all others of a stay by links from end to start within it. */
    private Optional<Item> only(Stay stay, boolean first) {
        Set<Integer> mine = new HashSet<>(stay.items());
        Set<Integer> led = new HashSet<>();
        Set<Integer> leads = new HashSet<>();
        for (int i : mine) {
            for (Tie tie : shop.items.get(i).ties) {
                if (tie.item().filter(mine::contains).isPresent()
                        && (first || tie.link().from().equals("end"))) {
                    led.add(i);
                    leads.add(tie.item().get());
                }
            }
        }
        List<Integer> open = mine.stream()
                .filter(i -> !(first ? led : leads).contains(i))
                .sorted()
                .toList();
        return open.size() == 1 ? Optional.of(shop.items.get(open.get(0))) : Optional.empty();
    }

    private void take(Stay stay) {
        int from = stay.items().stream().mapToInt(standing::start).min().orElse(0);
        int to = stay.items().stream().mapToInt(standing::end).max().orElse(0);
        Set<String> where = new TreeSet<>(stay.items().isEmpty() ? List.of() : standing.places(stay));
        for (String id : stay.hold().steps()) {
            PlannedStep p = shop.happened.get(id);
            if (p != null) {
                from = 0;
                to = Math.max(to, Slots.up(shop.time.floor(p.end())));
                p.places().stream().filter(stay.hold().candidates()::contains).forEach(where::add);
            }
        }
        to = stay.endless() ? 2 * shop.slots.last + 2 : to;
        if (to > from) {
            int end = to;
            int begin = Math.max(0, from);
            where.forEach(p -> taken.computeIfAbsent(p, x -> new BitSet()).set(begin, Math.max(begin, end)));
        }
    }

    private void count(Set<String> pool, List<Moving> all) {
        CumulativeConstraint places = model.addCumulative(pool.size());
        all.forEach(m -> places.addDemand(m.interval, m.stay.hold().count()));
        TreeSet<Integer> cuts = new TreeSet<>();
        List<BitSet> lanes =
                pool.stream().map(p -> taken.getOrDefault(p, new BitSet())).toList();
        for (BitSet lane : lanes) {
            for (long[] s : Slots.intervals(lane)) {
                cuts.add((int) s[0]);
                cuts.add((int) s[1] + 1);
            }
        }
        Integer before = null;
        for (int cut : cuts) {
            if (before != null) {
                int at = before;
                long n = lanes.stream().filter(l -> l.get(at)).count();
                if (n > 0) {
                    places.addDemand(model.newFixedInterval(at, (long) cut - at, "taken"), n);
                }
            }
            before = cut;
        }
    }

    /** One at a time; but stays that had both begun are not judged against each other. */
    private void exclude(String place, List<Moving> all) {
        List<Moving> begun = all.stream().filter(m -> m.stay.begun()).toList();
        List<Moving> fresh = all.stream().filter(m -> !m.stay.begun()).toList();
        List<IntervalVar> apart = new ArrayList<>();
        fresh.forEach(m -> apart.add(m.interval));
        for (long[] s : Slots.intervals(taken.getOrDefault(place, new BitSet()))) {
            apart.add(model.newFixedInterval(s[0], s[1] + 1 - s[0], "taken"));
        }
        model.addNoOverlap(apart);
        for (Moving b : begun) {
            List<IntervalVar> behind = new ArrayList<>(List.of(b.interval));
            fresh.forEach(m -> behind.add(m.interval));
            model.addNoOverlap(behind);
        }
    }

    /** Literals of a stay's being in a room; empty where it never is, one that is always true where it must. */
    List<Literal> inRoom(Item item, String room) {
        List<Literal> all = new ArrayList<>();
        for (Stay stay : item.stays) {
            for (String id : stay.hold().candidates()) {
                Place place = shop.places.get(id);
                if (place != null
                        && place.kind() == Place.Kind.STAND
                        && place.room().equals(room)) {
                    Optional<BoolVar> takes = takes(stay, id);
                    boolean chooses = choices.containsKey(stay);
                    if (takes.isPresent()) {
                        all.add(takes.get());
                    } else if (!chooses
                            && (!settled(stay) || standing.places(stay).contains(id))) {
                        return List.of(model.trueLiteral());
                    }
                }
            }
        }
        return all;
    }

    private boolean settled(Stay stay) {
        return stay.begun() || stay.items().stream().anyMatch(i -> !range.isFree(i));
    }
}

package fayline.flow.planner;

import fayline.flow.plan.ChangedStep;
import fayline.flow.plan.Hold;
import fayline.flow.plan.OppositeHands;
import fayline.flow.plan.Plan;
import fayline.flow.plan.WishWords;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.State;
import fayline.flow.plan.WorkWish;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What together keeps a step out of every plan: a group of requirements of which none can be left out, found by letting one after
 * the other go and planning anew (a deletion filter; Chinneck and Dravnieks 1991 [chinneck1991]). It is the smallest group found;
 * another way of letting go may find another.
 */
public final class PlanConflict {
    private static final int MOST_WISHES = 24;

    private final Work work;
    private final PlanSolver planner;
    private final Map<String, WorkStep> steps = new LinkedHashMap<>();

    /**
     * A conflict.
     *
     * @param step the step that has no place in the plan
     * @param requirements what stands against each other, each as a clause; none of them can be left out
     * @param wishes ids of the wishes among them
     */
    public record Conflict(String step, List<String> requirements, Set<String> wishes) {
        /** Copies list and set. */
        public Conflict {
            requirements = List.copyOf(requirements);
            wishes = Set.copyOf(wishes);
        }

        /** The conflict as a sentence. */
        public String sentence() {
            return requirements.size() == 1
                    ? "What stands in the way: " + requirements.get(0) + "."
                    : "These stand against each other, and one must give way: " + String.join("; ", requirements) + ".";
        }
    }

    /** Something that can be let go; {@code wish} is the id of a wish, else empty. */
    private record Requirement(String words, String wish, UnaryOperator<Work> letGo) {
        Requirement(String words, UnaryOperator<Work> letGo) {
            this(words, "", letGo);
        }
    }

    private PlanConflict(Work work, PlanSolver planner) {
        this.work = work;
        this.planner = planner;
        work.steps().forEach(s -> steps.put(s.id(), s));
    }

    /**
     * Looks for the conflicts of a step: in each at least one requirement must give way.
     *
     * @param work the work
     * @param step a step that could not be planned
     * @param planner a quick planner
     * @return the conflicts, none sharing a requirement; empty where nothing that can be let go would help, or the step can be
     *     planned after all
     */
    public static List<Conflict> of(Work work, String step, PlanSolver planner) {
        return new PlanConflict(work, planner).find(step);
    }

    /**
     * The steps where the trouble begins: they have no place even in a shop that does nothing but what comes before them, while
     * all of that can be planned. Others wait for them, or for a place that they never give back.
     *
     * @param work the work
     * @param plan a plan that leaves steps out
     * @param planner a quick planner
     * @param most how many at most
     * @return their ids in the order of the work; the first left out where there are none such
     */
    public static List<String> roots(Work work, Plan plan, PlanSolver planner, int most) {
        PlanConflict conflict = new PlanConflict(work, planner);
        Set<String> out = new HashSet<>();
        plan.unplanned().forEach(u -> out.add(u.step()));
        List<String> roots = new ArrayList<>();
        List<String> left = new ArrayList<>();
        for (WorkStep s : work.steps()) {
            if (out.contains(s.id()) && roots.size() < most) {
                left.add(s.id());
                if (conflict.isRoot(s)) {
                    roots.add(s.id());
                }
            }
        }
        return roots.isEmpty() ? left.stream().limit(1).toList() : List.copyOf(roots);
    }

    private boolean isRoot(WorkStep s) {
        Set<String> planned = new HashSet<>();
        planner.plan(onlyWith(work, before(s), Set.of())).steps().forEach(p -> planned.add(p.step()));
        return !planned.contains(s.id())
                && s.after().stream().allMatch(l -> planned.contains(l.step()) || !steps.containsKey(l.step()));
    }

    private List<Conflict> find(String id) {
        WorkStep step = steps.get(id);
        if (step == null || step.state() != State.TODO || isPlanned(work, id)) {
            return List.of();
        }
        List<Requirement> open = requirements(step);
        if (!isPlanned(without(open), id)) {
            return List.of();
        }
        List<Conflict> conflicts = new ArrayList<>();
        List<Requirement> gone = new ArrayList<>();
        while (!isPlanned(without(gone), id)) {
            List<Requirement> letGo = new ArrayList<>(gone);
            List<Requirement> needed = new ArrayList<>();
            for (Requirement r : open) {
                if (!gone.contains(r)) {
                    letGo.add(r);
                    if (isPlanned(without(letGo), id)) {
                        letGo.remove(r);
                        needed.add(r);
                    }
                }
            }
            gone.addAll(needed);
            conflicts.add(new Conflict(
                    id,
                    needed.stream().map(Requirement::words).toList(),
                    needed.stream()
                            .map(Requirement::wish)
                            .filter(w -> !w.isEmpty())
                            .collect(Collectors.toSet())));
            if (needed.isEmpty()) {
                break;
            }
        }
        return List.copyOf(conflicts);
    }

    private Work without(List<Requirement> gone) {
        Work relaxed = work;
        for (Requirement r : gone) {
            relaxed = r.letGo().apply(relaxed);
        }
        return relaxed;
    }

    private boolean isPlanned(Work w, String id) {
        Plan plan = planner.plan(w);
        return plan.steps().stream().anyMatch(p -> p.step().equals(id));
    }

    private List<Requirement> requirements(WorkStep step) {
        List<Requirement> all = new ArrayList<>();
        Set<String> tied = tied(step);
        all.add(new Requirement(
                "the other work of the shop takes people and places", w -> onlyWith(w, before(step), tied)));
        step.notBefore()
                .ifPresent(day -> all.add(new Requirement(
                        "it may not begin before " + day, w -> with(w, step.id(), s -> new ChangedStep(s).anyDay()))));
        for (String delivery : step.awaits()) {
            all.add(new Requirement(
                    "it waits for delivery " + delivery,
                    w -> with(w, step.id(), s -> new ChangedStep(s).withoutDeliveries())));
        }
        work.holds().stream()
                .filter(h -> h.steps().contains(step.id()))
                .forEach(h -> all.add(new Requirement(
                        "it needs " + h.count() + " of "
                                + (h.candidates().isEmpty()
                                        ? "no place"
                                        : h.candidates().stream()
                                                .map(p -> WishWords.place(work, p))
                                                .collect(Collectors.joining(", "))),
                        w -> w.withPlaces(
                                w.places(),
                                w.holds().stream()
                                        .filter(x -> !x.id().equals(h.id()))
                                        .toList()))));
        if (!step.hands().isEmpty()) {
            hands(step, all);
        }
        work.hands().follows().stream()
                .filter(f -> f.step().equals(step.id()) && f.crew() != OppositeHands.Crew.ANY)
                .forEach(f -> all.add(new Requirement(
                        "it is to be done by those who did \"" + title(f.first()) + "\" of the first hand",
                        w -> w.withHands(w.hands().without(f)))));
        if (!step.watchMin().isEmpty()) {
            all.add(new Requirement(
                    "somebody must look at it " + step.watchMin() + " min after the hands leave",
                    w -> with(w, step.id(), s -> new ChangedStep(s).unwatched())));
        }
        for (Link link : step.after()) {
            link.shuts()
                    .filter(s -> link.miss().isEmpty())
                    .ifPresent(s -> all.add(new Requirement(
                            String.format(
                                    Locale.ROOT,
                                    "it must begin at most %.0f min after \"%s\"",
                                    s.minutes(),
                                    title(link.step())),
                            w -> with(w, step.id(), x -> Relax.openWindow(x, link.step())))));
        }
        wishes(step, tied, all);
        return all;
    }

    /** What the lead wishes of it, of what it is tied to, and then of anything else, as far as one has patience. */
    private void wishes(WorkStep step, Set<String> tied, List<Requirement> all) {
        Set<String> before = before(step);
        work.wishes().stream()
                .filter(w -> steps.containsKey(w.step()) && !w.isPast(work.now()))
                .sorted(Comparator.comparing((WorkWish w) -> !w.step().equals(step.id()))
                        .thenComparing(w -> !tied.contains(w.step()) && !before.contains(w.step())))
                .limit(MOST_WISHES)
                .forEach(w -> all.add(new Requirement(
                        WishWords.clause(work, w)
                                + (w.step().equals(step.id()) ? "" : ", for \"" + title(w.step()) + "\""),
                        w.id(),
                        x -> x.withoutWish(w.id()))));
    }

    private void hands(WorkStep step, List<Requirement> all) {
        CrewTime least = step.hands().get(0);
        new TreeMap<>(step.skills())
                .forEach((skill, n) -> all.add(new Requirement(
                        n + " of its people need the skill " + skill,
                        w -> with(w, step.id(), s -> Relax.withoutSkill(s, skill)))));
        if (least.people() > 1) {
            all.add(new Requirement(
                    "it needs " + least.people() + " people at once", w -> with(w, step.id(), Relax::alone)));
        }
        if (!step.interruptible()) {
            all.add(new Requirement(
                    "its " + least.minutes() + " min of hands may not stop",
                    w -> with(w, step.id(), s -> new ChangedStep(s).stopping())));
        }
        if (step.accompanied()) {
            all.add(new Requirement(
                    "a second person must be in the shop",
                    w -> with(w, step.id(), s -> new ChangedStep(s).unaccompanied())));
        }
        if (!step.air().equals("quiet")) {
            all.add(new Requirement(
                    "it is " + step.air() + " work, and dust and wet work are kept apart",
                    w -> with(w, step.id(), s -> new ChangedStep(s).air("quiet"))));
        }
    }

    private String title(String id) {
        WorkStep s = steps.get(id);
        return s == null ? id : s.title();
    }

    /** Steps that share a window with it, one way or the other, and what they share one with. */
    private Set<String> tied(WorkStep step) {
        Set<String> tied = new HashSet<>(Set.of(step.id()));
        boolean grows = true;
        while (grows) {
            grows = false;
            for (WorkStep s : work.steps()) {
                for (Link l : s.after()) {
                    if (l.shuts().isPresent() && (tied.contains(s.id()) || tied.contains(l.step()))) {
                        grows |= tied.addAll(List.of(s.id(), l.step()));
                    }
                }
            }
        }
        return tied;
    }

    private Set<String> before(WorkStep step) {
        Set<String> before = new HashSet<>(Set.of(step.id()));
        List<WorkStep> open = new ArrayList<>(List.of(step));
        while (!open.isEmpty()) {
            WorkStep s = open.remove(open.size() - 1);
            for (Link l : s.after()) {
                WorkStep earlier = steps.get(l.step());
                if (earlier != null && before.add(earlier.id())) {
                    open.add(earlier);
                }
            }
        }
        return before;
    }

    private static Work onlyWith(Work w, Set<String> before, Set<String> tied) {
        Set<String> kept = new HashSet<>(before);
        kept.addAll(tied);
        Set<String> there = new HashSet<>();
        List<WorkStep> steps = w.steps().stream()
                .filter(s -> kept.contains(s.id()) && there.add(s.id()))
                .toList();
        return w.withSteps(
                steps,
                w.holds().stream()
                        .map(h -> new Hold(
                                h.id(),
                                h.kind(),
                                h.candidates(),
                                h.count(),
                                h.steps().stream().filter(there::contains).toList()))
                        .filter(h -> !h.steps().isEmpty())
                        .toList());
    }

    private static Work with(Work w, String id, Function<WorkStep, ChangedStep> letGo) {
        return w.withSteps(
                w.steps().stream()
                        .map(s -> s.id().equals(id) ? letGo.apply(s).step() : s)
                        .toList(),
                w.holds());
    }
}

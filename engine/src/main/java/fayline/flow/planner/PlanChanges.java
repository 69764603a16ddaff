package fayline.flow.planner;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.planner.serial.TimeLine;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * What is different between two plans, in words.
 *
 * @param changes of the steps not begun, in the order of the later plan; then what is planned no more
 * @param finish how the finish moved, empty where it did not
 */
public record PlanChanges(List<Change> changes, Optional<String> finish) {
    /** Copies the list. */
    public PlanChanges {
        changes = List.copyOf(changes);
    }

    /** What sort of change. */
    public enum Kind {
        LATER,
        SOONER,
        /** Same start, other people. */
        PEOPLE,
        /** Same start and people, other places. */
        PLACES,
        /** Newly in the plan. */
        ADDED,
        /** Not planned any more, with a reason. */
        UNPLANNED,
        /** Not in the work any more. */
        GONE
    }

    /**
     * One change.
     *
     * @param step the step
     * @param kind what sort
     * @param byMin minutes later; negative for sooner, zero where the start did not move
     * @param words the whole in words, with the reason where it is known
     */
    public record Change(String step, Kind kind, int byMin, String words) {}

    /**
     * Compares two plans.
     *
     * @param before the earlier plan
     * @param work the work of the later one
     * @param after the later plan
     * @return the changes
     */
    public static PlanChanges between(Plan before, Work work, Plan after) {
        return new Comparison(before, work, after).changes();
    }

    private static final class Comparison {
        private final Plan before;
        private final Work work;
        private final Plan after;
        private final TimeLine time;
        private final Map<String, PlannedStep> old = new LinkedHashMap<>();
        private final Map<String, WorkStep> steps = new LinkedHashMap<>();
        private final Map<String, String> why = new LinkedHashMap<>();

        Comparison(Plan before, Work work, Plan after) {
            this.before = before;
            this.work = work;
            this.after = after;
            time = new TimeLine(work);
            before.steps().forEach(p -> old.put(p.step(), p));
            work.steps().forEach(s -> steps.put(s.id(), s));
            PlanReasons.of(work, after).forEach(r -> why.put(r.step(), r.words()));
        }

        PlanChanges changes() {
            List<Change> changes = new ArrayList<>();
            for (PlannedStep now : after.steps()) {
                WorkStep step = steps.get(now.step());
                if (step != null && step.state() == WorkStep.State.TODO) {
                    change(step, now).ifPresent(changes::add);
                }
            }
            for (Plan.Unplanned u : after.unplanned()) {
                if (old.containsKey(u.step())) {
                    changes.add(new Change(
                            u.step(),
                            Kind.UNPLANNED,
                            0,
                            name(u.step()) + " cannot be planned any more: " + u.reason()));
                }
            }
            for (String id : old.keySet()) {
                if (!steps.containsKey(id)) {
                    changes.add(new Change(id, Kind.GONE, 0, id + " is not in the work any more"));
                }
            }
            return new PlanChanges(changes, finish());
        }

        private Optional<Change> change(WorkStep step, PlannedStep now) {
            String id = step.id();
            PlannedStep then = old.get(id);
            String at = time.words(time.floor(now.start()));
            String because = why.containsKey(id) ? "; it " + why.get(id) : "";
            if (then == null) {
                return Optional.of(new Change(id, Kind.ADDED, 0, name(id) + " is new in the plan, " + at + because));
            }
            long by = Duration.between(then.start(), now.start()).toMinutes();
            if (by != 0) {
                return Optional.of(new Change(
                        id,
                        by > 0 ? Kind.LATER : Kind.SOONER,
                        (int) by,
                        name(id) + " is " + span(Math.abs(by)) + (by > 0 ? " later, " : " sooner, ") + at + " (was "
                                + time.words(time.floor(then.start())) + ")" + because));
            }
            if (!new TreeSet<>(then.people()).equals(new TreeSet<>(now.people()))) {
                return Optional.of(new Change(
                        id,
                        Kind.PEOPLE,
                        0,
                        name(id) + " is done by " + people(now) + " instead of " + people(then) + ", " + at));
            }
            if (!new TreeSet<>(then.places()).equals(new TreeSet<>(now.places()))) {
                return Optional.of(new Change(
                        id,
                        Kind.PLACES,
                        0,
                        name(id) + " is at " + String.join(", ", now.places()) + " instead of "
                                + String.join(", ", then.places()) + ", " + at));
            }
            return Optional.empty();
        }

        private String name(String id) {
            WorkStep step = steps.get(id);
            return step == null ? id : "\"" + step.title() + "\" of " + step.made();
        }

        private String people(PlannedStep p) {
            List<String> names = new ArrayList<>();
            for (String id : p.people()) {
                names.add(work.people().stream()
                        .filter(w -> w.id().equals(id))
                        .map(w -> w.name())
                        .findFirst()
                        .orElse(id));
            }
            return names.isEmpty() ? "nobody" : String.join(" and ", names);
        }

        private Optional<String> finish() {
            Optional<Instant> now = after.finish();
            Optional<Instant> then = before.finish();
            if (now.isEmpty() || then.isEmpty() || now.equals(then)) {
                return Optional.empty();
            }
            long by = Duration.between(then.get(), now.get()).toMinutes();
            return Optional.of("The last step ends " + span(Math.abs(by)) + (by > 0 ? " later, " : " sooner, ")
                    + time.words(time.floor(now.get())));
        }

        private static String span(long minutes) {
            long days = minutes / 1440;
            long hours = minutes % 1440 / 60;
            long rest = minutes % 60;
            List<String> parts = new ArrayList<>();
            if (days > 0) {
                parts.add(String.format(Locale.ROOT, "%d day%s", days, days == 1 ? "" : "s"));
            }
            if (hours > 0) {
                parts.add(hours + " h");
            }
            if (rest > 0 && days == 0) {
                parts.add(rest + " min");
            }
            return String.join(" ", parts);
        }
    }
}

package fayline.flow.result.hours;

import fayline.flow.project.Definition;
import fayline.flow.project.design.Assembly;
import fayline.flow.project.design.Made;
import fayline.flow.project.local.LocalTask;
import fayline.flow.result.rate.BookedHours;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.step.StepResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Adds up who worked how long on what. Time is booked as {@link BookedHours} says. The share of a task is the time of builders over
 * that of everybody, times what was not bought; of the whole, the mean over the tasks worked on by their points. This is a count by
 * time, common practice without a source: an authority may count otherwise, and decides.
 */
public final class HoursCalculator {
    private HoursCalculator() {}

    /**
     * Adds up.
     *
     * @param definition the project
     * @param state what has happened
     * @param steps its steps
     */
    public static HoursResult calculate(Definition definition, ShopState state, List<StepResult> steps) {
        Map<String, StepResult> known = new HashMap<>();
        steps.forEach(s -> known.put(s.local(), s));
        List<BookedTime> booked = new ArrayList<>();
        for (BookedHours.Worked w : BookedHours.worked(definition.shop(), state)) {
            Optional.ofNullable(known.get(w.step()))
                    .ifPresent(s -> booked.add(new BookedTime(
                            w.day(),
                            w.person(),
                            s.id(),
                            s.title(),
                            s.made(),
                            s.kind(),
                            definition.local().paid().contains(w.person()),
                            w.minutes())));
        }
        booked.sort(Comparator.comparing(BookedTime::day)
                .thenComparing(BookedTime::person)
                .thenComparing(BookedTime::step));
        return new HoursResult(
                joined(booked),
                definition.local().tasks().stream()
                        .map(t -> share(definition, t, booked))
                        .toList());
    }

    /** Pieces of one person's time at one step on one day together. */
    private static List<BookedTime> joined(List<BookedTime> sorted) {
        List<BookedTime> all = new ArrayList<>();
        for (BookedTime b : sorted) {
            BookedTime last = all.isEmpty() ? null : all.get(all.size() - 1);
            if (last != null
                    && last.day().equals(b.day())
                    && last.person().equals(b.person())
                    && last.step().equals(b.step())) {
                all.set(
                        all.size() - 1,
                        new BookedTime(
                                b.day(),
                                b.person(),
                                b.step(),
                                b.title(),
                                b.made(),
                                b.kind(),
                                b.paid(),
                                last.minutes() + b.minutes()));
            } else {
                all.add(b);
            }
        }
        return all;
    }

    private static TaskShare share(Definition d, LocalTask task, List<BookedTime> booked) {
        Set<String> made = new HashSet<>();
        task.of().forEach(id -> made.addAll(below(d, id, new HashSet<>())));
        double own = 0;
        double paid = 0;
        for (BookedTime b : booked) {
            if (made.contains(b.made()) && task.takes(b.kind())) {
                own += b.paid() ? 0 : b.minutes();
                paid += b.paid() ? b.minutes() : 0;
            }
        }
        return new TaskShare(task, own, paid);
    }

    /** The part or joint of an id, or all below an assembly. */
    private static Set<String> below(Definition d, String id, Set<String> seen) {
        Set<String> all = new HashSet<>(Set.of(id));
        if (!seen.add(id) || d.assemblies().find(id).isEmpty()) {
            return all;
        }
        Stream.<Made>concat(d.parts().stream(), d.joints().stream())
                .filter(m -> m.in().equals(id))
                .forEach(m -> all.add(m.id()));
        d.assemblies().stream()
                .filter(a -> a.in().equals(Optional.of(id)))
                .map(Assembly::id)
                .forEach(a -> all.addAll(below(d, a, seen)));
        return all;
    }
}

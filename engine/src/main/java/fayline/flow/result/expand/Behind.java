package fayline.flow.result.expand;

import fayline.flow.project.piece.ReworkSteps;
import fayline.flow.result.state.ShopState;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which steps stand behind something open, however far: they wait for it. What has begun goes on. Steps behind a step wait for the work
 * that puts it right too.
 */
final class Behind {
    private final ShopState state;
    private final Map<String, List<String>> follows = new HashMap<>();
    private final Map<String, List<String>> awaited = new HashMap<>();
    private final Map<String, List<String>> rework = new HashMap<>();

    /**
     * Looks.
     *
     * @param state what has happened
     * @param project the project
     * @param waits of each step, by its id within the project, the ids of those that it waits for
     */
    Behind(ShopState state, String project, Map<String, List<String>> waits) {
        this.state = state;
        if (state.waiting().isEmpty() && state.rework().isEmpty()) {
            return;
        }
        waits.forEach((step, earlier) -> earlier.forEach(e -> follows.computeIfAbsent(
                        e.startsWith(project + "/") ? e.substring(project.length() + 1) : e, k -> new ArrayList<>())
                .add(step)));
        for (ShopState.Waiting w : state.waiting()) {
            Set<String> from = new LinkedHashSet<>();
            waits.keySet().stream()
                    .filter(s -> s.equals(w.about()) || s.startsWith(w.about() + "/"))
                    .forEach(from::add);
            open(from)
                    .forEach(s ->
                            awaited.computeIfAbsent(s, k -> new ArrayList<>()).add(w.id()));
        }
        for (ReworkSteps.Piece p : state.rework()) {
            Set<String> behind = open(Set.of(p.afterLocal()));
            behind.remove(p.afterLocal());
            behind.stream()
                    .filter(s -> !s.contains("/" + ReworkSteps.KEY))
                    .forEach(s ->
                            rework.computeIfAbsent(s, k -> new ArrayList<>()).add(p.local()));
        }
    }

    /** The steps not begun among some and all behind them. */
    private Set<String> open(Set<String> from) {
        Set<String> seen = new LinkedHashSet<>(from);
        Deque<String> next = new ArrayDeque<>(from);
        while (!next.isEmpty()) {
            for (String s : follows.getOrDefault(next.pop(), List.of())) {
                if (seen.add(s)) {
                    next.add(s);
                }
            }
        }
        seen.removeIf(s -> state.steps().containsKey(s));
        return seen;
    }

    /** What is open that a step waits for. */
    List<String> awaited(String local) {
        return awaited.getOrDefault(local, List.of());
    }

    /** The work that a step waits for, as ids within the project. */
    List<String> rework(String local) {
        return rework.getOrDefault(local, List.of());
    }
}

package fayline.app.usecase.act;

import fayline.app.usecase.shop.Troubles;
import fayline.flow.project.Definition;
import fayline.flow.project.piece.ReworkSteps;
import fayline.flow.record.RecordState;
import fayline.flow.result.state.ShopState;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What holds a step: something open that it depends on, however far back, or work that puts such a thing right and is not done. */
public final class Held {
    private Held() {}

    /**
     * Why a step may not begin; empty where nothing holds it.
     *
     * @param d the definition with the work that puts deviations right
     * @param state what is recorded
     * @param step the step
     * @param now the moment
     */
    public static Optional<String> by(Definition d, RecordState state, FoundStep step, Instant now) {
        String project = d.facts().id();
        List<ShopState.Waiting> waiting = Troubles.waiting(state, project, now);
        List<ReworkSteps.Piece> rework = Troubles.rework(state, project, now);
        if (waiting.isEmpty() && rework.isEmpty()) {
            return Optional.empty();
        }
        Set<String> on = dependsOn(d, step, project);
        Optional<String> open = waiting.stream()
                .filter(w -> on.stream().anyMatch(s -> s.equals(w.about()) || s.startsWith(w.about() + "/")))
                .map(w -> "It waits for " + w.what()
                        + ". The lead decides; until then nothing that depends on it begins.")
                .findFirst();
        if (open.isPresent() || step.step().id().startsWith(ReworkSteps.KEY)) {
            return open;
        }
        return rework.stream()
                .filter(p -> on.contains(p.afterLocal()) && !isOwn(step, p, project))
                .filter(p -> state.step(project + "/" + p.local()).finished().isEmpty())
                .map(p -> "It waits for rework that is not finished: " + p.what())
                .findFirst();
    }

    /** The step at which the deviation was seen came before the work that puts it right. */
    private static boolean isOwn(FoundStep step, ReworkSteps.Piece p, String project) {
        return step.id().equals(project + "/" + p.afterLocal());
    }

    /** The step itself and all that it waits for, as ids within the project. */
    static Set<String> dependsOn(Definition d, FoundStep step, String project) {
        Set<String> seen = new LinkedHashSet<>();
        Deque<FoundStep> open = new ArrayDeque<>(List.of(step));
        while (!open.isEmpty()) {
            FoundStep next = open.pop();
            if (seen.add(next.id().substring(project.length() + 1))) {
                open.addAll(next.before(d));
            }
        }
        return seen;
    }
}

package fayline.flow.audit;

import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Link;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** No step waits for itself, directly or by way of others. */
final class NoStepWaitsForItself implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        Map<String, Integer> waits = new HashMap<>();
        Map<String, List<String>> next = new HashMap<>();
        Set<String> ids = new LinkedHashSet<>();
        for (WorkStep step : audited.work().steps()) {
            if (!ids.add(step.id())) {
                continue;
            }
            for (Link link : step.after()) {
                if (audited.step(link.step()).isPresent()) {
                    waits.merge(step.id(), 1, Integer::sum);
                    next.computeIfAbsent(link.step(), s -> new ArrayList<>()).add(step.id());
                }
            }
        }
        Deque<String> free = new ArrayDeque<>();
        ids.stream().filter(s -> !waits.containsKey(s)).forEach(free::add);
        Set<String> stuck = new LinkedHashSet<>(ids);
        while (!free.isEmpty()) {
            String step = free.remove();
            stuck.remove(step);
            for (String later : next.getOrDefault(step, List.of())) {
                if (waits.merge(later, -1, Integer::sum) == 0) {
                    free.add(later);
                }
            }
        }
        if (stuck.isEmpty()) {
            return List.of();
        }
        List<String> round = round(audited, stuck);
        return List.of(new BrokenRule(
                name(),
                round,
                "these " + round.size() + " steps wait for each other in a circle: " + String.join(", ", round)
                        + "; expected no circle"));
    }

    /** One circle among steps that never come free: going back from any of them must come round. */
    private static List<String> round(Audited audited, Set<String> stuck) {
        List<String> path = new ArrayList<>();
        String at = stuck.iterator().next();
        while (!path.contains(at)) {
            path.add(at);
            at = audited.step(at).stream()
                    .flatMap(s -> s.after().stream())
                    .map(Link::step)
                    .filter(stuck::contains)
                    .findFirst()
                    .orElseThrow();
        }
        return path.subList(path.indexOf(at), path.size());
    }
}

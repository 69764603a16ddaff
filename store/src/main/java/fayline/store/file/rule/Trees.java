package fayline.store.file.rule;

import fayline.flow.project.catalog.Keyed;
import fayline.flow.project.design.Made;
import fayline.flow.project.design.Make;
import fayline.flow.project.recipe.RecipeStep;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Nothing belongs to itself or waits for itself, by however many steps. */
final class Trees {
    private final Draft d;
    private final Problems problems;

    Trees(Draft draft, Problems problems) {
        this.d = draft;
        this.problems = problems;
    }

    void check() {
        Map<String, List<String>> in = new LinkedHashMap<>();
        Map<String, Tree> places = new HashMap<>();
        d.assemblies().forEach(a -> {
            in.put(a.id(), a.value().in().stream().toList());
            places.put(a.id(), a.at().down("in"));
        });
        circle(in)
                .ifPresent(
                        c -> report(c, places, "an assembly that belongs to itself", "assemblies that end at the top"));
        d.recipes().forEach(r -> {
            Map<String, List<String>> after = new LinkedHashMap<>();
            Map<String, Tree> steps = new HashMap<>();
            for (RecipeStep s : r.value().steps()) {
                after.put(s.id(), s.after().stream().map(a -> a.step()).toList());
            }
            r.at().down("steps").items().forEach(t -> steps.put(t.down("id").text(), t));
            circle(after)
                    .ifPresent(
                            c -> report(c, steps, "a step that waits for itself", "steps that wait for earlier ones"));
        });
        makes();
    }

    /** What waits for what between makes; a make waits for the one before it. */
    private void makes() {
        Map<String, List<String>> waits = new LinkedHashMap<>();
        Map<String, Tree> places = new HashMap<>();
        for (Placed<? extends Keyed> p : d.made()) {
            Optional<Made> made = d.made(p.id());
            List<Make> makes = made.map(Made::make).orElse(List.of());
            for (int n = 0; n < makes.size(); n++) {
                List<String> before = new ArrayList<>();
                if (n > 0) {
                    before.add(key(p.id(), n));
                }
                makes.get(n).after().forEach(ref -> before.addAll(targets(ref)));
                waits.put(key(p.id(), n + 1), before);
                places.put(key(p.id(), n + 1), p.at().down("make", n, "after"));
            }
        }
        circle(waits).ifPresent(c -> report(c, places, "work that waits for itself", "work that waits for other work"));
    }

    private static String key(String made, int number) {
        return made + "/" + number;
    }

    /** The makes that a reference waits for: all of a part, or the one that has the step. */
    private List<String> targets(String ref) {
        String[] bits = ref.split("/", -1);
        List<Make> makes = d.made(bits[0]).map(Made::make).orElse(List.of());
        List<String> keys = new ArrayList<>();
        for (int n = 1; n <= makes.size(); n++) {
            boolean named = bits.length < 3 || bits[1].equals(String.valueOf(n));
            if (named && (bits.length == 1 || hasStep(makes.get(n - 1), bits[bits.length - 1]))) {
                keys.add(key(bits[0], n));
            }
        }
        return keys;
    }

    private boolean hasStep(Make make, String step) {
        return d.whole()
                .recipes()
                .find(make.recipe())
                .filter(r -> r.steps().stream().anyMatch(s -> s.id().equals(step)))
                .isPresent();
    }

    private void report(List<String> circle, Map<String, Tree> places, String found, String expected) {
        Tree at = places.getOrDefault(circle.get(0), d.project());
        problems.stop(
                at, found + ": " + String.join(" > ", circle) + " > " + circle.get(0), expected, "break the circle");
    }

    /** A circle of names, the first in the order of the map first; empty if there is none. */
    static Optional<List<String>> circle(Map<String, List<String>> graph) {
        Set<String> cleared = new HashSet<>();
        for (String from : graph.keySet()) {
            Deque<String> path = new ArrayDeque<>();
            Optional<List<String>> found = walk(from, graph, path, new HashSet<>(), cleared);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<List<String>> walk(
            String at, Map<String, List<String>> graph, Deque<String> path, Set<String> onPath, Set<String> cleared) {
        if (onPath.contains(at)) {
            List<String> circle = new ArrayList<>(path);
            return Optional.of(circle.subList(circle.indexOf(at), circle.size()));
        }
        if (cleared.contains(at) || path.size() > 2_000) {
            return Optional.empty();
        }
        path.addLast(at);
        onPath.add(at);
        for (String next : graph.getOrDefault(at, List.of())) {
            Optional<List<String>> found = walk(next, graph, path, onPath, cleared);
            if (found.isPresent()) {
                return found;
            }
        }
        path.removeLast();
        onPath.remove(at);
        cleared.add(at);
        return Optional.empty();
    }
}

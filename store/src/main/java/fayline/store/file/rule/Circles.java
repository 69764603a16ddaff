package fayline.store.file.rule;

import fayline.flow.project.catalog.Keyed;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Made;
import fayline.flow.project.recipe.After;
import fayline.flow.project.recipe.Recipe;
import fayline.flow.project.recipe.RecipeStep;
import fayline.store.file.rule.SecondHandWaits.Wait;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Nothing may belong to itself or wait for itself. A reference to a whole part counts here for the first of its makes alone:
 * later makes of it may go on after what waits for the first.
 */
final class Circles {
    private final Draft d;
    private final Problems problems;
    private final SecondHandWaits secondHands;
    private final Map<String, List<Edge>> edges = new LinkedHashMap<>();
    private final Set<String> done = new HashSet<>();
    private final List<Edge> path = new ArrayList<>();
    private final Set<Set<String>> told = new HashSet<>();

    private record Edge(String from, String to, Optional<Tree> at) {}

    Circles(Draft draft, Problems problems) {
        this.d = draft;
        this.problems = problems;
        secondHands = new SecondHandWaits(draft);
    }

    void check() {
        d.assemblies()
                .forEach(a -> a.at().get("in")
                        .ifPresent(in -> edge("assembly " + a.id(), "assembly " + in.text(), Optional.of(in))));
        for (Placed<? extends Keyed> p : d.made()) {
            d.made(p.id()).ifPresent(made -> made(made, p.at()));
        }
        List.copyOf(edges.keySet()).forEach(this::walk);
    }

    private void made(Made made, Tree at) {
        for (int n = 1; n <= made.make().size(); n++) {
            String start = made.id() + "/" + n;
            Tree make = at.down("make", n - 1);
            int number = n;
            recipe(made, n).ifPresent(r -> {
                steps(r, start);
                r.steps()
                        .forEach(s ->
                                secondHands.of(made, number, s).forEach(w -> afterFirstHand(start + "/" + s.id(), w)));
            });
            if (n > 1) {
                edge(start, end(made.id(), n - 1), Optional.empty());
            }
            for (Tree ref : make.down("after").items()) {
                target(ref.text()).ifPresent(to -> edge(start, to, Optional.of(ref)));
            }
        }
        if (made instanceof Joint && !made.make().isEmpty()) {
            for (Tree part : at.down("between").items()) {
                target(part.text()).ifPresent(to -> edge(made.id() + "/1", to, Optional.of(part)));
            }
        }
    }

    /** Lessons of something made are known when its last make is over. */
    private void afterFirstHand(String from, Wait wait) {
        Optional<String> whole = d.made(wait.ref())
                .filter(m -> !m.make().isEmpty())
                .map(m -> end(m.id(), m.make().size()));
        whole.or(() -> target(wait.ref())).ifPresent(to -> edge(from, to, Optional.of(wait.at())));
    }

    /** The end of a make waits for its steps, each step for the make's start and what the recipe says. */
    private void steps(Recipe recipe, String start) {
        for (RecipeStep s : recipe.steps()) {
            edge(start + "/", start + "/" + s.id(), Optional.empty());
            edge(start + "/" + s.id(), start, Optional.empty());
            for (After a : s.after()) {
                edge(start + "/" + s.id(), start + "/" + a.step(), Optional.empty());
            }
        }
    }

    private static String end(String made, int n) {
        return made + "/" + n + "/";
    }

    private Optional<Recipe> recipe(Made made, int n) {
        return d.whole().recipes().find(made.make().get(n - 1).recipe());
    }

    private Optional<String> target(String ref) {
        String[] bits = ref.split("/", -1);
        Optional<Made> made = d.made(bits[0]).filter(m -> !m.make().isEmpty());
        if (made.isEmpty()) {
            return Optional.empty();
        }
        if (bits.length == 1) {
            return Optional.of(end(bits[0], 1));
        }
        String step = bits[bits.length - 1];
        if (bits.length == 3) {
            return Optional.of(ref);
        }
        for (int n = made.get().make().size(); n >= 1; n--) {
            if (recipe(made.get(), n).stream().flatMap(r -> r.steps().stream()).anyMatch(s -> s.id().equals(step))) {
                return Optional.of(bits[0] + "/" + n + "/" + step);
            }
        }
        return Optional.empty();
    }

    private void edge(String from, String to, Optional<Tree> at) {
        edges.computeIfAbsent(from, k -> new ArrayList<>()).add(new Edge(from, to, at));
    }

    /** Depth first, with a stack of its own: a long chain of parts must not be too deep for the machine's. */
    private void walk(String root) {
        if (!done.add(root)) {
            return;
        }
        List<java.util.Iterator<Edge>> open = new ArrayList<>();
        Set<String> onPath = new HashSet<>(Set.of(root));
        open.add(edges.getOrDefault(root, List.of()).iterator());
        while (!open.isEmpty()) {
            java.util.Iterator<Edge> top = open.get(open.size() - 1);
            if (!top.hasNext()) {
                open.remove(open.size() - 1);
                if (!path.isEmpty()) {
                    onPath.remove(path.remove(path.size() - 1).to());
                }
                continue;
            }
            Edge e = top.next();
            if (onPath.contains(e.to())) {
                circle(e);
            } else if (done.add(e.to())) {
                path.add(e);
                onPath.add(e.to());
                open.add(edges.getOrDefault(e.to(), List.of()).iterator());
            }
        }
    }

    private void circle(Edge last) {
        int from = 0;
        while (from < path.size() && !path.get(from).from().equals(last.to())) {
            from++;
        }
        List<Edge> circle = new ArrayList<>(path.subList(from, path.size()));
        circle.add(last);
        List<Edge> written = circle.stream().filter(e -> e.at().isPresent()).toList();
        Set<String> names = new TreeSet<>();
        circle.forEach(e -> names.add(e.to()));
        if (written.isEmpty() || !told.add(names)) {
            return;
        }
        StringBuilder words = new StringBuilder(shown(written.get(0).from()));
        written.forEach(e -> words.append(" -> ").append(shown(e.to())));
        if (!shown(written.get(0).from())
                .equals(shown(written.get(written.size() - 1).to()))) {
            words.append(" -> ").append(shown(written.get(0).from()));
        }
        boolean tree = written.get(0).from().startsWith("assembly ");
        boolean hands = written.stream()
                .flatMap(e -> e.at().stream())
                .anyMatch(at -> at.path().contains("after-opposite"));
        written.get(0)
                .at()
                .ifPresent(at -> problems.stop(
                        at,
                        "a circle: " + words,
                        tree ? "assemblies that end at the whole" : "work that does not wait for itself",
                        tree
                                ? "take one \"in:\" away"
                                : hands
                                        ? "take \"after-opposite:\" or one \"after:\" away"
                                        : "take one \"after:\" away"));
    }

    private static String shown(String node) {
        String plain = node.startsWith("assembly ") ? node.substring("assembly ".length()) : node;
        return plain.endsWith("/") ? plain.substring(0, plain.length() - 1) : plain;
    }
}

package fayline.flow.result.expand;

import fayline.flow.project.Definition;
import fayline.flow.project.design.Assembly;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Made;
import fayline.flow.project.design.Make;
import fayline.flow.project.recipe.Recipe;
import fayline.flow.project.recipe.RecipeStep;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * All makes of a project and how they wait for each other. A make waits for the make before it on the same part, for what its
 * {@code after} names, and on a joint for the joint's parts. Where a part goes on being made after a joint that needs it, the
 * joint waits for what comes before that only.
 */
public final class MakeTree {
    private final Definition definition;
    private final Map<String, List<MakeNode>> byMade = new LinkedHashMap<>();

    /** The makes of a definition. */
    public MakeTree(Definition definition) {
        this.definition = definition;
        for (Made made : new Names(definition).allMade()) {
            List<MakeNode> nodes = new ArrayList<>();
            for (Make make : made.make()) {
                Optional<Recipe> recipe = definition.recipes().find(make.recipe());
                int number = nodes.size() + 1;
                recipe.ifPresent(r -> nodes.add(MakeNode.of(made, number, make, r)));
            }
            byMade.put(made.id(), nodes);
        }
    }

    /** Every make, in the order of the definition. */
    List<MakeNode> all() {
        return byMade.values().stream().flatMap(List::stream).toList();
    }

    /** The make before, of one that is not the first. */
    private MakeNode before(MakeNode node) {
        return byMade.getOrDefault(node.made().id(), List.of()).get(node.number() - 2);
    }

    /** What the first steps of a make wait for outside their recipe, as local step ids. */
    List<String> outer(MakeNode node) {
        Set<String> waits = new LinkedHashSet<>();
        if (node.number() > 1) {
            waits.addAll(ends(before(node)));
        }
        if (node.number() == 1 && node.made() instanceof Joint joint) {
            joint.between().forEach(p -> waits.addAll(endOf(p, node)));
        }
        node.make().after().forEach(ref -> waits.addAll(resolve(ref, node)));
        return List.copyOf(waits);
    }

    /**
     * The steps that a reference of the definition names: {@code made} or an assembly stands for its last steps,
     * {@code made/key} for the step of its last make that has one, {@code made/number/key} for one step.
     *
     * @param ref the reference
     * @return local step ids; none where the reference leads nowhere
     */
    public List<String> resolve(String ref) {
        String[] p = ref.split("/");
        List<MakeNode> nodes = byMade.getOrDefault(p[0], List.of());
        if (p.length == 1) {
            return byMade.containsKey(ref) ? last(nodes) : inAssembly(ref);
        }
        if (p.length == 2) {
            for (int i = nodes.size() - 1; i >= 0; i--) {
                if (nodes.get(i).step(p[1]).isPresent()) {
                    return List.of(nodes.get(i).local(p[1]));
                }
            }
            return List.of();
        }
        return nodes.stream()
                .filter(n -> Integer.toString(n.number()).equals(p[1]))
                .flatMap(n -> n.nearest(p[2]).stream().map(s -> n.local(s.id())))
                .toList();
    }

    /** The first steps of something made: those that wait for nothing within their recipe; with a key that step only. */
    public List<String> starts(String ref) {
        if (ref.contains("/")) {
            return resolve(ref);
        }
        return byMade.getOrDefault(ref, List.of()).stream()
                .limit(1)
                .flatMap(n -> n.steps().stream().filter(n::isRoot).map(s -> n.local(s.id())))
                .toList();
    }

    private List<String> resolve(String ref, MakeNode asker) {
        return ref.contains("/") || !byMade.containsKey(ref) ? resolve(ref) : endOf(ref, asker);
    }

    /** The end of a part or joint, up to the first of its makes that waits for the asking make. */
    private List<String> endOf(String made, MakeNode asker) {
        List<MakeNode> nodes = byMade.getOrDefault(made, List.of());
        List<MakeNode> before = new ArrayList<>();
        for (MakeNode n : nodes) {
            if (n.equals(asker) || waitsFor(n, asker, new HashSet<>())) {
                break;
            }
            before.add(n);
        }
        return last(before);
    }

    private boolean waitsFor(MakeNode node, MakeNode asker, Set<String> seen) {
        if (!seen.add(node.local(""))) {
            return false;
        }
        for (String ref : refs(node)) {
            String[] p = ref.split("/");
            if (p[0].equals(asker.made().id())) {
                if (p.length < 3 ? !isLaterMakeNaming(asker, node) : p[1].equals(Integer.toString(asker.number()))) {
                    return true;
                }
                continue;
            }
            for (MakeNode n : byMade.getOrDefault(p[0], List.of())) {
                boolean named = p.length < 3 || p[1].equals(Integer.toString(n.number()));
                if (named && waitsFor(n, asker, seen)) {
                    return true;
                }
            }
        }
        return node.number() > 1 && waitsFor(before(node), asker, seen);
    }

    /**
     * Whether a make goes on with a part after something that it names: then that something waits, where it names the part
     * without a number, for the makes before this one only.
     */
    private static boolean isLaterMakeNaming(MakeNode asker, MakeNode node) {
        return asker.number() > 1
                && asker.make().after().stream()
                        .anyMatch(r -> r.split("/")[0].equals(node.made().id()));
    }

    private static List<String> refs(MakeNode node) {
        List<String> refs = new ArrayList<>(node.make().after());
        if (node.number() == 1 && node.made() instanceof Joint joint) {
            refs.addAll(joint.between());
        }
        return refs;
    }

    private static List<String> last(List<MakeNode> nodes) {
        return nodes.isEmpty() ? List.of() : ends(nodes.get(nodes.size() - 1));
    }

    private static List<String> ends(MakeNode node) {
        return node.sinks().stream().map(RecipeStep::id).map(node::local).toList();
    }

    private List<String> inAssembly(String id) {
        Set<String> within = new HashSet<>(Set.of(id));
        boolean grown = definition.assemblies().find(id).isPresent();
        while (grown) {
            grown = false;
            for (Assembly a : definition.assemblies()) {
                grown |= a.in().filter(within::contains).isPresent() && within.add(a.id());
            }
        }
        return byMade.values().stream()
                .filter(n -> !n.isEmpty() && within.contains(n.get(0).made().in()))
                .flatMap(n -> last(n).stream())
                .toList();
    }
}

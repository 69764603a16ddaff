package fayline.app.usecase.calc;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reckons asked terms from given ones: a term that is given is taken; otherwise the first relation in the topic's order all
 * of whose needs are known, given or reckoned in turn, gives it. Where a single term is given as a list, whatever follows
 * from it is reckoned item by item.
 */
public final class Reckoning {
    private final Map<String, Term> terms;
    private final List<Relation> relations;
    private final Map<String, Object> known;
    private final Set<String> given;
    private final Set<String> used = new LinkedHashSet<>();
    private final Set<String> underWay = new HashSet<>();
    private final Set<String> hopeless = new HashSet<>();
    private final Trace trace = new Trace();
    private final Map<String, String> notCovered = new LinkedHashMap<>();

    Reckoning(Map<String, Term> terms, List<Relation> relations, Map<String, Object> given) {
        this.terms = terms;
        this.relations = relations;
        this.known = new HashMap<>(given);
        this.given = Set.copyOf(given.keySet());
    }

    /**
     * Reckons one term.
     *
     * @param name the term
     * @return its value in SI after its shape (a list where it was reckoned item by item), or empty if it cannot be reckoned
     *     from what is given
     */
    public Optional<Object> value(String name) {
        if (known.containsKey(name)) {
            used.add(name);
            return Optional.of(known.get(name));
        }
        if (hopeless.contains(name) || !underWay.add(name)) {
            return Optional.empty();
        }
        try {
            for (Relation r : relations) {
                if (r.gives().equals(name)) {
                    Optional<Object> v = by(r);
                    if (v.isPresent()) {
                        known.put(name, v.get());
                        return v;
                    }
                }
            }
            if (underWay.size() == 1) {
                hopeless.add(name);
            }
            return Optional.empty();
        } finally {
            underWay.remove(name);
        }
    }

    private Optional<Object> by(Relation r) {
        Map<String, Object> inputs = new LinkedHashMap<>();
        for (String need : r.needs()) {
            Optional<Object> v = value(need);
            if (v.isEmpty()) {
                return Optional.empty();
            }
            inputs.put(need, v.get());
        }
        for (String use : r.uses()) {
            value(use).ifPresent(v -> inputs.put(use, v));
        }
        try {
            Trace own = new Trace();
            Object v = itemByItem(r, inputs, own);
            trace.addAll(own);
            return Optional.of(v);
        } catch (NotCoveredException e) {
            notCovered.putIfAbsent(r.gives(), e.reason());
            return Optional.empty();
        }
    }

    private Object itemByItem(Relation r, Map<String, Object> inputs, Trace own) {
        int items = -1;
        for (Map.Entry<String, Object> e : inputs.entrySet()) {
            if (isMany(e)) {
                int size = ((List<?>) e.getValue()).size();
                if (items >= 0 && items != size) {
                    throw CalcInputException.of(
                            e.getKey(), "a list of " + size, "a list of " + items + ", as long as the others");
                }
                items = size;
            }
        }
        if (items < 0) {
            return finite(r, r.computation().of(new Known(inputs, own)));
        }
        List<Object> many = new ArrayList<>();
        for (int i = 0; i < items; i++) {
            Map<String, Object> one = new HashMap<>(inputs);
            for (Map.Entry<String, Object> e : inputs.entrySet()) {
                if (isMany(e)) {
                    one.put(e.getKey(), ((List<?>) e.getValue()).get(i));
                }
            }
            many.add(finite(r, r.computation().of(new Known(one, own))));
        }
        return List.copyOf(many);
    }

    private boolean isMany(Map.Entry<String, Object> e) {
        Term t = terms.get(e.getKey());
        return t != null && t.isSingle() && e.getValue() instanceof List;
    }

    private static Object finite(Relation r, Object v) {
        if (v instanceof Double number && !Double.isFinite(number)) {
            throw new NotCoveredException(r.gives() + " is no finite number for these inputs");
        }
        return v;
    }

    /** The methods of the values so far, in the order of first use. */
    public List<String> methods() {
        return trace.methods();
    }

    /** The sources of those methods. */
    public List<String> sources() {
        return trace.sources();
    }

    /** What limits the values so far. */
    public List<String> cautions() {
        return trace.cautions();
    }

    /** Given terms that nothing so far was reckoned from, in the topic's order. */
    public List<String> unused() {
        return terms.keySet().stream()
                .filter(t -> given.contains(t) && !used.contains(t))
                .toList();
    }

    /** Why a method did not cover a term, for each such term so far. */
    public Map<String, String> notCovered() {
        return Map.copyOf(notCovered);
    }
}

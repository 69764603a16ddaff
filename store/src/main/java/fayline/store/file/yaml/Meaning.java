package fayline.store.file.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What an edit means, apart from how the text is written; used to check the text after the edit.
 *
 * @param what what happens at the path
 * @param value the new value; empty for a removal
 */
record Meaning(What what, Object value) {
    enum What {
        SET,
        APPEND,
        REMOVE
    }

    static Meaning set(String value) {
        return new Meaning(What.SET, value);
    }

    static Meaning append(Object value) {
        return new Meaning(What.APPEND, value instanceof Map<?, ?> m ? new LinkedHashMap<>(m) : value);
    }

    static Meaning remove() {
        return new Meaning(What.REMOVE, "");
    }

    /** A tree as maps, lists and texts. */
    static Object plain(Tree t) {
        return switch (t.form()) {
            case SCALAR -> t.text();
            case LIST -> t.items().stream().map(Meaning::plain).toList();
            case MAPPING -> {
                Map<Object, Object> m = new LinkedHashMap<>();
                t.entries().forEach((k, v) -> m.put(k, plain(v)));
                yield m;
            }
        };
    }

    /** The same values with the edit made. */
    Object applied(Object whole, YamlPath path) {
        return at(whole, path.steps());
    }

    private Object at(Object here, List<Object> steps) {
        if (steps.isEmpty()) {
            return what == What.APPEND ? appended(Optional.of(here)) : value;
        }
        Object step = steps.get(0);
        List<Object> rest = steps.subList(1, steps.size());
        if (here instanceof Map<?, ?> m) {
            Map<Object, Object> changed = new LinkedHashMap<>(m);
            if (rest.isEmpty() && what == What.REMOVE) {
                changed.remove(step);
            } else if (changed.containsKey(step)) {
                changed.computeIfPresent(step, (k, v) -> at(v, rest));
            } else {
                changed.put(step, what == What.APPEND ? appended(Optional.empty()) : value);
            }
            return changed;
        }
        if (here instanceof List<?> l) {
            List<Object> changed = new ArrayList<>(l);
            int i = position(l, step);
            if (rest.isEmpty() && what == What.REMOVE) {
                changed.remove(i);
            } else {
                changed.set(i, at(l.get(i), rest));
            }
            return changed;
        }
        return here;
    }

    private Object appended(Optional<Object> list) {
        List<Object> changed = new ArrayList<>(list.map(l -> l instanceof List<?> x ? x : List.of())
                .orElse(List.of()));
        changed.add(value);
        return changed;
    }

    private static int position(List<?> list, Object step) {
        if (step instanceof Integer i) {
            return i;
        }
        String id = step instanceof YamlPath.ById b ? b.id() : "";
        for (int i = 0; i < list.size(); i++) {
            if (list.get(i) instanceof Map<?, ?> m && id.equals(m.get("id"))) {
                return i;
            }
        }
        throw new UneditableException("no item " + step);
    }
}

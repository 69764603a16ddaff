package fayline.store.file.shape;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.store.file.yaml.Nearest;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.Arrays;
import java.util.List;

/**
 * A mapping of known keys.
 *
 * @param what what it describes: {@code a part}
 * @param keys its keys
 * @param oneOf sets of keys of which exactly one must be there
 */
public record Keys(String what, List<Key> keys, List<List<String>> oneOf) implements Shape {
    /** Copies the lists. */
    public Keys {
        keys = List.copyOf(keys);
        oneOf = List.copyOf(oneOf);
    }

    /** Makes such a shape. */
    public static Keys of(String what, Key... keys) {
        return new Keys(what, Arrays.asList(keys), List.of());
    }

    /** The same, with exactly one of these keys. */
    public Keys oneOf(String... names) {
        return new Keys(what, keys, List.of(List.of(names)));
    }

    /** The names of all keys. */
    public List<String> names() {
        return keys.stream().map(Key::name).toList();
    }

    @Override
    public String words() {
        return what + " as keys with values";
    }

    @Override
    public Tree.Form form() {
        return Tree.Form.MAPPING;
    }

    @Override
    public void check(Tree at, Problems problems) {
        if (!fits(at, problems)) {
            return;
        }
        for (String key : at.entries().keySet()) {
            if (!names().contains(key)) {
                problems.stopAtKey(
                        at,
                        key,
                        "an unknown key",
                        "one of " + String.join(", ", names()),
                        Nearest.suggest(key, names()));
            }
        }
        for (Key key : keys) {
            at.get(key.name())
                    .ifPresentOrElse(
                            value -> key.shape().check(value, problems), () -> reportMissing(at, key, problems));
        }
        for (List<String> group : oneOf) {
            List<String> there =
                    group.stream().filter(n -> at.entries().containsKey(n)).toList();
            if (there.size() != 1) {
                problems.stop(
                        at,
                        there.isEmpty() ? "none of them" : String.join(" and ", there),
                        "exactly one of " + String.join(", ", group) + " for " + what,
                        "");
            }
        }
    }

    private void reportMissing(Tree at, Key key, Problems problems) {
        if (key.needed()) {
            problems.stopAtKey(
                    at,
                    key.name(),
                    "nothing",
                    key.shape().words() + ", which " + what + " must have",
                    "add \"" + key.name() + ":\"");
        }
    }

    @Override
    public ObjectNode schema() {
        ObjectNode s = Shape.node().put("type", "object");
        ObjectNode properties = s.putObject("properties");
        ArrayNode required = Shape.node().putArray("required");
        ArrayNode either = Shape.node().putArray("anyOf");
        for (Key key : keys) {
            properties.set(key.name(), key.shape().schema().put("description", key.about()));
            String other = Spelling.other(key.name());
            if (!other.equals(key.name())) {
                properties.set(other, key.shape().schema().put("description", "Other spelling of " + key.name() + "."));
            }
            if (key.needed() && other.equals(key.name())) {
                required.add(key.name());
            } else if (key.needed()) {
                either.addObject().putArray("required").add(key.name());
                either.addObject().putArray("required").add(other);
            }
        }
        if (!required.isEmpty()) {
            s.set("required", required);
        }
        if (!either.isEmpty()) {
            s.set("anyOf", either);
        }
        s.put("additionalProperties", false);
        for (List<String> group : oneOf) {
            ArrayNode choices = s.putArray("oneOf");
            group.forEach(n -> choices.addObject().putArray("required").add(n));
        }
        return s;
    }
}

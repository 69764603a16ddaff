package fayline.store.file.shape;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;

/**
 * A mapping whose keys the writer chooses.
 *
 * @param key what each key may be; a scalar
 * @param value what each value may be
 */
public record Named(Shape key, Shape value) implements Shape {
    @Override
    public String words() {
        return "keys with values, each key " + key.words() + ", each value " + value.words();
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
        at.entries().forEach((name, below) -> {
            String fault = key instanceof Words w ? w.fault(name) : ((Text) key).fault(name);
            if (!fault.isEmpty()) {
                problems.stopAtKey(
                        at,
                        name,
                        "the key " + Problems.quote(name),
                        key.words(),
                        key instanceof Words w ? w.suggest(name) : "");
            }
            value.check(below, problems);
        });
    }

    @Override
    public ObjectNode schema() {
        ObjectNode s = Shape.node().put("type", "object");
        ObjectNode names = s.putObject("propertyNames");
        if (key instanceof Words w) {
            names.putArray("enum").addAll(w.choices());
        } else {
            names.put("pattern", "^(?:" + ((Text) key).pattern() + ")$");
        }
        s.set("additionalProperties", value.schema());
        return s;
    }
}

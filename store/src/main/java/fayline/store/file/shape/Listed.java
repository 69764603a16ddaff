package fayline.store.file.shape;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;

/**
 * A list.
 *
 * @param item what each item may be
 * @param least fewest items
 */
public record Listed(Shape item, int least) implements Shape {
    /** Makes such a shape. */
    public static Listed of(Shape item) {
        return new Listed(item, 0);
    }

    /** Makes such a shape. */
    public static Listed some(Shape item) {
        return new Listed(item, 1);
    }

    @Override
    public String words() {
        String each = item instanceof Keys k ? k.what() : item.words();
        return "a list" + (least > 0 ? ", not empty," : "") + " of which each item is " + each;
    }

    @Override
    public Tree.Form form() {
        return Tree.Form.LIST;
    }

    @Override
    public void check(Tree at, Problems problems) {
        if (!fits(at, problems)) {
            return;
        }
        at.items().forEach(i -> item.check(i, problems));
        if (at.items().size() < least) {
            problems.stop(at, "an empty list", words(), "");
        }
    }

    @Override
    public ObjectNode schema() {
        ObjectNode s = Shape.node().put("type", "array");
        s.set("items", item.schema());
        if (least > 0) {
            s.put("minItems", least);
        }
        return s;
    }
}

package fayline.store.file.shape;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One of several shapes, told apart by their form.
 *
 * @param shapes the shapes; no two of one form
 */
public record Either(List<Shape> shapes) implements Shape {
    /** Copies the list. */
    public Either {
        shapes = List.copyOf(shapes);
    }

    /** Makes such a shape. */
    public static Either of(Shape... shapes) {
        return new Either(List.of(shapes));
    }

    @Override
    public String words() {
        return shapes.stream().map(Shape::words).collect(Collectors.joining(", or "));
    }

    @Override
    public Tree.Form form() {
        return shapes.get(0).form();
    }

    @Override
    public void check(Tree at, Problems problems) {
        for (Shape s : shapes) {
            if (s.form() == at.form() && !at.isBlank()) {
                s.check(at, problems);
                return;
            }
        }
        problems.stop(at, Problems.found(at), words(), "");
    }

    @Override
    public ObjectNode schema() {
        ObjectNode s = Shape.node();
        ArrayNode choices = s.putArray("anyOf");
        shapes.forEach(c -> choices.add(c.schema()));
        return s;
    }
}

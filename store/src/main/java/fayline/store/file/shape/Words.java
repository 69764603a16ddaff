package fayline.store.file.shape;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.store.file.yaml.Nearest;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/**
 * One of a few words.
 *
 * @param known the words
 */
public record Words(List<String> known) implements Shape {
    /** Copies the list. */
    public Words {
        known = List.copyOf(known);
    }

    /** Makes such a shape. */
    public static Words of(Stream<String> known) {
        return new Words(known.toList());
    }

    /** Makes such a shape. */
    public static Words of(String... known) {
        return new Words(List.of(known));
    }

    @Override
    public String words() {
        return "one of " + String.join(", ", known);
    }

    @Override
    public Tree.Form form() {
        return Tree.Form.SCALAR;
    }

    String fault(String text) {
        return known.contains(text) || known.contains(Spelling.house(text)) ? "" : "unknown";
    }

    String suggest(String text) {
        return Nearest.suggest(text, known);
    }

    @Override
    public void check(Tree at, Problems problems) {
        if (fits(at, problems) && !fault(at.text()).isEmpty()) {
            problems.stop(at, Problems.quote(at.text()), words(), suggest(at.text()));
        }
    }

    Collection<JsonNode> choices() {
        return known.stream()
                .flatMap(w -> Stream.of(w, Spelling.other(w)).distinct())
                .map(w -> (JsonNode) JsonNodeFactory.instance.textNode(w))
                .toList();
    }

    @Override
    public ObjectNode schema() {
        ObjectNode s = Shape.node();
        s.putArray("enum").addAll(choices());
        return s;
    }
}

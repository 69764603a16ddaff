package fayline.store.file.shape;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.Set;

/** Yes or no, also written true or false. */
public record YesNo() implements Shape {
    private static final Set<String> KNOWN = Set.of("yes", "no", "true", "false");

    @Override
    public String words() {
        return "yes or no";
    }

    @Override
    public Tree.Form form() {
        return Tree.Form.SCALAR;
    }

    @Override
    public void check(Tree at, Problems problems) {
        if (fits(at, problems) && !KNOWN.contains(at.text())) {
            problems.stop(at, Problems.quote(at.text()), words(), "");
        }
    }

    @Override
    public ObjectNode schema() {
        ObjectNode s = Shape.node();
        s.putArray("enum").add(true).add(false).add("yes").add("no");
        return s;
    }
}

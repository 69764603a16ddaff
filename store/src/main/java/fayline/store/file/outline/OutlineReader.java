package fayline.store.file.outline;

import fayline.basis.geometry.Outline;
import fayline.basis.geometry.Outline.Point;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.Function;

/** Makes outlines of what a definition says about them. */
public final class OutlineReader {
    private final Function<String, Optional<String>> texts;
    private final SortedSet<String> paths;
    private final Problems problems;

    /**
     * Makes a reader.
     *
     * @param texts the text of a file of the folder
     * @param paths the files there are, for suggestions
     * @param problems where problems go
     */
    public OutlineReader(Function<String, Optional<String>> texts, SortedSet<String> paths, Problems problems) {
        this.texts = texts;
        this.paths = paths;
        this.problems = problems;
    }

    /** Reads an outline. */
    public Optional<Outline> read(Tree at) {
        Optional<Tree> v = at.get("vertices").filter(t -> t.form() == Tree.Form.SCALAR);
        if (v.isPresent()) {
            double unit = unit(at);
            List<Point> ps = new ArrayList<>();
            for (String pair : v.get().text().split(",", -1)) {
                String[] xy = pair.strip().split("\\s+", -1);
                try {
                    ps.add(new Point(Double.parseDouble(xy[0]) * unit, Double.parseDouble(xy[1]) * unit));
                } catch (NumberFormatException | IndexOutOfBoundsException e) {
                    return Optional.empty();
                }
            }
            return ps.size() < 3 ? Optional.empty() : Optional.of(Outline.of(ps));
        }
        return Optional.empty();
    }

    private static double unit(Tree at) {
        return switch (at.get("unit").map(Tree::text).orElse("mm")) {
            case "cm" -> 0.01;
            case "m" -> 1;
            case "in" -> 0.0254;
            case "ft" -> 0.3048;
            default -> 0.001;
        };
    }
}

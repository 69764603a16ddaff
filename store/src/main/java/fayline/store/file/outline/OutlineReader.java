package fayline.store.file.outline;

import fayline.basis.finding.InputProblem;
import fayline.basis.geometry.Outline;
import fayline.basis.geometry.Outline.Point;
import fayline.basis.geometry.OutlineShapes;
import fayline.basis.geometry.OutlineTopology;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.method.airfoil.Airfoil;
import fayline.method.airfoil.CoordinateText;
import fayline.method.airfoil.NacaSection;
import fayline.method.airfoil.Rib;
import fayline.method.airfoil.RibOutline;
import fayline.store.file.yaml.Nearest;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.Function;

/** Makes outlines of what a definition says about them, and tells what keeps them from being one. */
public final class OutlineReader {
    private static final double NOT_STATED = -1;
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

    /** Reads an outline whose mapping was checked; empty where something was refused. */
    public Optional<Outline> read(Tree at) {
        Tree place = at.get("file")
                .or(() -> at.get("naca"))
                .or(() -> at.get("vertices"))
                .orElse(at);
        try {
            Optional<Outline> plain = plain(at);
            if (plain.isEmpty()) {
                return plain;
            }
            Outline cut = withCutouts(at, plain.get());
            Optional<OutlineTopology.Fault> fault = OutlineTopology.fault(cut);
            if (fault.isPresent()) {
                Point p = fault.get().place();
                problems.stop(
                        place,
                        String.format(
                                Locale.ROOT,
                                "an outline of which %s near (%.1f, %.1f) mm",
                                fault.get().what(),
                                p.xM() * 1000,
                                p.yM() * 1000),
                        "an edge that goes once round an area",
                        "look at the order of the corners");
                return Optional.empty();
            }
            return length(at, "flange").isPresent()
                    ? length(at, "flange").flatMap(f -> OutlineShapes.grown(cut, f))
                    : Optional.of(cut);
        } catch (UnreadableOutlineException e) {
            String file = at.get("file").map(f -> f.text() + ": ").orElse("");
            problems.stop(place, file + e.found(), e.expected(), e.suggestion());
            return Optional.empty();
        }
    }

    private Optional<Outline> plain(Tree at) {
        Optional<String> vertices = text(at, "vertices");
        Optional<String> naca = text(at, "naca");
        Optional<String> file = text(at, "file");
        if (vertices.isPresent()) {
            return vertices(vertices.get(), unit(at));
        }
        if (naca.isPresent()) {
            return Optional.of(rib(at, section(at, naca.get())));
        }
        if (file.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> content = texts.apply(file.get());
        if (content.isEmpty()) {
            throw new UnreadableOutlineException(
                    "no such file", "a file of the folder", Nearest.suggest(file.get(), paths));
        }
        String name = file.get().toLowerCase(Locale.ROOT);
        if (name.endsWith(".dxf")) {
            return Optional.of(dxf(at, content.get()));
        }
        if (name.endsWith(".svg")) {
            return Optional.of(new SvgDrawing(content.get())
                    .outline(
                            at.get("unit").map(u -> unit(at)), text(at, "layer").orElse("")));
        }
        return Optional.of(rib(at, coordinates(content.get())));
    }

    private Outline dxf(Tree at, String content) {
        DxfDrawing drawing = new DxfDrawing(content);
        double said = unit(at);
        double stated = drawing.unit().orElse(NOT_STATED);
        Optional<Tree> unit = at.get("unit");
        if (unit.isPresent() && stated > 0 && Math.abs(stated - said) > 1e-9) {
            problems.caution(
                    unit.get(),
                    Problems.quote(unit.get().text()),
                    "the unit that the drawing itself states (" + stated * 1000 + " mm)",
                    "what is written here counts");
        }
        return drawing.outline(
                unit.isPresent() || stated <= 0 ? said : stated,
                text(at, "layer").orElse(""));
    }

    private static Optional<Outline> vertices(String list, double unitM) {
        List<Point> points = new ArrayList<>();
        for (String pair : list.split(",", -1)) {
            String[] xy = pair.strip().split("\\s+", -1);
            try {
                points.add(new Point(finite(xy[0]) * unitM, finite(xy[1]) * unitM));
            } catch (NumberFormatException | IndexOutOfBoundsException e) {
                throw new UnreadableOutlineException(
                        Problems.quote(pair.strip()), "two numbers, x and y", "write 0 0, 400 0, 400 120");
            }
        }
        if (points.size() > 3 && points.get(0).equals(points.get(points.size() - 1))) {
            points.remove(points.size() - 1);
        }
        return points.size() < 3 ? Optional.empty() : Optional.of(Outline.of(points));
    }

    private static double finite(String text) {
        double v = Double.parseDouble(text);
        if (Double.isFinite(v)) {
            return v;
        }
        throw new NumberFormatException(text);
    }

    private static Outline rib(Tree at, Airfoil section) {
        Optional<Length> chord = length(at, "chord");
        if (chord.isEmpty()) {
            throw new UnreadableOutlineException("no chord", "\"chord:\" beside an airfoil", "add chord: 900 mm");
        }
        double from = number(at, "from", 0);
        double to = number(at, "to", 1);
        if (!(from < to)) {
            throw new UnreadableOutlineException("from " + from + " to " + to, "from less than to", "");
        }
        RibOutline rib = RibOutline.of(new Rib(section, chord.get(), from, to, new Length(0), List.of()));
        return rib.net()
                .orElseThrow(() -> new UnreadableOutlineException(
                        "a rib that cannot be cut",
                        "a section that goes once round an area",
                        rib.findings().get(0).sentence()));
    }

    private static Airfoil section(Tree at, String naca) {
        try {
            return NacaSection.of(naca).points((int) number(at, "points", 80) + 1);
        } catch (IllegalArgumentException e) {
            String[] told = String.valueOf(e.getMessage()).split(", expected ", 2);
            throw new UnreadableOutlineException(
                    told[0].replaceFirst("^found ", ""), told.length > 1 ? told[1] : "a NACA number", "");
        }
    }

    private static Airfoil coordinates(String content) {
        CoordinateText.Reading read = CoordinateText.read(content, "");
        return read.airfoil().orElseThrow(() -> {
            InputProblem p = read.problems().get(0);
            String place = p.line() > 0 ? "in line " + p.line() + " " : "";
            return new UnreadableOutlineException(place + p.found(), p.expected(), p.suggestion());
        });
    }

    private static Outline withCutouts(Tree at, Outline outline) {
        List<List<Point>> holes = new ArrayList<>(outline.cutouts());
        for (Tree c : at.down("cutouts").items()) {
            Optional<Length> x = length(c, "x");
            Optional<Length> y = length(c, "y");
            Optional<Length> d = length(c, "diameter");
            if (x.isPresent() && y.isPresent() && d.isPresent()) {
                Point centre = new Point(x.get().metres(), y.get().metres());
                List<Point> ring = Curve.arc(centre, d.get().metres() / 2, 0, 2 * Math.PI);
                holes.add(ring.subList(0, ring.size() - 1));
            }
        }
        return new Outline(outline.outer(), holes);
    }

    private static Optional<String> text(Tree at, String key) {
        return at.get(key)
                .filter(t -> t.form() == Tree.Form.SCALAR && !t.isBlank())
                .map(Tree::text);
    }

    private static double number(Tree at, String key, double otherwise) {
        try {
            return text(at, key).map(Double::valueOf).orElse(otherwise);
        } catch (NumberFormatException e) {
            return otherwise;
        }
    }

    private static Optional<Length> length(Tree at, String key) {
        try {
            return text(at, key)
                    .map(t -> QuantityParser.parse(t, QuantityKind.LENGTH).value());
        } catch (UnreadableQuantityException e) {
            return Optional.empty();
        }
    }

    private static double unit(Tree at) {
        return switch (text(at, "unit").orElse("mm")) {
            case "cm" -> 0.01;
            case "m" -> 1;
            case "in" -> 0.0254;
            case "ft" -> 0.3048;
            default -> 0.001;
        };
    }
}

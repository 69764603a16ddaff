package fayline.store.file.outline;

import fayline.basis.geometry.Outline;
import fayline.basis.geometry.Outline.Point;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads the shapes of an SVG: paths, polygons, polylines, lines, rectangles, circles, ellipses, with their transforms. The
 * drawing's y runs downwards and is turned up, so that nothing is mirrored. Document types and entities are refused.
 */
final class SvgDrawing {
    private static final Set<String> HIDDEN =
            Set.of("defs", "clipPath", "mask", "symbol", "marker", "pattern", "metadata", "title", "desc", "text");
    private static final int NOT_YET = Integer.MAX_VALUE;
    private static final Pattern SIZE = Pattern.compile("\\s*([0-9.eE+-]+)\\s*(mm|cm|in|pt|pc|px|)\\s*");
    private static final int MAX_DEPTH = 64;

    private final String text;

    SvgDrawing(String text) {
        this.text = text;
    }

    /**
     * The outline.
     *
     * @param given the unit of the numbers in metres, where the definition says it; else what the file says, else mm
     * @param group the id of the only group to read; empty for all
     */
    Outline outline(Optional<Double> given, String group) {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        try {
            XMLStreamReader xml = factory.createXMLStreamReader(new StringReader(text));
            return Chaining.outline(pieces(xml, given, group));
        } catch (XMLStreamException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNumber();
            throw new UnreadableOutlineException(
                    "XML that cannot be read in line " + line, "an SVG drawing", "export it again");
        }
    }

    private static List<List<Point>> pieces(XMLStreamReader xml, Optional<Double> given, String group)
            throws XMLStreamException {
        List<List<Point>> pieces = new ArrayList<>();
        Deque<Transform> transforms = new ArrayDeque<>();
        int hidden = 0;
        int groupDepth = group.isEmpty() ? 0 : NOT_YET;
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
                throw new UnreadableOutlineException("a document type or entity", "a plain SVG drawing", "remove it");
            }
            if (event == XMLStreamConstants.START_ELEMENT) {
                String name = xml.getLocalName();
                if (transforms.size() > MAX_DEPTH) {
                    throw new UnreadableOutlineException("more than " + MAX_DEPTH + " levels", "fewer", "");
                }
                Transform outer = transforms.isEmpty() ? Transform.NONE : transforms.peek();
                Transform own = transforms.isEmpty() ? scale(xml, given) : Transform.parse(attribute(xml, "transform"));
                transforms.push(outer.after(own));
                hidden += HIDDEN.contains(name) ? 1 : 0;
                if (groupDepth == NOT_YET && attribute(xml, "id").equals(group)) {
                    groupDepth = transforms.size();
                }
                if (hidden == 0 && groupDepth <= transforms.size()) {
                    pieces.addAll(shape(xml, name, transforms.peek()));
                }
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                hidden -= HIDDEN.contains(xml.getLocalName()) ? 1 : 0;
                groupDepth = !group.isEmpty() && groupDepth == transforms.size() ? NOT_YET : groupDepth;
                transforms.pop();
            }
        }
        return pieces;
    }

    private static Transform scale(XMLStreamReader svg, Optional<Double> given) {
        double unit = given.or(() -> stated(svg)).orElse(1e-3);
        return new Transform(unit, 0, 0, -unit, 0, 0);
    }

    /** The unit that width and view box give together. */
    private static Optional<Double> stated(XMLStreamReader svg) {
        Matcher m = SIZE.matcher(attribute(svg, "width"));
        if (!m.matches() || m.group(2).isEmpty()) {
            return Optional.empty();
        }
        double unit = switch (m.group(2)) {
            case "mm" -> 1e-3;
            case "cm" -> 1e-2;
            case "in" -> 0.0254;
            case "pt" -> 0.0254 / 72;
            case "pc" -> 0.0254 / 6;
            default -> 0.0254 / 96;
        };
        double[] box = SvgPath.numbers(attribute(svg, "viewBox"));
        if (box.length == 4 && box[2] > 0) {
            return Optional.of(Double.parseDouble(m.group(1)) * unit / box[2]);
        }
        // without a view box the numbers are pixels of 1/96 in (CSS)
        return Optional.of(0.0254 / 96);
    }

    private static List<List<Point>> shape(XMLStreamReader xml, String name, Transform t) {
        UnaryOperator<Point> place = t::apply;
        return switch (name) {
            case "path" -> SvgPath.read(attribute(xml, "d"), place);
            case "polygon", "polyline" ->
                corners(SvgPath.numbers(attribute(xml, "points")), name.equals("polygon"), place);
            case "line" ->
                List.of(List.of(
                        place.apply(new Point(number(xml, "x1"), number(xml, "y1"))),
                        place.apply(new Point(number(xml, "x2"), number(xml, "y2")))));
            case "rect" -> rectangle(xml, place);
            case "circle" -> ellipse(xml, new double[] {number(xml, "r"), number(xml, "r")}, place);
            case "ellipse" -> ellipse(xml, new double[] {number(xml, "rx"), number(xml, "ry")}, place);
            case "use", "image", "foreignObject" ->
                throw new UnreadableOutlineException("an element <" + name + ">", "paths and shapes", "draw it out");
            default -> List.of();
        };
    }

    private static List<List<Point>> corners(double[] v, boolean closed, UnaryOperator<Point> place) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i + 1 < v.length; i += 2) {
            points.add(place.apply(new Point(v[i], v[i + 1])));
        }
        if (closed && !points.isEmpty()) {
            points.add(points.get(0));
        }
        return List.of(points);
    }

    private static List<List<Point>> rectangle(XMLStreamReader xml, UnaryOperator<Point> place) {
        if (!attribute(xml, "rx").isEmpty() || !attribute(xml, "ry").isEmpty()) {
            throw new UnreadableOutlineException("a rectangle with round corners", "a path", "convert it to a path");
        }
        double x = number(xml, "x");
        double y = number(xml, "y");
        double w = number(xml, "width");
        double h = number(xml, "height");
        return corners(new double[] {x, y, x + w, y, x + w, y + h, x, y + h}, true, place);
    }

    private static List<List<Point>> ellipse(XMLStreamReader xml, double[] radii, UnaryOperator<Point> place) {
        double cx = number(xml, "cx");
        double cy = number(xml, "cy");
        return List.of(Curve.flatten(
                a -> place.apply(new Point(cx + radii[0] * Math.cos(a), cy + radii[1] * Math.sin(a))), 0, 2 * Math.PI));
    }

    private static String attribute(XMLStreamReader xml, String name) {
        String value = xml.getAttributeValue(null, name);
        return value == null ? "" : value;
    }

    private static double number(XMLStreamReader xml, String name) {
        double[] v = SvgPath.numbers(attribute(xml, name));
        return v.length == 0 ? 0 : v[0];
    }
}

package fayline.store.file.outline;

import fayline.basis.geometry.Outline;
import fayline.basis.geometry.Outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the plane geometry of a DXF in text form: lines, arcs, circles, ellipses, polylines with bulges, splines (rational
 * too). Blocks, texts, dimensions and hatches are passed over; what has depth is seen from above.
 */
final class DxfDrawing {
    private static final Set<String> SEEN =
            Set.of("LINE", "ARC", "CIRCLE", "ELLIPSE", "LWPOLYLINE", "POLYLINE", "VERTEX", "SEQEND", "SPLINE");
    private static final int MAX_ENTITIES = 50_000;

    private final List<DxfEntity> entities = new ArrayList<>();
    private Optional<Double> unit = Optional.empty();

    DxfDrawing(String text) {
        read(text);
    }

    /** The unit that the file states, in metres. */
    Optional<Double> unit() {
        return unit;
    }

    private void read(String text) {
        if (text.startsWith("AutoCAD Binary")) {
            throw new UnreadableOutlineException("a DXF in binary form", "a DXF in text form", "save it as text");
        }
        String[] lines = text.split("\\r\\n|\\n|\\r", -1);
        String section = "";
        String variable = "";
        DxfEntity current = null;
        for (int i = 0; i + 1 < lines.length; i += 2) {
            int code = code(lines[i], i + 1);
            String value = lines[i + 1].strip();
            if (code == 0) {
                section = value.equals("ENDSEC") ? "" : section;
                current = null;
                if (section.equals("ENTITIES") && SEEN.contains(value)) {
                    current = new DxfEntity(value, i + 2);
                    entities.add(current);
                    if (entities.size() > MAX_ENTITIES) {
                        throw new UnreadableOutlineException(
                                "more than " + MAX_ENTITIES + " drawn things", "one outline", "save the outline alone");
                    }
                }
            } else if (code == 2 && i >= 2 && lines[i - 1].strip().equals("SECTION")) {
                section = value;
            } else if (section.equals("HEADER")) {
                variable = code == 9 ? value : variable;
                if (code == 70 && variable.equals("$INSUNITS")) {
                    unit = metres(value);
                }
            } else if (current != null) {
                current.put(code, value);
            }
        }
    }

    private static int code(String line, int number) {
        try {
            return Integer.parseInt(line.strip());
        } catch (NumberFormatException e) {
            throw new UnreadableOutlineException(
                    "no group code in line " + number, "a DXF in text form", "export the drawing again");
        }
    }

    private static Optional<Double> metres(String code) {
        return switch (code) {
            case "1" -> Optional.of(0.0254);
            case "2" -> Optional.of(0.3048);
            case "4" -> Optional.of(1e-3);
            case "5" -> Optional.of(1e-2);
            case "6" -> Optional.of(1.0);
            case "8" -> Optional.of(0.0254e-6);
            case "9" -> Optional.of(0.0254e-3);
            case "10" -> Optional.of(0.9144);
            case "13" -> Optional.of(1e-6);
            default -> Optional.empty();
        };
    }

    /**
     * The outline.
     *
     * @param unitM the unit of the numbers in metres
     * @param layer the only layer to read; empty for all
     */
    Outline outline(double unitM, String layer) {
        List<List<Point>> pieces = new ArrayList<>();
        for (int i = 0; i < entities.size(); i++) {
            DxfEntity e = entities.get(i);
            List<Point> vertices = new ArrayList<>();
            List<Double> bulges = new ArrayList<>();
            if (e.kind().equals("POLYLINE")) {
                while (i + 1 < entities.size() && entities.get(i + 1).kind().equals("VERTEX")) {
                    i++;
                    vertices.add(entities.get(i).point(10, unitM));
                    bulges.add(entities.get(i).number(42, 0));
                }
            }
            if (layer.isEmpty() || e.text(8).toLowerCase(Locale.ROOT).equals(layer.toLowerCase(Locale.ROOT))) {
                pieces.add(
                        e.kind().equals("POLYLINE")
                                ? e.mirrored(DxfEntity.polyline(vertices, bulges, e.closed()))
                                : e.points(unitM));
            }
        }
        return Chaining.outline(pieces);
    }
}

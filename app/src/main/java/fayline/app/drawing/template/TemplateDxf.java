package fayline.app.drawing.template;

import fayline.basis.units.UnitSystem;
import fayline.method.fitup.Spot;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;

/**
 * Writes a template as DXF in text form, release 12, in millimetres: layers EDGE, FINISH, FIRST, MARKS and TEXT (group codes
 * as the format's published reference gives them; from memory).
 */
public final class TemplateDxf {
    /** Layer of the part's edge as it is. */
    public static final String EDGE = "EDGE";
    /** Layer of the lines to finish to. */
    public static final String FINISH = "FINISH";
    /** Layer of the lines to cut to at first. */
    public static final String FIRST = "FIRST";
    /** Layer of the stations' marks. */
    public static final String MARKS = "MARKS";
    /** Layer of the words. */
    public static final String TEXT = "TEXT";

    private static final double MARK_MM = 8;
    private static final double LETTER_MM = 3;
    private static final int PLAIN_LETTERS = 0x7f;
    private static final int LONGEST_TEXT = 250;

    private final StringBuilder out = new StringBuilder(16_384);

    private TemplateDxf() {}

    /** The file's text. */
    public static String write(Template template) {
        TemplateDxf dxf = new TemplateDxf();
        dxf.header(template.bounds());
        dxf.tables();
        dxf.put(0, "SECTION").put(2, "ENTITIES");
        dxf.polyline(EDGE, template.edge(), true);
        for (Scribe s : template.scribes()) {
            dxf.polyline(FINISH, s.finish(), false);
            if (!Template.same(s)) {
                dxf.polyline(FIRST, s.first(), false);
            }
        }
        template.marks().forEach(m -> dxf.mark(m, template.units()));
        Spot low = template.bounds().get(0);
        dxf.text(low.plus(0, -3 * LETTER_MM), template.heading().part());
        dxf.text(low.plus(0, -5 * LETTER_MM), template.heading().details());
        dxf.text(
                low.plus(0, -7 * LETTER_MM),
                "Seen from outside, true size, mm; x is " + template.alongX() + ", y is up");
        dxf.put(0, "ENDSEC").put(0, "EOF");
        return dxf.out.toString();
    }

    private TemplateDxf put(int code, String value) {
        out.append(String.format(Locale.ROOT, "%3d", code))
                .append("\r\n")
                .append(value)
                .append("\r\n");
        return this;
    }

    private TemplateDxf put(int code, double value) {
        return put(code, String.format(Locale.ROOT, "%.6f", value));
    }

    private TemplateDxf put(int code, int value) {
        return put(code, Integer.toString(value));
    }

    private void header(List<Spot> bounds) {
        put(0, "SECTION").put(2, "HEADER");
        put(9, "$ACADVER").put(1, "AC1009");
        put(9, "$INSUNITS").put(70, 4);
        put(9, "$MEASUREMENT").put(70, 1);
        put(9, "$EXTMIN").place(10, bounds.get(0));
        put(9, "$EXTMAX").place(10, bounds.get(1));
        put(0, "ENDSEC");
    }

    private void tables() {
        put(0, "SECTION").put(2, "TABLES");
        put(0, "TABLE").put(2, "LTYPE").put(70, 2);
        put(0, "LTYPE")
                .put(2, "CONTINUOUS")
                .put(70, 0)
                .put(3, "solid")
                .put(72, 65)
                .put(73, 0)
                .put(40, 0.0);
        put(0, "LTYPE")
                .put(2, "DASHED")
                .put(70, 0)
                .put(3, "dashed")
                .put(72, 65)
                .put(73, 2)
                .put(40, 6.0);
        put(49, 4.0).put(49, -2.0).put(0, "ENDTAB");
        put(0, "TABLE").put(2, "LAYER").put(70, 5);
        layer(EDGE, 7, "CONTINUOUS");
        layer(FINISH, 1, "CONTINUOUS");
        layer(FIRST, 1, "DASHED");
        layer(MARKS, 5, "CONTINUOUS");
        layer(TEXT, 8, "CONTINUOUS");
        put(0, "ENDTAB").put(0, "ENDSEC");
    }

    private void layer(String name, int colour, String line) {
        put(0, "LAYER").put(2, name).put(70, 0).put(62, colour).put(6, line);
    }

    private TemplateDxf place(int code, Spot p) {
        return put(code, p.xMm()).put(code + 10, p.yMm()).put(code + 20, 0.0);
    }

    private void polyline(String layer, List<Spot> points, boolean closed) {
        put(0, "POLYLINE").put(8, layer).put(66, 1).place(10, new Spot(0, 0)).put(70, closed ? 1 : 0);
        points.forEach(p -> put(0, "VERTEX").put(8, layer).place(10, p));
        put(0, "SEQEND").put(8, layer);
    }

    private void mark(TemplateMark m, UnitSystem units) {
        Spot at = m.place().at();
        double nx = m.place().nx();
        double ny = m.place().ny();
        put(0, "LINE").put(8, MARKS).place(10, at.plus(-MARK_MM * nx, -MARK_MM * ny));
        place(11, at.plus(MARK_MM * nx, MARK_MM * ny));
        text(at.plus((MARK_MM + 1) * nx, (MARK_MM + 1) * ny), m.words(units));
    }

    private void text(Spot at, String words) {
        if (!words.isBlank()) {
            put(0, "TEXT").put(8, TEXT).place(10, at).put(40, LETTER_MM).put(1, plain(words));
        }
    }

    /** Release 12 knows plain letters only: accents are dropped, the rest becomes a question mark. */
    private static String plain(String words) {
        StringBuilder s = new StringBuilder();
        Normalizer.normalize(words.replace('\u00b7', '-'), Normalizer.Form.NFD)
                .codePoints()
                .forEach(c -> {
                    if (Character.getType(c) != Character.NON_SPACING_MARK) {
                        s.append(c < ' ' ? ' ' : c < PLAIN_LETTERS ? (char) c : '?');
                    }
                });
        return s.length() > LONGEST_TEXT ? s.substring(0, LONGEST_TEXT) : s.toString();
    }
}

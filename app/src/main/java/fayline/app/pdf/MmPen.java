package fayline.app.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Draws on one PDF page in millimetres from its lower left corner. */
final class MmPen {
    /** Points of 1/72 in per millimetre. */
    static final double POINTS_PER_MM = 72 / 25.4;

    private static final float[] DASH = {(float) (4 * POINTS_PER_MM), (float) (2 * POINTS_PER_MM)};
    private static final float[] SOLID = {};
    private static final double THOUSANDTH = 1e-3;

    private final PDPageContentStream page;

    MmPen(PDPageContentStream page) {
        this.page = page;
    }

    /** What PDFBox does and may fail at. */
    private interface Step {
        void run() throws IOException;
    }

    private static void run(Step step) {
        try {
            step.run();
        } catch (IOException e) {
            throw new UncheckedIOException("could not draw the template", e);
        }
    }

    private static float pt(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }

    void stroke(double widthMm, double grey, boolean dashed) {
        run(() -> {
            page.setLineWidth(pt(widthMm));
            page.setStrokingColor((float) grey);
            page.setLineDashPattern(dashed ? DASH : SOLID, 0);
        });
    }

    /** Lines through pairs of x and y. */
    void line(List<double[]> points) {
        run(() -> {
            for (int i = 0; i < points.size(); i++) {
                double[] p = points.get(i);
                if (i == 0) {
                    page.moveTo(pt(p[0]), pt(p[1]));
                } else {
                    page.lineTo(pt(p[0]), pt(p[1]));
                }
            }
            page.stroke();
        });
    }

    void line(double x1, double y1, double x2, double y2) {
        line(List.of(new double[] {x1, y1}, new double[] {x2, y2}));
    }

    void frame(double x, double y, double width, double height) {
        run(() -> {
            page.addRect(pt(x), pt(y), pt(width), pt(height));
            page.stroke();
        });
    }

    void fill(double x, double y, double width, double height, double grey) {
        run(() -> {
            page.setNonStrokingColor((float) grey);
            page.addRect(pt(x), pt(y), pt(width), pt(height));
            page.fill();
        });
    }

    /** From here to {@link #unclip} nothing shows outside this rectangle. */
    void clip(double x, double y, double width, double height) {
        run(() -> {
            page.saveGraphicsState();
            page.addRect(pt(x), pt(y), pt(width), pt(height));
            page.clip();
        });
    }

    void unclip() {
        run(page::restoreGraphicsState);
    }

    void text(double x, double y, double sizeMm, PDFont font, String words) {
        run(() -> {
            page.beginText();
            page.setNonStrokingColor(0f);
            page.setFont(font, pt(sizeMm));
            page.newLineAtOffset(pt(x), pt(y));
            page.showText(known(font, words));
            page.endText();
        });
    }

    /** Letters that run upwards. */
    void textUp(double x, double y, double sizeMm, PDFont font, String words) {
        run(() -> {
            page.beginText();
            page.setNonStrokingColor(0f);
            page.setFont(font, pt(sizeMm));
            page.setTextMatrix(new org.apache.pdfbox.util.Matrix(0, 1, -1, 0, pt(x), pt(y)));
            page.showText(known(font, words));
            page.endText();
        });
    }

    /** How wide a text is. */
    static double width(PDFont font, double sizeMm, String words) {
        try {
            return font.getStringWidth(known(font, words)) * THOUSANDTH * sizeMm;
        } catch (IOException e) {
            throw new UncheckedIOException("could not measure a text", e);
        }
    }

    /** The text, or as much of its beginning as the room holds. */
    static String fitting(PDFont font, double sizeMm, String words, double roomMm) {
        String text = known(font, words);
        if (width(font, sizeMm, text) <= roomMm) {
            return text;
        }
        while (!text.isEmpty() && width(font, sizeMm, text + "\u2026") > roomMm) {
            text = text.substring(0, text.length() - 1);
        }
        return text + "\u2026";
    }

    /** A text without the letters that the font does not have. */
    private static String known(PDFont font, String words) {
        StringBuilder s = new StringBuilder();
        words.codePoints().forEach(c -> {
            String letter = new String(Character.toChars(c < ' ' ? ' ' : c));
            s.append(has(font, letter) ? letter : "?");
        });
        return s.toString();
    }

    private static boolean has(PDFont font, String letter) {
        try {
            return font.encode(letter).length > 0;
        } catch (IOException | IllegalArgumentException e) {
            return false;
        }
    }
}

package fayline.app.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A drawing: shapes on a sheet of a size.
 *
 * @param widthMm width of the sheet
 * @param heightMm height of the sheet
 * @param title what it shows, for those who cannot see it
 * @param shapes what is drawn, the first lowest
 */
public record Drawing(double widthMm, double heightMm, String title, List<Shape> shapes) {
    /** Copies the list. */
    public Drawing {
        shapes = List.copyOf(shapes);
    }

    /** Every shape, those in groups included, groups left out. */
    public List<Shape> flat() {
        List<Shape> all = new ArrayList<>();
        collect(shapes, all);
        return all;
    }

    private static void collect(List<Shape> from, List<Shape> into) {
        for (Shape s : from) {
            if (s instanceof Shape.Group g) {
                collect(g.shapes(), into);
            } else {
                into.add(s);
            }
        }
    }

    /**
     * A text cut so that it fits a width, by the font's mean letter.
     *
     * @param text the text
     * @param sizeMm size of the letters
     * @param widthMm room there is
     * @return the text, or its beginning with a full stop mark, or nothing where not even three letters fit
     */
    static String fit(String text, double sizeMm, double widthMm) {
        int letters = (int) Math.floor(widthMm / (sizeMm * MEAN_LETTER));
        if (text.length() <= letters) {
            return text;
        }
        return letters < 3 ? "" : text.substring(0, letters - 1).stripTrailing() + "\u2026";
    }

    /** The font's mean letter width as a share of its size, measured on English words. */
    private static final double MEAN_LETTER = 0.52;
}

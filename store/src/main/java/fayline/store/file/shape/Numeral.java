package fayline.store.file.shape;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.regex.Pattern;

/**
 * A plain number.
 *
 * @param whole whether it must be whole
 * @param least the least allowed
 * @param most the most allowed
 * @param unit what it counts, for messages; empty if clear
 */
public record Numeral(boolean whole, double least, double most, String unit) implements Shape {
    private static final Pattern NUMBER = Pattern.compile("[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?");
    private static final Pattern WHOLE = Pattern.compile("[-+]?\\d{1,9}");

    /** Makes such a shape. */
    public static Numeral count(int least, int most) {
        return new Numeral(true, least, most, "");
    }

    /** Makes such a shape. */
    public static Numeral number(double least, double most, String unit) {
        return new Numeral(false, least, most, unit);
    }

    @Override
    public String words() {
        String range = most < 1e9 ? " from " + plain(least) + " to " + plain(most) : " of " + plain(least) + " or more";
        return (whole ? "a whole number" : "a number") + range + (unit.isEmpty() ? "" : " in " + unit)
                + ", without a unit";
    }

    private static String plain(double v) {
        return v == Math.rint(v) ? String.valueOf((long) v) : String.valueOf(v);
    }

    @Override
    public Tree.Form form() {
        return Tree.Form.SCALAR;
    }

    @Override
    public void check(Tree at, Problems problems) {
        if (!fits(at, problems)) {
            return;
        }
        boolean form =
                !at.quoted() && (whole ? WHOLE : NUMBER).matcher(at.text()).matches();
        double v = form ? Double.parseDouble(at.text()) : Double.NaN;
        if (!(v >= least && v <= most)) {
            String hint = at.quoted() && NUMBER.matcher(at.text()).matches() ? "leave out the quotation marks" : "";
            problems.stop(at, Problems.quote(at.text()), words(), hint);
        }
    }

    @Override
    public ObjectNode schema() {
        ObjectNode s = Shape.node().put("type", whole ? "integer" : "number");
        s.put("minimum", least);
        if (most < 1e9) {
            s.put("maximum", most);
        }
        return s;
    }
}

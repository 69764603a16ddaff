package fayline.store.file.shape;

import fayline.basis.units.Mass;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Forms of text that occur in several kinds of file. */
public final class Forms {
    /** An id. */
    public static final Text ID =
            Text.of("an id of a-z, 0-9 and hyphens, such as float-left", "[a-z0-9][a-z0-9-]{0,63}");
    /** A reference by id. */
    public static final Text REF = Text.of("an id, as written where it is defined", "[a-z0-9][a-z0-9-]{0,63}");
    /** A number or mark as printed on what was delivered. */
    public static final Text MARK =
            Text.of("a lot number of letters, figures and . _ / -, such as L-0412", "[A-Za-z0-9][A-Za-z0-9._/-]{0,63}");
    /** A reference to a part, joint or step. */
    public static final Text WORK_REF = Text.of(
            "a part or joint, or a step of it as part/step or part/2/step, such as float-left/2/lay-up-1",
            "[a-z0-9][a-z0-9-]{0,63}(?:(?:/[1-9][0-9]{0,2})?/[a-z][a-z0-9-]{0,63})?");
    /** A reference to one step. */
    public static final Text STEP_REF = Text.of(
            "a step as part/2/step, such as float-left/2/lay-up-1",
            "[a-z0-9][a-z0-9-]{0,63}/[1-9][0-9]{0,2}/[a-z][a-z0-9-]{0,63}");
    /** A reference to one step of a project. */
    public static final Text PROJECT_STEP_REF = Text.of(
            "a step as project/part/2/step, such as ousel-1/float-left/2/lay-up-1",
            "[a-z0-9][a-z0-9-]{0,63}/[a-z0-9][a-z0-9-]{0,63}/[1-9][0-9]{0,2}/[a-z][a-z0-9-]{0,63}");
    /** An id or a parameter of the recipe. */
    public static final Text REF_OR_WITH =
            Text.of("an id, or with.NAME for a parameter of the recipe", "(?:with\\.)?[a-z0-9][a-z0-9-]{0,63}");
    /** Free text. */
    public static final Text TEXT = Text.free("a text");
    /** A day. */
    public static final Text DATE =
            new Text("a date such as 2026-03-02", "\\d{4}-\\d{2}-\\d{2}", t -> LocalDate.parse(t));
    /** A moment in the shop's own time. */
    public static final Text MOMENT = new Text(
            "a date and time such as 2026-03-02T07:30",
            "\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}(?::\\d{2})?",
            t -> LocalDateTime.parse(t));
    /** A time of day. */
    public static final Text TIME =
            new Text("a time of day such as \"07:30\"", "\\d{2}:\\d{2}", t -> LocalTime.parse(t));
    /** A break. */
    public static final Text PAUSE =
            new Text("a span of the day such as \"12:00-12:30\"", "\\d{2}:\\d{2}\\s*-\\s*\\d{2}:\\d{2}", Forms::pause);
    /** A time zone. */
    public static final Text ZONE =
            new Text("a time zone such as Etc/UTC or Europe/Lisbon", "[A-Za-z][A-Za-z0-9_+/-]*", t -> ZoneId.of(t));
    /** A currency. */
    public static final Text CURRENCY = Text.of("a currency of three capital letters such as EUR", "[A-Z]{3}");
    /** Parts of one thing to parts of another. */
    public static final Text RATIO = new Text(
            "two numbers with a colon, such as \"100:30\"", "\\d+(?:\\.\\d+)?\\s*:\\s*\\d+(?:\\.\\d+)?", t -> ratio(t));
    /** A crew size. */
    public static final Text CREW = new Text(
            "a number of people or two with a hyphen, such as 2 or 2-4",
            "[0-9]{1,2}(?:\\s*-\\s*[0-9]{1,2})?",
            t -> crew(t));
    /** Mass per time. */
    public static final Text USE_RATE = new Text(
            "a mass per time such as 25 g/min (g, kg, lb or oz per s, min or h)",
            "(?:\\d+\\.?\\d*|\\.\\d+)\\s*(?:g|kg|lb|oz)/(?:s|min|h)",
            t -> massRateKgPerS(t));
    /** A rate constant. */
    public static final Text PER_TIME = new Text(
            "a rate constant such as 1.2e7 1/min (1/s, 1/min or 1/h)",
            "(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?\\s*1/(?:s|min|h)",
            t -> perSecond(t));
    /** A number or a parameter. */
    public static final Text NUMBER_OR_WITH = Text.of(
            "a number, or with.NAME for a parameter of the recipe", "\\d+(?:\\.\\d+)?|with\\.[a-z0-9][a-z0-9-]{0,63}");
    /** The name of a size or parameter. */
    public static final Text NAME = Text.of("a name of a-z, 0-9 and hyphens", "[a-z][a-z0-9-]{0,63}");

    private static final Pattern RATE = Pattern.compile("([0-9.eE+-]+?)\\s*(1|g|kg|lb|oz)/(s|min|h)");

    private Forms() {}

    /** Both numbers of a ratio; both more than nought. */
    public static double[] ratio(String text) {
        String[] two = text.split(":", -1);
        double a = Double.parseDouble(two[0].strip());
        double b = Double.parseDouble(two[1].strip());
        if (!(a > 0 && b > 0)) {
            throw new IllegalArgumentException(text);
        }
        return new double[] {a, b};
    }

    /** Least and most of a crew. */
    public static int[] crew(String text) {
        String[] two = text.split("-", -1);
        int least = Integer.parseInt(two[0].strip());
        int most = two.length > 1 ? Integer.parseInt(two[1].strip()) : least;
        if (least < 1) {
            throw new IllegalArgumentException(text);
        }
        return new int[] {least, most};
    }

    /** Start and end of a break. */
    public static LocalTime[] pause(String text) {
        String[] two = text.split("-", -1);
        LocalTime from = LocalTime.parse(two[0].strip());
        LocalTime to = LocalTime.parse(two[1].strip());
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException(text);
        }
        return new LocalTime[] {from, to};
    }

    /** A mass per time in kg/s. */
    public static double massRateKgPerS(String text) {
        Matcher m = matched(text);
        Mass one = QuantityParser.parse("1 " + m.group(2), QuantityKind.MASS).value();
        return positive(Double.parseDouble(m.group(1)) * one.kilograms() / seconds(m.group(3)));
    }

    /** A rate constant in 1/s. */
    public static double perSecond(String text) {
        Matcher m = matched(text);
        return positive(Double.parseDouble(m.group(1)) / seconds(m.group(3)));
    }

    private static Matcher matched(String text) {
        Matcher m = RATE.matcher(text);
        if (!m.matches()) {
            throw new IllegalArgumentException(text);
        }
        return m;
    }

    private static double positive(double v) {
        if (!(v > 0)) {
            throw new IllegalArgumentException("not more than nought");
        }
        return v;
    }

    private static double seconds(String unit) {
        return switch (unit) {
            case "s" -> 1;
            case "min" -> 60;
            default -> 3600;
        };
    }
}

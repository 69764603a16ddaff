package fayline.app.usecase.week;

import fayline.flow.result.step.StepResult;
import java.util.List;
import java.util.Locale;

/** Past tenses and lists, as one person tells another what was done. */
final class WeekWords {
    private WeekWords() {}

    /** What was done in a step, after "we". */
    static String did(StepResult s) {
        return switch (s.kind()) {
            case SHAPE -> "shaped it";
            case RELEASE -> "released the mould";
            case COAT -> "coated it";
            case CUT -> "cut the kit";
            case LAY_UP ->
                s.plies().isEmpty() ? "laid up" : "laid up " + plies(s.plies().size());
            case CORE -> "bedded the core";
            case BAG ->
                s.title().toLowerCase(Locale.ENGLISH).startsWith("test") ? "tested the bag for leaks" : "bagged it";
            case CURE -> "left it to cure";
            case DEBAG -> "took the bag off";
            case DEMOULD -> "took it out of the mould";
            case TRIM -> "trimmed it to the line";
            case PREPARE -> "prepared the surfaces";
            case DRY_FIT -> "fitted it dry";
            case BOND -> "bonded it";
            case INSPECT -> "inspected it";
            case CLOSE_OUT -> "looked through everything before closing";
            case SYSTEM -> "worked on \"" + s.title().toLowerCase(Locale.ENGLISH) + "\"";
            case WEIGH -> "weighed it";
            case RECEIVE -> "received it";
        };
    }

    /** What is to be done in a step, as a noun. */
    static String toDo(StepResult s) {
        return switch (s.kind()) {
            case SHAPE -> "shaping";
            case RELEASE -> "release";
            case COAT -> "coating";
            case CUT -> "cutting";
            case LAY_UP -> "lay-up";
            case CORE -> "core";
            case BAG -> "bag";
            case CURE -> "cure";
            case DEBAG -> "bag off";
            case DEMOULD -> "out of the mould";
            case TRIM -> "trimming";
            case PREPARE -> "preparation";
            case DRY_FIT -> "dry fit";
            case BOND -> "bonding";
            case INSPECT -> "inspection";
            case CLOSE_OUT -> "the look before closing";
            case SYSTEM -> s.title().toLowerCase(Locale.ENGLISH);
            case WEIGH -> "weighing";
            case RECEIVE -> "receiving";
        };
    }

    static String plies(int n) {
        return n == 1 ? "one ply" : n + " plies";
    }

    /** A list in words: "a, b and c". */
    static String listed(List<String> all) {
        if (all.size() < 2) {
            return String.join("", all);
        }
        return String.join(", ", all.subList(0, all.size() - 1)) + " and " + all.get(all.size() - 1);
    }

    static String sentence(String text) {
        String t = text.strip();
        return t.isEmpty() || t.matches(".*[.!?]") ? t : t + ".";
    }

    /** What something should weigh, as a person says it: of several pieces what each should. */
    static String aim(String typed) {
        return typed.replaceFirst("^(\\d+) x (.+)$", "$2 for each of $1");
    }

    static String hours(double minutes) {
        return String.format(Locale.ROOT, "%.1f", minutes / 60);
    }
}

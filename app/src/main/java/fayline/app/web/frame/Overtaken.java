package fayline.app.web.frame;

import fayline.app.usecase.shop.Meanwhile;
import fayline.app.usecase.shop.Outcome;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is shown to whoever sends something after somebody else has changed the same: what they saw, what stands now and what they
 * want. Nothing is kept until they decide.
 *
 * @param action where the same is sent once more, now that it is seen
 * @param back where it is left as it stands
 * @param rows what was changed, one for each thing
 * @param fields what was typed, to be sent once more
 */
public record Overtaken(String action, String back, List<Row> rows, List<Field> fields) {
    private static final int CONFLICT = 409;
    private static final Pattern OF_ITEM = Pattern.compile("^.*\\[([^\\[\\]]+)]\\.([a-z-]+)$");
    private static final Pattern BY_PLACE = Pattern.compile("\\d+");

    /** Copies the lists. */
    public Overtaken {
        rows = List.copyOf(rows);
        fields = List.copyOf(fields);
    }

    /**
     * One thing.
     *
     * @param what what
     * @param key where it stands in the file; empty where that says nothing more
     * @param seen what was seen
     * @param now what stands now
     * @param mine what is wanted instead; empty where that is to be taken out
     * @param who who changed it, and in which entry
     */
    public record Row(String what, String key, String seen, String now, String mine, String who) {}

    /**
     * A field.
     *
     * @param name its name
     * @param value what was typed
     */
    public record Field(String name, String value) {}

    /**
     * Shows it, where that is why something was refused.
     *
     * @param back where it can be left as it stands
     * @return whether it was shown
     */
    public static boolean show(Sights sights, Visit visit, Sight sight, Outcome outcome, String back) {
        if (outcome.meanwhile().isEmpty()) {
            return false;
        }
        visit.status(CONFLICT);
        sights.show(
                visit,
                "overtaken.jte",
                sights.frame(visit, sight, "Changed meanwhile", ""),
                new Overtaken(
                        visit.path(),
                        back,
                        outcome.meanwhile().stream().map(m -> row(sight, m)).toList(),
                        visit.typed().entrySet().stream()
                                .flatMap(e -> e.getValue().stream().map(v -> new Field(e.getKey(), v)))
                                .toList()));
        return true;
    }

    private static Row row(Sight sight, Meanwhile m) {
        Matcher of = OF_ITEM.matcher(m.what());
        boolean named = of.matches() && !BY_PLACE.matcher(of.group(1)).matches();
        String what = of.matches() ? of.group(2).replace('-', ' ') + (named ? " of " + of.group(1) : "") : m.what();
        return new Row(what, what.equals(m.what()) ? "" : m.what(), m.seen(), m.now(), m.mine(), who(sight, m));
    }

    /** Who changed it, and in which entry. */
    public static String who(Sight sight, Meanwhile m) {
        return m.seq() == 0
                ? ""
                : (m.by().isEmpty() ? "" : "by " + sight.personName(m.by()) + ", ") + "entry " + m.seq();
    }
}

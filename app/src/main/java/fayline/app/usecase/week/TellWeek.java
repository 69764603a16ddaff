package fayline.app.usecase.week;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.week.WeekDraft.Private;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.project.Definition;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.payload.Value;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Settles what is told of a week. What was edited is judged once more: a name that was not asked for is refused, and a figure that
 * the draft did not hold is asked about.
 */
public final class TellWeek {
    private static final Pattern FIGURE = Pattern.compile("\\d+(?:[.,]\\d+)*");
    private final ShopRecord shop;

    /** On a shop's record. */
    public TellWeek(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * What is told.
     *
     * @param title the title
     * @param text the text
     * @param photos hashes of the pictures that go with it
     */
    public record Told(String title, String text, List<String> photos) {
        /** Copies the list. */
        public Told {
            photos = List.copyOf(photos);
        }
    }

    /**
     * Something told before.
     *
     * @param seq its entry
     * @param week the week's first day
     * @param by who settled it
     * @param told what was told
     */
    public record Kept(long seq, LocalDate week, String by, Told told) {}

    /** What was told of a project's weeks, the newest entry first. */
    public List<Kept> kept(String project) {
        List<Kept> all = new ArrayList<>();
        for (Entry e : shop.entries(1)) {
            if (e.kind().equals(EntryKind.WEEK_TOLD.key()) && e.project().equals(project) && !e.isEmptied()) {
                Value.Fields f = e.fields();
                all.add(
                        0,
                        new Kept(
                                e.seq(),
                                LocalDate.parse(f.text("week")),
                                e.by(),
                                new Told(f.text("title"), f.text("text"), f.texts("photos"))));
            }
        }
        return all;
    }

    /**
     * Settles it.
     *
     * @param sent who sends it under which id
     * @param project the project
     * @param draft the draft that it was edited from
     * @param may what private things were asked for
     * @param told what is told
     */
    public Outcome tell(Sent sent, String project, WeekDraft draft, Private may, Told told) {
        return shop.deciding(() -> {
            Definition d = shop.readDefinition(project);
            Checks checks = new Checks(d);
            checks.person("by", sent.by());
            checks.text("title", told.title(), true);
            checks.text("text", told.text(), true);
            if (!may.names()) {
                names(d, told)
                        .forEach(n -> checks.stop(
                                "text",
                                "the name " + n,
                                "no names, since they were not asked for",
                                "ask for names, or take it out"));
            }
            told.photos().stream()
                    .filter(h -> draft.pictures().stream()
                            .noneMatch(p -> p.photo().sha256().equals(h)))
                    .forEach(h -> checks.stop("photos", "picture " + h, "pictures of the draft", ""));
            if (!checks.problems().isEmpty()) {
                return Outcome.refused("Nothing was settled.", checks.problems());
            }
            Value.Fields payload = Value.Fields.NONE
                    .with("week", draft.monday().toString())
                    .with("at", shop.timeOf(sent).toString())
                    .with("title", told.title())
                    .with("text", told.text());
            return shop.append(NewEntry.of(
                            sent.client(),
                            sent.by(),
                            shop.now(),
                            project,
                            EntryKind.WEEK_TOLD,
                            told.photos().isEmpty() ? payload : payload.with("photos", told.photos())))
                    .with(strange(draft, told));
        });
    }

    /** Names of the crew that stand in a text. */
    static List<String> names(Definition d, Told told) {
        String all = told.title() + "\n" + told.text();
        return d.shop().people().stream()
                .map(p -> p.name())
                .filter(n -> Pattern.compile("(?<!\\p{L})" + Pattern.quote(n) + "(?!\\p{L})")
                        .matcher(all)
                        .find())
                .toList();
    }

    /** Figures that the draft did not hold: typed in by hand, so that the record need not hold them. */
    static List<Finding> strange(WeekDraft draft, Told told) {
        Set<String> known = figures(draft.title() + "\n" + draft.text());
        Set<String> found = figures(told.title() + "\n" + told.text());
        found.removeAll(known);
        return found.isEmpty()
                ? List.of()
                : List.of(new Finding(
                        Severity.CAUTION,
                        "text",
                        "These figures were not in the draft, so the record may not hold them: "
                                + String.join(", ", found) + ".",
                        "the record"));
    }

    static Set<String> figures(String text) {
        Set<String> all = new LinkedHashSet<>();
        Matcher m = FIGURE.matcher(text);
        while (m.find()) {
            all.add(m.group());
        }
        return all;
    }
}

package fayline.store.file.kind;

import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.flow.project.shop.Mould;
import fayline.flow.project.shop.Person;
import fayline.flow.project.shop.Skill;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Numeral;
import fayline.store.file.shape.Words;
import fayline.store.file.shape.YesNo;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The kinds {@code people} and {@code moulds}. */
public final class CrewKind {
    private static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");

    static final Keys PERSON = Keys.of(
            "a person",
            must("id", Forms.ID, "The person's id."),
            must("name", Forms.TEXT, "The name on cards and pages."),
            must("skills", Listed.of(Words.of(Fields.words(Skill.class))), "What the person may be put to."),
            may(
                    "volunteer",
                    new YesNo(),
                    "Whether the person may or may not come; planned only where the lead says so."),
            must(
                    "hours",
                    Listed.of(Keys.of(
                            "working hours",
                            must("days", Listed.some(new Words(DAYS)), "The days of the week."),
                            must("from", Forms.TIME, "Start of work."),
                            must("to", Forms.TIME, "End of work, the same day."),
                            may("pause", Forms.PAUSE, "The break."))),
                    "Usual working hours."),
            may(
                    "hourly",
                    Numeral.number(0, 100_000, "the project's currency"),
                    "What an hour of theirs costs; left out where nobody pays for it."),
            may(
                    "absences",
                    Listed.of(Keys.of(
                            "an absence",
                            must("from", Forms.DATE, "First day away."),
                            must("to", Forms.DATE, "Last day away."),
                            may("why", Forms.TEXT, "The reason, as the lead puts it."))),
                    "Days away, both ends included."));

    static final Keys MOULD = Keys.of(
            "a mould",
            must("id", Forms.ID, "Its id."),
            must("name", Forms.TEXT, "Its name."),
            may("stand", Forms.REF, "The stand that it cannot leave."),
            must("pulls", Numeral.count(0, 100_000), "Release count: pulls so far."),
            must("since-touch-up", Numeral.count(0, 100_000), "Release count: pulls since the last touch-up."),
            must("since-full", Numeral.count(0, 100_000), "Release count: pulls since the last full release."),
            must("touch-up-every", Numeral.count(1, 100_000), "Pulls after which a touch-up is due."),
            must("full-every", Numeral.count(1, 100_000), "Pulls after which a full release is due."),
            may(
                    "for-each-piece",
                    new YesNo(),
                    "Whether it stands for one mould for each piece of the part that names it, of which a set takes its own."));

    private CrewKind() {}

    /** Reads one person. */
    public static Person person(Fields f) {
        Set<Skill> skills = EnumSet.noneOf(Skill.class);
        f.texts("skills")
                .forEach(t ->
                        Fields.attempt(t, w -> Fields.constant(w, Skill.class)).ifPresent(skills::add));
        return new Person(
                f.text("id", ""),
                f.text("name", ""),
                skills,
                f.yes("volunteer"),
                f.list("hours").stream()
                        .map(CrewKind::hours)
                        .flatMap(Optional::stream)
                        .toList(),
                f.list("absences").stream()
                        .map(a -> new Person.Absence(a.day("from"), a.day("to"), a.text("why", "")))
                        .toList(),
                f.maybe("hourly"));
    }

    private static Optional<Person.Hours> hours(Fields h) {
        EnumSet<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        Arrays.stream(DayOfWeek.values())
                .filter(d -> h.texts("days").contains(d.name().substring(0, 3).toLowerCase(Locale.ROOT)))
                .forEach(days::add);
        Optional<LocalTime> from = h.read("from", LocalTime::parse);
        Optional<LocalTime> to = h.read("to", LocalTime::parse);
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Person.Hours(
                days, from.get(), to.get(), h.read("pause", Forms::pause).map(p -> new Person.Pause(p[0], p[1]))));
    }

    /** Reads one mould. */
    public static Mould mould(Fields f) {
        return new Mould(
                f.text("id", ""),
                f.text("name", ""),
                f.text("stand"),
                f.whole("pulls", 0),
                f.whole("since-touch-up", 0),
                f.whole("since-full", 0),
                f.whole("touch-up-every", 1),
                f.whole("full-every", 1),
                f.yes("for-each-piece"));
    }
}

package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.FRACTION;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.basis.units.UnitSystem;
import fayline.flow.project.ProjectFacts;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import fayline.store.file.shape.Numeral;
import fayline.store.file.shape.Words;
import fayline.store.file.shape.YesNo;
import java.time.ZoneId;
import java.util.Comparator;

/** The kind {@code project}. */
public final class ProjectKind {
    static final Keys SHAPE = Keys.of(
            "the project",
            must("id", Forms.ID, "The project's id."),
            must("name", Forms.TEXT, "The aircraft's name."),
            must("serial", Forms.TEXT, "Its serial, in quotation marks where it begins with a nought."),
            must("design", Forms.REF, "The design it is made to."),
            must("revision", Forms.TEXT, "The design's revision."),
            may("demo", new YesNo(), "Whether this is a demonstration; only then may the clock be fixed."),
            may("clock", Forms.MOMENT, "The moment at which a demonstration begins, in the shop's time."),
            may(
                    "units",
                    Words.of(Fields.words(UnitSystem.class)),
                    "The units the pages show; metric where nothing is said."),
            must("currency", Forms.CURRENCY, "The currency of prices."),
            must("start", Forms.DATE, "The first day of work."),
            may("about", Forms.TEXT, "What the project is, in a sentence or two."),
            may("budget", Numeral.number(0, 1e9, "the project's currency"), "What it may cost."),
            may(
                    "milestones",
                    Listed.of(Keys.of(
                            "a milestone",
                            must("id", Forms.ID, "Its id."),
                            must("name", Forms.TEXT, "What is reached."),
                            must("due", Forms.DATE, "The day by which."),
                            must("after", Forms.REF, "The assembly, part or joint that must be done."))),
                    "Dated goals."),
            may(
                    "pace",
                    Listed.of(Keys.of(
                            "a change of pace",
                            must("from", Forms.DATE, "The day from which it holds, until the next change."),
                            must("share", Measure.share(), "Share of the pace so far, as 50 %."),
                            must("why", Forms.TEXT, "The reason: a move, a winter."))),
                    "Changes of pace that the shop's history cannot know; the forecast counts with them."));

    private ProjectKind() {}

    /** Reads the project's facts. */
    public static ProjectFacts read(Fields f, ZoneId zone) {
        return new ProjectFacts(
                f.text("id", "unnamed"),
                f.text("name", ""),
                f.text("serial", ""),
                f.text("design", ""),
                f.text("revision", ""),
                f.yes("demo"),
                f.moment("clock").map(t -> t.atZone(zone).toInstant()),
                f.word("units", UnitSystem.class).orElse(UnitSystem.METRIC),
                f.text("currency", "EUR"),
                f.day("start"),
                f.list("milestones").stream()
                        .map(m -> new ProjectFacts.Milestone(
                                m.text("id", ""), m.text("name", ""), m.day("due"), m.text("after", "")))
                        .toList(),
                f.list("pace").stream()
                        .map(p -> new ProjectFacts.Pace(
                                p.day("from"),
                                p.measure("share", FRACTION, "100 %").ratio(),
                                p.text("why", "")))
                        .sorted(Comparator.comparing(ProjectFacts.Pace::from))
                        .toList(),
                f.text("about", ""),
                f.maybe("budget"));
    }
}

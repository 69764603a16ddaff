package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.TIME_SPAN;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.basis.finding.Figure;
import fayline.flow.project.recipe.After;
import fayline.flow.project.recipe.RecipeStep;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.project.shop.Skill;
import fayline.method.cure.CureState;
import fayline.store.file.shape.Either;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import fayline.store.file.shape.Named;
import fayline.store.file.shape.Numeral;
import fayline.store.file.shape.Text;
import fayline.store.file.shape.Words;
import fayline.store.file.shape.YesNo;

/** What a step of a recipe may say. */
final class StepShape {
    private static final Keys HANDS = Keys.of(
            "a rate",
            must("minutes", Numeral.number(0, 100_000, "person-minutes"), "Person-minutes per unit of the driver."),
            must(
                    "per",
                    Forms.NAME,
                    "The driver: step, m2, ply, ply-m2, m, corner, batch, pleat, tape-m, core-m2, joint-m, joint-m2, coat-m2, or a size that the part states."),
            may("times", Forms.NUMBER_OR_WITH, "A multiplier; 1 where nothing is said."),
            may(
                    "origin",
                    Words.of(Fields.words(Figure.Origin.class)),
                    "Where the rate comes from; assumed where nothing is said."));

    private static final Either SPAN = Either.of(
            Measure.zeroUp(TIME_SPAN),
            Keys.of(
                    "a span until a state",
                    must("until", Words.of(Fields.words(CureState.class)), "The state of the system's cure."),
                    must("system", Forms.REF_OR_WITH, "The system that cures.")));

    private static final Keys MISS = Keys.of(
            "the price of a missed window",
            must("does", Forms.TEXT, "What must be done instead."),
            may("hands", Listed.of(HANDS), "Extra person-minutes."));

    private static final Keys AFTER = Keys.of(
            "a link to an earlier step",
            must("step", Forms.REF, "The earlier step."),
            may(
                    "from",
                    Words.of(Fields.words(After.Moment.class)),
                    "From which moment of it the window counts; end where nothing is said."),
            may("opens", SPAN, "When the window opens; at once where nothing is said."),
            may("shuts", SPAN, "When it shuts; never where nothing is said."),
            may("miss", MISS, "What a missed window costs; a window without it may not be missed."));

    private static final Keys MIX = Keys.of(
            "a mix",
            must("system", Forms.REF_OR_WITH, "The system."),
            must("purpose", Words.of("plies", "core-bedding", "coat", "joint", "fillet", "amount"), "What it is for."),
            may(
                    "amount",
                    Text.of(
                            "an amount such as 0.6 kg/m2, 0.5 mm or 120 g, or with.NAME",
                            "with\\.[a-z0-9][a-z0-9-]{0,63}|[0-9][^\\n]{0,40}|\\.[0-9][^\\n]{0,40}"),
                    "The amount, for purposes that need one."),
            may("thickener", Measure.share(), "Thickener by mass of the mix; none where nothing is said."));

    static final Keys STEP = Keys.of(
            "a step",
            must("id", Forms.NAME, "Its key within the recipe."),
            must("kind", Words.of(Fields.words(StepKind.class)), "What sort of work it is."),
            must("title", Forms.TEXT, "What the card is headed."),
            may("say", Listed.of(Forms.TEXT), "Instructions in order."),
            may("hands", Listed.of(HANDS), "Rates that add up to person-minutes."),
            may("crew", Forms.CREW, "Least and most useful number of people, such as 2-4; 1 where nothing is said."),
            may(
                    "crew-factor",
                    new Named(Text.of("a number of people", "[1-9][0-9]?"), Numeral.number(0.05, 20, "")),
                    "Person-minutes multiplied by this at a crew size."),
            may(
                    "skills",
                    new Named(Words.of(Fields.words(Skill.class)), Numeral.count(1, 20)),
                    "How many of the crew must have a skill."),
            may(
                    "air",
                    Words.of(Fields.words(RecipeStep.Air.class)),
                    "What the work does to the air: wet, dust or quiet; quiet where nothing is said."),
            may("interruptible", new YesNo(), "Whether it may stop over a break or a night."),
            may("alone", SPAN, "Time without people after the hands leave."),
            may("mixes", Listed.of(MIX), "What is mixed for it."),
            may(
                    "stage",
                    Text.of("a lay-up stage from 1, or with.NAME", "[0-9]{1,2}|with\\.[a-z0-9][a-z0-9-]{0,63}"),
                    "The lay-up stage whose plies it lays."),
            may("bagged", new YesNo(), "Whether a bag is made for it."),
            may(
                    "after",
                    Listed.of(Either.of(Forms.REF, AFTER)),
                    "What it waits for; the step before it where nothing is said."),
            may(
                    "watch",
                    Listed.of(Measure.zeroUp(TIME_SPAN)),
                    "How long after the hands leave someone must look at it."),
            may("checks", Listed.of(Forms.TEXT), "What is checked, each with its limit."),
            may("record", Listed.of(Forms.TEXT), "What is written down."),
            may("cautions", Listed.of(Forms.NAME), "Keys of the caution table."),
            may("hold", new YesNo(), "Whether it needs a signature before what follows."),
            may("which-way", new YesNo(), "Whether the card asks which way round before the hands begin."),
            may(
                    "when",
                    Text.of("with.NAME, or the name of a parameter", "(?:with\\.)?[a-z0-9][a-z0-9-]{0,63}"),
                    "A parameter that must not be no or 0 for the step to exist."));

    private StepShape() {}
}

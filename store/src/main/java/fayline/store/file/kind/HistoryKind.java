package fayline.store.file.kind;

import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.flow.record.Slip;
import fayline.flow.record.change.Treatment;
import fayline.flow.record.payload.Photo;
import fayline.flow.record.trouble.Disposition;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Numeral;
import fayline.store.file.shape.Text;
import fayline.store.file.shape.Words;
import fayline.store.file.shape.YesNo;
import java.util.List;
import java.util.Map;

/** The kind {@code history}. */
public final class HistoryKind {
    /** The keys of a reading, which are kept as typed. */
    public static final List<String> AS_TYPED = List.of(
            "value", "nogo", "round", "air", "humidity", "surface", "temperature", "probe", "instrument", "lot");

    /** The keys of what went into a step and of deviations. */
    public static final List<String> SAID = List.of(
            "component",
            "amount",
            "override",
            "why",
            "batch",
            "system",
            "resin-lot",
            "hardener-lot",
            "resin",
            "hardener",
            "ply",
            "name",
            "skipped",
            "about",
            "structural",
            "deviation",
            "disposition",
            "second",
            "quantity",
            "weighed",
            "received",
            "expires",
            "opened-life",
            "price",
            "place",
            "order",
            "what",
            "maker",
            "drawing",
            "revision",
            "due",
            "accepted",
            "stage",
            "who",
            "own",
            "scale",
            "facing",
            "visit",
            "finding",
            "number",
            "change",
            "decision",
            "item",
            "how",
            "despite");
    /** The lists of rows that an event may hold, with the keys of a row. */
    public static final Map<String, List<String>> ROWS = Map.of(
            "rework",
            List.of("what", "time", "kind"),
            "missing",
            List.of("what", "why"),
            "counts",
            List.of("lot", "left"),
            "features",
            List.of("name", "drawn", "within"),
            "measured",
            List.of("name", "found"),
            "withdraws",
            List.of("made", "drawing"));

    private static final Text HASH = Text.of("SHA-256 as 64 hexadecimal digits of small letters", "[0-9a-f]{64}");

    private static final Keys PHOTO = Keys.of(
            "a photo",
            must("file", HASH, "Which file: SHA-256 of its bytes, by which it is named in history/photos."),
            may("people", Words.of(Photo.People.keys().toArray(String[]::new)), "What was said about people in it."),
            may("original", new YesNo(), "Yes for a photo kept as it was taken."),
            may("location", new YesNo(), "Yes where the place was left in because that was asked for."),
            may("sent", HASH, "SHA-256 of what was sent, where it was made smaller afterwards."));

    private static final Keys REWORK = Keys.of(
            "a piece of rework",
            must("what", Forms.TEXT, "What is to be done."),
            must("time", Forms.TEXT, "Person-time it takes, as typed."),
            must("kind", Forms.REF, "The sort of work, as trim or lay-up."));

    private static final Keys MISSING = Keys.of(
            "something missing",
            must("what", Forms.TEXT, "What the step should have and has not."),
            may("why", Forms.TEXT, "Why."));

    private static final Keys COUNT = Keys.of(
            "a count", must("lot", Forms.MARK, "The lot."), must("left", Forms.TEXT, "What is left of it, as typed."));

    private static final Keys FEATURE = Keys.of(
            "a measure of the drawing",
            must("name", Forms.TEXT, "What is measured."),
            must("drawn", Forms.TEXT, "What the drawing says, as typed."),
            must("within", Forms.TEXT, "How far it may be off either way, as typed."));

    private static final Keys MEASURED = Keys.of(
            "a measure as found",
            must("name", Forms.TEXT, "What was measured."),
            must("found", Forms.TEXT, "The reading as typed."));

    private static final Text TOUCHED = Text.of(
            "what a change touches as sort/id, such as weight/hull-deck",
            "[a-z]{2,20}(?:/[A-Za-z0-9][A-Za-z0-9._-]{0,63}){1,3}");

    private static final Keys WITHDRAWN = Keys.of(
            "something made otherwise",
            must("made", Forms.REF, "The part or joint."),
            may("drawing", Forms.TEXT, "The drawing that it was made to."));

    static final Keys SHAPE = Keys.of(
            "an event",
            may("id", Forms.ID, "A name by which a later correction finds it."),
            must("at", Forms.MOMENT, "When it happened, in the shop's time."),
            must("by", Forms.REF, "Who did it or read it."),
            must(
                    "do",
                    Words.of(
                            "start",
                            "finish",
                            "note",
                            "reading",
                            "correct",
                            "draw",
                            "mix",
                            "ply",
                            "deviation",
                            "settle",
                            "receive",
                            "move",
                            "count",
                            "order",
                            "arrival",
                            "visit",
                            "finding",
                            "put-right",
                            "sign-off",
                            "change",
                            "change-decision",
                            "change-line",
                            "change-close"),
                    "What happened."),
            may("step", Forms.STEP_REF, "The step, for start, finish, note, draw, mix and ply."),
            may("with", Listed.of(Forms.REF), "Who else worked on it."),
            may("people", Listed.of(Forms.REF), "Who worked on it, where it was not who tells it."),
            may("places", Listed.of(Forms.REF), "Stands and ports that were taken."),
            may("which-way", Forms.TEXT, "The answer to which way round it lies."),
            may("signed", Forms.REF, "Who signed the hold point."),
            may(
                    "slip",
                    Words.of(Slip.keys().toArray(String[]::new)),
                    "For a finish: why it took longer or came later than planned."),
            may("missing", Listed.of(MISSING), "For a finish: what the step should have and has not."),
            may("text", Forms.TEXT, "A note, or why something is corrected."),
            may("photos", Listed.of(PHOTO), "For a note or deviation: photos that go with it."),
            may(
                    "corrects",
                    Forms.ID,
                    "The id of the event that this one corrects; the fields given here take its place."),
            may("to", Forms.MOMENT, "For a correction: the time that takes the place of the wrong one."),
            may("instead", Forms.TEXT, "For a correction: the note that takes the place of the wrong one."),
            may("withdrawn", new YesNo(), "For a correction: yes takes the event back altogether."),
            may(
                    "offset",
                    Text.of("a distance from UTC such as +01:00", "[+-][0-9]{2}:[0-9]{2}"),
                    "For times that the clock shows twice, when it is put back."),
            may(
                    "kind",
                    Words.of(
                            "climate",
                            "mass",
                            "vacuum",
                            "gap",
                            "flush",
                            "casting",
                            "width",
                            "mix",
                            "temperature",
                            "coupon"),
                    "What was read."),
            may(
                    "of",
                    Forms.WORK_REF,
                    "The part, fit or step that was measured; of a lot received the material or system."),
            may(
                    "station",
                    Forms.MARK,
                    "The station of a fit, the width of its frame, or the id of a part's witness pieces."),
            may(
                    "state",
                    Forms.NAME,
                    "The state in which a fit was measured, such as hung; of a width bare, trial-clamped or as-bonded."),
            may("value", Forms.TEXT, "The value exactly as typed."),
            may("nogo", Forms.TEXT, "For a gap read by feelers: the thinnest leaf that did not enter, as typed."),
            may(
                    "round",
                    Numeral.count(1, 9999),
                    "Which time round it was read in this state, of a width which trial; 1 where nothing is said."),
            may("air", Forms.TEXT, "Air temperature as typed."),
            may("humidity", Forms.TEXT, "Relative humidity as typed."),
            may("surface", Forms.TEXT, "Coldest surface as typed."),
            may("temperature", Forms.TEXT, "For a gap: the part's temperature when it was read, as typed."),
            may("probe", Forms.REF, "The probe or place."),
            may("instrument", Forms.TEXT, "What it was read with."),
            may("lot", Forms.MARK, "The lot that was used."),
            may("component", Words.of("resin", "hardener"), "For a draw: which part of a system."),
            may("amount", Forms.TEXT, "For a draw: how much, as typed."),
            may("override", new YesNo(), "For a draw: yes where the lead allowed a lot out of date."),
            may("why", Forms.TEXT, "For a draw, mix or ply: the reason of what is not as usual."),
            may("batch", Numeral.count(1, 9999), "For a mix: which batch of the card."),
            may("system", Forms.REF, "For a mix: the resin or adhesive system."),
            may("resin-lot", Forms.MARK, "For a mix: lot of the resin."),
            may("hardener-lot", Forms.MARK, "For a mix: lot of the hardener."),
            may(
                    "resin",
                    Forms.TEXT,
                    "For a mix: what the scale showed for the resin, as typed; left out where it was not weighed."),
            may("hardener", Forms.TEXT, "For a mix: the same for the hardener."),
            may("ply", Numeral.count(1, 9999), "For a ply: its place in the step."),
            may("name", Forms.TEXT, "For a ply: what the card called it."),
            may("skipped", new YesNo(), "For a ply: yes where it was left out."),
            may("about", Forms.WORK_REF, "For a deviation: the part, joint or step."),
            may("structural", new YesNo(), "For a deviation or its decision: whether structure is touched."),
            may("stage", Forms.REF, "For a visit: the stage of local.yaml that was looked at."),
            may(
                    "who",
                    Forms.TEXT,
                    "For a visit: who looked. For a sign-off: who signed, where it is nobody of the crew."),
            may("own", new YesNo(), "For a visit: yes where it was the builders' own look."),
            may("scale", Forms.TEXT, "For the photos of a visit: what in them tells the size."),
            may("facing", Forms.TEXT, "For the photos of a visit: from where they look whither."),
            may("visit", Forms.ID, "For a finding: the id of the event that tells of the visit."),
            may("finding", Forms.ID, "For a put-right or a sign-off: the id of the event that raised the finding."),
            may("deviation", Forms.ID, "For a decision: the id of the event that raised the deviation."),
            may("disposition", Words.of(Disposition.keys().toArray(String[]::new)), "For a decision: what is decided."),
            may(
                    "second",
                    Forms.REF,
                    "For a decision: the second person where structure is touched; who decides and agrees are two events where this is who tells it."),
            may("rework", Listed.of(REWORK), "For a decision to rework: what is to be done."),
            may("quantity", Forms.TEXT, "For a lot received or an order: how much, as typed."),
            may("weighed", new YesNo(), "For a lot received: yes where it was weighed; otherwise the label counts."),
            may("received", Forms.DATE, "For a lot received: the day it came."),
            may("expires", Forms.DATE, "For a lot received: the date on it."),
            may("opened-life", Forms.TEXT, "For a lot received: how long it keeps once opened, as typed."),
            may(
                    "price",
                    Forms.TEXT,
                    "For a lot received: its price, as 17.80 per kg; for an order: what it costs in all."),
            may("place", Words.of("cold", "room"), "For a lot moved: where to."),
            may("counts", Listed.some(COUNT), "For a stock-take: what is left of each lot counted."),
            may("order", Forms.ID, "For an order, what came of it, or a lot that came by it: its name."),
            may("what", Forms.TEXT, "For an order: the part, material or system by id, or in words."),
            may("maker", Forms.TEXT, "For an order: who makes or delivers it."),
            may(
                    "drawing",
                    Forms.TEXT,
                    "For an order: the drawing; for a line of a change: the one that it is made to from then on."),
            may(
                    "revision",
                    Forms.TEXT,
                    "For an order: the drawing's revision; for what came: the one that stands on it."),
            may("due", Forms.DATE, "For an order, or what goes back: the promised day."),
            may("needed", Listed.of(Forms.WORK_REF), "For an order: the parts, joints or steps that wait for it."),
            may("features", Listed.of(FEATURE), "For an order: what is measured when it comes."),
            may("measured", Listed.of(MEASURED), "For what came: what was measured."),
            may(
                    "accepted",
                    new YesNo(),
                    "For what came: yes where it is accepted; otherwise it goes back. For a sign-off: no where it is open again."),
            may("number", Forms.MARK, "For a change: its name, such as C-07; the next free one where nothing is said."),
            may(
                    "touches",
                    Listed.some(TOUCHED),
                    "For a change: what it alters, as part/hull-deck or laminate/deck-skin."),
            may(
                    "change",
                    Forms.ID,
                    "For a decision, line or closing, or a deviation that a change makes: the id of the event that raised the change."),
            may("decision", Words.of("accepted", "refused"), "For a decision about a change."),
            may("items", Listed.some(TOUCHED), "For a decision about a change: what is to be settled."),
            may("withdraws", Listed.some(WITHDRAWN), "For a decision about a change: what is made otherwise."),
            may("item", TOUCHED, "For a line of a change: what is settled, as weight/hull-deck."),
            may("how", Words.of(Treatment.keys().toArray(String[]::new)), "For a line of a change: what became of it."),
            may("despite", Forms.TEXT, "For a start: why the lead let it begin although a change stood before it."),
            may("told", Forms.MOMENT, "When it was entered, where that was much later."));

    private HistoryKind() {}
}

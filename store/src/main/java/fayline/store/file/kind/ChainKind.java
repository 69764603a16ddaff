package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.ANGLE;
import static fayline.basis.units.QuantityKind.LENGTH;
import static fayline.basis.units.QuantityKind.TIME_SPAN;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.basis.units.Angle;
import fayline.flow.project.chain.ChainLink;
import fayline.flow.project.chain.ChainRemedy;
import fayline.flow.project.chain.FitChain;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.chain.Placement;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import fayline.store.file.shape.PlaceText;
import fayline.store.file.shape.Words;
import fayline.store.file.shape.YesNo;
import java.util.List;
import java.util.Optional;

/** The kind {@code chains}: parts that reach their place through several bonds. Places of a link are in its own frame. */
public final class ChainKind {
    private static final Keys MARK = Keys.of(
            "a mark",
            must("name", Forms.TEXT, "What it is called."),
            must("bench", PlaceText.PLACE, "Where it is on the bench."),
            must("place", PlaceText.PLACE, "Where it is in the frame of the last fit."),
            may(
                    "deviation",
                    Measure.above(LENGTH),
                    "Standard deviation of finding it along each axis, on the bench and again in place."));

    private static final Keys LINK = Keys.of(
            "a link",
            must("name", Forms.TEXT, "What the bond is called."),
            must("part", Forms.REF, "What is bonded."),
            must("carrier", Forms.REF, "What it is bonded to: the part of the next link, or what does not move."),
            must("where", Words.of("bench", "airframe"), "Where it is bonded."),
            must("done", new YesNo(), "Whether it is bonded."),
            must("scheme", Forms.TEXT, "How the part is located: a scheme by its name."),
            may(
                    "scheme-of",
                    Forms.REF,
                    "The fit that names the scheme, whose frame is then the link's own; the link itself where nothing is said."),
            may("points", Listed.of(FitHolds.POINT), "Places where the part is held, each with its normal."),
            may("schemes", Listed.of(FitHolds.SCHEME), "The link's own schemes."),
            may("room", FitKind.ROOM, "How far a correction can go here."),
            may(
                    "pivot",
                    PlaceText.PLACE,
                    "Place about which its moves are told; the middle of the last stations else."),
            may(
                    "placement",
                    Keys.of(
                            "a placement",
                            must("at", PlaceText.PLACE, "Where the bench's origin lies in the frame of the last fit."),
                            may("turn", Measure.any(ANGLE), "How far its axes are turned, counter-clockwise.")),
                    "Where the bench lies, as drawn; the last fit's own frame where nothing is said."),
            may("marks", Listed.of(MARK), "Two or more marks that lay the bench onto the last fit's frame instead."));

    private static final Keys REMEDY = Keys.of(
            "a remedy",
            must("name", Forms.TEXT, "What it is called."),
            must("kind", Words.of(Fields.words(ChainRemedy.Kind.class)), "What sort it is."),
            may(
                    "limit",
                    Measure.zeroUp(LENGTH),
                    "Most that comes off or goes on at a station; how far off the worst gap of a part made again is."),
            may("at", Listed.of(Forms.MARK), "The stations where it can be done; all where nothing is said."),
            may("room", FitKind.ROOM, "How far a part that is hung again can go."),
            must("cost", Measure.zeroUp(TIME_SPAN), "Working time."));

    static final Keys CHAIN = Keys.of(
            "a chain",
            must("id", Forms.ID, "Its id."),
            must("name", Forms.TEXT, "Its name."),
            must("ends-at", Forms.REF, "The fit at which the last gaps are read."),
            must("links", Listed.some(LINK), "The bonds, from the part outward."),
            may(
                    "neighbours",
                    Listed.of(Keys.of(
                            "a neighbour",
                            must("name", Forms.REF, "A neighbour of the last fit that is no part of the chain."),
                            may("room", FitKind.ROOM, "How far it can be moved."))),
                    "Neighbours that can still be moved."),
            may("remedies", Listed.of(REMEDY), "What can be done after the cure."));

    private ChainKind() {}

    /** Reads one chain. */
    public static FitChain chain(Fields f) {
        return new FitChain(
                f.text("id", ""),
                f.text("name", ""),
                f.text("ends-at", ""),
                f.list("links").stream().map(ChainKind::link).toList(),
                f.list("neighbours").stream()
                        .map(n -> new FitChain.CanMove(n.text("name", ""), room(n)))
                        .toList(),
                f.list("remedies").stream().map(ChainKind::remedy).toList());
    }

    private static MoveLimits room(Fields f) {
        return f.below("room").map(FitKind::room).orElse(MoveLimits.WIDEST);
    }

    private static ChainLink link(Fields f) {
        return new ChainLink(
                f.text("name", ""),
                f.text("part", ""),
                f.text("carrier", ""),
                f.text("where", "").equals("bench"),
                f.yes("done"),
                f.text("scheme-of"),
                FitHolds.read(f, Optional.empty()),
                f.read("pivot", PlaceText::place),
                room(f),
                f.below("placement").map(ChainKind::placement).orElse(Placement.SAME),
                marks(f));
    }

    private static Placement placement(Fields p) {
        Spot at = p.read("at", PlaceText::place).orElse(new Spot(0, 0));
        return new Placement(
                at.xMm(), at.yMm(), p.measure("turn", ANGLE).map(Angle::radians).orElse(0.0));
    }

    private static List<ChainLink.Mark> marks(Fields f) {
        return f.list("marks").stream()
                .flatMap(m -> m
                        .read("bench", PlaceText::place)
                        .flatMap(bench -> m.read("place", PlaceText::place)
                                .map(place -> new ChainLink.Mark(
                                        m.text("name", ""), bench, place, FitHolds.mm(m, "deviation"))))
                        .stream())
                .toList();
    }

    private static ChainRemedy remedy(Fields f) {
        ChainRemedy.Kind kind = f.word("kind", ChainRemedy.Kind.class).orElse(ChainRemedy.Kind.TRIM);
        return new ChainRemedy(
                f.text("name", ""),
                kind,
                FitHolds.mm(f, "limit").orElse(0),
                f.texts("at"),
                kind == ChainRemedy.Kind.RE_HANG ? Optional.of(room(f)) : Optional.empty(),
                f.measure("cost", TIME_SPAN).map(t -> t.hours()).orElse(0.0));
    }
}

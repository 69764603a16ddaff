package fayline.app.usecase.calc.topic;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.count;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.method.bag.BagEdge;
import fayline.method.bag.BagEdgeCalculator;
import fayline.method.bag.BagEdgeResult;
import fayline.method.bag.BagStack;
import fayline.method.bag.BagStackCalculator;
import fayline.method.bag.BagStackResult;
import fayline.method.bag.Cover;
import fayline.method.bag.CoverCalculator;
import fayline.method.bag.CoverResult;
import fayline.method.bag.Strips;
import fayline.method.bag.StripsCalculator;
import fayline.method.bag.StripsResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** What a vacuum bag uses up. */
final class BagTopic {
    private static final String RECTANGLE = "length width ";
    private static final String OUTLINE = "area perimeter ";
    private static final String PLEATS = " [pleats] [pleatsPerLongSide] [pleatsPerShortSide] [pleatHeight]";
    private static final List<List<String>> LAYERS = List.of(
            List.of("peelPly", "peelMargin"),
            List.of("perforatedFilm", "filmMargin"),
            List.of("breather", "breatherMargin"));

    private BagTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "bag",
                "What a vacuum bag uses up: layers with their margins, strips from rolls, tape, film with pleats, ports.",
                terms(),
                relations());
    }

    private static List<Term> terms() {
        return List.of(
                number("length", "m", "length of the part; along the strips"),
                number("width", "m", "width of the part"),
                number("area", "m2", "area of a smooth convex outline; or the rectangle with its margin"),
                number("perimeter", "m", "length of the outline's edge"),
                number("surfaceFactor", "-", "true surface over plan area; 1 where it is not given"),
                number("margin", "m", "margin all round"),
                number("peelMargin", "m", "margin of the peel ply"),
                number("filmMargin", "m", "margin of the perforated film"),
                number("breatherMargin", "m", "margin of the breather"),
                number("neededWidth", "m", "width to cover with strips, margins included"),
                number("rollWidth", "m", "width of the roll"),
                number("lap", "m", "overlap of neighbouring strips; none where it is not given"),
                Term.list(
                        "tapeRectangle", "m", "length and width of the tape line; the part with its margin otherwise"),
                count("pleats", "pleats round the whole edge"),
                count("pleatsPerLongSide", "pleats on each long side"),
                count("pleatsPerShortSide", "pleats on each short side"),
                number("pleatHeight", "m", "height of a pleat"),
                number("handEdge", "m", "film beyond the tape on each side; none where it is not given"),
                number("rollLength", "m", "tape on one roll"),
                number("spare", "-", "more tape, as a fraction; none where it is not given"),
                number("areaWithMargin", "m2", "area with its margin"),
                count("strips", "strips along the length"),
                number("run", "m", "length taken from the roll"),
                count("stripsAcross", "strips across the length"),
                number("runAcross", "m", "length taken from the roll across"),
                number("peelPly", "m2", "peel ply"),
                number("perforatedFilm", "m2", "perforated film"),
                number("breather", "m2", "breather"),
                number("tape", "m", "sealant tape, spare included"),
                count("rolls", "rolls of tape"),
                Term.list("film", "m", "length and width of the bag film"),
                number("filmArea", "m2", "bag film"),
                count("ports", "vacuum ports to set, the gauge at the far end"));
    }

    private static List<Relation> relations() {
        List<Relation> r = new ArrayList<>();
        r.add(giving("area", RECTANGLE + "[margin] [surfaceFactor]", k -> cover(k, "margin")));
        r.add(giving("areaWithMargin", RECTANGLE + "margin [surfaceFactor]", k -> cover(k, "margin")));
        r.add(giving("areaWithMargin", OUTLINE + "margin [surfaceFactor]", k -> cover(k, "margin")));
        LAYERS.forEach(names -> {
            String layer = names.get(0);
            String margin = names.get(1);
            r.add(giving(layer, RECTANGLE + margin + " [surfaceFactor]", k -> cover(k, margin)));
            r.add(giving(layer, OUTLINE + margin + " [surfaceFactor]", k -> cover(k, margin)));
        });
        for (String strips : List.of("neededWidth length rollWidth [lap]", RECTANGLE + "rollWidth [lap] [margin]")) {
            r.add(giving("strips", strips, k ->
                    (double) strips(k, StripsResult::along).strips()));
            r.add(giving(
                    "run", strips, k -> strips(k, StripsResult::along).run().si()));
            r.add(giving("stripsAcross", strips, k ->
                    (double) strips(k, StripsResult::across).strips()));
            r.add(giving(
                    "runAcross",
                    strips,
                    k -> strips(k, StripsResult::across).run().si()));
        }
        r.add(giving(
                "tapeRectangle",
                RECTANGLE + "margin",
                k -> List.of(k.si("length") + 2 * k.si("margin"), k.si("width") + 2 * k.si("margin"))));
        for (String line : List.of("tapeRectangle", "perimeter")) {
            r.add(giving(
                    "tape",
                    line + PLEATS + " [spare]",
                    k -> edge(k, false, BagEdgeResult::tape).si()));
            r.add(giving("rolls", line + " rollLength" + PLEATS + " [spare]", k ->
                    (double) (int) edge(k, false, BagTopic::rolls)));
        }
        String film = "tapeRectangle [handEdge]" + PLEATS;
        r.add(giving(
                "film",
                film,
                k -> List.of(
                        edge(k, true, BagEdgeResult::filmLength).si(),
                        edge(k, true, BagEdgeResult::filmWidth).si())));
        r.add(giving(
                "filmArea", film, k -> edge(k, true, BagEdgeResult::filmArea).si()));
        r.add(giving("ports", RECTANGLE + "[surfaceFactor]", BagTopic::ports));
        r.add(giving("ports", OUTLINE + "[surfaceFactor]", BagTopic::ports));
        return r;
    }

    private static Cover.Shape shape(Known k) {
        return k.has("length")
                ? new Cover.Rectangle(k.as("length", Length::new), k.as("width", Length::new))
                : new Cover.Convex(k.as("area", Area::new), k.as("perimeter", Length::new));
    }

    private static Object cover(Known k, String margin) {
        CoverResult r =
                CoverCalculator.calculate(new Cover(shape(k), new Length(k.si(margin, 0)), k.si("surfaceFactor", 1)));
        r.figure().ifPresent(k::by);
        return k.take(r.area(), r.findings()).si();
    }

    private static StripsResult.Lay strips(Known k, Function<StripsResult, Optional<StripsResult.Lay>> lay) {
        double margin = k.si("margin", 0);
        Length across =
                k.has("neededWidth") ? k.as("neededWidth", Length::new) : new Length(k.si("width") + 2 * margin);
        StripsResult r = StripsCalculator.calculate(new Strips(
                across,
                new Length(k.si("length") + 2 * margin),
                k.as("rollWidth", Length::new),
                new Length(k.si("lap", 0))));
        k.by("n = ceil((W - lap)/(w - lap)), one strip where the roll is wide enough", "geometry");
        k.caution("Structural plies go only in their fibre direction and are never lapped freely.");
        return k.take(lay.apply(r), r.findings());
    }

    private static <V> V edge(Known k, boolean film, Function<BagEdgeResult, Optional<V>> figure) {
        boolean bySide = k.has("pleatsPerLongSide") || k.has("pleatsPerShortSide");
        if (film && !bySide && k.has("pleats") && k.si("pleats") > 0) {
            throw new NotCoveredException("pleatsPerLongSide and pleatsPerShortSide are needed for the film");
        }
        if (!k.has("pleatHeight") && (bySide || k.has("pleats"))) {
            throw new NotCoveredException("pleatHeight is needed with pleats");
        }
        List<Double> sides = k.has("tapeRectangle") ? k.list("tapeRectangle") : List.of(0.0, 0.0);
        if (sides.size() != 2) {
            throw CalcInputException.of("tapeRectangle", sides.size() + " numbers", "a length and a width");
        }
        // A count round the whole edge goes before counts by side, which say how the film grows.
        boolean whole = !film && k.has("pleats");
        BagEdgeResult r = BagEdgeCalculator.calculate(new BagEdge(
                new Length(sides.get(0)),
                new Length(sides.get(1)),
                whole ? 0 : (int) k.si("pleatsPerLongSide", 0),
                whole ? 0 : (int) k.si("pleatsPerShortSide", 0),
                new Length(k.si("pleatHeight", 0)),
                new Length(k.si("handEdge", 0)),
                new Length(k.si("rollLength", 0)),
                k.si("spare", 0),
                new Length(k.has("tapeRectangle") ? 0 : k.si("perimeter", 0)),
                whole ? k.count("pleats") : 0));
        r.figures().stream().skip(film ? 1 : 0).limit(1).forEach(k::by);
        return k.take(figure.apply(r), r.findings());
    }

    private static Optional<Integer> rolls(BagEdgeResult r) {
        OptionalInt n = r.rolls();
        return n.isPresent() ? Optional.of(n.getAsInt()) : Optional.empty();
    }

    private static Object ports(Known k) {
        BagStackResult r =
                BagStackCalculator.calculate(BagStack.of(shape(k), k.si("surfaceFactor", 1), 0, new Length(0)));
        k.by("one port to about 1 m2, at least two above", "common practice, no source");
        OptionalInt n = r.ports();
        return k.take(n.isPresent() ? Optional.of((double) n.getAsInt()) : Optional.empty(), r.findings());
    }
}

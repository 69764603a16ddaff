package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.LENGTH;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.basis.units.Length;
import fayline.basis.units.QuantityParser;
import fayline.flow.project.fit.FitHolding;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.outline.OutlineShape;
import fayline.method.fitup.scheme.Locator;
import fayline.method.fitup.scheme.Scheme;
import fayline.method.fitup.scheme.Stop;
import fayline.method.fitup.shim.ShimStock;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import fayline.store.file.shape.Numeral;
import fayline.store.file.shape.PlaceText;
import fayline.store.file.shape.YesNo;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** How a part may be held, in the kind {@code fits}: points, schemes and shims. */
public final class FitHolds {
    private static final int MOST_PIECES = 4;

    static final Keys POINT = Keys.of(
            "a point",
            must("id", Forms.MARK, "Its mark."),
            must("at", PlaceText.PLACE, "Where it touches the part's edge."),
            may("normal", PlaceText.DIRECTION, "From part to neighbour, where it does not follow from the outline."),
            may("clearance", Measure.zeroUp(LENGTH), "Room between part and stop as the part lies now."),
            may("travel", Measure.zeroUp(LENGTH), "How far along the edge it could be set elsewhere, either way."),
            may("stiffness", Numeral.number(0.001, 1000, "times a usual stop"), "How hard it holds against others."));

    private static final Listed POINTS = Listed.some(Forms.MARK);

    static final Keys SCHEME = Keys.of(
            "a scheme",
            must("name", Forms.TEXT, "What it is called."),
            may(
                    "tape",
                    Listed.some(Keys.of(
                            "tape marks",
                            must("points", POINTS, "The points that are set to a mark by eye."),
                            may("both-ways", new YesNo(), "Whether the mark locates along the edge as well."),
                            may("half-width", Measure.above(LENGTH), "How far off its mark a point can be."),
                            may("parallax", Measure.zeroUp(LENGTH), "Standard deviation of looking on a slant."))),
                    "Points set to tape marks."),
            may(
                    "spacers",
                    Listed.some(Keys.of(
                            "spacers",
                            must("points", POINTS, "The points that are pressed against a spacer."),
                            may("deviation", Measure.above(LENGTH), "Standard deviation of thickness and seating."),
                            may(
                                    "stands-off",
                                    Measure.zeroUp(LENGTH),
                                    "How far off it may be where not pressed home."))),
                    "Points pressed against spacers."),
            may(
                    "pins",
                    Listed.some(Keys.of(
                            "two pins",
                            must("name", Forms.TEXT, "What they are called."),
                            must("round", PlaceText.PLACE, "The round hole."),
                            must("slotted", PlaceText.PLACE, "The hole that is slotted towards the round one."),
                            may("play", Measure.zeroUp(LENGTH), "Diameter of the hole less that of the pin."),
                            may("position", Measure.above(LENGTH), "Standard deviation of the place of a hole."))),
                    "Pins in drilled holes."),
            may(
                    "blocks",
                    Listed.some(Keys.of(
                            "a block",
                            must("points", POINTS, "The faces that the part lies against."),
                            may("face", Measure.above(LENGTH), "Standard deviation of each face."),
                            may("place", Measure.above(LENGTH), "Standard deviation of the whole block."))),
                    "Fixture blocks."),
            may("creep", Measure.above(LENGTH), "How far a stop may give while the adhesive cures, either way."));

    static final Keys SHIMS = Keys.of(
            "shims",
            must("pieces", Listed.some(Measure.above(LENGTH)), "The pieces at hand; each may be used again and again."),
            may("most", Numeral.count(1, 12), "The most pieces in one stack; 4 where nothing is said."),
            may("tape", Measure.zeroUp(LENGTH), "Adhesive tape that goes on each stack."));

    private FitHolds() {}

    static FitHolding read(Fields f, Optional<OutlineShape> outline) {
        Map<String, FitHolding.Point> points = new LinkedHashMap<>();
        f.list("points")
                .forEach(p ->
                        point(p, outline).ifPresent(q -> points.put(q.stop().id(), q)));
        List<Scheme> schemes =
                f.list("schemes").stream().map(s -> scheme(s, points)).toList();
        return new FitHolding(List.copyOf(points.values()), schemes, f.text("scheme", ""), shims(f));
    }

    private static Optional<FitHolding.Point> point(Fields p, Optional<OutlineShape> outline) {
        Optional<Spot> at = p.read("at", PlaceText::place);
        Optional<Spot> given = p.read("normal", PlaceText::direction);
        Optional<Spot> normal = given.isPresent()
                ? given
                : at.flatMap(a -> FitEdge.near(outline, a)).map(e -> new Spot(e.nx(), e.ny()));
        if (at.isEmpty() || normal.isEmpty()) {
            return Optional.empty();
        }
        Station contact = new Station(
                p.text("id", ""), at.get(), normal.get().xMm(), normal.get().yMm());
        double stiffness = p.number("stiffness", 1);
        return Optional.of(new FitHolding.Point(
                new Stop(contact, mm(p, "travel").orElse(0), stiffness > 0 ? stiffness : 1), mm(p, "clearance")));
    }

    private static Scheme scheme(Fields s, Map<String, FitHolding.Point> points) {
        List<Locator> all = new ArrayList<>();
        for (Fields t : s.list("tape")) {
            stops(t, points)
                    .forEach(p -> all.add(
                            new Locator.TapeMark(p, t.yes("both-ways"), mm(t, "half-width"), mm(t, "parallax"))));
        }
        for (Fields t : s.list("spacers")) {
            stops(t, points)
                    .forEach(p -> all.add(new Locator.Spacer(
                            p, mm(t, "deviation"), mm(t, "stands-off").orElse(0))));
        }
        for (Fields t : s.list("pins")) {
            Optional<Spot> round = t.read("round", PlaceText::place);
            Optional<Spot> slotted = t.read("slotted", PlaceText::place);
            if (round.isPresent() && slotted.isPresent() && !round.equals(slotted)) {
                all.add(new Locator.Pins(
                        t.text("name", ""), round.get(), slotted.get(), mm(t, "play"), mm(t, "position")));
            }
        }
        for (Fields t : s.list("blocks")) {
            all.add(new Locator.Block(stops(t, points), mm(t, "face"), mm(t, "place")));
        }
        return new Scheme(s.text("name", ""), all, mm(s, "creep"));
    }

    private static List<Stop> stops(Fields f, Map<String, FitHolding.Point> points) {
        return f.texts("points").stream()
                .flatMap(id -> Optional.ofNullable(points.get(id)).stream())
                .map(FitHolding.Point::stop)
                .toList();
    }

    private static Optional<ShimStock> shims(Fields f) {
        return f.below("shims")
                .flatMap(s -> Fields.attempt(
                        "",
                        t -> new ShimStock(
                                s.texts("pieces").stream()
                                        .map(p -> QuantityParser.parse(p, LENGTH)
                                                .value()
                                                .millimetres())
                                        .toList(),
                                s.whole("most", MOST_PIECES),
                                mm(s, "tape").orElse(0))));
    }

    static OptionalDouble mm(Fields f, String key) {
        Optional<Length> v = f.measure(key, LENGTH);
        return v.isPresent() ? OptionalDouble.of(v.get().millimetres()) : OptionalDouble.empty();
    }
}

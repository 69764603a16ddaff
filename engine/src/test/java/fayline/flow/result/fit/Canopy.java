package fayline.flow.result.fit;

import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.checks.FitCase;
import fayline.checks.FitCase.Node;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitBulge;
import fayline.flow.project.fit.FitCutting;
import fayline.flow.project.fit.FitHolding;
import fayline.flow.project.fit.FitState;
import fayline.flow.project.fit.FitStation;
import fayline.flow.project.fit.FitWanted;
import fayline.flow.reading.FitReading;
import fayline.flow.reading.FitReading.Kind;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Vector;
import fayline.method.fitup.motion.Side;
import fayline.method.fitup.space.PartMove;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The bulged canopy of the reference case F41 as a fit of a project: 14 stations, 3 mm of gap and no flush wanted. */
final class Canopy {
    private static final Instant MORNING = Instant.parse("2026-03-03T06:00:00Z");
    static final FitCase CASE = FitCase.read("checks/fitup/F41-bulged-canopy-six-unknowns");

    private Canopy() {}

    /** One station of it. */
    record Place(String id, Vector at, Vector gap, Vector surface, double gapMm, double flushMm) {
        Place mirrored() {
            return new Place(id, mirror(at), mirror(gap), mirror(surface), gapMm, flushMm);
        }

        Place reading(double gap, double flush) {
            return new Place(id, at, this.gap, surface, gap, flush);
        }

        private static Vector mirror(Vector v) {
            return new Vector(-v.x(), v.y(), v.z());
        }
    }

    static List<Place> places() {
        return CASE.inputs().get("stations").items().stream()
                .map(n -> new Place(
                        n.text("id"),
                        vector(n.get("p")),
                        vector(n.get("gapNormal")),
                        vector(n.get("surfaceNormal")),
                        n.number("gap"),
                        n.number("flush")))
                .toList();
    }

    static Vector vector(Node n) {
        List<Double> v = n.numbers();
        return new Vector(v.get(0), v.get(1), v.get(2));
    }

    /** What would be read had the part been moved by this from its place, a rigid part and neighbours square to their gaps. */
    static List<Place> after(SpaceMove move, Vector pivot) {
        List<Place> all = new ArrayList<>();
        for (Place p : places()) {
            Vector went = move.carries(p.at(), pivot);
            all.add(p.reading(3 - p.gap().dot(went), p.surface().dot(went)));
        }
        return all;
    }

    /** The same canopy in an opening so wide that no gap closes however it lies. */
    static Fit wide() {
        return fit(
                places().stream()
                        .map(Canopy::station)
                        .map(s -> new FitStation(
                                s.id(),
                                s.where(),
                                s.at(),
                                s.normal(),
                                s.edge(),
                                s.against(),
                                Optional.of(mm("15 mm")),
                                s.gapTolerance(),
                                s.weight(),
                                s.bulge()))
                        .toList(),
                FitState.USUAL,
                FitHolding.NONE,
                FitCutting.ANY);
    }

    /** What would be read in the wide opening of a part that this move would bring to its place. */
    static List<Place> needing(SpaceMove move, Vector pivot) {
        List<Place> all = new ArrayList<>();
        for (Place p : places()) {
            Vector goes = move.carries(p.at(), pivot);
            all.add(p.reading(15 + p.gap().dot(goes), -p.surface().dot(goes)));
        }
        return all;
    }

    private static Entered<Length> mm(String text) {
        return QuantityParser.parse(text, QuantityKind.LENGTH);
    }

    static FitStation station(Place p) {
        return new FitStation(
                p.id(),
                "",
                Optional.of(new Spot(p.at().x(), p.at().y())),
                Optional.of(new FitStation.Normal(p.gap().x(), p.gap().y())),
                p.at().y() > 0 ? "upper" : "lower",
                "",
                Optional.empty(),
                Optional.empty(),
                1,
                new FitBulge(
                        OptionalDouble.of(p.at().z()),
                        OptionalDouble.empty(),
                        OptionalDouble.of(p.gap().z()),
                        Optional.of(p.surface())));
    }

    static Fit fit(List<FitStation> stations, List<FitState> states, FitHolding holding, FitCutting cutting) {
        return new Fit(
                "canopy",
                "Canopy",
                Optional.empty(),
                List.of("hull"),
                new FitWanted(mm("3 mm"), mm("0.5 mm"), mm("0 mm"), mm("0.5 mm"), Optional.empty()),
                stations,
                Optional.empty(),
                List.of(new Fit.Mark("crown", new Spot(0, 0), 20)),
                MoveLimits.WIDEST,
                Optional.empty(),
                states,
                holding,
                cutting,
                Optional.empty());
    }

    static Fit fit(List<Place> places) {
        return fit(places.stream().map(Canopy::station).toList(), FitState.USUAL, FitHolding.NONE, FitCutting.ANY);
    }

    static List<FitReading> gaps(String state, List<Place> places) {
        return places.stream()
                .map(p -> read(Kind.GAP, state, p.id(), p.gapMm()))
                .toList();
    }

    static List<FitReading> flushes(String state, List<Place> places) {
        return places.stream()
                .map(p -> read(Kind.FLUSH, state, p.id(), p.flushMm()))
                .toList();
    }

    static List<FitReading> readings(String state, List<Place> places) {
        List<FitReading> all = new ArrayList<>(gaps(state, places));
        all.addAll(flushes(state, places));
        return all;
    }

    private static FitReading read(Kind kind, String state, String id, double mm) {
        return new FitReading(
                0,
                MORNING,
                "runa",
                kind,
                id,
                state,
                mm + " mm",
                mm,
                OptionalDouble.empty(),
                "",
                OptionalDouble.empty(),
                1);
    }

    static FitResult answer(Fit fit, Side side, List<FitReading> readings) {
        return FitCalculator.calculate(new FitQuestion(fit, side, readings, List.of(), false));
    }

    /** The answer where these gaps and flushes are read of them. */
    static FitResult read(List<Place> places) {
        return answer(fit(places), Side.LEFT, readings("trimmed", places));
    }

    static PartMove.Found found(FitResult r) {
        return found(r.advice().orElseThrow());
    }

    static PartMove.Found found(FitAdvice a) {
        return a.best().found().orElseThrow();
    }
}

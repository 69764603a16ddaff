package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.basis.finding.Finding;
import fayline.method.fitup.odds.GapOdds;
import fayline.method.fitup.odds.GapOdds.StationOdds;
import fayline.method.fitup.odds.JointChance;
import fayline.method.fitup.scheme.Improvement;
import fayline.method.fitup.scheme.ReadGap;
import fayline.method.fitup.scheme.Scheme;
import fayline.method.fitup.scheme.SchemeCalculator;
import fayline.method.fitup.scheme.SchemeComparison;
import fayline.method.fitup.scheme.SchemeOutcome;
import fayline.method.fitup.scheme.SchemeQuestion;
import fayline.method.fitup.scheme.Stop;
import fayline.method.uncertainty.Distribution.Shape;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;

/** What the questions of locating share: stations with limits, and odds as they are written. */
final class Odds {
    /** The seed where none is asked for. */
    static final int SEED = 1;

    private static final String METHOD =
            "Cov(g) = T Cov(stops) T' + diag(u^2) + u_b^2; chance of all over Sobol points under random shifts";
    private static final String SOURCE = "jcgm100; rigid-body geometry";

    private Odds() {}

    /** Pivot, stations, what readings share, and the seed. */
    static Form form() {
        return Form.empty()
                .takes("pivot", Kind.plane(), "pivot of the motions; the middle of the stations where it is missing")
                .needs("stations", Kind.list(station().asKind(), 1), "the gaps as they are expected after the move")
                .needs("uCommonReading", Kind.notNegative(), "standard uncertainty that all readings share, mm")
                .takes("seed", Kind.whole(0), "of the points of the joint chance; 1 where it is missing");
    }

    private static Form station() {
        return Shapes.station()
                .needs("predicted", Kind.number(), "gap expected, mm")
                .needs("lower", Kind.number(), "least gap in tolerance, mm")
                .needs("upper", Kind.number(), "most gap in tolerance, mm")
                .needs("uReading", Kind.notNegative(), "standard uncertainty of the reading, mm");
    }

    /** A place where the part is held, with what further fields it takes. */
    static Form stop() {
        return Shapes.station()
                .takes("travel", Kind.notNegative(), "how far along its edge it could be set elsewhere, mm")
                .takes("stiffness", Kind.positive(), "how hard it holds against other stops; 1 where it is missing");
    }

    static Stop stop(Given g) {
        return new Stop(Shapes.station(g), g.number("travel", 0), g.number("stiffness", 1));
    }

    /** The comparison of schemes at the stations given. */
    static SchemeComparison compared(Given in, List<Scheme> schemes) {
        List<ReadGap> gaps = in.objects("stations").stream()
                .map(g -> new ReadGap(
                        Shapes.station(g),
                        g.number("predicted"),
                        g.number("lower"),
                        g.number("upper"),
                        OptionalDouble.of(g.number("uReading"))))
                .toList();
        return SchemeCalculator.calculate(new SchemeQuestion(
                Shapes.pivot(in, Shapes.stations(in, "stations")),
                gaps,
                OptionalDouble.of(in.number("uCommonReading")),
                schemes,
                Set.of(),
                in.has("seed") ? in.whole("seed") : SEED));
    }

    /** Writes what a scheme does. */
    static ObjectNode json(SchemeOutcome o) {
        ObjectNode n = Json.object();
        o.odds().ifPresent(d -> write(n, d));
        n.put("condition", o.condition());
        if (o.isPoor()) {
            n.putArray("flags").add("POOR_INDEXING");
        }
        ArrayNode improvements = n.putArray("improvements");
        for (Improvement i : o.improvements()) {
            improvements
                    .addObject()
                    .put("kind", i.kind().name().toLowerCase(Locale.ROOT))
                    .put("about", i.about())
                    .put("along", i.alongMm())
                    .put("jointBefore", i.chanceBefore())
                    .put("jointAfter", i.chanceAfter())
                    .put("worstStdAfter", i.worstAfterMm());
        }
        return n;
    }

    /** Writes odds. */
    static void write(ObjectNode n, GapOdds d) {
        List<StationOdds> s = d.stations();
        n.set("stdGap", Shapes.json(s.stream().map(StationOdds::deviationMm).toList()));
        n.set("worstCase", Shapes.json(s.stream().map(StationOdds::worstCaseMm).toList()));
        n.set("rss", Shapes.json(s.stream().map(StationOdds::rssMm).toList()));
        n.set(
                "perStationNormal",
                Shapes.json(s.stream().map(StationOdds::chance).toList()));
        JointChance j = d.joint();
        n.put("jointProbability", j.probability());
        n.put("jointStandardError", j.standardError());
        n.put("jointPoints", j.points());
        n.put("seed", j.seed());
        if (s.size() > 1) {
            n.put("covariance12", d.covarianceMm2().get(0).get(1));
        }
        n.put("worstStation", d.worstStation().id());
        ArrayNode shares = n.putArray("worstStationShares");
        d.shares().forEach(h -> shares.addObject().put("source", h.source()).put("share", h.share()));
    }

    static CalcAnswer answer(ObjectNode outputs, List<Finding> findings, boolean saysNo) {
        return new CalcAnswer(
                outputs,
                Map.of(),
                List.of(METHOD),
                List.of(SOURCE),
                findings.stream().map(Finding::sentence).toList(),
                saysNo);
    }

    /** The shape of a spread by its name. */
    static Shape shape(String word) {
        return Shape.valueOf(word.toUpperCase(Locale.ROOT));
    }

    /** The names of shapes. */
    static Kind shapes() {
        return Kind.word("normal", "rectangular", "triangular", "arcsine");
    }

    /** Runs what checks its own numbers; what it refuses is bad input. */
    static <V> V checked(Supplier<V> computation) {
        try {
            return computation.get();
        } catch (CalcInputException e) {
            throw e;
        } catch (IllegalArgumentException e) {
            throw CalcInputException.of("inputs", String.valueOf(e.getMessage()), "inputs that go together");
        }
    }
}

package fayline.app.usecase.calc.system;

import static fayline.app.usecase.calc.NotCoveredException.refusing;
import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.method.tube.BendTable;
import fayline.method.tube.BendTableCalculator;
import fayline.method.tube.BentTube;
import fayline.method.tube.RoutePoint;
import fayline.method.tube.Springback;
import fayline.method.tube.TrialBend;
import fayline.method.tube.TubeRoute;
import fayline.method.tube.TubeSection;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A rigid line: a bender's numbers from a route and the route from them, what to cut, what a bend does to the tube. */
final class TubeTopic {
    private static final String ROUTE = "points centrelineRadius [minStraight]";
    private static final String TABLE = "straights rotations angles centrelineRadius";
    private static final String SIGN = "rotation positive by the right hand looking along the feed, the first nought";
    private static final String GEOMETRY = "vector geometry";
    private static final String HANDBOOK = "[faa-h-8083-30]";

    private TubeTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "tube",
                "A rigid line of bent tube: straights, rotations and angles of a route, the route again, cut length, springback.",
                terms(),
                relations());
    }

    private static List<Term> terms() {
        return List.of(
                Term.rows("points", "mm,mm,mm", "where straight centrelines meet, and both ends"),
                number("centrelineRadius", "mm", "radius of the bends at the centreline"),
                number(
                        "minStraight",
                        "mm",
                        "shortest straight that the bender holds between two bends; 0 where not given"),
                Term.text(
                        "start",
                        "how the points lie that come of a table; they begin at the origin along x, first bend to y"),
                Term.list("straights", "mm", "straight lengths in order, one more than bends"),
                Term.list("rotations", "deg", SIGN),
                Term.list("angles", "deg", "angles of the bends"),
                Term.count("bends", "how many bends"),
                number("developed", "mm", "length along the centreline"),
                Term.yesNo("feasible", "whether it can be bent"),
                number("shortfall", "mm", "by how much the worst straight is too short"),
                number("dashNumber", "-", "the tube's number, sixteenths of an inch of its outer diameter"),
                number("od", "mm", "outer diameter"),
                number("wall", "mm", "wall"),
                number("bore", "mm", "inner diameter"),
                number(
                        "kFactor",
                        "-",
                        "where the tube keeps its length, 0 inside of the bend to 1 outside; from a trial bend"),
                number("angle", "deg", "angle of one bend"),
                number("arcNeutral", "mm", "length of tube in that bend"),
                number("arcCentreline", "mm", "the bend's length at the centreline"),
                number("difference", "mm", "the second less the first"),
                number("gain", "mm", "how much shorter the bend is than the way round its corner"),
                number("flareAllowanceEachEnd", "mm", "tube that a flare takes, from a trial flare"),
                number("trimAllowance", "mm", "tube for the bender's grip, cut off afterwards"),
                number("cutLength", "mm", "length to cut"),
                Term.list("marks", "mm", "where each bend begins, along the tube as it is cut"),
                number("measuredMinor", "mm", "least diameter measured in a bend"),
                number("limit", "percent", "the least that may be, of the outer diameter; 75 where not given"),
                number("ratio", "percent", "the measured of the outer diameter"),
                Term.yesNo("ok", "whether the bend is round enough"),
                number("outsideWall", "mm", "wall at the outside of a bend, thinned"),
                Term.rows("trials", "deg,deg", "test bends of this tube: what was set, what it kept"),
                Term.list("set", "deg", "what to set the bender to for each angle"));
    }

    private static List<Relation> relations() {
        List<Relation> r = new ArrayList<>();
        r.add(giving("straights", ROUTE, k -> table(k).straightsM()));
        r.add(giving("rotations", ROUTE, k -> table(k).rotationsRad()));
        r.add(giving("angles", ROUTE, k -> table(k).anglesRad()));
        r.add(giving("points", TABLE + " [start]", TubeTopic::points));
        r.add(giving("bends", "angles", k -> (double) k.list("angles").size()));
        r.add(giving("developed", TABLE + " [od] [kFactor]", k -> given(k).developedM(neutral(k))));
        r.add(giving("feasible", ROUTE, k -> bent(k).isFeasible()));
        r.add(giving("shortfall", ROUTE, k -> bent(k).shortM()));
        r.add(giving("od", "dashNumber", k -> {
            k.by("a tube's number counts sixteenths of an inch", HANDBOOK);
            return refusing(() -> TubeSection.outerOfNumberM(k.si("dashNumber")));
        }));
        r.add(giving("bore", "od wall", k -> section(k).boreM()));
        r.add(giving("arcNeutral", "centrelineRadius od kFactor angle", k -> neutral(k) * k.si("angle")));
        r.add(giving("arcCentreline", "centrelineRadius angle", k -> k.si("centrelineRadius") * k.si("angle")));
        r.add(giving("difference", "arcCentreline arcNeutral", k -> k.si("arcCentreline") - k.si("arcNeutral")));
        r.add(giving("gain", "centrelineRadius angle", k -> {
            k.by("2 R tan(a/2) - R a", GEOMETRY);
            return BendTableCalculator.gainM(k.si("centrelineRadius"), k.si("angle"));
        }));
        r.add(giving("cutLength", "developed [flareAllowanceEachEnd] [trimAllowance] [kFactor]", TubeTopic::cut));
        r.add(giving("marks", TABLE + " [od] [kFactor]", k -> given(k).marksM(neutral(k))));
        r.add(giving("ratio", "measuredMinor od", k -> k.si("measuredMinor") / k.si("od")));
        r.add(giving("ok", "ratio [limit]", k -> {
            k.by("the small diameter in a bend is at least 75 percent of the tube's own", HANDBOOK);
            return k.si("ratio") >= k.si("limit", TubeSection.LEAST_OVAL);
        }));
        r.add(giving("outsideWall", "od wall centrelineRadius", TubeTopic::outside));
        r.add(giving("set", "angles trials", TubeTopic::set));
        return r;
    }

    private static double cut(Known k) {
        if (!k.has("kFactor")) {
            k.caution("The bends are counted at the centreline: a trial bend of this tube tells kFactor.");
        }
        return k.si("developed") + 2 * k.si("flareAllowanceEachEnd", 0) + k.si("trimAllowance", 0);
    }

    private static BentTube bent(Known k) {
        k.by("tangent length R tan(a/2); " + SIGN, GEOMETRY);
        List<RoutePoint> points = k.rows("points").stream()
                .map(p -> refusing(() -> new RoutePoint(p.get(0), p.get(1), p.get(2))))
                .toList();
        return refusing(() ->
                BendTableCalculator.calculate(new TubeRoute(points, k.si("centrelineRadius"), k.si("minStraight", 0))));
    }

    private static BendTable table(Known k) {
        BentTube bent = bent(k);
        return k.take(bent.table(), bent.findings());
    }

    private static BendTable given(Known k) {
        return refusing(() ->
                new BendTable(k.list("straights"), k.list("rotations"), k.list("angles"), k.si("centrelineRadius")));
    }

    private static List<List<Double>> points(Known k) {
        k.by("from the origin along x, the first bend towards y; " + SIGN, GEOMETRY);
        return BendTableCalculator.points(given(k)).stream()
                .map(p -> List.of(p.xM(), p.yM(), p.zM()))
                .toList();
    }

    private static double neutral(Known k) {
        if (!k.has("kFactor")) {
            return k.si("centrelineRadius");
        }
        if (!k.has("od")) {
            throw new NotCoveredException("kFactor needs od beside it");
        }
        k.by("R_n = R - OD/2 + k OD", GEOMETRY);
        return refusing(() -> TubeSection.neutralRadiusM(k.si("centrelineRadius"), k.si("od"), k.si("kFactor")));
    }

    private static TubeSection section(Known k) {
        return refusing(() -> new TubeSection(k.si("od"), k.si("wall")));
    }

    private static double outside(Known k) {
        k.by("t R / (R + OD/2), where the wall keeps its volume", "common practice, no source");
        TubeSection section = section(k);
        double radius = k.si("centrelineRadius");
        section.usualLeastRadiusM()
                .filter(least -> radius < least)
                .ifPresent(least -> k.caution(String.format(
                        Locale.ROOT,
                        "The radius is below the %.1f mm usual for aluminium tube of this size (recalled from %s; confirm it there).",
                        1e3 * least,
                        HANDBOOK)));
        return section.outsideWallM(radius);
    }

    private static List<Double> set(Known k) {
        Springback s = refusing(() -> Springback.of(k.rows("trials").stream()
                .map(t -> new TrialBend(t.get(0), t.get(1)))
                .toList()));
        k.by("kept = a + b set, a straight line through the test bends", "common practice, no source");
        List<Double> set = new ArrayList<>();
        for (double angle : k.list("angles")) {
            if (!s.covers(angle)) {
                k.caution(String.format(
                        Locale.ROOT,
                        "%.1f deg lies outside the test bends; bend one more near it.",
                        Math.toDegrees(angle)));
            }
            set.add(s.setRad(angle));
        }
        return set;
    }
}

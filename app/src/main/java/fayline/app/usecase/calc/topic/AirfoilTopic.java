package fayline.app.usecase.calc.topic;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.basis.geometry.Outline;
import fayline.basis.units.Length;
import fayline.method.airfoil.Airfoil;
import fayline.method.airfoil.CoordinateText;
import fayline.method.airfoil.NacaSection;
import fayline.method.airfoil.Rib;
import fayline.method.airfoil.RibCalculator;
import fayline.method.airfoil.RibResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Sections by their NACA number or by coordinates, and the ribs cut from them. */
final class AirfoilTopic {
    private static final int USUAL_POINTS = 80;
    private static final int MOST_POINTS = 2_000;
    private static final String RIB = " chord [points] [from] [to] [flange] [cutouts]";
    private static final String EQUATIONS = "thickness and camber laid off square to the camber line";

    private AirfoilTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "airfoil",
                "Points of a NACA 4- or 5-digit section, and outline, area and edge of a rib cut from it or from coordinates.",
                terms(),
                relations());
    }

    private static List<Term> terms() {
        return List.of(
                Term.text("naca", "four or five digits, as 2412 or 23012"),
                Term.text("coordinates", "the two-column text form of an airfoil, lines parted by line breaks"),
                number("chord", "mm", "chord of the rib"),
                number("from", "-", "where the rib begins, as a fraction of the chord; 0 where it is not given"),
                number("to", "-", "where the rib ends; 1 where it is not given"),
                Term.count("points", "points on each surface; 80 where it is not given"),
                number("flange", "mm", "material left all round for a flange"),
                Term.rows(
                        "cutouts",
                        "mm, mm, mm",
                        "round holes: centre aft of the leading edge, centre above the chord, diameter"),
                number("x", "-", "where thickness, camber and slope are asked, as a fraction of the chord"),
                number("halfThickness", "-", "half thickness there, of the chord"),
                number("camber", "-", "height of the camber line there, of the chord"),
                number("slope", "-", "slope of the camber line there"),
                Term.rows("upper", "-, -", "points of the upper surface from the leading edge, of the chord"),
                Term.rows("lower", "-, -", "points of the lower surface from the leading edge, of the chord"),
                Term.rows("outline", "mm, mm", "corners of the rib, anticlockwise, x aft of the leading edge, y up"),
                Term.rows("blank", "mm, mm", "corners of the sheet to cut, flange included"),
                number("area", "cm2", "area of the rib less its holes"),
                number("edge", "mm", "length of the rib's outer edge"),
                number("blankArea", "cm2", "area of the sheet to cut"),
                number("height", "mm", "greatest height of the rib"));
    }

    private static List<Relation> relations() {
        List<Relation> r = new ArrayList<>();
        r.add(giving("halfThickness", "naca x", k -> published(k).halfThickness(within(k))));
        r.add(giving("camber", "naca x", k -> published(k).camber(within(k))));
        r.add(giving("slope", "naca x", k -> published(k).slope(within(k))));
        for (String section : List.of("naca", "coordinates")) {
            r.add(giving(
                    "upper", section + " [points]", k -> stations(section(k).upper())));
            r.add(giving(
                    "lower", section + " [points]", k -> stations(section(k).lower())));
            r.add(giving(
                    "outline",
                    section + RIB,
                    k -> corners(rib(k, x -> x.outline().net()))));
            r.add(giving(
                    "blank", section + RIB, k -> corners(rib(k, x -> x.outline().blank()))));
            r.add(giving("area", section + RIB, k -> rib(k, RibResult::area).si()));
            r.add(giving("edge", section + RIB, k -> rib(k, RibResult::edge).si()));
            r.add(giving(
                    "blankArea",
                    section + RIB,
                    k -> rib(k, RibResult::blankArea).si()));
            r.add(giving("height", section + RIB, k -> rib(k, RibResult::height).si()));
        }
        return r;
    }

    private static NacaSection published(Known k) {
        try {
            NacaSection s = NacaSection.of(k.text("naca"));
            k.by(EQUATIONS, k.text("naca").trim().matches(".*\\d{5}") ? "[naca460], [naca537]" : "[naca460]");
            return s;
        } catch (IllegalArgumentException e) {
            throw CalcInputException.of("naca", k.text("naca"), String.valueOf(e.getMessage()));
        }
    }

    private static double within(Known k) {
        double x = k.si("x");
        if (!(x >= 0 && x <= 1)) {
            throw new NotCoveredException("x lies between 0 and 1 of the chord");
        }
        return x;
    }

    private static Airfoil section(Known k) {
        if (k.has("coordinates")) {
            CoordinateText.Reading reading = CoordinateText.read(k.text("coordinates"), "coordinates");
            k.by("coordinates as given, scaled to a chord of one", "the coordinates given");
            return reading.airfoil().orElseThrow(() -> new CalcInputException(reading.problems()));
        }
        double points = k.si("points", USUAL_POINTS);
        if (!(points >= 3 && points <= MOST_POINTS)) {
            throw CalcInputException.of("points", String.valueOf(points), "a whole number from 3 to " + MOST_POINTS);
        }
        return published(k).points((int) points);
    }

    private static <V> V rib(Known k, Function<RibResult, Optional<V>> figure) {
        RibResult r = RibCalculator.calculate(new Rib(
                section(k),
                k.as("chord", Length::new),
                k.si("from", 0),
                k.si("to", 1),
                new Length(k.si("flange", 0)),
                k.has("cutouts")
                        ? k.rows("cutouts").stream()
                                .map(c -> new Rib.Cutout(
                                        new Length(c.get(0)), new Length(c.get(1)), new Length(c.get(2))))
                                .toList()
                        : List.of()));
        r.figures().forEach(k::by);
        return k.take(figure.apply(r), r.outline().findings());
    }

    private static Object stations(List<Airfoil.Station> surface) {
        return surface.stream().map(s -> List.of(s.x(), s.y())).toList();
    }

    private static Object corners(Outline outline) {
        return outline.outer().stream().map(p -> List.of(p.xM(), p.yM())).toList();
    }
}

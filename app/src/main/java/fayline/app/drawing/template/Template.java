package fayline.app.drawing.template;

import fayline.basis.units.UnitSystem;
import fayline.flow.project.design.Hand;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.outline.CutOutline;
import fayline.method.fitup.outline.DepthAt;
import fayline.method.fitup.outline.EdgePoint;
import fayline.method.fitup.outline.PartOutline;
import fayline.method.fitup.trim.cut.CutLine;
import fayline.method.fitup.trim.cut.CutSide;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A template in true size.
 *
 * @param heading what is written on every sheet
 * @param hand which hand the part is; tells the directions
 * @param edge the part's edge as it is, closed, the first point not repeated; in mm
 * @param scribes the cuts
 * @param marks stations and ends of cuts
 * @param units units of the depths beside the marks
 */
public record Template(
        Heading heading, Hand hand, List<Spot> edge, List<Scribe> scribes, List<TemplateMark> marks, UnitSystem units) {
    /** How far a chord may be from the curve it stands for: a tenth of the width of a scribed line. */
    public static final double CHORD_ERROR_MM = 0.01;

    private static final double SAME_PLACE_MM = 1e-6;

    /** Copies the lists. */
    public Template {
        edge = List.copyOf(edge);
        scribes = List.copyOf(scribes);
        marks = List.copyOf(marks);
        if (edge.size() < 3) {
            throw new IllegalArgumentException("a template's edge needs three points, not " + edge.size());
        }
    }

    /**
     * What is written on every sheet.
     *
     * @param part the part's name
     * @param state the state that the cuts were worked out for
     * @param version revision or definition version
     * @param date the date, as it shall be read
     */
    public record Heading(String part, String state, String version, String date) {
        /** State, version and date, those that are known. */
        public String details() {
            return String.join(
                    "  \u00b7  ",
                    Stream.of(state, version, date).filter(s -> !s.isBlank()).toList());
        }
    }

    /**
     * The template of cuts along an outline.
     *
     * @param heading what is written on every sheet
     * @param hand which hand the part is
     * @param outline the part's edge as it is
     * @param cuts the cuts; none gives the edge alone
     * @param others stations to mark that no cut touches
     */
    public static Template of(
            Heading heading, Hand hand, PartOutline outline, List<CutLine> cuts, List<Station> others) {
        List<Scribe> scribes = new ArrayList<>();
        List<TemplateMark> marks = new ArrayList<>();
        for (ScribedCut cut : ScribedCut.joined(cuts, outline.perimeterMm())) {
            scribes.add(new Scribe(
                    cut.edge(),
                    cut.side(),
                    line(outline, cut.finished(), cut.side()),
                    line(outline, cut.first(), cut.side())));
        }
        for (CutLine cut : cuts) {
            for (CutLine.Stop stop : cut.stops()) {
                marks.add(mark(outline, cut.side(), stop));
            }
        }
        for (Station s : others) {
            if (marks.stream().noneMatch(m -> m.place().id().equals(s.id()))) {
                marks.add(new TemplateMark(s, true, CutSide.PART, 0, 0));
            }
        }
        return new Template(heading, hand, outline.drawn(CHORD_ERROR_MM), scribes, marks, UnitSystem.METRIC);
    }

    /** The same with its depths told in these units. */
    public Template in(UnitSystem system) {
        return new Template(heading, hand, edge, scribes, marks, system);
    }

    /** Which way the x direction points, in the builder's word. */
    public String alongX() {
        return switch (hand) {
            case LEFT -> "aft";
            case RIGHT -> "forward";
            case NONE -> "x";
        };
    }

    /** Whether any cut is off this side. */
    public boolean cuts(CutSide side) {
        return scribes.stream().anyMatch(s -> s.side() == side);
    }

    /** The edge closed, then every line to cut to: all that has to be in true size. */
    public List<List<Spot>> lines() {
        List<List<Spot>> all = new ArrayList<>();
        all.add(closedEdge());
        scribes.forEach(s -> {
            all.add(s.finish());
            all.add(s.first());
        });
        return all;
    }

    /** The edge with its first point repeated at the end. */
    public List<Spot> closedEdge() {
        List<Spot> closed = new ArrayList<>(edge);
        closed.add(edge.get(0));
        return closed;
    }

    private static TemplateMark mark(PartOutline outline, CutSide side, CutLine.Stop stop) {
        EdgePoint p = outline.at(stop.sMm());
        return new TemplateMark(
                new Station(stop.name(), p.at(), p.nx(), p.ny()),
                stop.isStation(),
                side,
                stop.depthMm(),
                stop.firstMm());
    }

    private static List<Spot> line(PartOutline outline, List<DepthAt> depths, CutSide side) {
        return switch (side) {
            case PART -> CutOutline.line(outline, depths, CHORD_ERROR_MM);
            case NEIGHBOUR -> CutOutline.outwards(outline, depths, CHORD_ERROR_MM);
        };
    }

    /** The smallest upright rectangle round every line and mark, as its lower left and upper right corner. */
    public List<Spot> bounds() {
        List<Spot> all = Stream.concat(
                        lines().stream().flatMap(List::stream),
                        marks.stream().map(m -> m.place().at()))
                .toList();
        return List.of(
                new Spot(
                        all.stream().mapToDouble(Spot::xMm).min().orElseThrow(),
                        all.stream().mapToDouble(Spot::yMm).min().orElseThrow()),
                new Spot(
                        all.stream().mapToDouble(Spot::xMm).max().orElseThrow(),
                        all.stream().mapToDouble(Spot::yMm).max().orElseThrow()));
    }

    /** Whether a scribe's two lines are one: nothing is left on. */
    public static boolean same(Scribe s) {
        if (s.finish().size() != s.first().size()) {
            return false;
        }
        for (int i = 0; i < s.finish().size(); i++) {
            if (s.finish().get(i).distanceMm(s.first().get(i)) > SAME_PLACE_MM) {
                return false;
            }
        }
        return true;
    }
}

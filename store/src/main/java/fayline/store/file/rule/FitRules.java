package fayline.store.file.rule;

import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitStation;
import fayline.method.fitup.Spot;
import fayline.method.fitup.outline.EdgeRun;
import fayline.method.fitup.outline.OutlineResult;
import fayline.method.fitup.outline.OutlineStatus;
import fayline.method.fitup.outline.PartOutline;
import fayline.store.file.shape.PlaceText;
import fayline.store.file.yaml.Nearest;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What a fit says of its edge, stations and holding must go together. */
final class FitRules {
    private static final double OFF_THE_EDGE_MM = 5;
    private static final double MOST_SHIFT_MM = 10;
    private static final double MOST_TURN_RAD = Math.toRadians(2) + 1e-12;

    private final Placed<Fit> placed;
    private final Fit fit;
    private final Tree at;
    private final Problems problems;

    FitRules(Placed<Fit> placed, Problems problems) {
        this.placed = placed;
        this.fit = placed.value();
        this.at = placed.at();
        this.problems = problems;
    }

    void check() {
        stationNeighbours();
        new FrameRules(fit, at, problems).check(at);
        Optional<PartOutline> outline = outline();
        if (!placed.sound()) {
            return;
        }
        wanted();
        room();
        marks();
        stationPlaces(outline);
        pointDirections(outline);
        schemes();
        cuttingEdges(outline);
        service();
    }

    private void stationNeighbours() {
        for (Tree s : at.down("stations").items()) {
            s.get("against")
                    .filter(t -> t.form() == Tree.Form.SCALAR && !t.isBlank())
                    .filter(t -> !fit.against().contains(t.text()))
                    .ifPresent(t -> among(t, fit.against(), "a neighbour of this fit"));
        }
    }

    private Optional<PartOutline> outline() {
        Tree o = at.down("outline");
        if (at.get("outline").isEmpty() || !placed.sound()) {
            return Optional.empty();
        }
        if (fit.outline().isEmpty()) {
            counts(o);
            return Optional.empty();
        }
        OutlineResult drawn = fit.outline().get().drawn();
        Tree place = o.get("vertices").or(() -> o.get("traced")).orElse(o);
        if (drawn.status() != OutlineStatus.OK) {
            problems.stop(
                    drawn.status() == OutlineStatus.BLEND_TOO_LARGE
                            ? o.get("radii").orElse(place)
                            : place,
                    drawn.status() == OutlineStatus.BLEND_TOO_LARGE
                            ? "a radius at corner " + drawn.corner().orElse(1)
                                    + " that does not fit between its neighbours"
                            : "an edge that crosses or touches itself",
                    "an edge that goes once round an area",
                    drawn.status() == OutlineStatus.BLEND_TOO_LARGE
                            ? "make it smaller"
                            : "look at the order of the corners");
        } else if (drawn.reversed()) {
            problems.caution(
                    place,
                    "a clockwise edge",
                    "corners counter-clockwise, seen from outside",
                    "it is turned round; see that it is not drawn from inside");
        }
        return drawn.outline();
    }

    /** Why corners and radii, or traced points and corners, did not make an edge. */
    private void counts(Tree o) {
        int places = o.get("vertices")
                .or(() -> o.get("traced"))
                .map(t -> t.text().split(",", -1).length)
                .orElse(0);
        o.get("radii")
                .filter(r -> o.get("vertices").isPresent())
                .ifPresent(r -> problems.stop(
                        r,
                        r.text().split(",", -1).length + " radii for " + places + " corners",
                        "one radius, or one for each corner",
                        ""));
        o.get("corners")
                .filter(r -> o.get("traced").isPresent())
                .ifPresent(
                        r -> problems.stop(r, Problems.quote(r.text()), "numbers of points from 1 to " + places, ""));
    }

    private void wanted() {
        fit.wanted().minimumGap().ifPresent(m -> {
            if (m.value().metres() > fit.wanted().gap().value().metres()) {
                problems.stop(
                        at.down("minimum-gap"),
                        Problems.quote(m.asTyped()),
                        "at most the gap wanted, " + fit.wanted().gap().asTyped(),
                        "");
            }
        });
    }

    private void room() {
        Tree r = at.down("room");
        most(r, "along", QuantityKind.LENGTH, MOST_SHIFT_MM / 1000 + 1e-12, "at most 10 mm");
        most(r, "up", QuantityKind.LENGTH, MOST_SHIFT_MM / 1000 + 1e-12, "at most 10 mm");
        most(r, "turn", QuantityKind.ANGLE, MOST_TURN_RAD, "at most 2 deg");
        most(r, "out", QuantityKind.LENGTH, MOST_SHIFT_MM / 1000 + 1e-12, "at most 10 mm");
        most(r, "tilt", QuantityKind.ANGLE, MOST_TURN_RAD, "at most 2 deg");
    }

    private void most(Tree r, String key, QuantityKind<?> kind, double si, String words) {
        r.get(key)
                .filter(t -> QuantityParser.parse(t.text(), kind).value().si() > si)
                .ifPresent(t -> problems.stop(
                        t,
                        Problems.quote(t.text()),
                        words,
                        "a part that is further off is in the wrong place and should be read again"));
    }

    private void marks() {
        List<Tree> marks = at.down("marks").items();
        if (marks.size() > 2) {
            problems.stop(marks.get(2), "a third marked place", "two at most", "");
        }
    }

    private void stationPlaces(Optional<PartOutline> outline) {
        List<Tree> items = at.down("stations").items();
        for (int i = 0; i < fit.stations().size(); i++) {
            FitStation s = fit.stations().get(i);
            Tree item = items.get(i);
            if (s.normal().isPresent() && s.at().isEmpty()) {
                problems.stopAtKey(item, "at", "a normal without a place", "\"at:\" beside it", "");
            }
            new BulgeRules(s, item, problems).check();
            if (outline.isPresent() && s.at().isPresent()) {
                double off = outline.get().nearest(s.at().get()).at().distanceMm(s.at().get());
                if (off > OFF_THE_EDGE_MM) {
                    problems.caution(
                            item.down("at"),
                            String.format(Locale.ROOT, "a place %.1f mm off the outline", off),
                            "a place on the part's edge",
                            "the nearest point of the outline is taken");
                }
            }
            if (s.at().isPresent() && s.normal().isEmpty()) {
                direction(item, s.at().get(), s.edge(), outline);
            }
        }
    }

    private void direction(Tree item, Spot place, String edge, Optional<PartOutline> outline) {
        if (outline.isEmpty()) {
            if (at.get("outline").isEmpty()) {
                problems.stopAtKey(
                        item,
                        "normal",
                        "a place without a direction",
                        "\"normal:\" from part to neighbour, or an outline of the fit",
                        "");
            }
        } else if (outline.get().nearest(place).sharp()
                && outline.get().edges().stream().noneMatch(e -> e.name().equals(edge))) {
            problems.stop(
                    item.down("at"),
                    "a place on a sharp corner",
                    "\"edge:\" with one of "
                            + String.join(
                                    ", ",
                                    outline.get().edges().stream()
                                            .map(EdgeRun::name)
                                            .toList())
                            + ", or a normal",
                    "");
        }
    }

    private void pointDirections(Optional<PartOutline> outline) {
        for (Tree p : at.down("points").items()) {
            if (p.get("normal").isEmpty()) {
                PlaceText.placeAt(p, "at").ifPresent(a -> direction(p, a, "", outline));
            }
        }
    }

    private void schemes() {
        SchemeRules.check(at, "fit", problems);
        List<String> names = fit.holding().schemes().stream().map(s -> s.name()).toList();
        at.get("scheme")
                .filter(t -> !names.contains(t.text()))
                .ifPresent(t -> among(t, names, "a scheme of this fit by its name"));
    }

    private void cuttingEdges(Optional<PartOutline> outline) {
        if (at.get("outline").isPresent() && outline.isEmpty()) {
            return;
        }
        Set<String> known = new LinkedHashSet<>();
        fit.stations().stream().map(FitStation::edge).filter(e -> !e.isEmpty()).forEach(known::add);
        outline.ifPresent(o -> o.edges().forEach(e -> known.add(e.name())));
        if (at.down("cutting").form() == Tree.Form.MAPPING) {
            at.down("cutting").down("edges").items().stream()
                    .filter(t -> !known.contains(t.text()))
                    .forEach(t -> among(t, known, "an edge that a station or the outline names"));
        }
    }

    private void service() {
        if (at.get("heat").isPresent() && fit.heat().isEmpty()) {
            problems.stop(
                    at.down("heat").down("hottest"),
                    Problems.quote(at.down("heat").down("hottest").text()),
                    "a temperature above coldest ("
                            + at.down("heat").down("coldest").text() + ")",
                    "");
        }
    }

    private void among(Tree t, Collection<String> known, String what) {
        problems.stop(
                t,
                Problems.quote(t.text()),
                known.isEmpty() ? what + ", of which there is none" : what + ": " + String.join(", ", known),
                Nearest.suggest(t.text(), known));
    }
}

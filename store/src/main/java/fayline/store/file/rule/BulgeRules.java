package fayline.store.file.rule;

import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.flow.project.fit.FitStation;
import fayline.method.fitup.Vector;
import fayline.store.file.shape.PlaceText;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.List;
import java.util.Optional;

/** What is said of how a part stands out of its plane at one station must go together. */
final class BulgeRules {
    private static final List<String> KEYS = List.of("out", "lean", "surface");
    private static final double MOST_LEAN_RAD = Math.PI / 2 + 1e-12;
    private static final double LEAST_APART = 0.5;

    private final FitStation station;
    private final Tree at;
    private final Problems problems;

    BulgeRules(FitStation station, Tree at, Problems problems) {
        this.station = station;
        this.at = at;
        this.problems = problems;
    }

    void check() {
        Optional<Tree> third = at.get("normal").filter(n -> PlaceText.leadsOut(n.text()));
        if (station.at().isEmpty()) {
            KEYS.stream()
                    .filter(k -> at.get(k).isPresent())
                    .findFirst()
                    .ifPresent(k -> problems.stopAtKey(
                            at,
                            "at",
                            "\"" + k + ":\" of station " + station.id() + " without a place",
                            "\"at:\" beside it",
                            ""));
            return;
        }
        at.get("lean").ifPresent(l -> lean(l, third));
        surface(third);
    }

    private void lean(Tree lean, Optional<Tree> third) {
        if (Math.abs(QuantityParser.parse(lean.text(), QuantityKind.ANGLE)
                        .value()
                        .si())
                > MOST_LEAN_RAD) {
            problems.stop(
                    lean,
                    Problems.quote(lean.text()) + " at station " + station.id(),
                    "a lean from -90 deg to 90 deg",
                    "0 deg is flat, 90 deg looks along the plane");
        }
        Optional<String> beside = at.get("surface").isPresent()
                ? Optional.of("\"surface:\"")
                : third.map(t -> "a third number in \"normal:\"");
        beside.ifPresent(b -> problems.stop(
                lean,
                "a lean and " + b + " at station " + station.id(),
                "one of them",
                "a lean says both which way the gap and which way the surface looks"));
    }

    private void surface(Optional<Tree> third) {
        Optional<Vector> looks = station.bulge().surface();
        looks.filter(v -> v.z() < 0)
                .ifPresent(v -> problems.stop(
                        at.down("surface"),
                        Problems.quote(at.down("surface").text()) + " at station " + station.id(),
                        "a surface that looks outboard, its third number 0 or more",
                        ""));
        if (third.isPresent() && station.normal().isPresent()) {
            Vector gap = PlaceText.way(third.get().text());
            Vector surface = looks.orElse(new Vector(0, 0, 1));
            boolean along = Math.abs(gap.dot(surface)) > LEAST_APART * gap.length() * surface.length();
            boolean given = looks.isPresent();
            boolean square = Math.hypot(gap.x(), gap.y()) > 1e-6 * gap.length();
            if (given ? along : !square) {
                problems.stop(
                        third.get(),
                        Problems.quote(third.get().text()) + " at station " + station.id(),
                        given
                                ? "a gap that lies along the surface, square to \"surface:\""
                                : "\"surface:\" beside a gap that looks straight in or out",
                        "");
            }
        }
    }
}

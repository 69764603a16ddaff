package fayline.store.file.rule;

import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitState;
import fayline.flow.project.fit.FitStation;
import fayline.flow.project.fit.frame.FrameBeams;
import fayline.flow.project.fit.frame.FramePlace;
import fayline.flow.project.fit.frame.FrameRun;
import fayline.flow.project.fit.frame.FrameSection;
import fayline.flow.project.fit.frame.FrameWay;
import fayline.method.fitup.frame.Axis;
import fayline.method.fitup.frame.BeamSection;
import fayline.method.fitup.frame.FramePoint;
import fayline.store.file.yaml.Nearest;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a frame says of its places, beams and clamps must go together. */
final class FrameRules {
    private static final double APART_MM = 1e-6;
    private static final double STRAIGHT = 1e-9;

    private final Fit fit;
    private final Tree at;
    private final Problems problems;

    FrameRules(Fit fit, Tree at, Problems problems) {
        this.fit = fit;
        this.at = at.down("frame");
        this.problems = problems;
    }

    /** Tells what does not hold together. */
    void check(Tree ofFit) {
        List<String> places = ids("places");
        for (Tree w : ofFit.down("widths").items()) {
            between(w, places);
        }
        if (at.form() != Tree.Form.MAPPING) {
            return;
        }
        List<String> stations = fit.stations().stream().map(FitStation::id).toList();
        at.down("places").items().forEach(p -> placed(p, stations));
        at.get("read-in")
                .ifPresent(t -> among(t, fit.states().stream().map(FitState::id).toList(), "a state of this fit"));
        runs("part", places);
        runs("carrier", places);
        Set<String> ofPart = through("part");
        Set<String> ofCarrier = through("carrier");
        Set<String> ofEither = new LinkedHashSet<>(ofPart);
        ofEither.addAll(ofCarrier);
        at.down("rests").items().forEach(h -> among(h.down("at"), ofPart, "a place that the part goes through"));
        at.down("held")
                .items()
                .forEach(h -> among(h.down("at"), ofEither, "a place that part or carrier goes through"));
        for (Tree c : at.down("clamps").items()) {
            among(c.down("at"), ofPart, "a place that the part goes through");
            c.get("station").ifPresent(t -> among(t, stations, "a station of this fit"));
        }
        for (Tree f : at.down("fittings").items()) {
            fixed(f, f.down("on").text(), ofPart, ofCarrier);
            f.get("hole").ifPresent(h -> fixed(f, h.text(), ofPart, ofCarrier));
        }
        at.down("sections").items().forEach(this::walls);
        fit.frame().beams().ifPresent(this::sound);
    }

    private void walls(Tree section) {
        for (String shape : List.of("box", "tube")) {
            Tree s = section.down(shape);
            double wall = mm(s, "wall");
            double room = shape.equals("tube") ? mm(s, "outside") / 2 : Math.min(mm(s, "across"), mm(s, "out")) / 2;
            boolean fills = shape.equals("tube") ? wall > room : wall >= room;
            if (wall > 0 && room > 0 && fills) {
                problems.stop(
                        s.down("wall"), Problems.quote(s.down("wall").text()), "a wall that leaves room inside", "");
            }
        }
    }

    private static double mm(Tree s, String key) {
        return s.get(key)
                .flatMap(t -> {
                    try {
                        return Optional.of(QuantityParser.parse(t.text(), QuantityKind.LENGTH)
                                .value()
                                .millimetres());
                    } catch (UnreadableQuantityException e) {
                        return Optional.<Double>empty();
                    }
                })
                .orElse(0.0);
    }

    private List<String> ids(String list) {
        return at.down(list).items().stream().map(p -> p.down("id").text()).toList();
    }

    private Set<String> through(String body) {
        Set<String> all = new LinkedHashSet<>();
        at.down(body).items().forEach(r -> r.down("through").items().forEach(t -> all.add(t.text())));
        return all;
    }

    private void between(Tree width, List<String> places) {
        width.get("between").ifPresent(b -> {
            b.items().forEach(t -> among(t, places, "a place of this frame"));
            if (b.items().size() != 2) {
                problems.stop(b, b.items().size() + " places", "two places, such as [S2, C1]", "");
            }
        });
    }

    private void placed(Tree place, List<String> stations) {
        place.get("station").ifPresent(t -> {
            among(t, stations, "a station of this fit");
            if (fit.station(t.text()).filter(s -> s.at().isEmpty()).isPresent()) {
                problems.stop(
                        t, Problems.quote(t.text()), "a station with a place", "give the place here with \"at:\"");
            }
        });
    }

    private void runs(String body, List<String> places) {
        for (Tree r : at.down(body).items()) {
            Tree through = r.down("through");
            through.items().forEach(t -> among(t, places, "a place of this frame"));
            among(r.down("section"), ids("sections"), "a section of this frame");
            if (through.items().size() < 2) {
                problems.stop(through, "one place", "two places at least", "");
            }
        }
    }

    private void fixed(Tree fitting, String body, Set<String> ofPart, Set<String> ofCarrier) {
        if (body.equals("part")) {
            among(fitting.down("at"), ofPart, "a place that the part goes through");
        } else if (body.equals("carrier")) {
            among(fitting.down("at"), ofCarrier, "a place that the carrier goes through");
        }
    }

    /** What only the numbers show. */
    private void sound(FrameBeams beams) {
        segments(beams, "part", beams.part());
        segments(beams, "carrier", beams.carrier());
        if (beams.plane()) {
            return;
        }
        List<Tree> items = at.down("sections").items();
        for (int i = 0; i < items.size() && i < beams.sections().size(); i++) {
            FrameSection s = beams.sections().get(i);
            if (s.form() instanceof FrameSection.Plain plain && flat(plain.section())) {
                problems.stop(
                        items.get(i).down("stiffness"),
                        "no stiffness out of the plane",
                        "\"out:\" and \"twist:\" beside the others, since this frame is not flat",
                        "");
            }
        }
    }

    private static boolean flat(BeamSection s) {
        return s.iyMm4() == 0 || s.jMm4() == 0;
    }

    private void segments(FrameBeams beams, String body, List<FrameRun> runs) {
        List<Tree> items = at.down(body).items();
        for (int r = 0; r < items.size() && r < runs.size(); r++) {
            List<Tree> through = items.get(r).down("through").items();
            for (int i = 1; i < through.size(); i++) {
                Optional<FramePlace> a = beams.place(through.get(i - 1).text());
                Optional<FramePlace> b = beams.place(through.get(i).text());
                if (a.isPresent() && b.isPresent()) {
                    segment(items.get(r), runs.get(r).facing(), through.get(i), a.get(), b.get());
                }
            }
        }
    }

    private void segment(Tree run, FrameWay facing, Tree end, FramePlace a, FramePlace b) {
        FramePoint arm = b.at().from(a.at());
        if (arm.lengthMm() < APART_MM) {
            problems.stop(
                    end, Problems.quote(b.id()) + " where " + a.id() + " is", "a place apart from the one before", "");
        } else if (1 - Math.abs(Axis.of(arm).dot(facing.axis())) < STRAIGHT) {
            problems.stop(
                    run.get("facing").orElse(end),
                    "a beam from " + a.id() + " to " + b.id() + " that runs the way it faces, " + facing.key(),
                    "\"facing:\" square to the beam",
                    "");
        }
    }

    private void among(Tree t, Collection<String> known, String what) {
        if (t.form() == Tree.Form.SCALAR && !t.isBlank() && !known.contains(t.text())) {
            problems.stop(
                    t,
                    Problems.quote(t.text()),
                    known.isEmpty() ? what + ", of which there is none" : what + ": " + String.join(", ", known),
                    Nearest.suggest(t.text(), known));
        }
    }
}

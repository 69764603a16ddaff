package fayline.flow.result.fit.frame;

import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.fit.FitStation;
import fayline.flow.project.fit.frame.FitFrame;
import fayline.flow.project.fit.frame.FrameAdhesive;
import fayline.flow.project.fit.frame.FrameBeams;
import fayline.flow.project.fit.frame.FrameClamp;
import fayline.flow.project.fit.frame.FrameFitting;
import fayline.flow.project.fit.frame.FrameHold;
import fayline.flow.project.fit.frame.FramePlace;
import fayline.flow.project.fit.frame.FrameRun;
import fayline.flow.project.fit.frame.FrameSection;
import fayline.flow.project.fit.frame.FrameWay;
import fayline.flow.project.fit.frame.FrameWidth;
import fayline.flow.result.fit.FitCalculator;
import fayline.flow.result.fit.FitQuestion;
import fayline.flow.result.fit.StateReadings;
import fayline.method.fitup.frame.BeamSection;
import fayline.method.fitup.frame.FramePoint;
import fayline.method.fitup.frame.spring.Clamp;
import fayline.method.fitup.motion.Side;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Builds frames for tests, by and by. */
final class Beams {
    static final double E = 70_000;
    static final double A = 60;
    static final double I = 450;

    private final List<FramePlace> places = new ArrayList<>();
    private final List<FrameRun> part = new ArrayList<>();
    private final List<FrameRun> carrier = new ArrayList<>();
    private final List<FrameHold> rests = new ArrayList<>();
    private final List<FrameHold> held = new ArrayList<>();
    private final List<FrameClamp> clamps = new ArrayList<>();
    private final List<FrameFitting> fittings = new ArrayList<>();
    private final List<FrameWidth> widths = new ArrayList<>();
    private FrameSection section = section(BeamSection.plane(E, A, I));
    private Optional<FrameAdhesive> adhesive = Optional.empty();
    private boolean creeps;

    static FrameSection section(BeamSection beam) {
        return new FrameSection("rail", new FrameSection.Plain(beam), "a test", false);
    }

    Beams of(FrameSection other) {
        section = other;
        return this;
    }

    Beams place(String id, double x, double y) {
        return place(id, x, y, 0);
    }

    Beams place(String id, double x, double y, double out) {
        places.add(new FramePlace(id, new FramePoint(x, y, out), OptionalDouble.empty()));
        return this;
    }

    Beams part(String... through) {
        part.add(new FrameRun(List.of(through), section.id(), FrameWay.OUT));
        return this;
    }

    Beams carrier(String... through) {
        carrier.add(new FrameRun(List.of(through), section.id(), FrameWay.OUT));
        return this;
    }

    /** Holds a place both while it is clamped and afterwards. */
    Beams hold(String at, FrameWay... ways) {
        rests.add(new FrameHold(at, Arrays.asList(ways)));
        held.add(new FrameHold(at, Arrays.asList(ways)));
        return this;
    }

    Beams rest(String at, FrameWay... ways) {
        rests.add(new FrameHold(at, Arrays.asList(ways)));
        return this;
    }

    Beams clamp(String at, FrameWay way, double off) {
        return clamp(at, way, off, OptionalDouble.empty());
    }

    Beams clamp(String at, FrameWay way, double off, OptionalDouble sure) {
        clamps.add(new FrameClamp(
                "K" + (clamps.size() + 1), at, way, OptionalDouble.of(off), sure, "", 0, Clamp.Way.BOTH));
        return this;
    }

    Beams clampByStation(String at, FrameWay way, String station) {
        clamps.add(new FrameClamp(
                "K" + (clamps.size() + 1),
                at,
                way,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                station,
                0,
                Clamp.Way.BOTH));
        return this;
    }

    Beams glued(FrameAdhesive with) {
        adhesive = Optional.of(with);
        return this;
    }

    Beams fitting(FrameFitting f) {
        fittings.add(f);
        return this;
    }

    Beams width(FrameWidth w) {
        widths.add(w);
        return this;
    }

    Beams creeping() {
        creeps = true;
        return this;
    }

    FrameBeams beams() {
        return new FrameBeams(
                "a test", creeps, "", places, List.of(section), part, carrier, rests, held, clamps, adhesive, fittings);
    }

    SprungResult result() {
        return result(List.of());
    }

    SprungResult result(List<StateReadings> states, FitStation... stations) {
        var fit = Widths.fit(new FitFrame(widths, Optional.of(beams())), stations);
        return SprungCalculator.calculate(new SprungQuestion(
                        fit,
                        states,
                        FitCalculator.calculate(new FitQuestion(fit, Side.LEFT, List.of(), List.of(), false))
                                .places(),
                        WidthsCalculator.calculate(new WidthsQuestion(fit, List.of(), List.of())),
                        new Catalog<>(List.of()),
                        new Catalog<>(List.of())))
                .orElseThrow();
    }

    SprungShape shape() {
        SprungResult r = result();
        return r.shape().orElseThrow(() -> new AssertionError(r.missing() + " " + r.findings()));
    }
}

package fayline.app.web.fit;

import fayline.app.drawing.SvgRenderer;
import fayline.app.drawing.fit.SprungDrawing;
import fayline.app.drawing.fit.SprungPicture;
import fayline.app.drawing.fit.SprungPicture.Bar;
import fayline.app.drawing.fit.SprungPicture.State;
import fayline.app.pdf.fitcard.SprungWords;
import fayline.app.usecase.fit.FrameSight;
import fayline.app.web.frame.Sight;
import fayline.flow.project.fit.frame.FramePlace;
import fayline.flow.project.fit.frame.FrameRun;
import fayline.flow.result.fit.frame.SprungResult;
import fayline.flow.result.fit.frame.SprungShape;
import fayline.flow.result.fit.frame.SprungShape.Moved;
import fayline.method.fitup.frame.Axis;
import fayline.method.fitup.frame.FramePoint;
import fayline.method.fitup.motion.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The frame of a fit, clamped and let go: in words and drawn. */
final class FitSprung {
    private static final FramePoint NOWHERE = new FramePoint(0, 0, 0);

    private FitSprung() {}

    static Optional<FitView.Sprung> of(Sight sight, FrameSight frame, Side side) {
        return frame.sprung()
                .map(r -> new FitView.Sprung(
                        new SprungWords(sight.format().system(), side).sheet(r),
                        r.shape()
                                .map(s -> SvgRenderer.forScreen().render(SprungDrawing.of(picture(sight, side, r, s))))
                                .orElse("")));
    }

    private static SprungPicture picture(Sight sight, Side side, SprungResult r, SprungShape shape) {
        SprungWords words = new SprungWords(sight.format().system(), side);
        List<Bar> bars = new ArrayList<>();
        for (FrameRun run : r.beams().carrier()) {
            bar(bars, State.CARRIER, run, shape, m -> m.carrier().map(c -> NOWHERE));
            bar(bars, State.CARRIER_AFTER, run, shape, Moved::carrier);
        }
        for (FrameRun run : r.beams().part()) {
            bar(bars, State.FREE, run, shape, Moved::free);
            bar(bars, State.CLAMPED, run, shape, Moved::clamped);
            bar(bars, State.PART_AFTER, run, shape, Moved::part);
        }
        return new SprungPicture(
                r.fit().name(),
                bars,
                shape.clamps().stream()
                        .map(c -> new SprungPicture.Force(
                                c.pull().clamp().id() + " "
                                        + words.force(
                                                c.forceN(), c.pull().clamp().way()),
                                at(shape, c.pull().clamp().at()),
                                point(c.pull().clamp().way().axis()),
                                c.forceN()))
                        .toList(),
                shape.bonds().stream()
                        .map(b -> new SprungPicture.Joint(b.place().at(), b.pulledOpen()))
                        .toList(),
                shape.fittings().stream()
                        .map(f -> new SprungPicture.Pin(
                                f.fitting().id(),
                                plus(at(shape, f.fitting().at()), f.fitting().arm()),
                                f.binds()))
                        .toList());
    }

    private static void bar(
            List<Bar> into, State state, FrameRun run, SprungShape shape, Function<Moved, Optional<FramePoint>> shift) {
        List<FramePoint> places = new ArrayList<>();
        List<FramePoint> shifts = new ArrayList<>();
        for (String p : run.through()) {
            Moved m = shape.at(p).orElseThrow();
            places.add(m.place().at());
            shifts.add(shift.apply(m).orElse(NOWHERE));
        }
        into.add(new Bar(state, places, shifts));
    }

    private static FramePoint at(SprungShape shape, String place) {
        return shape.at(place).map(Moved::place).map(FramePlace::at).orElse(NOWHERE);
    }

    private static FramePoint point(Axis a) {
        return new FramePoint(a.x(), a.y(), a.z());
    }

    private static FramePoint plus(FramePoint a, FramePoint b) {
        return new FramePoint(a.xMm() + b.xMm(), a.yMm() + b.yMm(), a.zMm() + b.zMm());
    }
}

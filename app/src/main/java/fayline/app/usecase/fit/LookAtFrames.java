package fayline.app.usecase.fit;

import fayline.app.usecase.view.ShopView;
import fayline.flow.project.Definition;
import fayline.flow.project.fit.Fit;
import fayline.flow.reading.WidthReadings;
import fayline.flow.record.TakenReading;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.frame.SprungCalculator;
import fayline.flow.result.fit.frame.SprungQuestion;
import fayline.flow.result.fit.frame.WidthLesson;
import fayline.flow.result.fit.frame.WidthsCalculator;
import fayline.flow.result.fit.frame.WidthsQuestion;
import fayline.flow.result.fit.frame.WidthsResult;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The frame of a fit with all that follows from its widths and from those of the opposite hand. */
public final class LookAtFrames {
    private LookAtFrames() {}

    /**
     * The frame of one fit.
     *
     * @param view the shop
     * @param fit its id
     */
    public static Optional<FrameSight> of(ShopView view, String fit) {
        return view.definition().fits().find(fit).map(f -> sight(view, f));
    }

    private static FrameSight sight(ShopView view, Fit fit) {
        Definition definition = view.definition();
        List<TakenReading> readings = view.record().readings(view.project());
        Optional<WidthsResult> opposite = LookAtFits.opposite(definition, fit).map(o -> widths(readings, o, List.of()));
        List<WidthLesson> taught = opposite.map(WidthsCalculator::teaches).orElse(List.of());
        WidthsResult widths = widths(readings, fit, taught);
        Optional<FitResult> read = read(view, fit);
        return new FrameSight(
                widths,
                opposite,
                SprungCalculator.calculate(new SprungQuestion(
                        fit,
                        read.map(FitResult::states).orElse(List.of()),
                        read.map(FitResult::places).orElse(Map.of()),
                        widths,
                        definition.laminates(),
                        definition.materials())),
                taught);
    }

    /** What was read at the fit, where a clamp of the frame asks for it. */
    private static Optional<FitResult> read(ShopView view, Fit fit) {
        boolean asked = fit.frame().beams().stream()
                .flatMap(b -> b.clamps().stream())
                .anyMatch(c -> !c.station().isEmpty());
        return asked ? LookAtFits.of(view, fit.id(), false).map(FitSight::result) : Optional.empty();
    }

    private static WidthsResult widths(List<TakenReading> readings, Fit fit, List<WidthLesson> taught) {
        return WidthsCalculator.calculate(new WidthsQuestion(fit, WidthReadings.of(readings, fit.id()), taught));
    }
}

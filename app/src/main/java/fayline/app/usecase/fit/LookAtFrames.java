package fayline.app.usecase.fit;

import fayline.app.usecase.view.ShopView;
import fayline.flow.project.Definition;
import fayline.flow.project.fit.Fit;
import fayline.flow.reading.WidthReadings;
import fayline.flow.record.TakenReading;
import fayline.flow.result.fit.StateReadings;
import fayline.flow.result.fit.frame.SprungCalculator;
import fayline.flow.result.fit.frame.SprungQuestion;
import fayline.flow.result.fit.frame.WidthLesson;
import fayline.flow.result.fit.frame.WidthsCalculator;
import fayline.flow.result.fit.frame.WidthsQuestion;
import fayline.flow.result.fit.frame.WidthsResult;
import java.util.List;
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
        return view.definition()
                .fits()
                .find(fit)
                .map(f -> sight(view.definition(), view.record().readings(view.project()), f));
    }

    /** The frame of one fit of a definition with readings from wherever they come. */
    public static FrameSight sight(Definition definition, List<TakenReading> readings, Fit fit) {
        Optional<WidthsResult> opposite = LookAtFits.opposite(definition, fit).map(o -> widths(readings, o, List.of()));
        List<WidthLesson> taught = opposite.map(WidthsCalculator::teaches).orElse(List.of());
        WidthsResult widths = widths(readings, fit, taught);
        return new FrameSight(
                widths,
                opposite,
                SprungCalculator.calculate(new SprungQuestion(
                        fit,
                        states(definition, readings, fit),
                        widths,
                        definition.laminates(),
                        definition.materials())),
                taught);
    }

    /** What was read in each state, where a clamp of the frame asks for it. */
    private static List<StateReadings> states(Definition definition, List<TakenReading> readings, Fit fit) {
        boolean asked = fit.frame().beams().stream()
                .flatMap(b -> b.clamps().stream())
                .anyMatch(c -> !c.station().isEmpty());
        return asked
                ? LookAtFits.sight(definition, readings, fit, false).result().states()
                : List.of();
    }

    private static WidthsResult widths(List<TakenReading> readings, Fit fit, List<WidthLesson> taught) {
        return WidthsCalculator.calculate(new WidthsQuestion(fit, WidthReadings.of(readings, fit.id()), taught));
    }
}

package fayline.app.usecase.fit;

import fayline.app.usecase.view.ShopView;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Hand;
import fayline.flow.project.design.Part;
import fayline.flow.project.fit.Fit;
import fayline.flow.reading.FitReadings;
import fayline.flow.record.Head;
import fayline.flow.record.RecordState;
import fayline.flow.record.TakenReading;
import fayline.flow.result.fit.FitCalculator;
import fayline.flow.result.fit.FitQuestion;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.LearnedChange;
import fayline.method.fitup.motion.Side;
import java.util.List;
import java.util.Optional;

/** Every fit of a project with all that follows from its readings and from those of the opposite hand. */
public final class LookAtFits {
    private static final FitMemory MEMORY = new FitMemory(128);

    private LookAtFits() {}

    /** All fits of the chosen project, in the definition's order. */
    public static List<FitSight> all(ShopView view, boolean assume) {
        return view.definition().fits().stream()
                .map(f -> sight(view, f, assume))
                .toList();
    }

    /**
     * One fit.
     *
     * @param view the shop
     * @param fit its id
     * @param assume whether uncertainties that nobody gave may be replaced by the named defaults
     */
    public static Optional<FitSight> of(ShopView view, String fit, boolean assume) {
        return view.definition().fits().find(fit).map(f -> sight(view, f, assume));
    }

    private static FitSight sight(ShopView view, Fit fit, boolean assume) {
        return sight(view.definition(), view.record(), fit, assume);
    }

    /** One fit of a definition with the readings of a record. */
    public static FitSight sight(Definition definition, RecordState record, Fit fit, boolean assume) {
        Head head = record.head();
        String project = definition.facts().id();
        return head.seq() == 0
                ? sight(definition, record.readings(project), fit, assume)
                : MEMORY.answer(
                        new FitMemory.Question(head.hash(), project, fit.id(), assume),
                        () -> sight(definition, record.readings(project), fit, assume));
    }

    /** One fit of a definition with readings from wherever they come. */
    public static FitSight sight(Definition definition, List<TakenReading> readings, Fit fit, boolean assume) {
        Optional<FitResult> opposite =
                opposite(definition, fit).map(o -> result(definition, readings, o, List.of(), assume));
        List<LearnedChange> learned = opposite.map(FitCalculator::teaches).orElse(List.of());
        return new FitSight(result(definition, readings, fit, learned, assume), opposite);
    }

    private static FitResult result(
            Definition definition, List<TakenReading> readings, Fit fit, List<LearnedChange> learned, boolean assume) {
        return FitCalculator.calculate(
                new FitQuestion(fit, side(definition, fit), FitReadings.of(readings, fit.id()), learned, assume));
    }

    /** The side of the part; what has no hand is drawn as a left one. */
    private static Side side(Definition definition, Fit fit) {
        return fit.part()
                                .flatMap(p -> definition.parts().find(p))
                                .map(Part::hand)
                                .orElse(fit.hand())
                        == Hand.RIGHT
                ? Side.RIGHT
                : Side.LEFT;
    }

    /** The fit of the opposite part against as many neighbours: the first where there are several. */
    static Optional<Fit> opposite(Definition definition, Fit fit) {
        return fit.part()
                .flatMap(p -> definition.parts().find(p))
                .flatMap(Part::opposite)
                .flatMap(other -> definition.fits().stream()
                        .filter(f -> f.part().equals(Optional.of(other)))
                        .findFirst());
    }
}

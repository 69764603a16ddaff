package fayline.app.web.fit;

import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.flow.card.fit.FitWork;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.result.step.StepResult;
import java.util.List;

/** Ways from a step to the fits that are read or set at it. */
public final class FitLinks {
    private FitLinks() {}

    /**
     * A way.
     *
     * @param does what is done there
     * @param fit the fit's name
     * @param address where
     */
    public record Link(String does, String fit, String address) {}

    /** The fits of a step: gaps to read at a dry fit, the move to see before a bond; none at any other step. */
    public static List<Link> of(Sight sight, String step) {
        return sight.step(step).map(s -> of(sight, s)).orElse(List.of());
    }

    private static List<Link> of(Sight sight, StepResult step) {
        return new FitWork(sight.definition(), sight.result())
                .at(step).stream().map(f -> link(f, step.kind())).toList();
    }

    private static Link link(Fit fit, StepKind kind) {
        String page = "/fit/" + Visit.encoded(fit.id());
        return kind == StepKind.DRY_FIT
                ? new Link("Read the gaps", fit.name(), page + "/read")
                : new Link("See the move", fit.name(), page);
    }
}

package fayline.app.web.fit;

import fayline.app.drawing.SvgRenderer;
import fayline.app.drawing.fit.FitPictures;
import fayline.app.drawing.fit.StatesDrawing;
import fayline.app.web.frame.Sight;
import fayline.flow.result.fit.FitResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How the gaps went through the states and where they are bound, drawn and in words. */
final class FitOver {
    private static final int LEAST = 2;

    private FitOver() {}

    /** Empty where fewer than two states are read or foretold. */
    static Optional<FitView.Over> of(Sight sight, FitResult r) {
        if (r.states().isEmpty() || r.states().size() + r.later().size() < LEAST) {
            return Optional.empty();
        }
        return Optional.of(new FitView.Over(
                SvgRenderer.forScreen().render(StatesDrawing.of(FitPictures.states(r, sight.format()))),
                words(sight, r)));
    }

    /** The move between states, one sentence each. */
    private static List<String> words(Sight sight, FitResult r) {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < r.states().size(); i++) {
            int to = i + 1;
            String name = r.states().get(i).state().name();
            r.states()
                    .get(i)
                    .since()
                    .filter(c -> !c.words().isEmpty())
                    .ifPresent(c -> all.add("Into " + to + ", " + name + ": " + sight.say(c.words()) + "."));
        }
        List<FitView.Later> later = FitLasting.later(sight, r);
        for (int i = 0; i < later.size(); i++) {
            all.add("Into " + (r.states().size() + i + 1) + ", " + later.get(i).name() + ", foretold: "
                    + later.get(i).change() + " (" + later.get(i).origin() + ").");
        }
        return all;
    }
}

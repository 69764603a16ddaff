package fayline.method.fitup.trim;

import fayline.basis.numeric.LinearProgram;
import fayline.method.fitup.motion.MoveRows;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/** Least area added, then least area cut with no more added. Adding is allowed everywhere, cutting where the question allows it. */
final class BuildUpStages {
    private static final double SLACK = 1e-7;
    private static final double NOTHING_MM = 1e-6;

    private BuildUpStages() {}

    static Optional<TrimResult.BuildUp> solve(TrimQuestion question) {
        MoveRows moving = question.moving();
        TrimModel m =
                new TrimModel(question, moving, new HashSet<>(question.rules().edges()), true);
        LinearProgram.Outcome added = m.program().build().minimise(m.areaAdded());
        if (!added.optimal()) {
            return Optional.empty();
        }
        double least = Math.max(0, added.value());
        LinearProgram.Outcome both = m.program()
                .row(m.areaAdded(), Double.NEGATIVE_INFINITY, least + SLACK * Math.max(1, least / 100))
                .build()
                .minimise(m.areaCut());
        LinearProgram.Outcome best = both.optimal() ? both : added;
        return Optional.of(new TrimResult.BuildUp(
                least,
                both.optimal() ? Math.max(0, both.value()) : area(question, m.depths(added)),
                m.heights(best).stream().map(BuildUpStages::clean).toList(),
                m.depths(best).stream().map(BuildUpStages::clean).toList(),
                m.move(best)));
    }

    private static double area(TrimQuestion question, List<Double> depths) {
        double sum = 0;
        for (int i = 0; i < depths.size(); i++) {
            sum += question.rows().get(i).tributaryMm() * depths.get(i);
        }
        return sum;
    }

    private static double clean(double mm) {
        return mm < NOTHING_MM ? 0 : mm;
    }
}

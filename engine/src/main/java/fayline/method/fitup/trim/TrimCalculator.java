package fayline.method.fitup.trim;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.motion.Box;
import fayline.method.fitup.motion.MoveRows;
import fayline.method.fitup.motion.Settled;
import fayline.method.fitup.motion.WantedLines;
import fayline.method.fitup.space.PartQuestion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Least trim and its move together: minimise the sum of tributary length times depth with every gap inside its limits, depths
 * within what may come off, fair along an edge, and the move within its limits; of a curved part with every flush inside its limits
 * too. Then by turns fewest edges, shallowest deepest cut, shortest move. Where the turn is large the rows are taken again at the move found, five times at most. Where no cut helps, what
 * would: cutting where it is not allowed, or adding material.
 */
public final class TrimCalculator {
    private static final double FARTHEST_MM = 10;
    private static final double FARTHEST_RAD = Math.toRadians(2);
    private static final String SOURCE = "[boyd-vandenberghe2004]";

    private TrimCalculator() {}

    /** Answers the question. */
    public static TrimResult calculate(TrimQuestion question) {
        List<Finding> findings = new ArrayList<>();
        guards(question, findings);
        Optional<TrimResult.Cut> cut = cut(question);
        if (cut.isPresent()) {
            SpaceMove m = cut.get().move();
            boolean far = m.shiftMm().length() > FARTHEST_MM || m.turnRad().length() > FARTHEST_RAD;
            findings.add(far ? far() : fits(cut.get()));
            return new TrimResult(
                    far ? TrimStatus.MOVE_TOO_LARGE : TrimStatus.OK, cut, Optional.empty(), Optional.empty(), findings);
        }
        Optional<TrimResult.Cut> free = cut(question.unbounded());
        Optional<TrimResult.BuildUp> added = buildUp(question);
        findings.add(new Finding(Severity.STOP, "trim", why(free, added), SOURCE));
        return new TrimResult(TrimStatus.INFEASIBLE, Optional.empty(), free, added, findings);
    }

    /**
     * What to add, and what then still to cut, where cutting alone may not do: least area added first.
     *
     * @return empty where even that does not make it fit
     */
    public static Optional<TrimResult.BuildUp> buildUp(TrimQuestion question) {
        if (question.curved().isPresent()) {
            PartQuestion part = question.curved().get();
            return BuildUpStages.solve(question, part.rows(), part.box().finite(), m -> m);
        }
        MoveRows plain = question.moving();
        return BuildUpStages.solve(question, plain, plain.box(question.limits()).finite(), SpaceMove::of);
    }

    private static Optional<TrimResult.Cut> cut(TrimQuestion question) {
        if (question.curved().isPresent()) {
            PartQuestion part = question.curved().get();
            return cut(question, part.rows(), part.box(), m -> m);
        }
        MoveRows plain = question.moving();
        return cut(question, plain, plain.box(question.limits()), SpaceMove::of);
    }

    private static <S extends WantedLines<S, M>, M> Optional<TrimResult.Cut> cut(
            TrimQuestion question, S plain, Box box, Function<M, SpaceMove> told) {
        return Settled.solve(
                        plain,
                        rows -> new TrimStages(question, rows, box.finite()).solve(),
                        (rows, won) -> rows.move(won.move()))
                .map(settled -> {
                    TrimStages.Won w = settled.answer();
                    List<Double> gaps = new ArrayList<>(plain.exactMm(settled.move())
                            .subList(0, question.rows().size()));
                    for (int i = 0; i < gaps.size(); i++) {
                        gaps.set(i, gaps.get(i) + w.depthsMm().get(i));
                    }
                    return new TrimResult.Cut(
                            w.areaMm2(),
                            w.unique(),
                            w.depthsMm(),
                            w.edges(),
                            told.apply(settled.move()),
                            gaps,
                            settled.firstErrorMm());
                });
    }

    private static void guards(TrimQuestion question, List<Finding> findings) {
        MoveRows plain = question.moving();
        TrimLines m = new TrimLines(question, plain, plain.box(question.limits()));
        for (int i = 0; i < question.rows().size(); i++) {
            if (m.guardCut(i)) {
                String id = question.rows().get(i).row().station().id();
                findings.add(new Finding(
                        Severity.CAUTION,
                        id,
                        "Station " + id
                                + " is read too coarsely for its tolerance: aimed at the middle. Read it finer.",
                        SOURCE));
            }
        }
    }

    private static Finding far() {
        return new Finding(
                Severity.STOP,
                "trim",
                Phrase.of(
                        "It fits only more than %s or 2 degrees from where it lies. Set the part right and read again.",
                        Amount.mm(FARTHEST_MM, 0)),
                "common practice, no source");
    }

    private static Finding fits(TrimResult.Cut cut) {
        return new Finding(
                Severity.NOTE,
                "trim",
                cut.edges().isEmpty()
                        ? Phrase.plain("No trim is needed: moving it is enough.")
                        : Phrase.of(
                                "%s in all, %s; at the deepest %s.",
                                Amount.mm2(cut.areaMm2()), edges(cut.edges()), Amount.mm(cut.deepestMm(), 2)),
                SOURCE);
    }

    private static String edges(List<String> edges) {
        return edges.size() == 1 ? edges.get(0) + " edge only" : String.join(" and ", edges) + " edges";
    }

    private static Phrase why(Optional<TrimResult.Cut> free, Optional<TrimResult.BuildUp> added) {
        if (free.isPresent()) {
            return Phrase.of(
                    "What may be cut is not enough. With every edge free it would take %s off: %s.",
                    Amount.mm2(free.get().areaMm2()), edges(free.get().edges()));
        }
        return added.map(b -> Phrase.of(
                        "Trimming cannot make a gap smaller: the opening is too large. Add %s, at the most %s.",
                        Amount.mm2(b.areaMm2()),
                        Amount.mm(
                                b.heightsMm().stream().mapToDouble(h -> h).max().orElse(0), 2)))
                .orElse(Phrase.plain(
                        "No move within its limits brings every gap inside its limits, whatever is cut or added."));
    }
}

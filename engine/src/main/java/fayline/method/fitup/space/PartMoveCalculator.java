package fayline.method.fitup.space;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.motion.MoveRows;
import fayline.method.fitup.motion.Wanted;
import fayline.method.fitup.motion.WantedLines;
import fayline.method.fitup.move.BestMove;
import fayline.method.fitup.move.BestMoveCalculator;
import fayline.method.fitup.move.BestMoveResult;
import fayline.method.fitup.move.LeastSquaresMove;
import fayline.method.fitup.move.MinimaxMove;
import fayline.method.fitup.move.MoveReport;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Where a part must sit, whether flat or curved. The six rows of a flat part fall into two blocks that know nothing of each other,
 * gaps with shift and turn in the plane and flushes with the rest, so its gaps are solved in the plane alone; those of a curved part
 * do not, so its gaps and flushes are solved together. Both by the same search.
 */
public final class PartMoveCalculator {
    private PartMoveCalculator() {}

    /** Answers the question. */
    public static PartMove calculate(PartQuestion question) {
        return question.curved() ? inSpace(question) : inPlane(question);
    }

    /** The readings that are searched, as straight lines in the move. */
    public static WantedLines<?, ?> lines(PartQuestion question) {
        return question.curved() ? question.rows() : MoveRows.of(question.gaps(), question.flatPivot());
    }

    /** The move of least squares; empty where a motion is not known or there is no move. */
    public static Optional<SpaceMove> leastSquares(PartQuestion q) {
        if (q.curved()) {
            SpaceMoveResult r = SpaceMoveCalculator.calculate(asked(q, q.rows()));
            return r.determinacy().determined()
                    ? r.leastSquares().map(SpaceMoveResult.Solution::move)
                    : Optional.empty();
        }
        BestMoveResult r = BestMoveCalculator.calculate(asked(q));
        return r.undetermined()
                ? Optional.empty()
                : r.leastSquares().map(LeastSquaresMove::move).map(SpaceMove::of);
    }

    /** What a move leaves of the readings, to first order: the root of the mean square of their distances from nominal, in mm. */
    public static double restMm(PartQuestion q, SpaceMove move) {
        return q.curved() ? restMm(q.rows(), move) : restMm(MoveRows.of(q.gaps(), q.flatPivot()), move.inPlane());
    }

    private static <M> double restMm(WantedLines<?, M> lines, M move) {
        double[] x = lines.unknowns(move);
        double sum = 0;
        for (int i = 0; i < lines.count(); i++) {
            double off = lines.valueMm(i, x) - lines.wanted(i).nominalMm();
            sum += off * off;
        }
        return Math.sqrt(sum / lines.count());
    }

    private static BestMove asked(PartQuestion q) {
        BestMove plain = BestMove.of(q.gaps(), q.room()).about(q.flatPivot());
        return q.uncertaintiesMm().isEmpty() ? plain : plain.withUncertainties(q.uncertaintiesMm());
    }

    private static SpaceQuestion asked(PartQuestion q, SpaceRows rows) {
        return new SpaceQuestion(
                rows.readings(), q.pivot(), q.lift().with(q.room()), q.uncertaintiesMm(), BestMove.Policy.MIN_NORM);
    }

    private static PartMove inPlane(PartQuestion q) {
        BestMoveResult r = BestMoveCalculator.calculate(asked(q));
        Map<String, Wanted> wanted = wanted(MoveRows.of(q.gaps(), q.flatPivot()));
        return new PartMove(
                false,
                r.status(),
                r.determinacy().determined(),
                r.minimax()
                        .map(m -> new PartMove.Found(
                                SpaceMove.of(m.move()),
                                q.pivot(),
                                m.exactGapsMm(),
                                List.of(),
                                m.unique(),
                                m.deciding().stream()
                                        .map(MinimaxMove.Deciding::station)
                                        .toList())),
                r.outside().stream()
                        .map(o -> outside(wanted, o.station(), o.gapMm()))
                        .toList(),
                r.misfits(),
                r.findings());
    }

    private static PartMove inSpace(PartQuestion q) {
        SpaceRows rows = q.rows();
        SpaceMoveResult r = SpaceMoveCalculator.calculate(asked(q, rows));
        Map<String, Wanted> wanted = wanted(rows);
        return new PartMove(
                true,
                r.status(),
                r.determinacy().determined(),
                r.minimax().map(s -> found(q, rows, s)),
                r.outside().stream()
                        .map(o -> outside(wanted, o.named(), o.valueMm()))
                        .toList(),
                r.misfits(),
                findings(q, r.findings()));
    }

    private static PartMove.Found found(PartQuestion q, SpaceRows rows, SpaceMoveResult.Solution s) {
        int gaps = q.gaps().size();
        List<PartMove.Flush> flushes = IntStream.range(gaps, rows.count())
                .mapToObj(i -> new PartMove.Flush(
                        rows.wanted(i),
                        q.flushes().get(i - gaps).valueMm(),
                        s.exactValuesMm().get(i)))
                .toList();
        Map<String, Wanted> wanted = wanted(rows);
        return new PartMove.Found(
                s.move(),
                q.pivot(),
                s.exactValuesMm().subList(0, gaps),
                flushes,
                s.unique(),
                s.deciding().stream()
                        .map(named -> known(wanted, named).station())
                        .distinct()
                        .toList());
    }

    private static List<Finding> findings(PartQuestion q, List<Finding> told) {
        List<Finding> all = new ArrayList<>(told);
        if (q.flushes().isEmpty()) {
            all.add(new Finding(
                    Severity.CAUTION,
                    "flush",
                    "This part is curved, and no flush is read: gaps alone hardly tell how far it must go in or out. Read the"
                            + " flush at three stations at least.",
                    "geometry"));
        }
        return all;
    }

    private static Map<String, Wanted> wanted(WantedLines<?, ?> lines) {
        return IntStream.range(0, lines.count())
                .mapToObj(lines::wanted)
                .collect(Collectors.toMap(Wanted::named, w -> w, (a, b) -> a, TreeMap::new));
    }

    private static MoveReport.Outside outside(Map<String, Wanted> wanted, String named, double valueMm) {
        return new MoveReport.Outside(known(wanted, named), valueMm);
    }

    /** What is wanted under a name that the solution gave back. */
    private static Wanted known(Map<String, Wanted> wanted, String named) {
        return Objects.requireNonNull(wanted.get(named), named);
    }
}

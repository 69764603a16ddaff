package fayline.method.fitup.move;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.motion.Determinacy;
import java.util.ArrayList;
import java.util.List;

/** What the builder is told about a best move, in sentences. */
final class BestMoveFindings {
    private static final String OURS = "common practice, no source";
    private static final String GEOMETRY = "geometry";
    private static final double ERRORS = 3;
    private static final int MOST_NAMED = 6;
    private static final double PLAY_MM = 0.05;

    private final BestMove question;
    private final BestMoveResult result;
    private final List<Finding> all = new ArrayList<>();

    private BestMoveFindings(BestMove question, BestMoveResult result) {
        this.question = question;
        this.result = result;
    }

    static List<Finding> of(BestMove question, BestMoveResult result) {
        BestMoveFindings f = new BestMoveFindings(question, result);
        f.outcome();
        f.misfits();
        f.knowledge();
        result.minimax().ifPresent(f::deciders);
        f.suspect();
        return List.copyOf(f.all);
    }

    private void add(Severity severity, String sentence, String source) {
        add(severity, Phrase.plain(sentence), source);
    }

    private void add(Severity severity, Phrase phrase, String source) {
        all.add(new Finding(severity, "move", phrase, source));
    }

    private void outcome() {
        switch (result.status()) {
            case OK -> {}
            case NO_FIT -> add(Severity.STOP, noFit(), GEOMETRY);
            case INFEASIBLE -> result.relaxation().ifPresent(r -> add(Severity.STOP, infeasible(r), GEOMETRY));
            case UNDETERMINED_MOVE ->
                add(Severity.STOP, "The stations do not know every motion, so no move is given.", GEOMETRY);
            case MOVE_TOO_LARGE -> result.refused().ifPresent(m -> add(Severity.STOP, tooLarge(m), OURS));
        }
    }

    private Phrase noFit() {
        List<Phrase> each = new ArrayList<>();
        for (BestMoveResult.Outside o : result.outside()) {
            if (each.size() < MOST_NAMED) {
                FitRow row = question.rows().stream()
                        .filter(r -> r.station().id().equals(o.station()))
                        .findFirst()
                        .orElseThrow();
                each.add(Phrase.of(
                        "%s at %s (needs %s to %s)",
                        o.station(),
                        Amount.mm(o.gapMm(), 2),
                        Amount.bareMm(row.lowerMm(), 2),
                        Amount.bareMm(row.upperMm(), 2)));
            }
        }
        int more = result.outside().size() - each.size();
        return Phrase.of(
                "Moving alone does not fit it. After the best move these stay outside: %s%s",
                Phrase.joined(", ", each), more > 0 ? " and " + more + " more." : ".");
    }

    private static Phrase infeasible(Relaxation r) {
        List<Phrase> each = r.shares().stream()
                .limit(MOST_NAMED)
                .map(s -> Phrase.of("%s by %s", s.station(), Amount.mm(s.easedMm(), 2)))
                .toList();
        return Phrase.of(
                "No move keeps all minimum gaps: they must give way by %s in all, for instance %s.",
                Amount.mm(r.totalMm(), 2), Phrase.joined(", ", each));
    }

    private static Phrase tooLarge(Move m) {
        return Phrase.of(
                "The part would have to shift %s and turn %.2f deg: it lies in the wrong place. Put it where it belongs"
                        + " and read it again (at most %s and 2 deg).",
                Amount.mm(m.shiftMm(), 1), Math.abs(m.turnDeg()), Amount.mm(MoveSize.LARGEST_SHIFT_MM, 0));
    }

    private void misfits() {
        for (Misfit m : result.misfits()) {
            Phrase sum;
            if (m.stations().size() == 2 && m.weights().equals(List.of(1.0, 1.0))) {
                sum = Phrase.of(
                        "%s and %s face away from each other: %s + %s = %s",
                        m.stations().get(0),
                        m.stations().get(1),
                        Amount.bareMm(gap(m.stations().get(0)), 2),
                        Amount.bareMm(gap(m.stations().get(1)), 2),
                        Amount.mm(m.haveMm(), 2));
            } else {
                sum = Phrase.of(
                        "The gaps at %s, weighed so that no move changes their sum, make %s",
                        String.join(", ", m.stations()), Amount.mm(m.haveMm(), 2));
            }
            add(
                    Severity.CAUTION,
                    Phrase.of(
                            m.partTooLarge()
                                    ? "%s, needs %s: no move can do it, the part is %s too large here."
                                    : "%s, may be %s: no move can do it, the part is %s too small here.",
                            sum,
                            Amount.mm(m.needMm(), 2),
                            Amount.mm(m.missingMm(), 2)),
                    GEOMETRY);
        }
    }

    private double gap(String station) {
        return question.rows().stream()
                .filter(r -> r.station().id().equals(station))
                .mapToDouble(FitRow::gapMm)
                .findFirst()
                .orElseThrow();
    }

    private void knowledge() {
        for (Determinacy.FreeMotion f : result.determinacy().free()) {
            add(Severity.CAUTION, f.meaning(), GEOMETRY);
        }
        result.determinacy().weak().ifPresent(w -> {
            Phrase size = result.weakStandardErrorMm().isPresent()
                    ? Phrase.of(
                            "Its standard error is %s.",
                            Amount.mm(result.weakStandardErrorMm().getAsDouble(), 2))
                    : Phrase.of(
                            "An error of %s in the readings may become %s there.",
                            Amount.mm(0.1, 1), Amount.mm(0.1 * w.growth(), 1));
            add(Severity.CAUTION, Phrase.joined(" ", List.of(w.meaning(), size)), GEOMETRY);
        });
    }

    private void deciders(MinimaxMove best) {
        if (!best.still()) {
            add(
                    Severity.CAUTION,
                    "The turn is large and hardly held by the stations, so the move did not come to rest: make it, then read"
                            + " all stations again.",
                    GEOMETRY);
        }
        if (!best.deciding().isEmpty() && best.worstDeviation() > 0) {
            List<String> ids =
                    best.deciding().stream().map(MinimaxMove.Deciding::station).toList();
            add(
                    Severity.NOTE,
                    (ids.size() == 1 ? "Station " + ids.get(0) + " decides" : "Stations " + and(ids) + " decide")
                            + " the worst gap: read "
                            + (ids.size() == 1 ? "it" : "them")
                            + " again before you trust the move.",
                    GEOMETRY);
        }
        double play = Math.max(best.play().dxMm(), best.play().dyMm());
        if (!best.unique() && play > PLAY_MM && result.determinacy().determined()) {
            add(
                    Severity.NOTE,
                    Phrase.of(
                            "The worst gap stays the same over %s of shift; the move shown evens out the others.",
                            Amount.mm(play, 2)),
                    GEOMETRY);
        }
    }

    private static String and(List<String> ids) {
        return String.join(", ", ids.subList(0, ids.size() - 1)) + " and " + ids.get(ids.size() - 1);
    }

    private void suspect() {
        if (result.minimax().isEmpty()
                || result.leastSquares()
                        .flatMap(LeastSquaresMove::standardError)
                        .isEmpty()) {
            return;
        }
        LeastSquaresMove squares = result.leastSquares().orElseThrow();
        Move a = result.minimax().orElseThrow().move();
        Move b = squares.move();
        Move e = squares.standardError().orElseThrow();
        double apart = Math.max(
                Math.abs(a.dxMm() - b.dxMm()) / e.dxMm(),
                Math.max(Math.abs(a.dyMm() - b.dyMm()) / e.dyMm(), Math.abs(a.turnRad() - b.turnRad()) / e.turnRad()));
        if (apart <= ERRORS) {
            return;
        }
        int worst = 0;
        double most = -1;
        for (int i = 0; i < question.rows().size(); i++) {
            double z = Math.abs(squares.gapsMm().get(i) - question.rows().get(i).nominalMm())
                    / question.uncertaintiesMm().get(i);
            if (z > most) {
                most = z;
                worst = i;
            }
        }
        add(
                Severity.CAUTION,
                Phrase.of(
                        "The move of smallest worst gap and that of least squares lie %.1f standard errors apart: one station"
                                + " is suspect, first of all %s. Read it again, or look for a local bump.",
                        apart, question.rows().get(worst).station().id()),
                OURS);
    }
}

package fayline.method.fitup.move;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.motion.Determinacy;
import fayline.method.fitup.motion.Settled;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

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
        all.add(new Finding(severity, "move", sentence, source));
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

    private String noFit() {
        List<String> each = new ArrayList<>();
        for (BestMoveResult.Outside o : result.outside()) {
            if (each.size() < MOST_NAMED) {
                FitRow row = question.rows().stream()
                        .filter(r -> r.station().id().equals(o.station()))
                        .findFirst()
                        .orElseThrow();
                each.add(String.format(
                        Locale.ROOT,
                        "%s at %.2f mm (needs %.2f to %.2f)",
                        o.station(),
                        o.gapMm(),
                        row.lowerMm(),
                        row.upperMm()));
            }
        }
        int more = result.outside().size() - each.size();
        return "Moving alone does not fit it. After the best move these stay outside: " + String.join(", ", each)
                + (more > 0 ? " and " + more + " more." : ".");
    }

    private static String infeasible(Relaxation r) {
        List<String> each = r.shares().stream()
                .limit(MOST_NAMED)
                .map(s -> String.format(Locale.ROOT, "%s by %.2f mm", s.station(), s.easedMm()))
                .toList();
        return String.format(
                Locale.ROOT,
                "No move keeps all minimum gaps: they must give way by %.2f mm in all, for instance %s.",
                r.totalMm(),
                String.join(", ", each));
    }

    private static String tooLarge(Move m) {
        return String.format(
                Locale.ROOT,
                "The part would have to shift %.1f mm and turn %.2f deg: it lies in the wrong place. Put it where it belongs"
                        + " and read it again (at most 10 mm and 2 deg).",
                m.shiftMm(),
                Math.abs(m.turnDeg()));
    }

    private void misfits() {
        for (Misfit m : result.misfits()) {
            String sum;
            if (m.stations().size() == 2 && m.weights().equals(List.of(1.0, 1.0))) {
                sum = String.format(
                        Locale.ROOT,
                        "%s and %s face away from each other: %.2f + %.2f = %.2f mm",
                        m.stations().get(0),
                        m.stations().get(1),
                        gap(m.stations().get(0)),
                        gap(m.stations().get(1)),
                        m.haveMm());
            } else {
                sum = String.format(
                        Locale.ROOT,
                        "The gaps at %s, weighed so that no move changes their sum, make %.2f mm",
                        String.join(", ", m.stations()),
                        m.haveMm());
            }
            add(
                    Severity.CAUTION,
                    sum
                            + String.format(
                                    Locale.ROOT,
                                    m.partTooLarge()
                                            ? ", needs %.2f mm: no move can do it, the part is %.2f mm too large here."
                                            : ", may be %.2f mm: no move can do it, the part is %.2f mm too small here.",
                                    m.needMm(),
                                    m.missingMm()),
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
            String size = result.weakStandardErrorMm().isPresent()
                    ? String.format(
                            Locale.ROOT,
                            " Its standard error is %.2f mm.",
                            result.weakStandardErrorMm().getAsDouble())
                    : String.format(
                            Locale.ROOT,
                            " An error of 0.1 mm in the readings may become %.1f mm there.",
                            0.1 * w.growth());
            add(Severity.CAUTION, w.meaning() + size, GEOMETRY);
        });
    }

    private void deciders(MinimaxMove best) {
        if (best.rounds() >= Settled.MOST_ROUNDS) {
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
                    String.format(
                            Locale.ROOT,
                            "The worst gap stays the same over %.2f mm of shift; the move shown evens out the others.",
                            play),
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
                String.format(
                        Locale.ROOT,
                        "The move of smallest worst gap and that of least squares lie %.1f standard errors apart: one station"
                                + " is suspect, first of all %s. Read it again, or look for a local bump.",
                        apart,
                        question.rows().get(worst).station().id()),
                OURS);
    }
}

package fayline.method.fitup.move;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.method.fitup.motion.Wanted;
import java.util.ArrayList;
import java.util.List;

/** What the builder is told about a best move, in sentences; the same in the plane and in space. */
public final class MoveFindings {
    private static final String OURS = "common practice, no source";
    private static final String GEOMETRY = "geometry";
    private static final int MOST_NAMED = 6;
    private static final double PLAY_MM = 0.05;
    private static final double LEAST_TOLD_MM = 0.005;

    private final MoveReport report;
    private final List<Finding> all = new ArrayList<>();

    private MoveFindings(MoveReport report) {
        this.report = report;
    }

    /** The sentences, the outcome first. */
    public static List<Finding> of(MoveReport report) {
        MoveFindings f = new MoveFindings(report);
        f.outcome();
        report.misfits().forEach(m -> f.add(Severity.CAUTION, misfit(m), GEOMETRY));
        f.knowledge();
        report.best().ifPresent(f::deciders);
        report.suspect()
                .ifPresent(s -> f.add(
                        Severity.CAUTION,
                        Phrase.of(
                                "The move of smallest worst %s and that of least squares lie %.1f standard errors apart: one"
                                        + " station is suspect, first of all %s. Read it again, or look for a local bump.",
                                report.reading(), s.apart(), s.named()),
                        OURS));
        return List.copyOf(f.all);
    }

    private void add(Severity severity, String sentence, String source) {
        add(severity, Phrase.plain(sentence), source);
    }

    private void add(Severity severity, Phrase phrase, String source) {
        all.add(new Finding(severity, "move", phrase, source));
    }

    private void outcome() {
        switch (report.status()) {
            case OK -> {}
            case NO_FIT -> add(Severity.STOP, noFit(), GEOMETRY);
            case INFEASIBLE -> report.relaxation().ifPresent(r -> add(Severity.STOP, infeasible(r), GEOMETRY));
            case UNDETERMINED_MOVE ->
                add(Severity.STOP, "The stations do not know every motion, so no move is given.", GEOMETRY);
            case MOVE_TOO_LARGE -> report.refused().ifPresent(m -> add(Severity.STOP, tooLarge(m), OURS));
        }
    }

    private Phrase noFit() {
        List<Phrase> each = report.outside().stream()
                .limit(MOST_NAMED)
                .map(o -> Phrase.of("%s at %s (%s)", o.wanted().named(), Amount.mm(o.valueMm(), 2), needs(o.wanted())))
                .toList();
        int more = report.outside().size() - each.size();
        return Phrase.of(
                "Moving alone does not fit it. After the best move these stay outside: %s%s",
                Phrase.joined(", ", each), more > 0 ? " and " + more + " more." : ".");
    }

    private static Phrase needs(Wanted w) {
        return Phrase.of("needs %s to %s", Amount.bareMm(w.lowerMm(), 2), Amount.bareMm(w.upperMm(), 2));
    }

    private static Phrase infeasible(Relaxation<?> r) {
        // What would be told as nothing is left out.
        List<Phrase> each = r.shares().stream()
                .filter(s -> s.easedMm() >= LEAST_TOLD_MM)
                .limit(MOST_NAMED)
                .map(s -> Phrase.of("%s by %s", s.station(), Amount.mm(s.easedMm(), 2)))
                .toList();
        Phrase total =
                Phrase.of("No move keeps all minimum gaps: they must give way by %s in all", Amount.mm(r.totalMm(), 2));
        return each.isEmpty()
                ? Phrase.of("%s.", total)
                : Phrase.of("%s, for instance %s.", total, Phrase.joined(", ", each));
    }

    private static Phrase tooLarge(MoveReport.Refused m) {
        return Phrase.of(
                "The part would have to shift %s and turn %.2f deg: it lies in the wrong place. Put it where it belongs"
                        + " and read it again (at most %s and 2 deg).",
                Amount.mm(m.shiftMm(), 1), Math.toDegrees(m.turnRad()), Amount.mm(MoveSize.LARGEST_SHIFT_MM, 0));
    }

    private static Phrase misfit(Misfit m) {
        if (m.shape()) {
            return Phrase.of(
                    "%s too small beside %s too large: %s between them, weighed so that no move changes the sum. The shapes"
                            + " differ, or a reading is wrong.",
                    String.join(", ", m.counting(false)),
                    String.join(", ", m.counting(true)),
                    Amount.mm(m.missingMm(), 2));
        }
        String verdict = m.flush()
                ? m.partTooLarge()
                        ? "%s, needs %s: no move can do it, %s is missing."
                        : "%s, may be %s: no move can do it, %s is too much."
                : m.partTooLarge()
                        ? "%s, needs %s: no move can do it, the part is %s too large here."
                        : "%s, may be %s: no move can do it, the part is %s too small here.";
        return Phrase.of(verdict, sum(m), Amount.mm(m.needMm(), 2), Amount.mm(m.missingMm(), 2));
    }

    private static Phrase sum(Misfit m) {
        if (!m.flush() && m.weights().equals(List.of(1.0, 1.0))) {
            return Phrase.of(
                    "%s and %s face away from each other: %s + %s = %s",
                    m.stations().get(0),
                    m.stations().get(1),
                    Amount.bareMm(m.valuesMm().get(0), 2),
                    Amount.bareMm(m.valuesMm().get(1), 2),
                    Amount.mm(m.haveMm(), 2));
        }
        return Phrase.of(
                "The %s at %s, weighed so that no move changes their sum, make %s",
                m.flush() ? "readings" : "gaps", String.join(", ", m.stations()), Amount.mm(m.haveMm(), 2));
    }

    private void knowledge() {
        report.free().forEach(f -> add(Severity.CAUTION, f, GEOMETRY));
        report.weak().ifPresent(w -> {
            Phrase size = w.standardErrorMm().isPresent()
                    ? Phrase.of(
                            "Its standard error is %s.",
                            Amount.mm(w.standardErrorMm().getAsDouble(), 2))
                    : Phrase.of(
                            "An error of %s in the readings may become %s there.",
                            Amount.mm(0.1, 1), Amount.mm(0.1 * w.growth(), 1));
            add(Severity.CAUTION, Phrase.joined(" ", List.of(w.meaning(), size)), GEOMETRY);
        });
    }

    private void deciders(MoveReport.Best best) {
        if (!best.still()) {
            add(
                    Severity.CAUTION,
                    "The turn is large and hardly held by the stations, so the move did not come to rest: make it, then read"
                            + " all stations again.",
                    GEOMETRY);
        }
        List<String> ids = best.deciding();
        if (!ids.isEmpty() && best.worstDeviation() > 0) {
            add(
                    Severity.NOTE,
                    (ids.size() == 1 ? "Station " + ids.get(0) + " decides" : "Stations " + and(ids) + " decide")
                            + " the worst " + report.reading() + ": read "
                            + (ids.size() == 1 ? "it" : "them")
                            + " again before you trust the move.",
                    GEOMETRY);
        }
        if (best.playMm() > PLAY_MM && report.free().isEmpty()) {
            add(
                    Severity.NOTE,
                    Phrase.of(
                            "The worst %s stays the same over %s of shift; the move shown evens out the others.",
                            report.reading(), Amount.mm(best.playMm(), 2)),
                    GEOMETRY);
        }
    }

    private static String and(List<String> ids) {
        return String.join(", ", ids.subList(0, ids.size() - 1)) + " and " + ids.get(ids.size() - 1);
    }
}

package fayline.method.mix.audit;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Fraction;
import fayline.basis.units.Mass;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How two parts were used.
 *
 * @param verdict whether the ratio was kept
 * @param resinUsed resin used in all; negative where more is left than there was
 * @param hardenerUsed hardener used in all
 * @param resinUnread of it, resin in the mixes asked about: those without a scale reading, or all where each has one
 * @param hardenerUnread of it, hardener in those mixes
 * @param hardenerExpected hardener that the resin in those mixes should have had
 * @param hardenerPer100 hardener per 100 of resin by mass in those mixes; empty where no resin is left to judge by
 * @param deviation hardener against the nominal, negative where there was too little
 * @param uncertainty expanded uncertainty of the deviation at the coverage asked
 * @param figures how the deviation comes about
 * @param findings what must be said
 */
public record RatioAuditResult(
        Verdict verdict,
        Mass resinUsed,
        Mass hardenerUsed,
        Mass resinUnread,
        Mass hardenerUnread,
        Mass hardenerExpected,
        OptionalDouble hardenerPer100,
        Optional<Fraction> deviation,
        Optional<Fraction> uncertainty,
        List<Figure> figures,
        List<Finding> findings) {
    /** Copies the lists. */
    public RatioAuditResult {
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }

    /** What can be said of a ratio. */
    public enum Verdict {
        /** Kept, at the coverage asked. */
        PASS("kept"),
        /** Not kept, at the coverage asked. */
        FAIL("not kept"),
        /** The counts are not sharp enough, or nothing was used. */
        CANNOT_TELL("cannot tell");

        private final String words;

        Verdict(String words) {
            this.words = words;
        }

        /** In words, as {@code not kept}. */
        public String words() {
            return words;
        }
    }
}

package fayline.method.fitup.frame.trial;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import java.util.List;
import java.util.OptionalDouble;

/**
 * To which bare width the frame is set next.
 *
 * @param verdict what to do
 * @param bareMm bare width to aim for: by the straight line through the trials, else one for one
 * @param stdMm standard uncertainty of that width from the readings, and where only one trial was made from not knowing by how
 *     much the clamped width follows
 * @param farthestBareMm the bare width if the clamped width followed only half: the frame is soft against its sheet; the same as
 *     above where the trials tell
 * @param follow by how much the clamped width follows the bare one, used for the figure
 * @param followStd its standard uncertainty, where two or more trials tell
 * @param followFrom where it is from
 * @param sprungMm by how much the sheet springs the frame at the last trial
 * @param offMm clamped less wanted at the last trial
 * @param expectedStdMm standard uncertainty of the clamped width if the frame is set to the bare width exactly
 * @param figures how the figures come about
 * @param findings what must be said
 */
public record TrialFitResult(
        Verdict verdict,
        double bareMm,
        double stdMm,
        double farthestBareMm,
        double follow,
        OptionalDouble followStd,
        From followFrom,
        double sprungMm,
        double offMm,
        double expectedStdMm,
        List<Figure> figures,
        List<Finding> findings) {
    /** Copies the lists. */
    public TrialFitResult {
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }

    /** What to do next. */
    public enum Verdict {
        /** Set the frame to the bare width and clamp once more before any adhesive. */
        TRY_AGAIN,
        /** The last of at least two trials came out within tolerance: bond as it is. */
        READY,
        /** The trials contradict each other: read again. */
        READ_AGAIN
    }

    /** Where the share is from by which the clamped width follows the bare one. */
    public enum From {
        /** From the trials. */
        TRIALS,
        /** Given. */
        GIVEN,
        /** One for one: assumed, the least change of the frame. */
        ASSUMED
    }
}

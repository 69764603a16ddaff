package fayline.flow.result.fit.frame;

import fayline.flow.project.fit.frame.FrameWidth;
import fayline.flow.reading.WidthReading;
import fayline.method.fitup.frame.trial.TrialFitResult;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the readings of one width amount to.
 *
 * @param width the width
 * @param stage how far it is
 * @param trials what was read, trial by trial
 * @param allowance what the bond will still change, kept off the aim
 * @param aimMm the width to find with the sheet clamped on: wanted less allowance
 * @param trial to which bare width the frame is set; empty before a whole trial
 * @param startMm bare width to begin with as the opposite hand taught; empty once a trial was made, or where nothing was taught
 * @param lesson what the opposite hand taught of this width
 * @param bonded how it came out; empty before it was read as bonded
 * @param next what to read next
 */
public record WidthAnswer(
        FrameWidth width,
        Stage stage,
        List<MadeTrial> trials,
        Allowance allowance,
        double aimMm,
        Optional<TrialFitResult> trial,
        OptionalDouble startMm,
        Optional<WidthLesson> lesson,
        Optional<Bonded> bonded,
        Next next) {
    /** Copies the list. */
    public WidthAnswer {
        trials = List.copyOf(trials);
    }

    /** How far a width is. */
    public enum Stage {
        /** Adhesive must wait: no trial yet, one only, or the last one did not come out. */
        WAIT,
        /** The last of two trials or more came out: bond at this bare width. */
        GO,
        /** It is bonded. */
        BONDED
    }

    /**
     * One trial.
     *
     * @param number which, from 1
     * @param readings its readings, in the order taken
     * @param bareMm mean of the bare widths; empty where none was read
     * @param clampedMm mean of the widths with the sheet clamped on
     * @param bondedMm mean of the widths as bonded
     */
    public record MadeTrial(
            int number,
            List<WidthReading> readings,
            OptionalDouble bareMm,
            OptionalDouble clampedMm,
            OptionalDouble bondedMm) {
        /** Copies the list. */
        public MadeTrial {
            readings = List.copyOf(readings);
        }

        /** Whether both widths that make a trial were read. */
        public boolean whole() {
            return bareMm.isPresent() && clampedMm.isPresent();
        }
    }

    /**
     * By how much the width will change from trial-clamped to bonded.
     *
     * @param mm negative where it narrows
     * @param deviationMm standard uncertainty of it, where two readings say so
     * @param origin who says so; empty where nothing is allowed for
     */
    public record Allowance(double mm, OptionalDouble deviationMm, String origin) {
        /** Nothing allowed for. */
        public static final Allowance NONE = new Allowance(0, OptionalDouble.empty(), "");
    }

    /**
     * How it came out.
     *
     * @param mm the width as bonded
     * @param offMm less the width wanted
     * @param within whether that is within tolerance
     * @param tookMm less the width of the last whole trial, negative where the bond narrowed it; empty without one
     */
    public record Bonded(double mm, double offMm, boolean within, OptionalDouble tookMm) {}

    /**
     * What to read next.
     *
     * @param trial which trial
     * @param state in which state
     */
    public record Next(int trial, WidthReading.State state) {}
}

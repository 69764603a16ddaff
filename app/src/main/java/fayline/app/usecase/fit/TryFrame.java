package fayline.app.usecase.fit;

import fayline.basis.units.Length;
import fayline.method.fitup.frame.trial.Trial;
import fayline.method.fitup.frame.trial.TrialFit;
import fayline.method.fitup.frame.trial.TrialFitCalculator;
import fayline.method.fitup.frame.trial.TrialFitResult;
import java.util.List;
import java.util.OptionalDouble;

/** Asks to which bare width a sprung frame is set so that it has the wanted width with its sheet bonded in. */
public final class TryFrame {
    private TryFrame() {}

    /**
     * One trial as measured.
     *
     * @param bare width of the bare frame
     * @param clamped width with the sheet trial-clamped
     */
    public record Widths(Length bare, Length clamped) {}

    /**
     * Asks.
     *
     * @param trials at least one, in the order in which they were made
     * @param wanted width wanted with the sheet bonded
     * @param tolerance how far off it may be
     * @param reading standard uncertainty of one width
     * @throws IllegalArgumentException if a width or the tolerance is not above zero, or the uncertainty below
     */
    public static TrialFitResult ask(List<Widths> trials, Length wanted, Length tolerance, Length reading) {
        return TrialFitCalculator.calculate(new TrialFit(
                trials.stream()
                        .map(t -> new Trial(t.bare().millimetres(), t.clamped().millimetres()))
                        .toList(),
                wanted.millimetres(),
                tolerance.millimetres(),
                reading.millimetres(),
                OptionalDouble.empty()));
    }
}

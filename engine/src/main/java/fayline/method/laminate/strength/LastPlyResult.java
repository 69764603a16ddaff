package fayline.method.laminate.strength;

import java.util.List;

/**
 * How a stack fails ply by ply.
 *
 * @param steps what fails, in order; {@code ratio} is the load at which it does, never less than that of the step before
 * @param lastRatio the highest load it reaches: that of the last ply; 0 if it never holds
 * @param allFibresGone whether in the end every ply with strengths has lost its fibres
 */
public record LastPlyResult(List<PlyFailure> steps, double lastRatio, boolean allFibresGone) {
    /** Copies the list. */
    public LastPlyResult {
        steps = List.copyOf(steps);
    }
}

/**
 * The bench form of the sprung frame: bare width, width with the sheet trial-clamped, width wanted, and from them the bare width
 * to aim for. Start at {@link fayline.method.fitup.frame.trial.TrialFitCalculator}.
 *
 * <p>Widths in mm, standard uncertainties in mm. Setting the frame under by what it springs, trial-clamping and measuring again is
 * common practice, no source; that the width follows the bare width in a straight line is the linear frame of the package above,
 * two springs side by side; uncertainties to first order [jcgm100]. What does not belong here: where a frame is bent, and how.
 */
@NullMarked
package fayline.method.fitup.frame.trial;

import org.jspecify.annotations.NullMarked;

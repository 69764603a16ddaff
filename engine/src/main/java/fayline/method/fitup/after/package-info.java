/**
 * After the bond: gaps as they were measured against gaps as they were predicted, the motion that nobody meant, and what the
 * next build and the opposite hand learn from it. Start at {@link fayline.method.fitup.after.AsBuilt},
 * {@link fayline.method.fitup.after.AsBuiltCalculator} and {@link fayline.method.fitup.after.LessonCalculator}. Frame and signs
 * as in {@link fayline.method.fitup}; moves in millimetres and radians. Weighted least squares and the chi-square test with the
 * full covariance [jcgm100]; shrinkage of a noisy estimate towards its prior [james-stein1961]. What does not belong here: which
 * state a reading belongs to.
 */
@NullMarked
package fayline.method.fitup.after;

import org.jspecify.annotations.NullMarked;

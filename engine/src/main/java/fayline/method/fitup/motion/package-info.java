/**
 * What a rigid move of the part does to its gaps, which motions the stations can know, and how a move is told at the bench.
 * Start at {@link fayline.method.fitup.motion.GapsAfterMoveCalculator}, {@link fayline.method.fitup.motion.DeterminacyCalculator}
 * and {@link fayline.method.fitup.motion.MoveWords}. Frame and signs as in {@code fayline.method.fitup}; millimetres and radians.
 *
 * <p>Rows are first-order kinematics of a rigid body (geometry); rank by singular values as in [lawson1974]. What does not
 * belong here: which move is best.
 */
@NullMarked
package fayline.method.fitup.motion;

import org.jspecify.annotations.NullMarked;

package fayline.method.fitup.frame.spring;

/**
 * What one clamp must do.
 *
 * @param clamp the clamp
 * @param forceN force on the part along the clamp's freedom, N (N mm for a turn)
 * @param beyondHand whether it is above the hand limit
 * @param wrongWay whether the clamp cannot act that way
 */
public record ClampForce(Clamp clamp, double forceN, boolean beyondHand, boolean wrongWay) {}

package fayline.method.cure;

/**
 * Kamal and Sourour's rate law: d(alpha)/dt = (A1 exp(-E1/RT) + A2 exp(-E2/RT) alpha^m)(1 - alpha)^n.
 *
 * @param a1PerS A1 in 1/s
 * @param e1JPerMol E1 in J/mol
 * @param a2PerS A2 in 1/s
 * @param e2JPerMol E2 in J/mol
 * @param m exponent of alpha
 * @param n exponent of 1 - alpha
 */
public record Kinetics(double a1PerS, double e1JPerMol, double a2PerS, double e2JPerMol, double m, double n) {}

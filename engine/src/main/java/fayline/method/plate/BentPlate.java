package fayline.method.plate;

/**
 * A bent rectangular plate.
 *
 * @param centreM deflection of the centre
 * @param moment1N moment per width along a, at the centre
 * @param moment2N moment per width along b, at the centre
 * @param edgeMoment1N moment per width at the middle of the edges that a ends at; negative where they are clamped
 * @param edgeMoment2N the same where b ends
 */
record BentPlate(double centreM, double moment1N, double moment2N, double edgeMoment1N, double edgeMoment2N) {}

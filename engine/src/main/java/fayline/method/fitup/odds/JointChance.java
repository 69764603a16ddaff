package fayline.method.fitup.odds;

/**
 * The chance that all gaps end inside their limits together.
 *
 * @param probability between 0 and 1
 * @param standardError how far it may be off by the counting alone
 * @param leastPossible one less the sum of the single chances to miss, by the distributions themselves not below this
 * @param mostPossible the lowest single chance
 * @param points how many points it was averaged over
 * @param seed what they were moved by
 */
public record JointChance(
        double probability, double standardError, double leastPossible, double mostPossible, long points, long seed) {}

package fayline.method.fitup.odds;

import java.util.List;

/**
 * How gaps are spread and how likely they end inside.
 *
 * @param stations each gap, in order
 * @param covarianceMm2 of all gaps, row by row
 * @param joint the chance that all end inside together
 * @param worst place in the list of the station of lowest chance, the first where several are equally low
 * @param shares what makes the variance of the worst station, largest first; they sum to one
 */
public record GapOdds(
        List<StationOdds> stations,
        List<List<Double>> covarianceMm2,
        JointChance joint,
        int worst,
        List<Share> shares) {
    /** Copies the lists. */
    public GapOdds {
        stations = List.copyOf(stations);
        covarianceMm2 = covarianceMm2.stream().map(List::copyOf).toList();
        shares = List.copyOf(shares);
    }

    /** The station of lowest chance. */
    public StationOdds worstStation() {
        return stations.get(worst);
    }

    /**
     * One gap.
     *
     * @param id the station
     * @param predictedMm most likely gap
     * @param lowerMm least allowed
     * @param upperMm most allowed
     * @param deviationMm standard deviation
     * @param worstCaseMm the furthest it can be off with every cause at its end (three standard deviations where it has none)
     * @param rssMm root of the sum of the squares of these ends
     * @param chance to end inside, by a normal spread of the same standard deviation
     */
    public record StationOdds(
            String id,
            double predictedMm,
            double lowerMm,
            double upperMm,
            double deviationMm,
            double worstCaseMm,
            double rssMm,
            double chance) {}

    /**
     * Part of a variance.
     *
     * @param source what brings it
     * @param owner what that belongs to
     * @param share from 0 to 1
     */
    public record Share(String source, String owner, double share) {}
}

package fayline.method.fitup.outline;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.List;
import java.util.Optional;

/** Checks on normals that a person typed. */
public final class StationNormals {
    private StationNormals() {}

    /**
     * Warns where more than half of the normals point to the middle of the stations.
     *
     * @param stations at least one
     */
    public static Optional<Finding> inwards(List<Station> stations) {
        if (stations.isEmpty()) {
            return Optional.empty();
        }
        Spot middle = Station.middle(stations);
        long inwards = stations.stream()
                .map(Station::drawn)
                .filter(s -> s.nx() * (s.at().xMm() - middle.xMm()) + s.ny() * (s.at().yMm() - middle.yMm()) < 0)
                .count();
        return 2 * inwards > stations.size()
                ? Optional.of(new Finding(
                        Severity.CAUTION,
                        "stations",
                        "Normals point inwards at " + inwards + " of " + stations.size()
                                + " stations; they must point from the part to its neighbour.",
                        "plane geometry"))
                : Optional.empty();
    }
}

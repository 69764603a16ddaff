package fayline.flow.result.fit;

import java.util.List;

/**
 * A bond line as test castings show it: how thick the trial squeeze came out at each station.
 *
 * @param stations where a casting was taken, in the fit's order; at least one
 * @param meanMm mean thickness, each station counting for its run of the edge
 */
public record CastLine(List<Cast> stations, double meanMm) {
    /** Copies the list. */
    public CastLine {
        stations = List.copyOf(stations);
    }

    /** The thinnest, the first of equals. */
    public Cast thinnest() {
        return stations.stream()
                .reduce((a, b) -> b.thicknessMm() < a.thicknessMm() ? b : a)
                .orElseThrow();
    }

    /** The thickest, the first of equals. */
    public Cast thickest() {
        return stations.stream()
                .reduce((a, b) -> b.thicknessMm() > a.thicknessMm() ? b : a)
                .orElseThrow();
    }

    /**
     * One station.
     *
     * @param station its mark
     * @param thicknessMm mean of its castings, in mm
     * @param count how many there are
     */
    public record Cast(String station, double thicknessMm, int count) {}
}

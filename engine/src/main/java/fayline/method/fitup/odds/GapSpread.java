package fayline.method.fitup.odds;

import java.util.ArrayList;
import java.util.List;

/**
 * Expected gaps and what disturbs them.
 *
 * @param gaps at least one
 * @param sources independent causes, each with an effect on every gap
 */
public record GapSpread(List<ExpectedGap> gaps, List<GapSource> sources) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if there are no gaps or a source acts on another number of them
     */
    public GapSpread {
        gaps = List.copyOf(gaps);
        sources = List.copyOf(sources);
        if (gaps.isEmpty()) {
            throw new IllegalArgumentException("no gaps");
        }
        for (GapSource s : sources) {
            if (s.gaps() != gaps.size()) {
                throw new IllegalArgumentException(
                        s.name() + " acts on " + s.gaps() + " gaps, there are " + gaps.size());
            }
        }
    }

    /** Standard deviation of a gap, in mm. */
    public double deviationMm(int gap) {
        return Math.sqrt(covarianceMm2(gap, gap));
    }

    /** Covariance of two gaps, in mm2. */
    public double covarianceMm2(int one, int other) {
        double c = 0;
        for (GapSource s : sources) {
            c += s.covarianceMm2(one, other);
        }
        double u = gaps.get(one).independentMm();
        return one == other ? c + u * u : c;
    }

    /** The same gaps with one source in another's place. */
    public GapSpread with(int source, GapSource other) {
        List<GapSource> all = new ArrayList<>(sources);
        all.set(source, other);
        return new GapSpread(gaps, all);
    }
}

package fayline.method.fitup.scheme;

import fayline.method.fitup.odds.GapOdds;
import fayline.method.fitup.odds.GapSource;
import fayline.method.uncertainty.Distribution;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What is not known of gaps however the part is held: each reading for itself, what all readings share, what states to come may do
 * at each station for itself, and causes that act on all gaps at once. Variances of independent causes add [jcgm100].
 */
public final class GapDoubts {
    private static final String READINGS = "readings";
    private static final String LATER = "states to come";
    private static final double LOOKS = 3;

    private final List<Double> readingMm = new ArrayList<>();
    private final List<GapSource> sources = new ArrayList<>();
    private final List<Missing> missing = new ArrayList<>();
    private final List<Assumption> assumed = new ArrayList<>();
    private final Set<Assumption> allowed;
    private double laterMm2;

    /**
     * Takes what was given and notes what was not.
     *
     * @param ids the stations
     * @param readingMm standard uncertainty of each one's reading, apart from what readings share
     * @param commonMm standard uncertainty that all readings share
     * @param later states to come
     * @param besides causes that act on all gaps at once
     * @param allowed what may be assumed
     */
    public GapDoubts(
            List<String> ids,
            List<OptionalDouble> readingMm,
            OptionalDouble commonMm,
            List<LaterDoubt> later,
            List<GapSource> besides,
            Set<Assumption> allowed) {
        this.allowed = allowed;
        for (int i = 0; i < ids.size(); i++) {
            this.readingMm.add(number(readingMm.get(i), "uncertainty of the reading", ids.get(i), Assumption.READING));
        }
        double common = number(commonMm, "uncertainty that all readings share", READINGS, Assumption.READING_COMMON);
        later.forEach(this::later);
        sources.add(new GapSource.Along(
                "what all readings share",
                READINGS,
                Distribution.normal(0, common),
                Collections.nCopies(ids.size(), -1.0)));
        sources.addAll(besides);
    }

    private double number(OptionalDouble given, String what, String about, Assumption offer) {
        if (given.isPresent()) {
            double v = given.getAsDouble();
            if (!(v >= 0) || Double.isInfinite(v)) {
                throw new IllegalArgumentException(what + " of " + about + " is " + v);
            }
            return v;
        }
        if (allowed.contains(offer)) {
            assumed.add(offer);
            return offer.valueMm();
        }
        missing.add(new Missing(what, about, Optional.of(offer)));
        return 0;
    }

    private void later(LaterDoubt state) {
        if (state.deviationMm().isEmpty()) {
            missing.add(new Missing("uncertainty of what the state does", state.state(), Optional.empty()));
        }
        double u = state.deviationMm().orElse(0);
        laterMm2 += u * u;
    }

    /** Standard uncertainty that a gap shares with no other, in mm. */
    public double ownMm(int gap) {
        return Math.sqrt(readingMm.get(gap) * readingMm.get(gap) + laterMm2);
    }

    /** The same if the station were read twice more and the mean of three counted, in mm: u/√3 [jcgm100]. */
    double ownReadAgainMm(int gap) {
        return Math.sqrt(readingMm.get(gap) * readingMm.get(gap) / LOOKS + laterMm2);
    }

    /** The variance that states to come bring to every gap, in mm2. */
    public double laterMm2() {
        return laterMm2;
    }

    /** Causes that act on all gaps at once. */
    public List<GapSource> sources() {
        return List.copyOf(sources);
    }

    /** What nobody has given. */
    public List<Missing> missing() {
        return List.copyOf(missing);
    }

    /** What was assumed. */
    public List<Assumption> assumed() {
        return List.copyOf(assumed);
    }

    /** The odds with what a station has for itself told apart: its reading, and states to come. */
    public GapOdds apart(GapOdds odds) {
        if (!(laterMm2 > 0)) {
            return odds;
        }
        double u = readingMm.get(odds.worst());
        String own = "reading at " + odds.worstStation().id();
        List<GapOdds.Share> shares = new ArrayList<>();
        for (GapOdds.Share s : odds.shares()) {
            if (s.source().equals(own)) {
                double reading = s.share() * u * u / (u * u + laterMm2);
                shares.add(new GapOdds.Share(own, READINGS, reading));
                shares.add(new GapOdds.Share(LATER, LATER, s.share() - reading));
            } else {
                shares.add(s);
            }
        }
        shares.sort(Comparator.comparingDouble(GapOdds.Share::share).reversed());
        return new GapOdds(odds.stations(), odds.covarianceMm2(), odds.joint(), odds.worst(), shares);
    }
}

package fayline.flow.project.fit;

import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import java.util.Optional;

/**
 * What is wanted at a station.
 *
 * @param gap nominal gap
 * @param gapTolerance allowed deviation of the gap either way
 * @param flush nominal flush, positive where the part stands proud
 * @param flushTolerance allowed deviation of the flush either way
 * @param minimumGap a gap never to be undercut, where there is one
 */
public record FitWanted(
        Entered<Length> gap,
        Entered<Length> gapTolerance,
        Entered<Length> flush,
        Entered<Length> flushTolerance,
        Optional<Entered<Length>> minimumGap) {}

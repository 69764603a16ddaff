package fayline.method.vacuum;

import fayline.basis.units.TimeSpan;
import fayline.basis.units.Vacuum;
import fayline.basis.units.Volume;
import java.util.Optional;

/**
 * The question whether a bag is tight, from two readings with the source valved off.
 *
 * @param start first reading, below ambient
 * @param end second reading, below ambient
 * @param elapsed time between them; above zero
 * @param mostPerMinute most drop allowed in a minute
 * @param mostInFiveMinutes most drop allowed in five minutes
 * @param least least vacuum allowed at the second reading
 * @param volume free volume of bag and hoses, for the leak
 */
public record LeakDown(
        Vacuum start,
        Vacuum end,
        TimeSpan elapsed,
        Optional<Vacuum> mostPerMinute,
        Optional<Vacuum> mostInFiveMinutes,
        Optional<Vacuum> least,
        Optional<Volume> volume) {
    /** A rise of bag pressure in a volume, without a verdict. */
    public static LeakDown ofRise(Vacuum rise, TimeSpan elapsed, Volume volume) {
        return new LeakDown(
                rise,
                new Vacuum(0),
                elapsed,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(volume));
    }

    /** Two readings against the limit of 1 inHg in a minute and at least 20 inHg [tm1-1500-204-23]. */
    public static LeakDown ofReadings(Vacuum start, Vacuum end, TimeSpan elapsed) {
        return new LeakDown(
                start,
                end,
                elapsed,
                Optional.of(Vacuum.ofInchesOfMercury(1)),
                Optional.empty(),
                Optional.of(Vacuum.ofInchesOfMercury(20)),
                Optional.empty());
    }
}

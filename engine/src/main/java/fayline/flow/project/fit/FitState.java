package fayline.flow.project.fit;

import fayline.flow.project.catalog.Keyed;
import fayline.method.fitup.Move;
import fayline.method.fitup.SpaceMove;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A state that a fit goes through.
 *
 * @param id its id, which readings name
 * @param name its name
 * @param disturbs what coming into this state does to the part, where it is known beforehand
 */
public record FitState(String id, String name, Optional<Disturbance> disturbs) implements Keyed {
    /** The usual order where a fit names none. */
    public static final List<FitState> USUAL = List.of(
            of("bonded", "Shells bonded"),
            of("trimmed", "Trimmed"),
            of("hung", "Hung"),
            of("latched", "Latched"),
            of("struts", "Struts fitted"),
            of("sealed", "Seal fitted"),
            of("painted", "Painted"),
            of("hot", "Hot"));

    /** A state that disturbs nothing as far as is known. */
    public static FitState of(String id, String name) {
        return new FitState(id, name, Optional.empty());
    }

    /**
     * A known disturbance.
     *
     * @param move how the part moves about the middle of the stations
     * @param gapMm what every gap changes by beside it, as by filler and paint; negative closes
     * @param deviationMm standard uncertainty of the change at a station, where it is known
     * @param origin who says so
     */
    public record Disturbance(SpaceMove move, double gapMm, OptionalDouble deviationMm, String origin) {
        /** One that moves the part in its plane alone. */
        public Disturbance(Move move, double gapMm, OptionalDouble deviationMm, String origin) {
            this(SpaceMove.of(move), gapMm, deviationMm, origin);
        }
    }
}

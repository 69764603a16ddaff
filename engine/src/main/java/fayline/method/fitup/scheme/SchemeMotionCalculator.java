package fayline.method.fitup.scheme;

import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import java.util.List;
import java.util.Set;

/** Tells how a scheme lets the part be off as a whole, whatever gaps are watched: {@link Settling}, geometry. */
public final class SchemeMotionCalculator {
    private SchemeMotionCalculator() {}

    /**
     * Works it out.
     *
     * @param scheme the scheme
     * @param pivot what the moves are told about
     * @param assumed what may be assumed where an uncertainty is not given
     */
    public static SchemeMotion calculate(Scheme scheme, Spot pivot, Set<Assumption> assumed) {
        StopRows rows = StopRows.of(scheme, assumed);
        Settling settling = Settling.of(pivot, rows.stops(), List.of());
        Move shift = Move.NONE;
        for (StopError e : rows.errors()) {
            Move m = e.shift(settling);
            shift = new Move(shift.dxMm() + m.dxMm(), shift.dyMm() + m.dyMm(), shift.turnRad() + m.turnRad());
        }
        return new SchemeMotion(
                rows.errors().stream().map(e -> e.onPart(settling)).toList(),
                shift,
                settling.free(),
                settling.condition(),
                rows.missing(),
                rows.assumed());
    }
}

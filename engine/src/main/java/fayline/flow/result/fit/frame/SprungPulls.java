package fayline.flow.result.fit.frame;

import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitState;
import fayline.flow.project.fit.frame.FrameClamp;
import fayline.flow.project.fit.frame.FrameWay;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.StateReadings;
import fayline.flow.result.fit.StationValue;
import fayline.method.fitup.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far the part stands off at its clamps: entered, or from a station of the dry fit. A gap narrower than wanted says that the
 * part stands beyond its place along the way of the gap; a flush more than wanted, that it stands out.
 */
final class SprungPulls {
    private static final double SQUARE_ON = 0.9;

    private final Fit fit;
    private final Map<String, Station> places;
    private final Optional<StateReadings> read;
    private final List<String> missing = new ArrayList<>();

    SprungPulls(SprungQuestion q) {
        this.fit = q.fit();
        this.places = q.places();
        this.read = dryFit(q);
    }

    private static Optional<StateReadings> dryFit(SprungQuestion q) {
        String named = q.fit().frame().beams().orElseThrow().mismatchIn();
        List<String> order = q.fit().states().stream().map(FitState::id).toList();
        int bonded = order.indexOf(FitResult.BONDED);
        return q.states().stream()
                .filter(s -> named.isEmpty()
                        ? bonded < 0 || order.indexOf(s.state().id()) < bonded
                        : s.state().id().equals(named))
                .reduce((a, b) -> b);
    }

    /** What is not known, a sentence each. */
    List<String> missing() {
        return List.copyOf(missing);
    }

    /** How far the part stands off at a clamp; empty, and told as missing, where it is not known. */
    Optional<Pull> of(FrameClamp clamp) {
        if (clamp.station().isEmpty()) {
            return Optional.of(new Pull(clamp, clamp.offMm().orElse(0), clamp.sureMm(), "entered"));
        }
        Optional<StationValue> value = read.flatMap(r -> r.stations().stream()
                .filter(v -> v.station().id().equals(clamp.station()))
                .findFirst());
        return clamp.way() == FrameWay.OUT
                ? value.flatMap(v -> byFlush(clamp, v)).or(() -> unread(clamp, "flush"))
                : value.flatMap(v -> byGap(clamp, v)).or(() -> unread(clamp, "gap"));
    }

    private Optional<Pull> unread(FrameClamp clamp, String what) {
        missing.add("Clamp " + clamp.id() + ": the " + what + " at station " + clamp.station()
                + read.map(r -> " is not read in the state \"" + r.state().name() + "\".")
                        .orElse(" is not read yet."));
        return Optional.empty();
    }

    private Optional<Pull> byFlush(FrameClamp clamp, StationValue v) {
        return v.flushMm().isEmpty()
                ? Optional.empty()
                : Optional.of(new Pull(
                        clamp,
                        v.flushMm().getAsDouble() - fit.wanted().flush().value().millimetres(),
                        clamp.sureMm(),
                        from("flush", v)));
    }

    private Optional<Pull> byGap(FrameClamp clamp, StationValue v) {
        Optional<Station> at = Optional.ofNullable(places.get(v.station().id()));
        if (v.gap().isEmpty() || at.isEmpty()) {
            return Optional.empty();
        }
        double along = clamp.way() == FrameWay.ALONG ? at.get().nx() : at.get().ny();
        if (Math.abs(along) < SQUARE_ON) {
            missing.add("Clamp " + clamp.id() + ": the gap at station " + clamp.station() + " does not lie "
                    + clamp.way().key() + "; enter how far the part stands off there.");
            return Optional.empty();
        }
        double nominal = fit.gapAt(v.station()).value().millimetres();
        double u = v.gap().get().deviationMm();
        return Optional.of(new Pull(
                clamp,
                (nominal - v.gap().get().gapMm()) * along,
                clamp.sureMm().isPresent() || !(u > 0) ? clamp.sureMm() : OptionalDouble.of(u),
                from("gap", v)));
    }

    private String from(String what, StationValue v) {
        return what + " read at station " + v.station().id() + ", state \""
                + read.map(r -> r.state().name()).orElse("") + "\"";
    }
}

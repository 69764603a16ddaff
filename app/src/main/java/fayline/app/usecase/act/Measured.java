package fayline.app.usecase.act;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/**
 * A reading as it is sent.
 *
 * @param kind {@code climate}, {@code mass}, {@code vacuum}, {@code gap}, {@code flush}, {@code casting} (film of a
 *     trial squeeze), {@code width} (of a frame), {@code mix}, {@code temperature}
 *     or {@code coupon} (a result of witness pieces)
 * @param of the part, joint, fit or step that was measured; empty for the shop's air
 * @param station the station of a fit, the width of its frame, or the id of a part's witness pieces; empty elsewhere
 * @param state the state in which it was measured; empty where none was said
 * @param values the values exactly as typed, by name: one called "value", or {@code air}, {@code humidity}, {@code surface} for
 *     the shop's air; {@code probe}, {@code instrument} and {@code lot} may stand beside them; beside a gap {@code nogo}, the thinnest leaf
 *     that did not enter where the value is the thickest that did, and {@code temperature}; a gap may be {@code touches}
 * @param at when, on a whole minute; now where nothing is said
 */
public record Measured(
        String kind, String of, String station, String state, Map<String, String> values, Optional<Instant> at) {
    /** Copies the map. */
    public Measured {
        values = Map.copyOf(values);
    }
}

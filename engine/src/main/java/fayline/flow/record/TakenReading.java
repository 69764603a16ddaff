package fayline.flow.record;

import java.time.Instant;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One reading as typed.
 *
 * @param seq the entry
 * @param project the project; empty for the shop's air
 * @param at when it was taken
 * @param by who took it
 * @param kind what was read, as {@code mass}, {@code gap}, {@code climate}
 * @param of the part, fit, step or probe it belongs to
 * @param station the station of a fit; empty elsewhere
 * @param state the state of the part when it was read; empty where none was said
 * @param values what was read by name, each exactly as typed: one named value, or air, humidity and surface
 */
public record TakenReading(
        long seq,
        String project,
        Instant at,
        String by,
        String kind,
        String of,
        String station,
        String state,
        Map<String, String> values) {
    /** Copies the map, in the order of names. */
    public TakenReading {
        SortedMap<String, String> copy = new TreeMap<>(values);
        values = java.util.Collections.unmodifiableSortedMap(copy);
    }

    /** The single value as typed; empty where there is none by that name. */
    public String value() {
        return values.getOrDefault("value", "");
    }
}

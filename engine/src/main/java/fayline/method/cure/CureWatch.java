package fayline.method.cure;

import fayline.basis.units.TimeSpan;
import java.util.List;

/**
 * The question when a mix reaches each of its states, seen through one or more temperature probes.
 *
 * @param sheet what is known of the system
 * @param probes what each probe read since mixing and is expected to read; at least one
 * @param now time since mixing
 */
public record CureWatch(CureSheet sheet, List<Probe> probes, TimeSpan now) {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if there is no probe
     */
    public CureWatch {
        probes = List.copyOf(probes);
        if (probes.isEmpty()) {
            throw new IllegalArgumentException("a cure watch needs at least one probe");
        }
    }

    /**
     * One probe.
     *
     * @param name where it sits
     * @param history what it read and will read
     */
    public record Probe(String name, TemperatureHistory history) {}
}

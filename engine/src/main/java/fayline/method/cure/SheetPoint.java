package fayline.method.cure;

import fayline.basis.units.Mass;
import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import java.util.Optional;

/**
 * One point of a data sheet: the time to a state at a temperature, for a mass in a container where the sheet says so.
 *
 * @param state the state reached
 * @param time the time from mixing
 * @param at the temperature at which the time holds
 * @param mass the mixed mass, for {@link CureState#POT_LIFE}
 * @param shape how the mass stands, for {@link CureState#POT_LIFE}
 * @param source where the point was read, as the definition says
 */
public record SheetPoint(
        CureState state, TimeSpan time, Temperature at, Optional<Mass> mass, PotShape shape, String source) {}

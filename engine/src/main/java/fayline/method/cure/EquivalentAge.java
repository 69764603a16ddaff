package fayline.method.cure;

import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import java.util.Optional;

/**
 * The question how old a mix is, counted at one reference temperature, after a history of temperature.
 *
 * @param history the history since mixing
 * @param until when to stop counting; the end of the history where none is given
 * @param rule how the speed depends on temperature; its reference is the temperature of the age
 * @param needed the age wanted, at the reference temperature; where given, the wait is answered
 * @param waitingAt the temperature that will hold while waiting; the history's last where none is given
 */
public record EquivalentAge(
        TemperatureHistory history,
        Optional<TimeSpan> until,
        RateRule rule,
        Optional<TimeSpan> needed,
        Optional<Temperature> waitingAt) {
    /** The age at the end of a history. */
    public static EquivalentAge of(TemperatureHistory history, RateRule rule) {
        return new EquivalentAge(history, Optional.empty(), rule, Optional.empty(), Optional.empty());
    }
}

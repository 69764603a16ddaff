package fayline.flow.result.air;

import fayline.basis.finding.Finding;
import fayline.basis.units.Fraction;
import fayline.basis.units.Temperature;
import java.time.LocalDate;
import java.util.List;

/**
 * A working day on which the shop is expected to be too cold or too damp for wet work.
 *
 * @param date the day
 * @param air air expected in working hours, on stands that are not kept warmer
 * @param humidity relative humidity expected
 * @param expected whether the day stands in the forecast; otherwise the usual day is taken
 * @param why what is outside the shop's limits
 * @param warmStands stands that are kept so much warmer that wet work may begin there
 * @param wet wet steps that the plan begins on that day on stands that are not
 * @param instead steps to do that need no resin and could be done on that day: all they wait for is over by then; those that
 *     the plan has soonest lead
 */
public record ColdDay(
        LocalDate date,
        Temperature air,
        Fraction humidity,
        boolean expected,
        List<Finding> why,
        List<String> warmStands,
        List<String> wet,
        List<String> instead) {
    /** Copies the lists. */
    public ColdDay {
        why = List.copyOf(why);
        warmStands = List.copyOf(warmStands);
        wet = List.copyOf(wet);
        instead = List.copyOf(instead);
    }
}

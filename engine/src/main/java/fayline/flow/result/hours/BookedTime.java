package fayline.flow.result.hours;

import fayline.flow.project.recipe.StepKind;
import java.time.LocalDate;

/**
 * Time of one person at one step on one day.
 *
 * @param day the day
 * @param person who
 * @param step the step, {@code project/made/make-number/key}
 * @param title its title
 * @param made the part or joint
 * @param kind the sort of work
 * @param paid whether the person is paid, so that it is not the builder's own work
 * @param minutes how long
 */
public record BookedTime(
        LocalDate day,
        String person,
        String step,
        String title,
        String made,
        StepKind kind,
        boolean paid,
        double minutes) {}

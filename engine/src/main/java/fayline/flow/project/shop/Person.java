package fayline.flow.project.shop;

import fayline.flow.project.catalog.Keyed;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One of the crew.
 *
 * @param id the id
 * @param name the name
 * @param skills what the person may be put to
 * @param volunteer whether the person may or may not come; planned only where the lead says so
 * @param hours usual working hours
 * @param absences days away
 * @param hourly what an hour of theirs costs, in the project's currency; empty where nobody pays for it or it is not said
 */
public record Person(
        String id,
        String name,
        Set<Skill> skills,
        boolean volunteer,
        List<Hours> hours,
        List<Absence> absences,
        OptionalDouble hourly)
        implements Keyed {
    /** Copies the collections. */
    public Person {
        skills = Set.copyOf(skills);
        hours = List.copyOf(hours);
        absences = List.copyOf(absences);
    }

    /** Somebody of whom no rate is said. */
    public Person(
            String id, String name, Set<Skill> skills, boolean volunteer, List<Hours> hours, List<Absence> absences) {
        this(id, name, skills, volunteer, hours, absences, OptionalDouble.empty());
    }

    /** The same, away once more. */
    public Person withAbsence(Absence absence) {
        List<Absence> all = new ArrayList<>(absences);
        all.add(absence);
        return new Person(id, name, skills, volunteer, hours, all, hourly);
    }

    /**
     * Working hours on some days of the week.
     *
     * @param days the days
     * @param from start of work, local time
     * @param to end of work, local time, the same day
     * @param pause the break within, where there is one
     */
    public record Hours(Set<DayOfWeek> days, LocalTime from, LocalTime to, Optional<Pause> pause) {
        /** Copies the set. */
        public Hours {
            days = Set.copyOf(days);
        }
    }

    /**
     * A break.
     *
     * @param from start, local time
     * @param to end, local time
     */
    public record Pause(LocalTime from, LocalTime to) {}

    /**
     * Days away, both ends included.
     *
     * @param from first day
     * @param to last day
     * @param why the reason, as the lead put it; may be empty
     */
    public record Absence(LocalDate from, LocalDate to, String why) {}
}

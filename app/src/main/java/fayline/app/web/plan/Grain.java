package fayline.app.web.plan;

import fayline.app.web.frame.Sight;
import fayline.app.web.frame.TimeWords;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Link;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Times of the plan at the grain that a shop uses: hours and minutes where resin decides and for what is begun, half days else.
 * Resin decides for wet work, for what is watched or hardens on a clock, and for both ends of a window.
 */
final class Grain {
    private static final LocalTime NOON = LocalTime.of(12, 0);
    /** What reaches over noon by no more than this is still of the one half. */
    private static final int LITTLE_MIN = 60;

    private final TimeWords time;
    private final Set<String> minutes;

    private Grain(TimeWords time, Set<String> minutes) {
        this.time = time;
        this.minutes = minutes;
    }

    /** For the plan that is seen. */
    static Grain of(Sight sight) {
        return of(sight.time(), sight.work().steps());
    }

    /** For some work. */
    static Grain of(TimeWords time, List<WorkStep> steps) {
        Set<String> minutes = new HashSet<>();
        for (WorkStep s : steps) {
            if (s.air().equals("wet")
                    || !s.watchMin().isEmpty()
                    || !s.alone().clock().isEmpty()
                    || s.state() != WorkStep.State.TODO) {
                minutes.add(s.id());
            }
            for (Link l : s.after()) {
                if (l.shuts().isPresent()) {
                    minutes.add(s.id());
                    minutes.add(l.step());
                }
            }
        }
        return new Grain(time, minutes);
    }

    /** Whether the hour and minute of a step count. */
    boolean isMinutes(String step) {
        return minutes.contains(step);
    }

    /** From and to on the day it begins: {@code 07:30 to 09:00}, or {@code morning}, {@code all day, to tomorrow morning}. */
    String words(PlannedStep s) {
        boolean oneDay = day(s.start()).equals(day(s.handsEnd()));
        if (isMinutes(s.step())) {
            return time.clock(s.start()) + " to " + (oneDay ? time.clock(s.handsEnd()) : time.at(s.handsEnd()));
        }
        if (oneDay) {
            return half(s.start(), s.handsEnd());
        }
        return (isBefore(s.start(), LITTLE_MIN) ? "from morning" : "from afternoon") + " to "
                + time.day(day(s.handsEnd()))
                + (isBefore(s.handsEnd(), -LITTLE_MIN) ? " noon" : " evening");
    }

    /** When it begins: {@code Thu 5 Mar 07:30}, or {@code Thu 5 Mar morning}. */
    String begins(PlannedStep s) {
        return isMinutes(s.step())
                ? time.at(s.start())
                : time.day(day(s.start())) + (isBefore(s.start(), LITTLE_MIN) ? " morning" : " afternoon");
    }

    private String half(Instant from, Instant to) {
        if (isBefore(to, -LITTLE_MIN)) {
            return "morning";
        }
        return isBefore(from, LITTLE_MIN) ? "all day" : "afternoon";
    }

    /** Whether a moment lies before noon by more than some minutes; by less than that after noon where they are negative. */
    private boolean isBefore(Instant at, int min) {
        return at.atZone(time.zone()).toLocalTime().plusMinutes(min).compareTo(NOON) <= 0;
    }

    private LocalDate day(Instant at) {
        return at.atZone(time.zone()).toLocalDate();
    }
}

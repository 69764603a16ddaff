package fayline.flow.plan;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One step on one part or joint.
 *
 * @param id unique: {@code project/made/make-number/step-key}
 * @param project the project
 * @param made the part or joint
 * @param title what the card is headed
 * @param kind key of the sort of work
 * @param hands hands-on minutes by crew size, least crew first; empty where no hands are needed
 * @param skills how many of the crew must have a skill
 * @param air {@code wet}, {@code dust} or {@code quiet}
 * @param interruptible whether it may stop over a break or a night
 * @param alone time without people after the hands leave
 * @param after what it waits for
 * @param notBefore earliest start: a delivery or a set day
 * @param awaits deliveries it waits for
 * @param watchMin minutes after the hands leave at which someone must be in the shop
 * @param accompanied whether a second person must be in the shop while the hands work
 * @param state how far it is
 * @param actual when it really happened, as far as it did
 */
public record WorkStep(
        String id,
        String project,
        String made,
        String title,
        String kind,
        List<CrewTime> hands,
        Map<String, Integer> skills,
        String air,
        boolean interruptible,
        Span alone,
        List<Link> after,
        Optional<Instant> notBefore,
        List<String> awaits,
        List<Integer> watchMin,
        boolean accompanied,
        State state,
        Actual actual) {
    /** Copies the collections. */
    public WorkStep {
        hands = List.copyOf(hands);
        skills = Map.copyOf(skills);
        after = List.copyOf(after);
        awaits = List.copyOf(awaits);
        watchMin = List.copyOf(watchMin);
    }

    /** The same with other hands-on times. */
    public WorkStep withHands(List<CrewTime> times) {
        return new ChangedStep(this).hands(times).step();
    }

    /** How far a step is. */
    public enum State {
        /** Not begun. */
        TODO,
        /** Hands are at it, or its unattended time runs. */
        RUNNING,
        /** Over, unattended time included. */
        DONE
    }

    /**
     * Hands-on time of a crew.
     *
     * @param people how many
     * @param minutes how long
     */
    public record CrewTime(int people, int minutes) {}

    /**
     * A span: minutes of time, or equivalent minutes on a clock.
     *
     * @param minutes how many; zero for none
     * @param clock the clock; empty for minutes of time
     */
    public record Span(double minutes, String clock) {
        /** No time at all. */
        public static final Span NONE = new Span(0, "");
    }

    /**
     * What a step waits for.
     *
     * @param step the earlier step
     * @param from from which moment of it the spans count: {@code start}, {@code hands-end} or {@code end}
     * @param opens span after which this step may start
     * @param shuts span before which this step must start, where there is one
     * @param miss the price of a missed window; without one the window is hard
     */
    public record Link(String step, String from, Span opens, Optional<Span> shuts, Optional<Miss> miss) {}

    /**
     * The price of a missed window.
     *
     * @param does what must be done instead
     * @param personMinutes extra hands, added to the step and shared by its crew, rounded up
     */
    public record Miss(String does, int personMinutes) {}

    /**
     * What really happened.
     *
     * @param started when the hands began
     * @param handsEnded when the hands left
     * @param ended when its unattended time was over
     * @param people who worked
     * @param places where
     */
    public record Actual(
            Optional<Instant> started,
            Optional<Instant> handsEnded,
            Optional<Instant> ended,
            List<String> people,
            List<String> places) {
        /** Nothing yet. */
        public static final Actual NONE =
                new Actual(Optional.empty(), Optional.empty(), Optional.empty(), List.of(), List.of());

        /** Copies the lists. */
        public Actual {
            people = List.copyOf(people);
            places = List.copyOf(places);
        }
    }
}

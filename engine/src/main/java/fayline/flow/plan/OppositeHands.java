package fayline.flow.plan;

import java.util.List;
import java.util.stream.Stream;

/**
 * What the second hand of a part takes over from the first.
 *
 * @param follows steps that follow the same step of the first hand
 * @param lessons steps that wait until the first hand has taught its lessons
 */
public record OppositeHands(List<Follow> follows, List<Taught> lessons) {
    /** Nothing is taken over. */
    public static final OppositeHands NONE = new OppositeHands(List.of(), List.of());

    /** Copies the lists. */
    public OppositeHands {
        follows = List.copyOf(follows);
        lessons = List.copyOf(lessons);
    }

    /** These and others. */
    public OppositeHands and(OppositeHands others) {
        return new OppositeHands(
                Stream.concat(follows.stream(), others.follows.stream()).toList(),
                Stream.concat(lessons.stream(), others.lessons.stream()).toList());
    }

    /** These without one that follows. */
    public OppositeHands without(Follow one) {
        return new OppositeHands(follows.stream().filter(f -> !f.equals(one)).toList(), lessons);
    }

    /**
     * A step that follows the same step of the first hand, so that hands stay practised.
     *
     * @param step the step of the second hand; it has a link to {@code first}, with a priced window where it is to follow soon
     * @param first the same step of the first hand
     * @param crew whose hands do it
     */
    public record Follow(String step, String first, Crew crew) {}

    /** Whose hands do the second of two steps. */
    public enum Crew {
        /** The smaller of both crews is wholly in the larger. */
        SAME,
        /** One person in common is enough. */
        ONE,
        /** Whoever. */
        ANY;

        /**
         * How many do both.
         *
         * @param first how many of those who do the first are in the shop
         * @param second how many do the second
         */
        public int least(int first, int second) {
            return switch (this) {
                case SAME -> Math.min(first, second);
                case ONE -> Math.min(1, first);
                case ANY -> 0;
            };
        }
    }

    /**
     * A link that stands for lessons: why a step waits.
     *
     * @param step the step that waits
     * @param first the step of the first hand with which its lessons are known; {@code step} has a link to it
     * @param of what taught, in words, as {@code the left half}
     */
    public record Taught(String step, String first, String of) {}
}

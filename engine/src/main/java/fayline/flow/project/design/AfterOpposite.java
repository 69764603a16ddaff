package fayline.flow.project.design;

import fayline.basis.units.TimeSpan;
import fayline.flow.project.recipe.StepKind;
import java.util.List;
import java.util.Optional;

/**
 * What a part asks for because its opposite hand is made first.
 *
 * @param lessonsOf the part, joint or step of the first hand with which its lessons are known
 * @param lessonsBefore kinds of steps of this hand that wait for them
 * @param crew whose hands do the same step of this hand
 * @param steps kinds of steps that this concerns; none for every step with hands
 * @param within how long after the first hand's step the same step of this one is still done with practised hands
 * @param again what getting into it again costs where that is missed, in time of one person
 */
public record AfterOpposite(
        Optional<String> lessonsOf,
        List<StepKind> lessonsBefore,
        Crew crew,
        List<StepKind> steps,
        Optional<TimeSpan> within,
        TimeSpan again) {
    /** Copies the lists. */
    public AfterOpposite {
        lessonsBefore = List.copyOf(lessonsBefore);
        steps = List.copyOf(steps);
    }

    /** Whether some steps follow the same steps of the first hand. */
    public boolean follows() {
        return crew != Crew.ANY || within.isPresent();
    }

    /** Whether it concerns a kind of step. */
    public boolean concerns(StepKind kind) {
        return steps.isEmpty() || steps.contains(kind);
    }

    /** Whose hands. */
    public enum Crew {
        /** The same people, as far as both crews go. */
        SAME,
        /** At least one of them. */
        ONE,
        /** Whoever. */
        ANY
    }
}

package fayline.method.laminate.optimum;

/**
 * The lightest symmetric stack by enumeration that proves: stacks of one ply more at a time, from the middle outwards; a part
 * stack is dropped only where no way to finish it can do, because its stiffness cannot become enough (upper bound by energy, see
 * {@link Grown}), its turned plies cannot be balanced any more, or it cannot become lighter than the best one found. Strength
 * bounds nothing, as adding a ply can weaken a stack: it is judged on whole stacks. Of equally light stacks the cheapest, of
 * these the first in the order of the choices. Bounds after [land-doig1960].
 */
public final class LightestStackCalculator {
    private LightestStackCalculator() {}

    /** Searches. */
    public static LightestStackResult calculate(LightestStack question) {
        return new StackSearch(question).run();
    }
}

package fayline.flow.whatif;

import fayline.flow.plan.Hold;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.plan.WorkStep.State;
import fayline.flow.plan.WorkWish;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A step done in parts of equal length, one after the other in the same place. What follows it follows the last part. A bag or a
 * mix that each part would want of its own is not counted.
 *
 * @param step which
 * @param parts how many, at least 2
 * @param restMin minutes between the end of a part and the start of the next, so that what was laid is hard
 * @param joinPersonMin person-minutes that each later part begins with: peel ply off, abrade, clean
 */
public record StepInParts(String step, int parts, int restMin, int joinPersonMin) implements Change {
    /** Checks the numbers. */
    public StepInParts {
        if (parts < 2 || restMin < 0 || joinPersonMin < 0) {
            throw new IllegalArgumentException("parts " + parts + ", rest " + restMin + ", join " + joinPersonMin);
        }
    }

    @Override
    public Work in(Work w) {
        List<WorkStep> steps = new ArrayList<>();
        List<String> made = new ArrayList<>();
        for (WorkStep s : w.steps()) {
            if (s.id().equals(step) && s.state() == State.TODO && !s.hands().isEmpty()) {
                for (int n = 1; n <= parts; n++) {
                    steps.add(part(s, n));
                    made.add(id(n));
                }
            } else {
                steps.add(s);
            }
        }
        return made.isEmpty()
                ? w
                : w.withSteps(steps, w.holds().stream().map(h -> with(h, made)).toList())
                        .withWishes(w.wishes().stream()
                                .flatMap(x -> x.step().equals(step) ? wished(x, made).stream() : Stream.of(x))
                                .toList());
    }

    /** A start is wished of the first part, people and places of each. */
    private static List<WorkWish> wished(WorkWish wish, List<String> made) {
        return made.stream()
                .filter(m -> wish.kind() != WorkWish.Kind.START || m.equals(made.get(0)))
                .map(m -> new WorkWish(
                        wish.id(), m, wish.kind(), wish.on(), wish.from(), wish.before(), wish.by(), wish.why()))
                .toList();
    }

    /** The last part keeps the name, so that what waits for the step waits for it. */
    private String id(int n) {
        return n == parts ? step : step + " part " + n;
    }

    private WorkStep part(WorkStep s, int n) {
        List<Link> after = n == 1
                ? s.after()
                : List.of(new Link(id(n - 1), "end", new Span(restMin, ""), Optional.empty(), Optional.empty()));
        return new WorkStep(
                id(n),
                s.project(),
                s.made(),
                s.title() + ", part " + n + " of " + parts,
                s.kind(),
                s.hands().stream().map(c -> share(c, n)).toList(),
                s.skills(),
                s.air(),
                s.interruptible(),
                n == parts ? s.alone() : Span.NONE,
                after,
                n == 1 ? s.notBefore() : Optional.empty(),
                n == 1 ? s.awaits() : List.of(),
                n == parts ? s.watchMin() : List.of(),
                s.accompanied(),
                s.state(),
                s.actual());
    }

    private CrewTime share(CrewTime c, int n) {
        double personMin = (double) c.people() * c.minutes() / parts + (n == 1 ? 0 : joinPersonMin);
        return new CrewTime(c.people(), (int) Math.ceil(personMin / c.people()));
    }

    private Hold with(Hold h, List<String> made) {
        return new Hold(
                h.id(),
                h.kind(),
                h.candidates(),
                h.count(),
                h.steps().stream()
                        .flatMap(s -> s.equals(step) ? made.stream() : List.of(s).stream())
                        .toList());
    }
}

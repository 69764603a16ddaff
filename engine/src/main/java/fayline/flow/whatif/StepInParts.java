package fayline.flow.whatif;

import fayline.flow.plan.ChangedStep;
import fayline.flow.plan.Hold;
import fayline.flow.plan.OppositeHands;
import fayline.flow.plan.OppositeHands.Follow;
import fayline.flow.plan.OppositeHands.Taught;
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
                    steps.add(part(s, n, w.hands()));
                    made.add(id(n));
                }
            } else {
                steps.add(s);
            }
        }
        return made.isEmpty()
                ? w
                : w.withSteps(steps, w.holds().stream().map(h -> with(h, made)).toList())
                        .withHands(followed(w.hands(), made))
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

    private WorkStep part(WorkStep s, int n, OppositeHands hands) {
        ChangedStep part = new ChangedStep(s)
                .named(id(n), s.title() + ", part " + n + " of " + parts)
                .hands(s.hands().stream().map(c -> share(c, n)).toList());
        if (n > 1) {
            part.after(later(n, hands)).anyDay().withoutDeliveries();
        }
        return (n == parts ? part : part.alone(Span.NONE).unwatched()).step();
    }

    /** What a later part waits for: the part before, and the step of the first hand whose crew it is to have too. */
    private List<Link> later(int n, OppositeHands hands) {
        List<Link> after = new ArrayList<>();
        after.add(new Link(id(n - 1), "end", new Span(restMin, ""), Optional.empty(), Optional.empty()));
        hands.follows().stream()
                .filter(f -> f.step().equals(step))
                .map(f -> new Link(f.first(), "hands-end", Span.NONE, Optional.empty(), Optional.empty()))
                .forEach(after::add);
        return after;
    }

    /** Each part follows the first hand as the step did; only the first part waits for lessons. */
    private OppositeHands followed(OppositeHands hands, List<String> made) {
        return new OppositeHands(
                hands.follows().stream()
                        .flatMap(f -> f.step().equals(step)
                                ? made.stream().map(m -> new Follow(m, f.first(), f.crew()))
                                : Stream.of(f))
                        .toList(),
                hands.lessons().stream()
                        .map(t -> t.step().equals(step) ? new Taught(made.get(0), t.first(), t.of()) : t)
                        .toList());
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
                        .flatMap(s -> s.equals(step) ? made.stream() : Stream.of(s))
                        .toList());
    }
}

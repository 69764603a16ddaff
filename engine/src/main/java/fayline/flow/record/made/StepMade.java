package fayline.flow.record.made;

import java.util.List;
import java.util.Optional;

/**
 * What went into one step, each list in the order of its entries.
 *
 * @param step the step: {@code project/made/make-number/key}
 * @param from the entry from which on it is made anew, where what it is of was scrapped; else 0
 * @param draws lots drawn
 * @param mixes cups mixed
 * @param plies plies laid or left out
 */
public record StepMade(String step, long from, List<Draw> draws, List<Mix> mixes, List<Laid> plies) {
    /** Copies the lists. */
    public StepMade {
        draws = List.copyOf(draws);
        mixes = List.copyOf(mixes);
        plies = List.copyOf(plies);
    }

    /** What went into a step of something that was never scrapped. */
    public StepMade(String step, List<Draw> draws, List<Mix> mixes, List<Laid> plies) {
        this(step, 0, draws, mixes, plies);
    }

    /** A step into which nothing went. */
    public static StepMade none(String step) {
        return new StepMade(step, List.of(), List.of(), List.of());
    }

    /** Without what went into it before it was scrapped. */
    public StepMade current() {
        return from == 0
                ? this
                : new StepMade(
                        step,
                        0,
                        draws.stream().filter(d -> d.seq() > from).toList(),
                        mixes.stream().filter(m -> m.seq() > from).toList(),
                        plies.stream().filter(p -> p.seq() > from).toList());
    }

    /** What is told of a ply: that it was laid, which counts more, or else that it was left out. */
    public Optional<Laid> ply(String number) {
        Optional<Laid> laid = plies.stream()
                .filter(p -> p.ply().equals(number) && !p.skipped())
                .findFirst();
        return laid.isPresent()
                ? laid
                : plies.stream().filter(p -> p.ply().equals(number)).findFirst();
    }

    /** Whether nothing is told of it. */
    public boolean isEmpty() {
        return draws.isEmpty() && mixes.isEmpty() && plies.isEmpty();
    }
}

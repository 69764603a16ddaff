package fayline.flow.project;

import fayline.basis.units.UnitSystem;
import fayline.flow.project.catalog.Keyed;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The project's own facts.
 *
 * @param id the project's id
 * @param name the aircraft's name
 * @param serial its serial
 * @param design the design it is made to
 * @param revision the design's revision
 * @param demo whether this is a demonstration; only then may the clock be fixed
 * @param clock the moment at which a demonstration begins
 * @param units the units the shop reads
 * @param currency the currency of prices, as its ISO 4217 code
 * @param start the first day of work
 * @param milestones dated goals
 * @param paces changes of pace that somebody expects, in the order of their days
 * @param about what the project is, in a sentence or two
 * @param budget what it may cost, in its currency
 */
public record ProjectFacts(
        String id,
        String name,
        String serial,
        String design,
        String revision,
        boolean demo,
        Optional<Instant> clock,
        UnitSystem units,
        String currency,
        LocalDate start,
        List<Milestone> milestones,
        List<Pace> paces,
        String about,
        OptionalDouble budget) {
    /** Copies the lists. */
    public ProjectFacts {
        milestones = List.copyOf(milestones);
        paces = List.copyOf(paces);
    }

    /**
     * A change of pace that history cannot know: a move, a winter.
     *
     * @param from the day from which it holds, until the next change
     * @param share of the pace so far; positive, 1 for back to it
     * @param why the reason, as the lead put it
     */
    public record Pace(LocalDate from, double share, String why) {}

    /**
     * A dated goal.
     *
     * @param id its id
     * @param name what is reached
     * @param due the day by which
     * @param after the assembly, part or joint that must be done
     */
    public record Milestone(String id, String name, LocalDate due, String after) implements Keyed {}
}

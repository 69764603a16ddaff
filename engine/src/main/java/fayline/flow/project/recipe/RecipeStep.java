package fayline.flow.project.recipe;

import fayline.basis.units.TimeSpan;
import fayline.flow.project.catalog.Keyed;
import fayline.flow.project.shop.Skill;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One step of a recipe. Text fields may hold {@code with.NAME} for a parameter.
 *
 * @param id the key within the recipe
 * @param kind what sort of work it is
 * @param title what the card is headed
 * @param say instructions in order, imperative
 * @param hands rates that add up to person-minutes
 * @param crew least and most useful number of people
 * @param crewFactor person-minutes multiplied by this at a crew size; 1 where nothing is said
 * @param skills how many of the crew must have a skill
 * @param air what the work does to the air, or needs of it
 * @param interruptible whether it may stop over a break or a night
 * @param alone time without people after the hands-on part
 * @param mixes what is mixed for it
 * @param stage the lay-up stage whose plies it lays; 0 where it lays none
 * @param bagged whether consumables of a bag are drawn for it
 * @param after what it waits for; the step before it where nothing is said
 * @param watch how long after its hands-on part someone must look at it
 * @param checks what is checked, each with its limit
 * @param record what is written down
 * @param cautions keys of the caution table
 * @param hold whether it needs a signature before what follows
 * @param whichWay whether the card asks which way round before the hands begin
 * @param when a parameter that must not be {@code no} or {@code 0} for the step to exist; empty for always
 */
public record RecipeStep(
        String id,
        StepKind kind,
        String title,
        List<String> say,
        List<HandsRate> hands,
        Crew crew,
        Map<Integer, Double> crewFactor,
        Map<Skill, Integer> skills,
        Air air,
        boolean interruptible,
        Optional<Alone> alone,
        List<MixUse> mixes,
        String stage,
        boolean bagged,
        List<After> after,
        List<TimeSpan> watch,
        List<String> checks,
        List<String> record,
        List<String> cautions,
        boolean hold,
        boolean whichWay,
        String when)
        implements Keyed {
    /** Copies the collections. */
    public RecipeStep {
        say = List.copyOf(say);
        hands = List.copyOf(hands);
        crewFactor = Map.copyOf(crewFactor);
        skills = Map.copyOf(skills);
        mixes = List.copyOf(mixes);
        after = List.copyOf(after);
        watch = List.copyOf(watch);
        checks = List.copyOf(checks);
        record = List.copyOf(record);
        cautions = List.copyOf(cautions);
    }

    /**
     * Crew size.
     *
     * @param least fewest people
     * @param useful most that still help
     */
    public record Crew(int least, int useful) {}

    /** What work does to the air. */
    public enum Air {
        /** Open resin: no dust near. */
        WET,
        /** Makes dust. */
        DUST,
        /** Neither. */
        QUIET
    }
}

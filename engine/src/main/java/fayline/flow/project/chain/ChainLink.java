package fayline.flow.project.chain;

import fayline.flow.project.fit.FitHolding;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.chain.Placement;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One bond of a chain.
 *
 * @param name what it is called
 * @param part what is bonded
 * @param carrier what it is bonded to: the part of the next link, or what does not move
 * @param onBench whether it is bonded on a bench; else on the airframe
 * @param done whether it is bonded
 * @param schemeOf the fit that names its scheme, by id; empty where the link has its own
 * @param holding its own points and schemes; the chosen scheme's name counts in either case
 * @param pivot about which its moves are told, in its own frame; empty for the middle of the last stations
 * @param room how far a correction can go here, in its own frame
 * @param placement where its own frame lies in the last fit's, as drawn
 * @param marks by which its frame is laid onto the last fit's instead; empty where it is placed as drawn
 */
public record ChainLink(
        String name,
        String part,
        String carrier,
        boolean onBench,
        boolean done,
        Optional<String> schemeOf,
        FitHolding holding,
        Optional<Spot> pivot,
        MoveLimits room,
        Placement placement,
        List<Mark> marks) {
    /** Copies the list. */
    public ChainLink {
        marks = List.copyOf(marks);
    }

    /**
     * A mark that is found on the bench and in place.
     *
     * @param name what it is called
     * @param bench where it is on the bench
     * @param place where it is in the last fit's frame
     * @param deviationMm standard deviation of finding it, along each axis, once on the bench and once in place; empty where
     *     nobody gave it
     */
    public record Mark(String name, Spot bench, Spot place, OptionalDouble deviationMm) {}
}

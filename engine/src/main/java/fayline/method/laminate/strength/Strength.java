package fayline.method.laminate.strength;

import fayline.method.laminate.SectionLoad;
import java.util.List;

/**
 * The question when a stack fails.
 *
 * @param plies layers from z = -h/2 to z = +h/2; at least one
 * @param load what acts; forces and moments grow together, the temperature change stays
 * @param criterion when a ply fails
 */
public record Strength(List<StrongPly> plies, SectionLoad load, Criterion criterion) {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if no layer has strengths
     */
    public Strength {
        plies = List.copyOf(plies);
        if (plies.stream().allMatch(p -> p.strength().isEmpty())) {
            throw new IllegalArgumentException("no ply has strengths");
        }
    }
}

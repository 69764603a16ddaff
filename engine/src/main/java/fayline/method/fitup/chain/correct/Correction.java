package fayline.method.fitup.chain.correct;

import fayline.method.fitup.chain.Chain;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The question where a correction goes.
 *
 * @param chain links, of which the open ones can take a correction, and the gaps as they would come out without one
 * @param neighbours those that can still move
 */
public record Correction(Chain chain, List<Neighbour> neighbours) {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if a neighbour is named twice, is part of the chain or lies at no station
     */
    public Correction {
        neighbours = List.copyOf(neighbours);
        Set<String> names = new HashSet<>();
        for (Neighbour n : neighbours) {
            if (!names.add(n.name())
                    || chain.links().stream()
                            .anyMatch(l ->
                                    l.part().equals(n.name()) || l.carrier().equals(n.name()))) {
                throw new IllegalArgumentException("neighbour " + n.name() + " is named twice or part of the chain");
            }
            if (chain.stations().stream().noneMatch(s -> s.against().equals(n.name()))) {
                throw new IllegalArgumentException("neighbour " + n.name() + " lies at no station");
            }
        }
    }
}

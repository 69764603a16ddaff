package fayline.flow.project.chain;

import fayline.flow.project.catalog.Keyed;
import fayline.method.fitup.MoveLimits;
import java.util.List;

/**
 * A part that reaches its place through several bonds.
 *
 * @param id the id
 * @param name the name
 * @param endsAt the fit at which the last gaps are read and wanted, by id
 * @param links the bonds, from the part outward
 * @param neighbours what lies at the last gaps and can still be moved
 * @param remedies what can be done after the cure
 */
public record FitChain(
        String id,
        String name,
        String endsAt,
        List<ChainLink> links,
        List<CanMove> neighbours,
        List<ChainRemedy> remedies)
        implements Keyed {
    /** Copies the lists. */
    public FitChain {
        links = List.copyOf(links);
        neighbours = List.copyOf(neighbours);
        remedies = List.copyOf(remedies);
    }

    /**
     * A neighbour that can move.
     *
     * @param name what stations call what lies opposite
     * @param room how far it can go
     */
    public record CanMove(String name, MoveLimits room) {}
}

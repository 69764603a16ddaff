package fayline.method.fitup.chain;

import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.scheme.Scheme;
import java.util.Optional;

/**
 * One bond of a chain.
 *
 * @param name what it is called
 * @param part what is bonded
 * @param carrier what it is bonded to: the part of the next link, or what does not move
 * @param pivot pivot of its moves, in its own frame
 * @param scheme how the part is located, in its own frame
 * @param placement where its own frame lies in the final one
 * @param carried how readings were carried to its frame, where they were; its uncertainty then adds to the link's
 * @param open whether it is still to be bonded, so that a correction can go there
 * @param room how far a correction can go, in its own frame
 * @param settled whether the gaps were read with this bond made: its errors are in the readings and add nothing
 */
public record Link(
        String name,
        String part,
        String carrier,
        Spot pivot,
        Scheme scheme,
        Placement placement,
        Optional<DatumFit> carried,
        boolean open,
        MoveLimits room,
        boolean settled) {
    /**
     * Checks that it can be.
     *
     * @throws IllegalArgumentException if it is settled and still open
     */
    public Link {
        if (settled && open) {
            throw new IllegalArgumentException("link " + name + " is still open, so no reading can hold its errors");
        }
    }

    /** A link whose frame is laid onto the final one by marks. */
    public static Link onBench(
            String name,
            String part,
            String carrier,
            Spot pivot,
            Scheme scheme,
            DatumFit marks,
            boolean open,
            MoveLimits room) {
        return new Link(name, part, carrier, pivot, scheme, marks.placement(), Optional.of(marks), open, room, false);
    }

    /** The pivot in the final frame. */
    public Spot finalPivot() {
        return placement.toFinal(pivot);
    }
}

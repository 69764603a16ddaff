package fayline.app.web.lots;

import java.util.List;

/**
 * What the page of a lot shows.
 *
 * @param id its number
 * @param what of what
 * @param left what is left
 * @param over whether it may no longer be used
 * @param facts what else is known
 * @param cold how it stands with the cold; empty where that does not count
 * @param inRoom whether it lies in the room
 * @param moves what moved it
 * @param uses where it went
 * @param parts the parts it went into
 * @param bench the cards of running steps that take it
 * @param label the address of its label
 * @param certificate the address of its certificate; empty where there is none
 */
public record LotView(
        String id,
        String what,
        String left,
        boolean over,
        List<Fact> facts,
        String cold,
        boolean inRoom,
        List<Move> moves,
        List<Use> uses,
        List<Link> parts,
        List<Link> bench,
        String label,
        String certificate) {
    /** Copies the lists. */
    public LotView {
        facts = List.copyOf(facts);
        moves = List.copyOf(moves);
        uses = List.copyOf(uses);
        parts = List.copyOf(parts);
        bench = List.copyOf(bench);
    }

    /** A name and a value. */
    public record Fact(String name, String value) {}

    /** Words that lead somewhere. */
    public record Link(String words, String address) {}

    /** A move: when, what it was, the step it was for, the change and what was left. */
    public record Move(String when, String sort, Link step, String change, String left) {}

    /** A use: when, the step, which batch or ply, how much, with what, by whom, the entry. */
    public record Use(String when, Link step, String what, String amount, Link with, String by, String entry) {}
}

package fayline.app.web.chain;

import java.util.List;

/**
 * What the page of a chain shows.
 *
 * @param id its id
 * @param name its name
 * @param fit the last fit
 * @param fitLink its page
 * @param read whether its gaps were read
 * @param links the bonds, from the part outward
 * @param readings the part of the worst station's spread that readings bring, in words; empty where it is not told
 * @param chance the chance that all gaps end inside; empty where it is not told
 * @param worst the station of lowest chance with its spread; empty where it is not told
 * @param correct where the correction goes, one line for each that moves
 * @param ways the other ways to correct
 * @param neighbours what else can move
 * @param remedies what is left after the cure
 * @param missing what nobody has given
 * @param assumed what is assumed instead
 * @param findings what must be said
 * @param assuming whether the usual values are taken
 */
public record ChainView(
        String id,
        String name,
        String fit,
        String fitLink,
        boolean read,
        List<Link> links,
        String readings,
        String chance,
        String worst,
        List<String> correct,
        List<Way> ways,
        List<String> neighbours,
        List<Way> remedies,
        List<String> missing,
        List<String> assumed,
        List<String> findings,
        boolean assuming) {
    /** Copies the lists. */
    public ChainView {
        links = List.copyOf(links);
        correct = List.copyOf(correct);
        ways = List.copyOf(ways);
        neighbours = List.copyOf(neighbours);
        remedies = List.copyOf(remedies);
        missing = List.copyOf(missing);
        assumed = List.copyOf(assumed);
        findings = List.copyOf(findings);
    }

    /**
     * A bond.
     *
     * @param name what it is called
     * @param what what is bonded to what
     * @param where where, and how it is located
     * @param done whether it is bonded
     * @param percent its part of the worst station's spread in percent; below zero where it is not told
     * @param most whether it spends most
     */
    public record Link(String name, String what, String where, boolean done, int percent, boolean most) {}

    /**
     * A way to correct, or a remedy.
     *
     * @param name what moves or is done
     * @param worst the worst gap it reaches
     * @param fits whether all gaps come inside
     * @param outside stations that stay outside
     * @param cost what it costs; empty where that is not asked
     */
    public record Way(String name, String worst, boolean fits, String outside, String cost) {}
}

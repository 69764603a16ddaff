package fayline.app.web.chain;

import fayline.app.web.fit.FitView;
import java.util.List;
import java.util.Optional;

/**
 * What the page of a chain shows.
 *
 * @param id its id
 * @param name its name
 * @param fit the last fit
 * @param fitLink its page
 * @param read whether its gaps were read
 * @param drawing the chain, drawn
 * @param links the bonds, from the part outward
 * @param sure the chance and what it rests on
 * @param correction where the correction goes; empty where there is none to make
 * @param carried what was read on the airframe, on each bench
 * @param remedies what is left after the cure
 * @param findings what must be said
 * @param whys how the figures come about
 */
public record ChainView(
        String id,
        String name,
        String fit,
        String fitLink,
        boolean read,
        String drawing,
        List<Link> links,
        Sure sure,
        Optional<Correct> correction,
        List<Carried> carried,
        List<Way> remedies,
        List<String> findings,
        List<FitView.Why> whys) {
    /** Copies the lists. */
    public ChainView {
        links = List.copyOf(links);
        carried = List.copyOf(carried);
        remedies = List.copyOf(remedies);
        findings = List.copyOf(findings);
        whys = List.copyOf(whys);
    }

    /**
     * A bond.
     *
     * @param name what it is called
     * @param what what is bonded to what
     * @param where where, and how it is located
     * @param done whether it is bonded
     * @param share its part of the worst station's variance; empty where it is not told
     * @param most whether it spends most
     * @param fit the fit at this bond; empty where none is written down
     */
    public record Link(
            String name,
            String what,
            String where,
            boolean done,
            String share,
            boolean most,
            Optional<FitView.Fact> fit) {}

    /**
     * How sure it is.
     *
     * @param chance the chance that all gaps end inside; empty where it is not told
     * @param asItLies the same without the correction; empty where there is none or it is not told
     * @param worst the station of lowest chance with its spread; empty where it is not told
     * @param rest what else than bonds spreads the gap there; empty where it is not told
     * @param missing what nobody has given
     * @param assumed what is assumed instead
     * @param assuming whether the usual values are taken
     */
    public record Sure(
            String chance,
            String asItLies,
            String worst,
            String rest,
            List<String> missing,
            List<String> assumed,
            boolean assuming) {
        /** Copies the lists. */
        public Sure {
            missing = List.copyOf(missing);
            assumed = List.copyOf(assumed);
        }
    }

    /**
     * Where the correction goes.
     *
     * @param verdict what it reaches, in a sentence
     * @param fits whether every gap comes inside
     * @param moves what moves
     * @param ways the ways side by side
     * @param neighbours what is to be said of neighbours that can move
     */
    public record Correct(String verdict, boolean fits, List<Moved> moves, List<Way> ways, String neighbours) {
        /** Copies the lists. */
        public Correct {
            moves = List.copyOf(moves);
            ways = List.copyOf(ways);
        }
    }

    /**
     * Something that moves.
     *
     * @param name what
     * @param move which way, how far, about which point
     * @param bench the same on its bench; empty where that is the same
     * @param gaps the gaps that result
     */
    public record Moved(String name, String move, String bench, String gaps) {}

    /**
     * A way to correct, or a remedy.
     *
     * @param name what moves or is done
     * @param does how much; empty where that is told elsewhere
     * @param worst the worst gap it reaches
     * @param fits whether all gaps come inside
     * @param outside stations that stay outside
     * @param chance the chance afterwards; empty where it is not told
     * @param cost what it costs; empty where that is not asked
     */
    public record Way(
            String name, String does, String worst, boolean fits, String outside, String chance, String cost) {
        /** Whether all gaps come inside, and which do not, in words. */
        public String inside() {
            return fits ? "yes" : outside.isEmpty() ? "no" : "no: " + outside;
        }
    }

    /**
     * Readings carried to a bench.
     *
     * @param link the bond that is made there
     * @param lies how the bench lies on the airframe, and how well that is known
     * @param marks the marks
     * @param doubtful a mark to measure again, in a sentence; empty for none
     * @param stations the stations
     */
    public record Carried(String link, String lies, List<Mark> marks, String doubtful, List<Station> stations) {
        /** Copies the lists. */
        public Carried {
            marks = List.copyOf(marks);
            stations = List.copyOf(stations);
        }
    }

    /**
     * A mark.
     *
     * @param name what it is called
     * @param bench its place on the bench
     * @param place its place on the airframe
     * @param sure how well it is found
     * @param off how far it is from where the others put it
     */
    public record Mark(String name, String bench, String place, String sure, String off) {}

    /**
     * A station on the bench.
     *
     * @param id its mark
     * @param bench its place on the bench
     * @param gap the gap read on the airframe
     * @param wanted the gap wanted there now
     * @param goes which way its edge goes here and how far
     * @param marks what the marks alone add to its spread
     */
    public record Station(String id, String bench, String gap, String wanted, String goes, String marks) {}
}

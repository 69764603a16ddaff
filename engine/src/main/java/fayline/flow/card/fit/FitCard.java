package fayline.flow.card.fit;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.flow.card.Caution;
import fayline.flow.project.design.Hand;
import fayline.flow.project.fit.FitState;
import fayline.flow.result.fit.ShopHeat;
import fayline.flow.result.fit.StationFlush;
import fayline.flow.result.fit.frame.SprungResult;
import fayline.flow.result.fit.frame.WidthAnswer;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.frame.spring.ClampLimits;
import fayline.method.fitup.shim.ShimStack;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The card of one fit.
 *
 * @param fit the fit's id
 * @param name its name
 * @param part name of the part; empty where none is named yet
 * @param hand its hand
 * @param against names of its neighbours
 * @param definition revision and hash of the definition it was made from
 * @param state the state whose readings it rests on; empty where nothing is read
 * @param temperatureDegC the temperature noted with those readings
 * @param reasons what speaks against the adhesive and what else to know, stops first
 * @param set how the part is set; empty where no move can be told
 * @param holds places where it is held and clamped, in the order of the index points
 * @param located the chosen scheme; empty where none is chosen
 * @param assumed what was assumed where nobody gave an uncertainty, in words
 * @param bond the joint that bonds it; empty where the definition has none
 * @param cast the bond line as test castings show it; empty where none was taken
 * @param shop what the shop's temperature makes of the gaps; empty where no move can be told
 * @param lastChance the stations to read under clamps before gel, those that decide first
 * @param widths the widths of its frame that springs; none where none is named
 * @param sprung its frame clamped and let go, where it is told as beams and the adhesive has not set
 * @param cautions dangers
 */
public record FitCard(
        String fit,
        String name,
        String part,
        Hand hand,
        List<String> against,
        String definition,
        Optional<FitState> state,
        OptionalDouble temperatureDegC,
        List<Finding> reasons,
        Optional<Setting> set,
        List<Hold> holds,
        Optional<Located> located,
        List<Phrase> assumed,
        Optional<FitBond> bond,
        Optional<CastBond> cast,
        Optional<ShopHeat> shop,
        List<Reading> lastChance,
        List<WidthAnswer> widths,
        Optional<SprungResult> sprung,
        List<Caution> cautions) {
    /** What goes with the clamp forces of every frame, a sentence each. */
    public static final List<Phrase> FRAME_CARE = List.of(
            Phrase.of(
                    "Do not force a frame shut: what takes more than a hand's %s or bends past %.1f %% is corrected, not pulled in."
                            + " Common practice, no source.",
                    Amount.newtons(ClampLimits.USUAL.handN(), 0), 100 * ClampLimits.USUAL.bendingStrain()),
            Phrase.plain(
                    "What is pulled in stays in the bond as peel, and peel lets go first: clamps stay on until full cure, and"
                            + " come off one after the other while somebody watches the bond line."),
            Phrase.plain(
                    "Straight beams, small motions, no contact, no peaks at the ends of a bond line: the trial on the bench"
                            + " decides."));

    /** Copies the lists. */
    public FitCard {
        against = List.copyOf(against);
        reasons = List.copyOf(reasons);
        holds = List.copyOf(holds);
        assumed = List.copyOf(assumed);
        lastChance = List.copyOf(lastChance);
        widths = List.copyOf(widths);
        cautions = List.copyOf(cautions);
    }

    /** Whether nothing stops the adhesive. */
    public boolean go() {
        return stops().isEmpty();
    }

    /** What stops the adhesive. */
    public List<Finding> stops() {
        return reasons.stream().filter(r -> r.severity() == Severity.STOP).toList();
    }

    /**
     * How the part is set.
     *
     * @param move the move; of a curved part what of it lies in the plane
     * @param pivot its pivot
     * @param sentence the move in words
     * @param atMarks where marked places go, in words; then the flush to see, of a flat part what brings it flush before
     */
    public record Setting(Move move, Spot pivot, Phrase sentence, List<Phrase> atMarks) {
        /** Copies the list. */
        public Setting {
            atMarks = List.copyOf(atMarks);
        }
    }

    /**
     * A place where the part is held off its neighbour, and clamped.
     *
     * @param point the index point
     * @param at where
     * @param near the station next to it; empty where none has a place
     * @param exactMm what must be filled; empty where that is not known
     * @param stack the pieces from stock; empty where there is no stock or no answer
     * @param forceN the clamp's force; empty where it is not known
     */
    public record Hold(
            String point,
            Spot at,
            String near,
            OptionalDouble exactMm,
            Optional<ShimStack> stack,
            OptionalDouble forceN) {}

    /**
     * The chosen way to locate it.
     *
     * @param scheme its name
     * @param stops its stops
     * @param chance the chance that every gap ends inside; empty where something is missing
     * @param weakest the station of lowest chance; empty as well then
     * @param missing what is missing for it, in words
     */
    public record Located(
            String scheme, List<String> stops, OptionalDouble chance, String weakest, List<String> missing) {
        /** Copies the lists. */
        public Located {
            stops = List.copyOf(stops);
            missing = List.copyOf(missing);
        }
    }

    /**
     * A station to read under clamps.
     *
     * @param station its mark
     * @param where where it is, in words
     * @param nowMm the gap as read
     * @param expectedMm the gap to see in the shop when all is set as this card says
     * @param lowerMm least allowed as seen there, a gap never to be undercut included
     * @param upperMm most allowed as seen there
     * @param flush the flush to read there as well
     * @param decides whether it decides the move or is the likeliest to end outside
     */
    public record Reading(
            String station,
            String where,
            double nowMm,
            double expectedMm,
            double lowerMm,
            double upperMm,
            StationFlush flush,
            boolean decides) {}
}

package fayline.app.web.traveller;

import fayline.app.drawing.Mark;
import java.util.List;

/**
 * What goes into a step, as its card shows it.
 *
 * @param plies plies in the order of laying, each with what is recorded of it
 * @param next number of the next ply; empty where all are told of
 * @param nextName what the next ply is
 * @param plyLots lots of the plies' materials, by material
 * @param cups one form for each system that is mixed
 * @param mixed cups that were mixed
 * @param stock lots of everything that is drawn, by material
 * @param drawn lots that were drawn
 * @param mayOverride whether a lot out of date may be allowed here
 * @param air the shop's air as it was read last; empty where it never was
 * @param leak whether a bag is tested here
 * @param leaks its tests
 * @param missing what is missing before it is finished
 * @param given a lot that was asked for by its label; empty for none
 */
public record TravellerView(
        List<Ply> plies,
        String next,
        String nextName,
        List<Lots> plyLots,
        List<Cup> cups,
        List<Line> mixed,
        List<Lots> stock,
        List<Line> drawn,
        boolean mayOverride,
        String air,
        boolean leak,
        List<Line> leaks,
        List<Lack> missing,
        String given) {
    /** Copies the lists. */
    public TravellerView {
        plies = List.copyOf(plies);
        plyLots = List.copyOf(plyLots);
        cups = List.copyOf(cups);
        mixed = List.copyOf(mixed);
        stock = List.copyOf(stock);
        drawn = List.copyOf(drawn);
        leaks = List.copyOf(leaks);
        missing = List.copyOf(missing);
    }

    /** Whether the lot that was asked for is one to draw here. */
    public boolean givenIsDrawn() {
        return stock.stream().anyMatch(l -> l.holds(given));
    }

    /** Whether a lot was asked for that nothing of this step takes. */
    public boolean givenIsStrange() {
        return !given.isEmpty()
                && !givenIsDrawn()
                && plyLots.stream().noneMatch(l -> l.holds(given))
                && cups.stream()
                        .noneMatch(c -> c.resin().holds(given) || c.hardener().holds(given));
    }

    /** How many plies are told of. */
    public long told() {
        return plies.stream().filter(p -> !p.word().equals("to lay")).count();
    }

    /**
     * A ply.
     *
     * @param number its place
     * @param name zone, material, direction
     * @param material the material's id
     * @param word laid, left out or to lay
     * @param mark the word's mark
     * @param tone the word's colour
     * @param says when, by whom, from which lot, why
     */
    public record Ply(String number, String name, String material, String word, Mark mark, String tone, String says) {}

    /**
     * Lots of one material, the first to take leading.
     *
     * @param material the material's id
     * @param name its name
     * @param component which part of a system; empty otherwise
     * @param lots the lots
     */
    public record Lots(String material, String name, String component, List<Lot> lots) {
        /** Copies the list. */
        public Lots {
            lots = List.copyOf(lots);
        }

        /** Whether a lot is among them. */
        public boolean holds(String lot) {
            return lots.stream().anyMatch(l -> l.id().equals(lot));
        }
    }

    /**
     * A lot to pick.
     *
     * @param id its number
     * @param says until when it is good
     * @param past whether it is out of date
     * @param chosen whether it is picked beforehand: what was taken last, or the first in date
     */
    public record Lot(String id, String says, boolean past, boolean chosen) {}

    /**
     * A form for the cups of one system.
     *
     * @param system the system's id
     * @param name its name
     * @param batches numbers of the card's batches, and one more
     * @param next the number picked beforehand
     * @param resin lots of the resin
     * @param hardener lots of the hardener
     * @param partsResin parts by mass
     * @param partsHardener parts by mass
     * @param tolerance how far the hardener may be off, as a fraction
     * @param unit the unit of the shop's scale
     */
    public record Cup(
            String system,
            String name,
            List<String> batches,
            String next,
            Lots resin,
            Lots hardener,
            String partsResin,
            String partsHardener,
            String tolerance,
            String unit) {
        /** Copies the list. */
        public Cup {
            batches = List.copyOf(batches);
        }
    }

    /**
     * Something recorded.
     *
     * @param says what, in a sentence
     * @param trouble what is wrong with it; empty for nothing
     * @param entry its entry
     */
    public record Line(String says, String trouble, long entry) {}

    /**
     * Something missing.
     *
     * @param key its word in the form
     * @param what what it is
     */
    public record Lack(String key, String what) {}
}

package fayline.flow.card;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The caution table: what a card says of a danger, by key. Common practice in the trade; local rules, the data sheet and a
 * licensed person come first, and the wording never says that something is safe.
 */
public final class Cautions {
    private static final String SHEET = "common practice, no source; the safety data sheet and local rules come first";
    private static final String LICENSED = "common practice, no source; local rules and a licensed person decide";
    private static final Map<String, Caution> TABLE = table();

    private Cautions() {}

    /** Every caution, in the order of the table. */
    public static List<Caution> all() {
        return List.copyOf(TABLE.values());
    }

    /** The caution with a key. */
    public static Optional<Caution> find(String key) {
        return Optional.ofNullable(TABLE.get(key));
    }

    /** The caution with a key; for an unknown one, a caution that says so. */
    public static Caution get(String key) {
        return find(key)
                .orElse(new Caution(
                        key,
                        key,
                        "The recipe names this danger but the caution table does not know it: ask the lead before you begin.",
                        "the definition"));
    }

    private static Map<String, Caution> table() {
        Map<String, Caution> t = new LinkedHashMap<>();
        chemistry(t);
        bodies(t);
        aircraft(t);
        return t;
    }

    private static void chemistry(Map<String, Caution> t) {
        put(
                t,
                "epoxy",
                "Allergy for life",
                "Resin, and hardener above all, can make you allergic for life. Nitrile gloves, changed often; sleeves;"
                        + " eye protection. Never clean skin with solvent.",
                SHEET);
        put(
                t,
                "isocyanate",
                "Isocyanate",
                "Harms the lungs and can make you allergic for life, even without a smell. Air extraction and the mask of the"
                        + " data sheet; nobody with asthma; gloves and sleeves.",
                SHEET);
        put(
                t,
                "exotherm",
                "Hot pot",
                "A full pot heats itself, smokes and can burn. Keep under the largest batch on this card, spread what is left"
                        + " thin in a tray, outside; never put a lid on it.",
                SHEET);
        put(
                t,
                "peroxide",
                "Peroxide catalyst",
                "Blinds an eye within seconds: goggles, always. Never let it touch accelerator neat: it explodes. Small amounts,"
                        + " no metal, no fire; rags into a closed metal bin.",
                SHEET);
        put(
                t,
                "styrene",
                "Styrene vapour",
                "Moving fresh air and the mask of the data sheet; no flame, no spark.",
                SHEET);
        put(
                t,
                "solvent",
                "Solvent",
                "Burns, and its vapour travels. Fresh air, no spark, gloves that the solvent does not pass. Rags heat themselves:"
                        + " closed metal bin, emptied every day. Many solvents craze acrylic.",
                SHEET);
        put(
                t,
                "dust",
                "Dust",
                "Cured and half-cured resin, carbon and glass dust harm lungs and skin. Extraction at the tool, mask, cover;"
                        + " nothing wet in the same air.",
                SHEET);
        put(
                t,
                "carbon-dust",
                "Carbon dust conducts",
                "Carbon dust shorts plugs, motors and computers. Extract it at the tool, cover electrics and open fuel lines.",
                SHEET);
    }

    private static void bodies(Map<String, Caution> t) {
        put(
                t,
                "vacuum",
                "Vacuum",
                "One square metre under a full bag carries about eight tonnes. Vent every hollow mould, box and panel or it"
                        + " implodes; keep hands and faces off glass traps.",
                LICENSED);
        put(
                t,
                "heat",
                "Heat",
                "Hot parts, lamps and heaters burn, and parts above their glass transition sag. Support and unload them first; do"
                        + " not leave a heater alone without a cut-out of its own.",
                LICENSED);
        put(
                t,
                "oven",
                "Warm box",
                "An over-temperature cut-out apart from the controller, tested. Nobody inside. Mind the limits of foam and wax;"
                        + " unload struts, springs and seals.",
                LICENSED);
        put(
                t,
                "sharp",
                "Sharp edges",
                "Trimmed carbon splinters go deep and stay. Gloves on raw edges, sand the edge before you carry the part.",
                LICENSED);
        put(
                t,
                "heavy",
                "Heavy",
                "Agree who lifts, who calls and where it goes before anybody lifts. Nobody under it. Use the hoist where there is"
                        + " one.",
                LICENSED);
        put(
                t,
                "pressure-test",
                "Stored energy",
                "Air under pressure is a bomb when something gives. Test with liquid where you can, low pressure, a relief valve,"
                        + " nobody in line with an end.",
                LICENSED);
        put(
                t,
                "newcomer",
                "New at this",
                "If you have not done this before, say so now. Somebody who has stands beside you for the first one.",
                LICENSED);
    }

    private static void aircraft(Map<String, Caution> t) {
        put(
                t,
                "fuel",
                "Fuel",
                "No ignition anywhere near, containers bonded together, extinguisher at hand, outdoors or in moving air. A"
                        + " computed flow is no test: measure it, with the authorised person.",
                LICENSED);
        put(
                t,
                "carbon-metal",
                "Carbon on metal",
                "Aluminium rots where it touches carbon. Glass ply, sealant or primer between them, as the drawing says.",
                LICENSED);
        put(
                t,
                "controls",
                "Flight controls",
                "A second, independent person inspects every control item. Many countries make that law. A tick here is no"
                        + " licensed signature.",
                LICENSED);
        put(
                t,
                "structure",
                "Structure",
                "No test finds a weak bond: the record is the evidence. A structural deviation is never accepted by one person"
                        + " alone.",
                LICENSED);
        put(
                t,
                "close-out",
                "Closed for good",
                "What is inside stays inside. Everything inspected, photographed, weighed; tools counted; drains open; a second"
                        + " person looks. Your authority may want to see it before it is closed.",
                LICENSED);
        put(
                t,
                "photo",
                "Photograph",
                "Take the picture before it is covered: with a scale in it, the part's name, and you at work.",
                LICENSED);
        put(
                t,
                "acrylic",
                "Acrylic cracks",
                "Cut and drill it warm, 24 to 27 degC or more; no solvent that its maker does not name; never force it into"
                        + " place.",
                LICENSED);
        put(
                t,
                "clamp",
                "Do not pull it in",
                "A clamp holds what already lies in its place. Where it takes more than a hand, 150 N, or the part bends by more"
                        + " than 0.2 %, correct the part: what was pulled in springs back or opens the bond.",
                "common practice, no source; local rules and the drawing go before it");
    }

    private static void put(Map<String, Caution> t, String key, String title, String text, String source) {
        t.put(key, new Caution(key, title, text, source));
    }
}

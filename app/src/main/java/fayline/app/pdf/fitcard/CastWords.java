package fayline.app.pdf.fitcard;

import fayline.app.pdf.CardSheet.Pair;
import fayline.basis.units.Amount;
import fayline.basis.units.QuantityFormat;
import fayline.flow.card.fit.CastBond;
import fayline.flow.result.fit.CastLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Words a bond line as test castings show it, for page and card alike. */
public final class CastWords {
    private static final double SAME = 0.05;
    private final QuantityFormat format;

    /** Words in the reader's units. */
    public CastWords(QuantityFormat format) {
        this.format = format;
    }

    /** What the card tells: the thickness and the adhesive. */
    List<Pair> onCard(CastBond c) {
        List<Pair> all = new ArrayList<>();
        all.add(new Pair("Bond line by test casting", thickness(c)));
        c.joint().ifPresent(g -> all.add(new Pair("Adhesive as cast", adhesive(g))));
        return all;
    }

    /** What the page tells: each station besides, and what it rests on. */
    public List<Pair> of(CastBond c) {
        CastLine line = c.line();
        List<Pair> all = new ArrayList<>();
        all.add(new Pair("Bond line by test casting", thickness(c)));
        all.add(new Pair(
                "Cast at",
                line.stations().stream()
                        .map(s -> s.station() + " " + thick(s.thicknessMm())
                                + (s.count() > 1 ? " (mean of " + s.count() + ")" : ""))
                        .collect(Collectors.joining(", "))));
        c.joint()
                .ifPresent(g -> all.add(new Pair(
                        "Adhesive as cast",
                        adhesive(g) + " From the mean of what was cast: where nothing was cast it may be otherwise.")));
        return all;
    }

    private String thickness(CastBond c) {
        CastLine line = c.line();
        String told = line.stations().size() == 1
                ? thick(line.meanMm()) + " at " + line.thinnest().station()
                : thick(line.thinnest().thicknessMm()) + " (" + line.thinnest().station() + ") to "
                        + thick(line.thickest().thicknessMm()) + " ("
                        + line.thickest().station() + "), mean "
                        + thick(line.meanMm());
        return told
                + c.joint().map(g -> ", drawn " + thick(g.wantedMm())).orElse(", no joint says what is wanted")
                + String.format(
                        Locale.ROOT, "; %d of %d stations cast", line.stations().size(), c.stations());
    }

    private String adhesive(CastBond.Glued g) {
        double more = g.asCast().kilograms() / g.drawn().kilograms() - 1;
        return format.mass(g.asCast()) + " stays in the joint, drawn " + format.mass(g.drawn()) + "; "
                + (Math.abs(more) < SAME
                        ? "what the card mixes is right"
                        : more > 0
                                ? "mix " + format.mass(g.mixAsCast()) + ", not " + format.mass(g.mixDrawn())
                                : format.mass(g.mixAsCast()) + " would do instead of " + format.mass(g.mixDrawn()))
                + ".";
    }

    private String thick(double mm) {
        return Amount.mm(mm, 1).in(format.system());
    }
}

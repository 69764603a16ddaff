package fayline.app.web.chain;

import fayline.app.web.fit.FitSchemes;
import fayline.app.web.fit.FitView;
import fayline.app.web.fit.FitWhys;
import fayline.app.web.fit.FitWords;
import fayline.app.web.frame.Sight;
import fayline.basis.finding.Figure;
import fayline.basis.finding.Figure.Input;
import fayline.basis.finding.Figure.Origin;
import fayline.flow.project.chain.ChainLink;
import fayline.flow.project.chain.ChainRemedy;
import fayline.flow.project.fit.FitGauge;
import fayline.flow.result.fit.LaterState;
import fayline.flow.result.fit.chain.CarriedToBench;
import fayline.flow.result.fit.chain.FitChainResult;
import fayline.flow.result.fit.chain.FitChainResult.Correcting;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.chain.ChainResult;
import fayline.method.fitup.odds.GapOdds;
import fayline.method.fitup.odds.GapSource;
import fayline.method.fitup.odds.GapSpread;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Says how the figures of a chain come about: inputs with their origin, method, source, cautions. */
final class ChainWhys {
    private static final String VARIANCES = "[jcgm100]";
    private static final String LEAST_WORST = "[boyd-vandenberghe2004]";
    private static final double LEAST_MM = 0.0005;

    private final Sight sight;
    private final FitChainResult r;
    private final List<Figure> figures = new ArrayList<>();

    private ChainWhys(Sight sight, FitChainResult r) {
        this.sight = sight;
        this.r = r;
    }

    static List<FitView.Why> of(Sight sight, FitChainResult r) {
        ChainWhys whys = new ChainWhys(sight, r);
        r.correction().ifPresent(whys::correction);
        r.carried().forEach(whys::carried);
        r.counting().ifPresent(whys::chance);
        whys.remedies();
        return whys.figures.stream().map(FitWhys::figure).toList();
    }

    private void chance(ChainResult c) {
        if (c.odds().isEmpty() || c.spread().isEmpty()) {
            return;
        }
        GapOdds odds = c.odds().get();
        GapSpread spread = c.spread().get();
        List<Input> inputs = new ArrayList<>(gaps(odds));
        inputs.addAll(uncertain());
        figures.add(new Figure(
                "The chance that every gap ends inside",
                FitSchemes.chance(odds.joint().probability()),
                "each bond's errors move its part as a rigid body, and every gap beyond it changes by -(n·shift) - lever·turn;"
                        + " variances of independent causes add; the chance of all gaps together is averaged over"
                        + " quasi-random points of the causes' own distributions",
                inputs,
                VARIANCES,
                cautions()));
        List<Input> causes = new ArrayList<>();
        for (GapSource s : spread.sources()) {
            if (s.deviationMm(odds.worst()) >= LEAST_MM) {
                causes.add(new Input(s.name(), fine(s.deviationMm(odds.worst())), Origin.COMPUTED));
            }
        }
        figures.add(new Figure(
                "What each bond spends at " + odds.worstStation().id(),
                shares(c.stations().get(odds.worst())),
                "share = variance that the bond, its marks included, brings to this gap over the whole variance; each cause below"
                        + " with the standard deviation that it brings here",
                causes,
                VARIANCES,
                List.of("Shares are of this station, the one of lowest chance; at another they may lie otherwise.")));
    }

    private String shares(ChainResult.StationShares s) {
        List<String> all = new ArrayList<>();
        for (int k = 0; k < s.links().size(); k++) {
            all.add(r.chain().links().get(k).name() + " "
                    + ChainLinks.percent(s.links().get(k)));
        }
        all.add("readings " + ChainLinks.percent(s.readings()));
        all.add("states to come " + ChainLinks.percent(s.later()));
        return String.join(", ", all);
    }

    private List<Input> gaps(GapOdds odds) {
        return odds.stations().stream()
                .map(s -> new Input(
                        "Gap expected at " + s.id(),
                        length(s.predictedMm()) + ", needs " + length(s.lowerMm()) + " to " + length(s.upperMm())
                                + ", standard deviation " + fine(s.deviationMm()),
                        Origin.COMPUTED))
                .toList();
    }

    /** Everything that was said of how well things are known. */
    private List<Input> uncertain() {
        List<Input> all = new ArrayList<>();
        for (ChainLink l : r.chain().links()) {
            if (l.done() && r.read()) {
                all.add(new Input(l.name(), "made before the gaps were read: adds nothing", Origin.MEASURED));
            } else {
                all.add(new Input(l.name(), "held by " + l.holding().chosen(), Origin.ENTERED));
                l.marks()
                        .forEach(m ->
                                all.add(new Input(l.name() + ", " + m.name(), given(m.deviationMm()), Origin.ENTERED)));
            }
        }
        r.end().fit().gauge().ifPresent(g -> all.addAll(gauge(g)));
        for (LaterState s : r.end().later()) {
            all.add(new Input(
                    s.state().name() + ", " + s.origin(),
                    given(s.deviationMm()),
                    s.learned() ? Origin.LEARNED : Origin.ENTERED));
        }
        r.assumed().forEach(a -> all.add(new Input(sight.say(a.words()), fine(a.valueMm()), Origin.ASSUMED)));
        return all;
    }

    private List<Input> gauge(FitGauge g) {
        List<Input> all = new ArrayList<>();
        if (g.deviationMm().isPresent()) {
            all.add(new Input("One reading by " + g.name(), given(g.deviationMm()), Origin.ENTERED));
        }
        if (g.sharedMm().isPresent()) {
            all.add(new Input("Shared by all readings of one hand", given(g.sharedMm()), Origin.ENTERED));
        }
        return all;
    }

    private List<String> cautions() {
        List<String> all = new ArrayList<>();
        all.add("Parts are held to be rigid.");
        if (r.read() && !r.done()) {
            all.add(
                    "Where the try-out itself stood off its stops by chance, that is in the readings: take it apart, set it up"
                            + " again and read a second round.");
        }
        if (r.read() && r.chain().links().stream().anyMatch(ChainLink::done)) {
            all.add("A bond that is marked as made is held to have been made before the gaps were read.");
        }
        return all;
    }

    private void correction(Correcting c) {
        List<Input> inputs = new ArrayList<>();
        for (FitRow x : r.rows()) {
            inputs.add(new Input(
                    "Gap at " + x.station().id(),
                    length(x.gapMm()) + ", needs " + length(x.lowerMm()) + " to " + length(x.upperMm())
                            + (x.weight() == 1 ? "" : String.format(Locale.ROOT, ", weight %.2g", x.weight())),
                    Origin.MEASURED));
        }
        r.chain().links().stream()
                .filter(l -> !l.done())
                .forEach(l -> inputs.add(new Input("Room of " + l.name(), room(l.room()), Origin.ENTERED)));
        r.chain()
                .neighbours()
                .forEach(n -> inputs.add(
                        new Input("Room of " + ChainLinks.named(sight, n.name()), room(n.room()), Origin.ENTERED)));
        figures.add(new Figure(
                "Where the correction goes",
                c.result()
                        .chosen()
                        .map(w -> "worst gap " + ChainMoves.gap(sight, w.worstGapMm(), w.worstStation()))
                        .orElse("nothing that is left helps"),
                "gap after = gap read - n·shift - lever·turn for each part that moves; a neighbour's move counts the other way."
                        + " Least largest deviation from the wanted gap within the room (a linear program), then the least"
                        + " motion. The last bond that is still open comes first, since it also takes up what went wrong"
                        + " before it; then earlier ones; then all; then with the neighbours that can move. The first of these"
                        + " that brings every gap inside is taken",
                inputs,
                LEAST_WORST,
                List.of("Limits hold now: what states to come will change is taken off the wanted gaps already.")));
    }

    private void carried(CarriedToBench c) {
        List<Input> inputs = new ArrayList<>();
        for (CarriedToBench.Mark m : c.marks()) {
            inputs.add(new Input(
                    m.name(),
                    "bench " + ChainMoves.place(sight, m.bench()) + "; airframe " + ChainMoves.place(sight, m.place()),
                    Origin.MEASURED));
            inputs.add(new Input(
                    "Finding " + m.name() + ", along each axis, in each place",
                    given(m.deviationMm()),
                    Origin.ENTERED));
        }
        List<String> cautions = new ArrayList<>();
        cautions.add("Nothing is mirrored: the bench is seen from the same side as the part in place.");
        if (c.sure()) {
            cautions.add(String.format(
                    Locale.ROOT,
                    "Marks against each other: sum of squares %.1f, p = %.2f; under 0.01 one was misread.",
                    c.laid().chiSquare(),
                    c.laid().pValue()));
        }
        figures.add(new Figure(
                "Carried to the bench of " + c.link(),
                String.format(
                        Locale.ROOT,
                        "bench turned %.2f deg",
                        Math.toDegrees(c.laid().placement().turnRad())),
                "the rigid motion of least weighted squares that lays the marks upon each other: their weighted middles meet, the"
                        + " turn is atan2(sum w b×p, sum w b·p). Variance of the middle 1/sum w, of the turn 1/sum w b²; both"
                        + " carried rigidly to each station",
                inputs,
                "[schonemann1966], " + VARIANCES,
                cautions));
    }

    private void remedies() {
        if (r.remedies().isEmpty()) {
            return;
        }
        List<Input> inputs = new ArrayList<>();
        for (ChainRemedy m : r.chain().remedies()) {
            String most = m.kind() == ChainRemedy.Kind.RE_HANG
                    ? m.room().map(this::room).orElse("")
                    : "up to " + length(m.limitMm()) + (m.at().isEmpty() ? "" : " at " + String.join(", ", m.at()));
            inputs.add(new Input(m.name(), most + String.format(Locale.ROOT, ", %.1f h", m.hours()), Origin.ENTERED));
        }
        figures.add(new Figure(
                "What is left after the cure",
                "the largest deviation from the wanted gap is now "
                        + fine(r.remedies().get().before()),
                "trim opens a gap, build-up and filler close it, hanging anew moves all; each to the least largest deviation"
                        + " (a linear program), then the least material and motion. Two together where neither does it alone and"
                        + " no single one does it for less. Those that bring all inside first, the cheapest first",
                inputs,
                LEAST_WORST,
                List.of("Hours are the shop's own estimate; material and waiting for cure are not in them.")));
    }

    private String room(MoveLimits m) {
        double low = Math.toDegrees(m.turnLowRad());
        double high = Math.toDegrees(m.turnHighRad());
        return range(m.dxLowMm(), m.dxHighMm()) + " along, " + range(m.dyLowMm(), m.dyHighMm()) + " up, "
                + (low == -high
                        ? String.format(Locale.ROOT, "± %.2f deg", high)
                        : String.format(Locale.ROOT, "%.2f to %.2f deg", low, high));
    }

    private String range(double low, double high) {
        return low == -high ? "± " + length(high) : length(low) + " to " + length(high);
    }

    private String given(OptionalDouble mm) {
        return mm.isPresent() ? "standard deviation " + fine(mm.getAsDouble()) : "not given";
    }

    private String length(double mm) {
        return FitWords.length(sight, mm);
    }

    private String fine(double mm) {
        return FitWords.fine(sight, mm);
    }
}

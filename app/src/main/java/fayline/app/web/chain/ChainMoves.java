package fayline.app.web.chain;

import fayline.app.web.chain.ChainView.Way;
import fayline.app.web.fit.FitSchemes;
import fayline.app.web.fit.FitWords;
import fayline.app.web.frame.Sight;
import fayline.flow.project.chain.FitChain;
import fayline.flow.result.fit.chain.CarriedToBench;
import fayline.flow.result.fit.chain.FitChainResult;
import fayline.flow.result.fit.chain.FitChainResult.Correcting;
import fayline.flow.result.fit.chain.MoveTold;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.chain.Placement;
import fayline.method.fitup.chain.correct.CorrectionResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Words where a correction goes, and what was read on the airframe as it is on the bench. */
final class ChainMoves {
    private static final double LEAST_MM = 0.005;
    private static final double LEAST_TURN_RAD = 1e-5;

    private ChainMoves() {}

    static ChainView.Correct correct(Sight sight, FitChainResult r, Correcting c) {
        Optional<CorrectionResult.Way> chosen = c.result().chosen();
        List<Way> ways = new ArrayList<>();
        for (int i = 0; i < c.result().ways().size(); i++) {
            CorrectionResult.Way w = c.result().ways().get(i);
            ways.add(new Way(
                    names(sight, r.chain(), w),
                    "",
                    gap(sight, w.worstGapMm(), w.worstStation()),
                    w.fits(),
                    String.join(", ", w.outside()),
                    c.chances().isEmpty() ? "" : FitSchemes.chance(c.chances().get(i)),
                    ""));
        }
        return new ChainView.Correct(
                chosen.map(w -> verdict(sight, r.chain(), w))
                        .orElse(
                                "The room to move and the least gaps contradict each other: nothing that is left helps."),
                chosen.filter(CorrectionResult.Way::fits).isPresent(),
                c.moves().stream().map(m -> moved(sight, r, m)).toList(),
                ways,
                neighbours(sight, r.chain(), c));
    }

    private static String verdict(Sight sight, FitChain chain, CorrectionResult.Way w) {
        String reached = "worst gap will be " + gap(sight, w.worstGapMm(), w.worstStation());
        return w.fits()
                ? "Correct in " + names(sight, chain, w) + ": " + reached + "."
                : "No motion that is left brings every gap inside. The best is in " + names(sight, chain, w) + ": "
                        + reached + "; outside stay " + String.join(", ", w.outside()) + ".";
    }

    private static String names(Sight sight, FitChain chain, CorrectionResult.Way w) {
        return w.moves().stream().map(p -> name(sight, chain, p.name())).collect(Collectors.joining(" and "));
    }

    /** A link is called by its name, a neighbour by its part's. */
    static String name(Sight sight, FitChain chain, String mover) {
        return chain.neighbours().stream().anyMatch(n -> n.name().equals(mover))
                ? ChainLinks.named(sight, mover)
                : mover;
    }

    private static ChainView.Moved moved(Sight sight, FitChainResult r, MoveTold m) {
        String about = m.aboutMiddle() ? "the middle of the stations" : "the place " + place(sight, m.pivot());
        return new ChainView.Moved(
                name(sight, r.chain(), m.name()),
                FitWords.move(sight, r.end().side(), m.move(), m.pivot(), about),
                m.bench().map(b -> bench(sight, b)).orElse(""),
                m.gaps().stream()
                        .map(g -> g.station() + " " + FitWords.length(sight, g.gapMm())
                                + (m.neighbour() ? " (" + by(sight, g.byMm()) + " by this)" : ""))
                        .collect(Collectors.joining(", ")));
    }

    private static String by(Sight sight, double mm) {
        return FitWords.length(sight, Math.abs(mm)) + (mm < 0 ? " closed" : " opened");
    }

    /** A move in a bench's own axes: there is no aft on a bench. */
    private static String bench(Sight sight, MoveTold.OnBench b) {
        Move m = b.move();
        List<String> parts = new ArrayList<>();
        along(sight, m.dxMm(), "x").ifPresent(parts::add);
        along(sight, m.dyMm(), "y").ifPresent(parts::add);
        if (Math.abs(m.turnRad()) >= LEAST_TURN_RAD) {
            parts.add(String.format(
                    Locale.ROOT,
                    "turn %.3f deg %s",
                    Math.toDegrees(Math.abs(m.turnRad())),
                    m.turnRad() > 0 ? "counter-clockwise" : "clockwise"));
        }
        return parts.isEmpty()
                ? ""
                : "On the bench: " + String.join(", ", parts) + ", about its place " + place(sight, b.pivot()) + ".";
    }

    private static Optional<String> along(Sight sight, double mm, String axis) {
        return Math.abs(mm) < LEAST_MM
                ? Optional.empty()
                : Optional.of(FitWords.fine(sight, Math.abs(mm)) + (mm > 0 ? " along its " : " against its ") + axis);
    }

    private static String neighbours(Sight sight, FitChain chain, Correcting c) {
        if (chain.neighbours().isEmpty()) {
            return "No neighbour is named that can still move.";
        }
        String can = chain.neighbours().stream()
                .map(n -> ChainLinks.named(sight, n.name()))
                .collect(Collectors.joining(", "));
        boolean moves = c.moves().stream().anyMatch(MoveTold::neighbour);
        return "Can still move beside the bonds: " + can + "."
                + (moves || c.moves().isEmpty() ? "" : " Here it can stay: the bonds alone do it.");
    }

    static List<ChainView.Carried> carried(Sight sight, FitChainResult r) {
        return r.carried().stream().map(c -> carried(sight, c)).toList();
    }

    private static ChainView.Carried carried(Sight sight, CarriedToBench c) {
        return new ChainView.Carried(
                c.link(),
                lies(sight, c),
                c.marks().stream()
                        .map(m -> new ChainView.Mark(
                                m.name(),
                                place(sight, m.bench()),
                                place(sight, m.place()),
                                told(sight, m.deviationMm()),
                                FitWords.fine(sight, m.offMm())))
                        .toList(),
                doubtful(sight, c),
                c.stations().stream()
                        .map(s -> new ChainView.Station(
                                s.id(),
                                place(sight, s.bench()),
                                FitWords.length(sight, s.gapMm()),
                                FitWords.length(sight, s.wantedMm()),
                                goes(sight, s.goesMm()),
                                told(sight, s.marksMm())))
                        .toList());
    }

    private static String lies(Sight sight, CarriedToBench c) {
        Placement p = c.laid().placement();
        Move u = c.laid().covariance().deviations();
        String where = "The bench's corner lies at " + place(sight, new Spot(p.xMm(), p.yMm()))
                + String.format(
                        Locale.ROOT, " of the airframe, its axes turned %.2f deg.", Math.toDegrees(p.turnRad()));
        return c.sure()
                ? where + " Known to " + FitWords.fine(sight, u.dxMm()) + " each way"
                        + String.format(Locale.ROOT, " and %.3f deg.", Math.toDegrees(u.turnRad()))
                : where + " How well is not known: say how sure each mark is found.";
    }

    private static String doubtful(Sight sight, CarriedToBench c) {
        return c.sure() ? String.join(" ", sight.say(c.laid().findings())) : "";
    }

    private static String goes(Sight sight, OptionalDouble outward) {
        if (outward.isEmpty()) {
            return "stays";
        }
        double mm = outward.getAsDouble();
        return Math.abs(mm) < LEAST_MM ? "stays" : FitWords.fine(sight, Math.abs(mm)) + (mm > 0 ? " out" : " in");
    }

    private static String told(Sight sight, OptionalDouble mm) {
        return mm.isPresent() ? FitWords.fine(sight, mm.getAsDouble()) : "not given";
    }

    static String place(Sight sight, Spot at) {
        return FitWords.place(sight, at);
    }

    static String gap(Sight sight, double mm, String station) {
        return FitWords.length(sight, mm) + (station.isEmpty() ? "" : " at " + station);
    }
}

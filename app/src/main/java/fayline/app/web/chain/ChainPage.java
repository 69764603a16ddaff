package fayline.app.web.chain;

import fayline.app.usecase.fit.LookAtChains;
import fayline.app.web.fit.FitSchemes;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.basis.units.Length;
import fayline.flow.project.chain.ChainLink;
import fayline.flow.project.chain.FitChain;
import fayline.flow.result.fit.chain.FitChainResult;
import fayline.method.fitup.chain.ChainResult;
import fayline.method.fitup.odds.GapOdds;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** One chain of bonds: what each link spends, where a correction goes, what is left after the cure. */
public final class ChainPage implements Page {
    private final Sights sights;

    /** Makes the page. */
    public ChainPage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/chain/{id}", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                boolean assume = visit.query("assume").equals("yes");
                FitChainResult chain = LookAtChains.of(sight.view(), visit.inPath("id"), assume)
                        .orElseThrow(() -> Refusal.absent("chain of that name"));
                sights.show(
                        visit,
                        "chain/chain.jte",
                        sights.frame(visit, sight, chain.chain().name(), "/fits"),
                        view(sight, chain, assume));
            });
        });
    }

    private static ChainView view(Sight sight, FitChainResult r, boolean assume) {
        FitChain chain = r.chain();
        Optional<ChainResult> told = r.spread().filter(s -> r.missing().isEmpty());
        Optional<GapOdds> odds = told.flatMap(ChainResult::odds);
        Optional<ChainResult.StationShares> worst =
                odds.map(o -> told.orElseThrow().stations().get(o.worst()));
        return new ChainView(
                chain.id(),
                chain.name(),
                r.end().fit().name(),
                "/fit/" + Visit.encoded(r.end().fit().id()),
                r.read(),
                links(sight, chain, told, worst),
                worst.map(w -> percent(w.readings())).orElse(""),
                odds.map(o -> FitSchemes.chance(o.joint().probability())).orElse(""),
                odds.map(o -> o.worstStation().id() + ", chance "
                                + FitSchemes.chance(o.worstStation().chance()) + ", standard deviation "
                                + fine(sight, o.worstStation().deviationMm()))
                        .orElse(""),
                r.moves().stream()
                        .map(m -> m.name() + ": " + sight.say(m.words())
                                + (m.bench().isEmpty() ? "" : " (" + sight.say(m.bench()) + ")") + ".")
                        .toList(),
                r.correction().map(c -> ways(sight, c.ways())).orElse(List.of()),
                chain.neighbours().stream().map(n -> sight.madeName(n.name())).toList(),
                r.remedies()
                        .map(m -> m.outcomes().stream()
                                .map(o -> new ChainView.Way(
                                        o.name(),
                                        gap(sight, o.worstGapMm(), o.worstStation()),
                                        o.fits(),
                                        String.join(", ", o.outside()),
                                        String.format(Locale.ROOT, "%.1f h", o.cost())))
                                .toList())
                        .orElse(List.of()),
                r.missing(),
                r.assumed().stream().map(sight::say).toList(),
                sight.say(r.findings()),
                assume);
    }

    private static List<ChainView.Link> links(
            Sight sight, FitChain chain, Optional<ChainResult> told, Optional<ChainResult.StationShares> worst) {
        List<ChainView.Link> all = new ArrayList<>();
        for (int k = 0; k < chain.links().size(); k++) {
            ChainLink l = chain.links().get(k);
            int at = k;
            all.add(new ChainView.Link(
                    l.name(),
                    sight.madeName(l.part()) + " to " + sight.madeName(l.carrier()),
                    (l.onBench() ? "On the bench, " : "On the airframe, ") + "by "
                            + l.holding().chosen(),
                    l.done(),
                    worst.map(w -> (int) Math.round(100 * w.links().get(at))).orElse(-1),
                    told.flatMap(ChainResult::spender).filter(l.name()::equals).isPresent()));
        }
        return all;
    }

    private static List<ChainView.Way> ways(
            Sight sight, List<fayline.method.fitup.chain.correct.CorrectionResult.Way> ways) {
        return ways.stream()
                .map(w -> new ChainView.Way(
                        w.name(),
                        gap(sight, w.worstGapMm(), w.worstStation()),
                        w.fits(),
                        String.join(", ", w.outside()),
                        ""))
                .toList();
    }

    private static String gap(Sight sight, double mm, String station) {
        return sight.format().gap(Length.ofMillimetres(mm)) + (station.isEmpty() ? "" : " at " + station);
    }

    private static String fine(Sight sight, double mm) {
        return sight.format().fineGap(Length.ofMillimetres(mm));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }
}

package fayline.app.web.chain;

import fayline.app.drawing.SvgRenderer;
import fayline.app.pdf.chain.ChainPdf;
import fayline.app.usecase.fit.LookAtChains;
import fayline.app.web.fit.Asked;
import fayline.app.web.fit.FitSchemes;
import fayline.app.web.fit.FitWords;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Printing;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.result.fit.chain.FitChainResult;
import fayline.flow.result.fit.chain.FitChainResult.Correcting;
import fayline.method.fitup.chain.ChainResult;
import fayline.method.fitup.odds.GapOdds;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.List;
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
        new Asked<FitChainResult>(
                        "chain of that name",
                        "/chain/{id}",
                        "chain/chain.jte",
                        (sight, id, assume) -> LookAtChains.of(sight.view(), id, assume),
                        r -> r.chain().name(),
                        (sight, r, visit) -> view(sight, r, Asked.assumes(visit)))
                .addTo(routes, sights);
        routes.get("/chain/{id}/sheet.pdf", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> print(visit, sight));
        });
    }

    private static void print(Visit visit, Sight sight) {
        boolean assume = Asked.assumes(visit);
        FitChainResult r = LookAtChains.of(sight.view(), visit.inPath("id"), assume)
                .orElseThrow(() -> Refusal.absent("chain of that name"));
        byte[] pdf = ChainPdf.print(
                ChainPrint.of(view(sight, r, assume), ChainLinks.drawing(sight, r)),
                Printing.setting(visit, sight, sight.time().today()));
        visit.send(pdf, "application/pdf", "chain-" + r.chain().id() + ".pdf");
    }

    private static ChainView view(Sight sight, FitChainResult r, boolean assume) {
        return new ChainView(
                r.chain().id(),
                r.chain().name(),
                r.end().fit().name(),
                "/fit/" + Visit.encoded(r.end().fit().id()),
                r.read(),
                SvgRenderer.forScreen().render(ChainLinks.drawing(sight, r)),
                ChainLinks.of(sight, r),
                sure(sight, r, assume),
                r.correction().map(c -> ChainMoves.correct(sight, r, c)),
                ChainMoves.carried(sight, r),
                r.remedies().map(m -> ChainRemedies.of(sight, r, m)).orElse(List.of()),
                sight.say(r.findings()),
                ChainWhys.of(sight, r));
    }

    private static ChainView.Sure sure(Sight sight, FitChainResult r, boolean assume) {
        Optional<GapOdds> odds = r.counting().flatMap(ChainResult::odds);
        boolean corrected = r.correction().flatMap(Correcting::afterwards).isPresent();
        return new ChainView.Sure(
                odds.map(o -> FitSchemes.chance(o.joint().probability())).orElse(""),
                corrected
                        ? r.spread()
                                .flatMap(ChainResult::odds)
                                .map(o -> FitSchemes.chance(o.joint().probability()))
                                .orElse("")
                        : "",
                odds.map(o -> o.worstStation().id() + ", chance "
                                + FitSchemes.chance(o.worstStation().chance()) + ", standard deviation "
                                + FitWords.fine(sight, o.worstStation().deviationMm()))
                        .orElse(""),
                rest(r),
                r.missing(),
                r.assumed().stream().map(a -> sight.say(a.words())).toList(),
                assume);
    }

    private static String rest(FitChainResult r) {
        return ChainLinks.worst(r)
                .map(w -> {
                    List<String> parts = new ArrayList<>();
                    parts.add("Readings bring " + ChainLinks.percent(w.readings()));
                    if (w.later() > 0) {
                        parts.add("what is not known of states to come " + ChainLinks.percent(w.later()));
                    }
                    return String.join(", ", parts) + ".";
                })
                .orElse("");
    }
}

package fayline.app.usecase.fit;

import fayline.app.usecase.view.ShopView;
import fayline.flow.project.Definition;
import fayline.flow.project.chain.ChainLink;
import fayline.flow.project.chain.FitChain;
import fayline.flow.project.fit.Fit;
import fayline.flow.record.TakenReading;
import fayline.flow.result.fit.chain.FitChainCalculator;
import fayline.flow.result.fit.chain.FitChainQuestion;
import fayline.flow.result.fit.chain.FitChainResult;
import java.util.List;
import java.util.Optional;

/** A chain of bonds with all that follows from the readings where it ends. */
public final class LookAtChains {
    private LookAtChains() {}

    /**
     * One chain.
     *
     * @param view the shop
     * @param chain its id
     * @param assume whether uncertainties that nobody gave may be replaced by the named defaults
     */
    public static Optional<FitChainResult> of(ShopView view, String chain, boolean assume) {
        return view.definition()
                .chains()
                .find(chain)
                .flatMap(c -> LookAtFits.of(view, c.endsAt(), assume).map(f -> of(view.definition(), f, c, assume)));
    }

    /** The chains that end at a fit or have a link at it, in the definition's order. */
    public static List<FitChain> through(Definition definition, Fit fit) {
        return definition.chains().stream()
                .filter(c -> c.endsAt().equals(fit.id())
                        || c.links().stream().anyMatch(l -> fitOf(definition, l).equals(Optional.of(fit))))
                .toList();
    }

    /** The fit of a link: the one that names its scheme, else one of the same part against the same carrier. */
    public static Optional<Fit> fitOf(Definition definition, ChainLink link) {
        return link.schemeOf()
                .flatMap(f -> definition.fits().find(f))
                .or(() -> definition.fits().stream()
                        .filter(f -> f.part().equals(Optional.of(link.part()))
                                && f.against().contains(link.carrier()))
                        .findFirst());
    }

    /** One chain of a definition with readings from wherever they come. */
    public static FitChainResult sight(
            Definition definition, List<TakenReading> readings, FitChain chain, boolean assume) {
        FitSight end = LookAtFits.sight(definition, readings, definition.fits().get(chain.endsAt()), assume);
        return of(definition, end, chain, assume);
    }

    private static FitChainResult of(Definition definition, FitSight end, FitChain chain, boolean assume) {
        return FitChainCalculator.calculate(new FitChainQuestion(chain, end.result(), definition.fits(), assume));
    }
}

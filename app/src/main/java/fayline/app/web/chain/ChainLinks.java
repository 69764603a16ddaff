package fayline.app.web.chain;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.fit.ChainDrawing;
import fayline.app.drawing.fit.ChainPicture;
import fayline.app.usecase.fit.LookAtChains;
import fayline.app.web.fit.FitView;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.flow.project.chain.ChainLink;
import fayline.flow.result.fit.chain.FitChainResult;
import fayline.flow.result.fit.chain.MoveTold;
import fayline.method.fitup.chain.ChainResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Words and draws the bonds of a chain, each with what it spends. */
final class ChainLinks {
    private ChainLinks() {}

    /** What makes the spread of the station of lowest chance; empty where no chance is told. */
    static Optional<ChainResult.StationShares> worst(FitChainResult r) {
        return r.counting().flatMap(c -> c.odds().map(o -> c.stations().get(o.worst())));
    }

    static List<ChainView.Link> of(Sight sight, FitChainResult r) {
        List<ChainView.Link> all = new ArrayList<>();
        for (ChainLink l : r.chain().links()) {
            all.add(new ChainView.Link(
                    l.name(),
                    named(sight, l.part()) + " to " + named(sight, l.carrier()),
                    (l.onBench() ? "On the bench, by " : "On the airframe, by ")
                            + l.holding().chosen(),
                    l.done(),
                    share(r, l).isPresent() ? percent(share(r, l).getAsDouble()) : "",
                    most(r, l),
                    LookAtChains.fitOf(sight.definition(), l)
                            .map(f -> new FitView.Fact("Fit", f.name(), "/fit/" + Visit.encoded(f.id())))));
        }
        return all;
    }

    static Drawing drawing(Sight sight, FitChainResult r) {
        List<String> corrected = r.correction().stream()
                .flatMap(c -> c.moves().stream())
                .map(m -> m.name())
                .toList();
        List<ChainPicture.Bond> bonds = r.chain().links().stream()
                .map(l -> new ChainPicture.Bond(
                        l.name(),
                        named(sight, l.part()),
                        (l.onBench() ? "on the bench, " : "on the airframe, ")
                                + (l.done() ? "bonded" : "still open")
                                + (corrected.contains(l.name()) ? ": correct here" : ""),
                        l.done(),
                        share(r, l),
                        most(r, l),
                        corrected.contains(l.name())))
                .toList();
        List<ChainPicture.Rest> rest = worst(r).map(w -> List.of(
                        new ChainPicture.Rest("Readings", w.readings()),
                        new ChainPicture.Rest("States to come", w.later())))
                .orElse(List.of());
        ChainLink last = r.chain().links().get(r.chain().links().size() - 1);
        return ChainDrawing.of(new ChainPicture(
                r.chain().name(),
                bonds,
                named(sight, last.carrier()),
                r.correction().stream()
                        .flatMap(c -> c.moves().stream())
                        .filter(MoveTold::neighbour)
                        .map(m -> named(sight, m.name()))
                        .toList(),
                rest,
                worst(r).map(ChainResult.StationShares::id).orElse("")));
    }

    /** What people call a part; one that is not in the parts list is called by its id, as words. */
    static String named(Sight sight, String part) {
        String words = part.replace('-', ' ');
        return sight.made(part).isPresent()
                ? sight.madeName(part)
                : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    private static OptionalDouble share(FitChainResult r, ChainLink link) {
        int at = r.chain().links().indexOf(link);
        return worst(r).map(w -> OptionalDouble.of(w.links().get(at))).orElse(OptionalDouble.empty());
    }

    private static boolean most(FitChainResult r, ChainLink link) {
        return r.counting()
                .flatMap(ChainResult::spender)
                .filter(link.name()::equals)
                .isPresent();
    }
}

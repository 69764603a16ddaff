package fayline.app.web.fit;

import fayline.app.pdf.fitcard.CastWords;
import fayline.app.pdf.fitcard.WidthWords;
import fayline.app.usecase.fit.FitSight;
import fayline.app.usecase.fit.FrameSight;
import fayline.app.usecase.fit.LookAtChains;
import fayline.app.usecase.fit.LookAtFits;
import fayline.app.usecase.fit.LookAtFrames;
import fayline.app.web.frame.Frame;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.flow.card.fit.CastBond;
import fayline.flow.card.fit.FitWork;
import fayline.flow.project.design.Hand;
import fayline.flow.project.design.Part;
import fayline.flow.project.fit.Fit;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.FitWay;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** One fit: before and after drawn, then the answer in the order a builder asks, then what it rests on. */
public final class FitPage implements Page {
    private static final int KNOWN = 3;
    private final Sights sights;

    /** Makes the page. */
    public FitPage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        new Asked<FitSight>(
                        "fit of that name",
                        "/fit/{id}",
                        "fit/fit.jte",
                        (sight, id, assume) -> LookAtFits.of(sight.view(), id, assume),
                        f -> f.result().fit().name(),
                        (sight, f, visit) -> view(sight, f, frame(sight, f), visit))
                .addTo(routes, sights);
    }

    private static FrameSight frame(Sight sight, FitSight f) {
        return LookAtFrames.of(sight.view(), f.result().fit().id()).orElseThrow();
    }

    private static FitView view(Sight sight, FitSight f, FrameSight frame, Visit visit) {
        boolean assume = Asked.assumes(visit);
        WidthWords words = new WidthWords(sight.format(), sight::personName);
        FitResult r = f.result();
        Optional<FitWay> way = FitWays.chosen(r, visit);
        Optional<FitAnswer> answer = r.advice().map(a -> FitAnswers.of(sight, r, a, assume));
        return new FitView(
                r.fit().id(),
                r.fit().name(),
                facts(sight, r),
                sight.definition().parts().stream()
                        .map(p -> new Frame.Choice(
                                p.id(), p.name(), r.fit().part().equals(Optional.of(p.id()))))
                        .toList(),
                FitPicture.of(sight, r, way),
                answer,
                r.advice().flatMap(a -> FitWays.of(sight, r, a, way, assume)),
                first(r),
                r.beforehand()
                        .map(s -> FitSchemes.rows(r.fit(), s, sight, r.places().size()))
                        .orElse(List.of()),
                r.missing(),
                r.assumed().stream().map(sight::say).toList(),
                FitStates.strip(r),
                FitOver.of(sight, r),
                answer.map(FitPage::sure).orElse(""),
                "Gap " + wanted(r.fit().wanted().gap(), r.fit().wanted().gapTolerance()),
                FitStates.of(sight, r),
                CastBond.of(sight.definition(), sight.result(), r)
                        .map(new CastWords(sight.format())::of)
                        .orElse(List.of()),
                FitLasting.later(sight, r),
                FitLasting.heat(sight, r),
                FitLasting.after(sight, r),
                FitLasting.opposite(
                        sight, f, frame.taught().stream().map(words::lesson).toList()),
                sight.say(r.findings()),
                frame.widths().widths().stream().map(words::sheet).toList(),
                FitSprung.of(sight, frame, r.side()),
                assume);
    }

    /** How sure the chosen way is, else the best one. */
    private static String sure(FitAnswer answer) {
        return answer.schemes().stream()
                .filter(s -> !s.chance().isEmpty())
                .min(Comparator.comparing((FitAnswer.Scheme s) -> !s.chosen()).thenComparing(s -> !s.best()))
                .map(s -> s.name() + ": " + s.chance())
                .orElse("");
    }

    private static String wanted(Entered<Length> nominal, Entered<Length> tolerance) {
        return nominal.asTyped() + " ± " + tolerance.asTyped();
    }

    private static List<FitView.Fact> facts(Sight sight, FitResult r) {
        Fit fit = r.fit();
        List<FitView.Fact> all = new ArrayList<>();
        fit.part().ifPresent(p -> all.add(new FitView.Fact("Part", sight.madeName(p), sight.madeLink(p))));
        Hand hand = fit.part()
                .flatMap(p -> sight.definition().parts().find(p))
                .map(Part::hand)
                .orElse(fit.hand());
        if (hand != Hand.NONE) {
            all.add(new FitView.Fact("Hand", hand.key(), ""));
        }
        fit.against()
                .forEach(a -> all.add(new FitView.Fact(
                        "Against", sight.madeName(a), sight.made(a).isPresent() ? sight.madeLink(a) : "")));
        all.add(new FitView.Fact(
                "Gap wanted", wanted(fit.wanted().gap(), fit.wanted().gapTolerance()), ""));
        all.add(new FitView.Fact(
                "Flush wanted", wanted(fit.wanted().flush(), fit.wanted().flushTolerance()), ""));
        LookAtChains.through(sight.definition(), fit)
                .forEach(c -> all.add(new FitView.Fact("Chain of bonds", c.name(), "/chain/" + Visit.encoded(c.id()))));
        fit.wanted().minimumGap().ifPresent(m -> all.add(new FitView.Fact("Never under", m.asTyped(), "")));
        fit.gauge().ifPresent(g -> all.add(new FitView.Fact("Read with", g.name(), "")));
        FitWork work = new FitWork(sight.definition(), sight.result());
        sight.result().steps().stream()
                .filter(s -> work.at(s).stream().anyMatch(f -> f.id().equals(fit.id())))
                .forEach(s ->
                        all.add(new FitView.Fact("Notes and photos", s.title(), Sight.cardLink(s.id()) + "#note")));
        return all;
    }

    /** What is needed before there is an answer. */
    private static List<String> first(FitResult r) {
        if (r.advice().filter(a -> a.rows().size() >= KNOWN).isPresent()) {
            return List.of();
        }
        Stream<String> places = r.places().isEmpty()
                ? Stream.of(
                        "Where the stations lie is not known, so no move can be told. Give each its place and direction, or"
                                + " the outline, in the fit's file under Definition.")
                : Stream.empty();
        int read = r.advice().map(FitAdvice::rows).map(List::size).orElse(0);
        Stream<String> readings = read < KNOWN
                ? Stream.of(
                        read == 0
                                ? "No gap is read yet. Three stations on two edges give a first move."
                                : "Only " + read
                                        + " of the stations with a known place have a gap. Three on two edges give a"
                                        + " first move.")
                : Stream.empty();
        return Stream.concat(places, r.places().isEmpty() ? Stream.empty() : readings)
                .toList();
    }
}

package fayline.app.web.fit;

import fayline.app.web.frame.Frame;
import fayline.app.web.frame.Sight;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitState;
import fayline.flow.project.fit.FitStation;
import fayline.flow.reading.FitReading;
import fayline.flow.reading.FitReading.Kind;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes what the entry of readings shows. */
final class FitReadViews {
    private static final int ENOUGH = 3;

    private FitReadViews() {}

    static FitReadView of(Sight sight, Fit fit, List<FitReading> all, FitSetup setup, String asked, FitTyped typed) {
        FitAsking asking = FitAsking.of(sight, fit, all, setup);
        List<FitReading> mine = asking.mine();
        List<String> marks = fit.stations().stream().map(FitStation::id).toList();
        String at = marks.contains(asked) ? asked : firstUnread(marks, mine, setup);
        List<FitReadView.Station> stations = fit.stations().stream()
                .map(s -> station(sight, fit, s, asking, setup, s.id().equals(at)))
                .toList();
        int here = marks.indexOf(at);
        Optional<FitResult> now = asking.result();
        String state = fit.states().stream()
                .filter(s -> s.id().equals(setup.state()))
                .map(FitState::name)
                .findFirst()
                .orElse(setup.state());
        return new FitReadView(
                fit.id(),
                fit.name(),
                setup,
                FitWords.kind(setup.kind())
                        + (state.isEmpty() ? "" : ", " + state)
                        + (setup.round() > 1 ? ", round " + setup.round() : ""),
                chooser(fit, setup),
                now.map(r -> FitPicture.small(sight, r, at)).orElse(""),
                here < 0 ? new FitReadView.Station("", "", "", "", "", "", true) : stations.get(here),
                stations,
                here > 0 ? setup.link(fit.id(), marks.get(here - 1)) : "",
                here < 0 ? "" : asking.passing(at),
                asking.again(at),
                FitReadPage.draft(setup, at),
                FitReadPage.draftMany(setup),
                now.filter(r -> r.advice()
                                .filter(a -> a.state().equals(setup.state()))
                                .isPresent())
                        .map(r -> move(sight, r))
                        .orElse(List.of()),
                asking.odd().values().stream().flatMap(List::stream).toList(),
                next(fit, setup),
                typed.refused(),
                typed.kept(),
                typed.value(),
                typed.nogo(),
                typed.many());
    }

    private static List<String> move(Sight sight, FitResult r) {
        FitAdvice a = r.advice().orElseThrow();
        if (a.rows().size() < ENOUGH) {
            return List.of();
        }
        FitAnswer answer = FitAnswers.of(sight, r, a, false);
        List<String> all = new ArrayList<>();
        all.add(answer.verdict());
        if (!answer.move().isEmpty()) {
            all.add(answer.move());
        }
        all.addAll(answer.marks());
        return all;
    }

    private static String firstUnread(List<String> marks, List<FitReading> mine, FitSetup setup) {
        return marks.stream()
                .filter(m -> !setup.passed().contains(m)
                        && mine.stream().noneMatch(r -> r.station().equals(m)))
                .findFirst()
                .orElse("");
    }

    private static FitReadView.Station station(
            Sight sight, Fit fit, FitStation s, FitAsking asking, FitSetup setup, boolean here) {
        return new FitReadView.Station(
                s.id(),
                s.where(),
                FitWords.wanted(fit, s, setup.kind()),
                asking.mine().stream()
                        .filter(r -> r.station().equals(s.id()))
                        .map(FitWords::typed)
                        .collect(Collectors.joining("; ")),
                setup.link(fit.id(), s.id()),
                asking.flushNext().map(f -> f.link(fit.id(), s.id())).orElse(""),
                here);
    }

    private static FitReadView.Chooser chooser(Fit fit, FitSetup setup) {
        return new FitReadView.Chooser(
                fit.states().stream()
                        .map(s -> new Frame.Choice(s.id(), s.name(), s.id().equals(setup.state())))
                        .toList(),
                Stream.of(Kind.values())
                        .map(k -> new Frame.Choice(k.word(), FitWords.kind(k), k == setup.kind()))
                        .toList(),
                FitSetup.UNITS.stream()
                        .map(u -> new Frame.Choice(u, u, u.equals(setup.unit())))
                        .toList());
    }

    private static List<FitReadView.Next> next(Fit fit, FitSetup setup) {
        List<FitReadView.Next> all = new ArrayList<>();
        for (Kind k : Kind.values()) {
            if (k != setup.kind()) {
                all.add(new FitReadView.Next(
                        "Read " + FitWords.kind(k).toLowerCase(java.util.Locale.ROOT),
                        setup.kind(k).link(fit.id(), "")));
            }
        }
        all.add(new FitReadView.Next(
                "The part was moved: read it again",
                setup.round(setup.round() + 1).link(fit.id(), "")));
        return all;
    }
}

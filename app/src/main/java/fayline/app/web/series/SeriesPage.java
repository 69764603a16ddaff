package fayline.app.web.series;

import fayline.app.drawing.SvgRenderer;
import fayline.app.drawing.series.SeriesDrawing;
import fayline.app.usecase.fit.FitSight;
import fayline.app.usecase.fit.LookAtFits;
import fayline.app.usecase.series.LookAtSeries;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.series.Series;
import fayline.flow.result.series.SeriesPoint;
import fayline.flow.result.series.SeriesSort;
import fayline.method.chart.IndividualsChart;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Readings that come again and again, over time: is one out of the ordinary, and what was learned. */
public final class SeriesPage implements Page {
    private final Sights sights;

    /** Makes the page. */
    public SeriesPage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/over-time", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(
                    visit,
                    sight -> sights.show(
                            visit,
                            "series/series.jte",
                            sights.frame(visit, sight, "Over time", "/over-time"),
                            new SeriesView(LookAtSeries.of(sight.view()).stream()
                                    .map(s -> chart(sight, s))
                                    .toList())));
        });
    }

    private static SeriesView.Chart chart(Sight sight, Series s) {
        SeriesWords words = new SeriesWords(sight.format(), s.sort());
        List<SeriesView.Row> rows = new ArrayList<>(
                s.points().stream().map(p -> row(sight, words, s, p)).toList());
        Collections.reverse(rows);
        String name = words.name() + (s.group().isEmpty() ? "" : ", " + s.group());
        return new SeriesView.Chart(
                name,
                words.what(),
                s.points().isEmpty() ? "" : SvgRenderer.forScreen().render(SeriesDrawing.of(values(words, s, name))),
                said(words, s),
                s.beyond().stream().map(p -> row(sight, words, s, p)).toList(),
                s.chart().map(c -> why(words, s, c)).orElse(List.of()),
                s.sort() == SeriesSort.GAP_ERROR ? lessons(sight, s) : List.of(),
                rows);
    }

    private static SeriesDrawing.Values values(SeriesWords words, Series s, String name) {
        List<Double> values = s.points().stream().map(SeriesPoint::value).toList();
        List<Double> steps = s.chart().map(IndividualsChart::ranges).orElseGet(() -> {
            List<Double> all = new ArrayList<>();
            for (int i = 1; i < values.size(); i++) {
                all.add(Math.abs(values.get(i) - values.get(i - 1)));
            }
            return all;
        });
        Optional<SeriesDrawing.Limits> limits = s.chart()
                .map(c -> new SeriesDrawing.Limits(
                        level(words, c.centre(), "mean "),
                        level(words, s.lower().orElse(c.lower()), ""),
                        level(words, c.upper(), ""),
                        new SeriesDrawing.Level(c.upperRange(), words.step(c.upperRange()))));
        return new SeriesDrawing.Values(values, steps, limits, name + " over time: " + said(words, s));
    }

    private static SeriesDrawing.Level level(SeriesWords words, double value, String lead) {
        return new SeriesDrawing.Level(value, lead + words.value(value));
    }

    private static SeriesView.Row row(Sight sight, SeriesWords words, Series s, SeriesPoint p) {
        return new SeriesView.Row(
                p.name(),
                switch (s.sort()) {
                    case LEAK -> Sight.cardLink(p.of());
                    case GAP_ERROR -> "/fit/" + Visit.encoded(p.of());
                    default -> sight.madeLink(p.of());
                },
                sight.time().at(p.at()),
                words.value(p.value()),
                p.typed(),
                p.entry());
    }

    private static String said(SeriesWords words, Series s) {
        int n = s.points().size();
        if (n == 0) {
            return "Nothing of this was read yet. Limits are told from " + Series.LEAST + " on.";
        }
        if (s.chart().isEmpty()) {
            return n + (n == 1 ? " value" : " values") + " so far, " + s.missing() + " more for limits.";
        }
        IndividualsChart c = s.chart().get();
        int beyond = s.beyond().size();
        return n + " values, mean " + words.value(c.centre()) + ", limits "
                + words.value(s.lower().orElse(c.lower())) + " to "
                + words.value(c.upper())
                + (beyond == 0 ? "; none beyond." : "; " + beyond + " beyond: look for a cause of its own.")
                + (s.firm() ? "" : " From fewer than " + Series.FIRM + " values: these limits will still move.");
    }

    private static List<String> why(SeriesWords words, Series s, IndividualsChart c) {
        List<String> all = new ArrayList<>();
        all.add("Mean of the values: " + words.value(c.centre()) + ". Mean step from one to the next: "
                + words.step(c.meanRange()) + ".");
        all.add("Spread from piece to piece: mean step / 1.128 = " + words.step(c.sigma())
                + ". Limits: mean ± 3 × that.");
        if (s.nothingTooLow()) {
            all.add(
                    "Below would be " + words.value(c.lower()) + ", which no value can be: the lower limit is "
                            + words.value(s.lower().orElse(c.lower()))
                            + ", and nothing is too low. A limit outside what is possible falls away (ASTM E2587, from memory).");
        }
        all.add("Steps are beyond from 3.267 × the mean step = " + words.step(c.upperRange()) + " on.");
        all.add(
                "Source: [nist-handbook] 6.3.2.2; the same factors as in ASTM E2587 and ISO 7870-2 (from memory). That limits are"
                        + " told from " + Series.LEAST + " values and held firm from " + Series.FIRM
                        + " is common practice, no source.");
        all.add(
                "Three spreads are a habit that pays, not a probability. Values of one day or one bond hang together and make limits"
                        + " too narrow.");
        return all;
    }

    /** What bonds located in this way taught; it is told to the opposite hand's fit as well. */
    private static List<String> lessons(Sight sight, Series s) {
        return LookAtFits.all(sight.view(), false).stream()
                .map(FitSight::result)
                .filter(r -> r.fit().holding().chosen().equals(s.group()))
                .flatMap(r -> r.after().stream().map(a -> lesson(r, sight.say(a.lessonWords()))))
                .filter(l -> !l.isEmpty())
                .toList();
    }

    private static String lesson(FitResult r, String words) {
        return words.isEmpty() ? "" : r.fit().name() + ": " + words;
    }
}

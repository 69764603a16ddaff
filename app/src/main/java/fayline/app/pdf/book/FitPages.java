package fayline.app.pdf.book;

import fayline.app.drawing.fit.FitPictures;
import fayline.app.drawing.fit.GapDrawing;
import fayline.app.drawing.fit.StatesDrawing;
import fayline.app.pdf.Markup;
import fayline.basis.units.Length;
import fayline.flow.project.fit.Fit;
import fayline.flow.reading.FitReading;
import fayline.flow.reading.FitReading.Kind;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.StateReadings;
import fayline.flow.result.fit.StationValue;
import java.util.stream.Collectors;

/** Writes what was read of a fit in each state, against what was wanted. */
final class FitPages {
    private static final double DRAWN = 0.85;
    private static final double LEAST_MM = 1e-9;
    private final Markup m;
    private final BookWords words;
    private final FitResult fit;

    FitPages(Markup m, BookWords words, FitResult fit) {
        this.m = m;
        this.words = words;
        this.fit = fit;
    }

    void write() {
        if (fit.states().isEmpty()) {
            return;
        }
        m.element("h2", "Fit: " + fit.fit().name());
        m.open("table", "pictures").open("tr").open("td", "beside");
        if (!fit.places().isEmpty()) {
            BookPdf.drawing(m, GapDrawing.of(FitPictures.gaps(fit, words.format(), "", mark -> "")), DRAWN);
        }
        m.close().open("td", "beside");
        BookPdf.drawing(m, StatesDrawing.of(FitPictures.states(fit, words.format())), DRAWN);
        m.close().close().close();
        fit.states().forEach(this::state);
    }

    private void state(StateReadings s) {
        m.element("p", "strong", s.state().name() + last(s));
        BookPdf.head(m, "Station", "Gap as typed", "Gap", "Wanted", "", "Flush as typed", "Read by");
        s.stations().stream().filter(v -> !v.typed().isEmpty()).forEach(this::station);
        m.close().close();
    }

    private String last(StateReadings s) {
        return s.stations().stream()
                .flatMap(v -> v.typed().stream())
                .map(FitReading::at)
                .max(java.util.Comparator.naturalOrder())
                .map(t -> ", read up to " + words.at(t))
                .orElse("");
    }

    private void station(StationValue v) {
        m.open("tr");
        m.element(
                "td",
                v.station().id()
                        + (v.station().where().isEmpty()
                                ? ""
                                : ", " + v.station().where()));
        m.element("td", typed(v, true));
        m.element(
                "td",
                "n",
                v.gap()
                        .map(g -> words.format().gap(Length.ofMillimetres(g.gapMm())))
                        .orElse(""));
        m.element("td", "n", wanted(v))
                .element("td", v.gap().map(g -> judged(v, g.gapMm())).orElse(""));
        m.element("td", typed(v, false));
        m.element(
                "td",
                words.people(v.typed().stream().map(FitReading::by).distinct().toList()));
        m.close();
    }

    private static String typed(StationValue v, boolean gap) {
        return v.typed().stream()
                .filter(t -> (t.kind() != Kind.FLUSH) == gap)
                .map(t -> t.typed()
                        + (t.kind() == Kind.CASTING ? " (casting)" : "")
                        + (t.noGoMm().isPresent() ? " goes in, the next leaf does not" : ""))
                .collect(Collectors.joining("; "));
    }

    private String wanted(StationValue v) {
        Fit f = fit.fit();
        return f.gapAt(v.station()).asTyped() + " \u00b1 "
                + f.gapToleranceAt(v.station()).asTyped();
    }

    private String judged(StationValue v, double gapMm) {
        double nominal = fit.fit().gapAt(v.station()).value().millimetres();
        double tolerance = fit.fit().gapToleranceAt(v.station()).value().millimetres();
        return Math.abs(gapMm - nominal) <= tolerance + LEAST_MM ? "within" : "OUTSIDE";
    }
}

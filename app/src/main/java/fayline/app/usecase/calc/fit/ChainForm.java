package fayline.app.usecase.calc.fit;

import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.method.fitup.Spot;
import fayline.method.fitup.chain.ChainStation;
import fayline.method.fitup.chain.DatumFit;
import fayline.method.fitup.chain.DatumFitCalculator;
import fayline.method.fitup.chain.DatumMark;
import fayline.method.fitup.chain.Link;
import fayline.method.fitup.chain.Placement;
import fayline.method.fitup.chain.correct.Neighbour;
import fayline.method.fitup.chain.correct.Remedy;
import fayline.method.fitup.scheme.LaterDoubt;
import fayline.method.fitup.scheme.Locator;
import fayline.method.fitup.scheme.Scheme;
import fayline.method.uncertainty.Distribution;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The fields of a question about a chain of bonds, described and read. */
final class ChainForm {
    private static final Spot ORIGIN = new Spot(0, 0);

    private ChainForm() {}

    static Form form() {
        return Form.empty()
                .needs("links", Kind.list(linkForm().asKind(), 1), "from the innermost part outward")
                .needs("stations", Kind.list(stationForm().asKind(), 1), "the gaps watched, in the final frame")
                .takes("uCommonReading", Kind.notNegative(), "standard uncertainty that all readings share, mm")
                .takes(
                        "later",
                        Kind.list(laterForm().asKind(), 1),
                        "states to come whose change the limits allow for already, and how well it is known")
                .takes("neighbours", Kind.list(neighbourForm().asKind(), 1), "neighbours that can still move")
                .takes("remedies", Kind.list(remedyForm().asKind(), 1), "what can be done after the cure")
                .takes("seed", Kind.whole(0), "of the points of the joint chance; 1 where it is missing");
    }

    private static Form linkForm() {
        Form stop = Odds.stop()
                .takes("distribution", Odds.shapes(), "how the stop's error is spread; normal")
                .needs("std", Kind.notNegative(), "its standard deviation, mm");
        Form mark = Form.empty()
                .needs("id", Kind.text(), "the mark")
                .needs("bench", Kind.plane(), "its place on the bench")
                .needs("inPlace", Kind.plane(), "its place in the final frame")
                .needs("stdBench", Kind.notNegative(), "mm along each axis")
                .needs("stdInPlace", Kind.notNegative(), "mm along each axis");
        return Form.empty()
                .needs("name", Kind.text(), "what the bond is called")
                .needs("part", Kind.text(), "what is bonded")
                .needs("carrier", Kind.text(), "what it is bonded to")
                .takes("pivot", Kind.plane(), "pivot of its moves, in its own frame; the origin where it is missing")
                .needs("open", Kind.truth(), "whether it is still to be bonded")
                .takes(
                        "settled",
                        Kind.truth(),
                        "for a bond that is not open: the gaps were read with it made, so its errors are in the readings; no")
                .takes("moveLimits", Shapes.moveLimits().asKind(), "room for a correction, in its own frame")
                .needs("indexPoints", Kind.list(stop.asKind(), 1), "where the part is held, in its own frame")
                .takes(
                        "datumMarks",
                        Kind.list(mark.asKind(), 2),
                        "marks that lay its frame onto the final one; the same frame where they are missing");
    }

    private static Form stationForm() {
        return Shapes.wanted(Shapes.station().needs("gap", Kind.number(), "gap expected with every link as meant, mm"))
                .needs("on", Kind.text(), "the part whose edge it is")
                .needs("against", Kind.text(), "the carrier or the neighbour opposite")
                .takes("uReading", Kind.notNegative(), "standard uncertainty of the reading, mm");
    }

    private static Form laterForm() {
        return Form.empty()
                .needs("state", Kind.text(), "what is to come")
                .takes("std", Kind.notNegative(), "standard uncertainty of its change at a station, mm");
    }

    private static Form neighbourForm() {
        return Form.empty()
                .needs("name", Kind.text(), "as stations call it")
                .takes("pivot", Kind.plane(), "pivot of its moves; the origin where it is missing")
                .needs("moveLimits", Shapes.moveLimits().asKind(), "how far it can go");
    }

    private static Form remedyForm() {
        return Form.empty()
                .needs("name", Kind.text(), "what it is called")
                .needs("kind", Kind.word("trim", "build_up", "fill", "rehang", "remake"), "what is done")
                .needs("cost", Kind.notNegative(), "in the shop's measure")
                .takes("most", Kind.named(Kind.notNegative()), "most that comes off or on at a station, mm, by its id")
                .takes("moveLimits", Shapes.moveLimits().asKind(), "how far the part can go; for rehang")
                .takes("expectedOff", Kind.notNegative(), "how far off a new part's worst gap will be, mm; for remake");
    }

    private static Spot spot(Given g, String name) {
        return g.has(name) ? Shapes.spot(g.numbers(name)) : ORIGIN;
    }

    static Link link(Given g) {
        Scheme scheme = Scheme.of(
                g.text("name"),
                g.objects("indexPoints").stream()
                        .<Locator>map(p -> new Locator.Known(
                                Odds.stop(p),
                                Distribution.ofStandardDeviation(
                                        Odds.shape(p.text("distribution", "normal")), 0, p.number("std"))))
                        .toList());
        Optional<DatumFit> marks = g.has("datumMarks")
                ? Optional.of(DatumFitCalculator.calculate(
                        g.objects("datumMarks").stream().map(ChainForm::mark).toList()))
                : Optional.empty();
        return new Link(
                g.text("name"),
                g.text("part"),
                g.text("carrier"),
                spot(g, "pivot"),
                scheme,
                marks.map(DatumFit::placement).orElse(Placement.SAME),
                marks,
                g.isTrue("open"),
                Shapes.moveLimits(g),
                g.isTrue("settled"));
    }

    private static DatumMark mark(Given g) {
        return new DatumMark(
                g.text("id"),
                Shapes.spot(g.numbers("bench")),
                Shapes.spot(g.numbers("inPlace")),
                g.number("stdBench"),
                g.number("stdInPlace"));
    }

    static ChainStation station(Given g) {
        if (!(g.has("lower") && g.has("upper")) && !g.has("nominal")) {
            throw CalcInputException.of(
                    "stations." + g.text("id"), "no limits", "lower and upper, or nominal with tolerances");
        }
        return new ChainStation(Shapes.row(g, g.number("gap")), g.text("on"), g.text("against"), g.maybe("uReading"));
    }

    static LaterDoubt later(Given g) {
        return new LaterDoubt(g.text("state"), g.maybe("std"));
    }

    static Neighbour neighbour(Given g) {
        return new Neighbour(g.text("name"), spot(g, "pivot"), Shapes.moveLimits(g));
    }

    static Remedy remedy(Given g) {
        Map<String, Double> most = new LinkedHashMap<>();
        g.json("most")
                .properties()
                .forEach(e -> most.put(e.getKey(), e.getValue().doubleValue()));
        return new Remedy(
                g.text("name"),
                Remedy.Kind.valueOf(g.text("kind").toUpperCase(Locale.ROOT)),
                g.number("cost"),
                most,
                g.has("moveLimits") ? Optional.of(Shapes.moveLimits(g)) : Optional.empty(),
                g.number("expectedOff", 0));
    }
}

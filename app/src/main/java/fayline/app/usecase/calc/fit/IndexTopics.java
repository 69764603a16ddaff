package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.basis.finding.Finding;
import fayline.method.fitup.Station;
import fayline.method.fitup.scheme.Locator;
import fayline.method.fitup.scheme.Scheme;
import fayline.method.fitup.scheme.SchemeComparison;
import fayline.method.fitup.scheme.SchemeOutcome;
import fayline.method.fitup.scheme.Stop;
import fayline.method.uncertainty.Distribution;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** How a part is held and what that does to its gaps: independent stops, drilled pins, stops whose errors go together. */
final class IndexTopics {
    private IndexTopics() {}

    static List<CalcTopic> all() {
        return List.of(
                new FitTopic(
                        "index.uncertainty",
                        "How gaps are spread when the part is held by stops, one way of holding beside the other.",
                        Odds.form()
                                .needs(
                                        "indexPoints",
                                        Kind.list(Odds.stop().asKind(), 1),
                                        "where the part is held; outward normals")
                                .needs("schemes", Kind.named(scheme().asKind()), "ways to hold it, by name"),
                        IndexTopics::independent),
                new FitTopic(
                        "index.pins",
                        "How gaps are spread when the part is held by two pins in drilled holes, the second slotted.",
                        Odds.form()
                                .needs("pin1", Kind.plane(), "the round hole")
                                .needs("pin2", Kind.plane(), "the slotted hole")
                                .needs("diametralPlay", Kind.notNegative(), "hole less pin, mm")
                                .needs(
                                        "stdPinPosition",
                                        Kind.notNegative(),
                                        "standard deviation of a hole's place, mm"),
                        IndexTopics::pins),
                new FitTopic(
                        "index.correlated",
                        "How gaps are spread when errors of stops go together, as on a fixture block.",
                        Odds.form()
                                .needs(
                                        "indexPoints",
                                        Kind.list(Odds.stop().asKind(), 1),
                                        "where the part is held; outward normals")
                                .needs(
                                        "covariance",
                                        Kind.list(Kind.list(Kind.number(), 1), 1),
                                        "of the stops' errors, mm2, row by row"),
                        IndexTopics::correlated));
    }

    private static Form scheme() {
        return Form.empty()
                .needs("distribution", Odds.shapes(), "how each stop's error is spread")
                .needs(
                        "stdPerIndexPoint",
                        Kind.list(Kind.notNegative(), 1),
                        "standard deviation of each stop, mm, in the order of the index points");
    }

    private static CalcAnswer independent(Given in) {
        List<Stop> stops = in.objects("indexPoints").stream().map(Odds::stop).toList();
        List<Scheme> schemes = new ArrayList<>();
        for (Map.Entry<String, Given> e : in.named("schemes").entrySet()) {
            List<Double> std = e.getValue().numbers("stdPerIndexPoint");
            if (std.size() != stops.size()) {
                throw CalcInputException.of(
                        "schemes." + e.getKey() + ".stdPerIndexPoint",
                        std.size() + " numbers",
                        "one for each of the " + stops.size() + " index points");
            }
            List<Locator> locators = new ArrayList<>();
            for (int j = 0; j < std.size(); j++) {
                locators.add(new Locator.Known(
                        stops.get(j),
                        Distribution.ofStandardDeviation(
                                Odds.shape(e.getValue().text("distribution")), 0, std.get(j))));
            }
            schemes.add(Scheme.of(e.getKey(), locators));
        }
        SchemeComparison c = Odds.checked(() -> Odds.compared(in, schemes));
        ObjectNode out = Json.object();
        List<Finding> findings = new ArrayList<>();
        for (SchemeOutcome o : c.schemes()) {
            out.set(o.name(), Odds.json(o));
            findings.addAll(o.findings());
        }
        boolean none = c.schemes().stream().noneMatch(o -> o.odds().isPresent());
        return Odds.answer(out, findings, none);
    }

    private static CalcAnswer pins(Given in) {
        return Odds.checked(() -> {
            SchemeOutcome o = only(
                    in,
                    new Locator.Pins(
                            "pin",
                            Shapes.spot(in.numbers("pin1")),
                            Shapes.spot(in.numbers("pin2")),
                            OptionalDouble.of(in.number("diametralPlay")),
                            OptionalDouble.of(in.number("stdPinPosition"))));
            ObjectNode out = Odds.json(o);
            Station second = o.stops().get(2).contact();
            out.set("pin2Normal", Shapes.json(List.of(second.nx(), second.ny())));
            out.put("stdIndex", Math.hypot(in.number("diametralPlay") / 4, in.number("stdPinPosition")));
            return Odds.answer(out, o.findings(), o.odds().isEmpty());
        });
    }

    private static CalcAnswer correlated(Given in) {
        return Odds.checked(() -> {
            List<Stop> stops =
                    in.objects("indexPoints").stream().map(Odds::stop).toList();
            SchemeOutcome o = only(in, new Locator.Together(stops, in.rows("covariance")));
            return Odds.answer(Odds.json(o), o.findings(), o.odds().isEmpty());
        });
    }

    private static SchemeOutcome only(Given in, Locator locator) {
        return Odds.compared(in, List.of(Scheme.of("scheme", List.of(locator))))
                .schemes()
                .get(0);
    }
}

package fayline.app.usecase.calc.topic;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.basis.finding.Finding;
import fayline.method.uncertainty.Distribution;
import fayline.method.uncertainty.Distribution.Shape;
import fayline.method.uncertainty.FirstOrder;
import fayline.method.uncertainty.FirstOrderCalculator;
import fayline.method.uncertainty.FirstOrderResult;
import fayline.method.uncertainty.Formula;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** How well results are known when their inputs are known only so well. */
public final class UncertaintyTopic implements CalcTopic {
    private static final Form FORM = form();

    private static Form form() {
        Form part = Form.empty()
                .needs("distribution", Kind.word("normal", "rectangular", "triangular", "arcsine"), "how it is spread")
                .takes("std", Kind.notNegative(), "its standard deviation; or")
                .takes(
                        "halfWidth",
                        Kind.notNegative(),
                        "how far its furthest value lies from the middle; not for normal");
        Form input = Form.empty()
                .needs("name", Kind.text(), "as formulas call it")
                .needs("value", Kind.number(), "its best value")
                .takes("parts", Kind.list(part.asKind(), 0), "what its uncertainty is made of; none where it is exact");
        Form correlation = Form.empty()
                .needs("one", Kind.text(), "an input")
                .needs("other", Kind.text(), "another")
                .needs("coefficient", Kind.number(), "from -1 to 1");
        Form result = Form.empty()
                .needs("name", Kind.text(), "what the result is called")
                .needs("formula", Kind.text(), "numbers and names with + - * / and brackets, sin, cos, tan, sqrt");
        return Form.empty()
                .needs("inputs", Kind.list(input.asKind(), 1), "what is known, in units that go together")
                .takes("correlations", Kind.list(correlation.asKind(), 0), "between inputs; independent otherwise")
                .needs("results", Kind.list(result.asKind(), 1), "what is asked");
    }

    @Override
    public String name() {
        return "uncertainty";
    }

    @Override
    public String about() {
        return "How well results are known when their inputs are known only so well: first order, with correlations.";
    }

    @Override
    public ObjectNode schema() {
        return FORM.schema(name(), about());
    }

    @Override
    public CalcAnswer answer(JsonNode inputs) {
        Given in = FORM.read(inputs);
        FirstOrderResult r;
        try {
            r = FirstOrderCalculator.calculate(question(in));
        } catch (IllegalArgumentException e) {
            throw CalcInputException.of(
                    "inputs", String.valueOf(e.getMessage()), "inputs and formulas that go together");
        }
        ObjectNode out = Json.object();
        ArrayNode results = out.putArray("results");
        for (FirstOrderResult.Outcome o : r.results()) {
            ObjectNode n = results.addObject().put("name", o.name());
            n.put("value", o.value()).put("standardUncertainty", o.standardUncertainty());
            ObjectNode components = n.putObject("components");
            o.components().forEach(c -> components.put(c.input(), c.standardUncertainty()));
        }
        ArrayNode correlations = out.putArray("correlations");
        r.correlations().forEach(row -> row.forEach(correlations.addArray()::add));
        return new CalcAnswer(
                out,
                Map.of(),
                List.of("u2(y) = sum c_i c_k u_i u_k r_ik, sensitivities over plus and minus one standard uncertainty"),
                List.of("jcgm100 5.1, 5.2"),
                r.findings().stream().map(Finding::sentence).toList(),
                false);
    }

    private static FirstOrder question(Given in) {
        List<FirstOrder.Input> all = new ArrayList<>();
        for (Given g : in.objects("inputs")) {
            all.add(new FirstOrder.Input(
                    g.text("name"),
                    g.number("value"),
                    g.objects("parts").stream()
                            .map(p -> part(g.text("name"), p))
                            .toList()));
        }
        List<String> names = all.stream().map(FirstOrder.Input::name).toList();
        return new FirstOrder(
                all,
                in.objects("correlations").stream()
                        .map(c -> new FirstOrder.Correlation(c.text("one"), c.text("other"), c.number("coefficient")))
                        .toList(),
                in.objects("results").stream()
                        .map(r -> new FirstOrder.Result(r.text("name"), Formula.read(r.text("formula"), names)))
                        .toList());
    }

    private static Distribution part(String name, Given p) {
        Shape shape = Shape.valueOf(p.text("distribution").toUpperCase(Locale.ROOT));
        if (p.has("std") == p.has("halfWidth") || (shape == Shape.NORMAL && p.has("halfWidth"))) {
            throw CalcInputException.of(
                    "inputs." + name + ".parts",
                    "std " + p.has("std") + ", halfWidth " + p.has("halfWidth"),
                    shape == Shape.NORMAL ? "std alone" : "one of std and halfWidth");
        }
        return p.has("std")
                ? Distribution.ofStandardDeviation(shape, 0, p.number("std"))
                : new Distribution(shape, 0, p.number("halfWidth"));
    }
}

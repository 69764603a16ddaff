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
import fayline.method.chart.GroupFactors;
import fayline.method.chart.IndividualsChart;
import fayline.method.chart.MovingAverageChart;
import fayline.method.chart.Quantile;
import fayline.method.chart.Trend;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What readings of one kind tell that come again and again. */
public final class ChartTopic implements CalcTopic {
    private static final double USUAL_WEIGHT = 0.3;
    private static final double USUAL_WIDTH = 3;
    private static final int LONGEST = 100_000;
    private static final Form DRIFT = Form.empty()
            .needs("target", Kind.number(), "where the average begins and its limits lie around, as the readings")
            .needs("sigma", Kind.positive(), "standard deviation of readings, as the readings")
            .takes("weight", Kind.positive(), "of the newest reading, at most 1; 0.3 where it is not given")
            .takes(
                    "width",
                    Kind.positive(),
                    "of the limits, in standard deviations of the average; 3 where it is not given");
    private static final Form FORM = Form.empty()
            .takes(
                    "values",
                    Kind.list(Kind.number(), 2),
                    "readings in the order in which they were taken, in any one unit")
            .takes("drift", DRIFT.asKind(), "also a moving average of them")
            .takes(
                    "shares",
                    Kind.list(Kind.notNegative(), 1),
                    "below which value these shares of the readings lie, 0 to 1")
            .takes(
                    "causes",
                    Kind.list(Kind.list(Kind.number(), 1), 2),
                    "for each reading the causes it may follow, also a trend")
            .takes("groups", Kind.list(Kind.whole(2), 1), "factors of charts for groups of so many, 2 to 100");

    @Override
    public String name() {
        return "chart";
    }

    @Override
    public String about() {
        return "What readings of one kind tell that come again and again: limits, drift, quantiles, trend, factors for groups.";
    }

    @Override
    public ObjectNode schema() {
        return FORM.schema(name(), about());
    }

    @Override
    public CalcAnswer answer(JsonNode inputs) {
        Given in = FORM.read(inputs);
        if (!in.has("values") && !in.has("groups")) {
            throw CalcInputException.of("values", "nothing", "readings, or groups for their factors alone");
        }
        ObjectNode out = Json.object();
        if (in.has("values")) {
            List<Double> values = in.numbers("values");
            if (values.size() > LONGEST) {
                throw CalcInputException.of("values", values.size() + " readings", "at most " + LONGEST);
            }
            out.set("single", single(values));
            in.maybeObject("drift").ifPresent(d -> out.set("drift", drift(values, d)));
            if (in.has("shares")) {
                out.set("quantiles", quantiles(values, in));
            }
            if (in.has("causes")) {
                out.set("trend", trend(values, in));
            }
        }
        if (in.has("groups")) {
            out.set("factors", factors(in));
        }
        return new CalcAnswer(
                out,
                Map.of(),
                List.of(
                        "limits at three standard deviations, from the mean range of neighbours over 1.128",
                        "quantiles by the definitions 6, 7 and 8 of Hyndman and Fan",
                        "trend by least squares about the means of the causes, from singular values"),
                List.of("nist-handbook", "hyndman-fan1996"),
                List.of(
                        "Limits from fewer than some twenty readings still move; a reading beyond them has a cause to look for,"
                                + " one within them need not be good enough."),
                false);
    }

    private static ObjectNode single(List<Double> values) {
        IndividualsChart chart = IndividualsChart.of(values);
        ObjectNode out = Json.object();
        out.put("centre", chart.centre());
        out.set("ranges", numbers(chart.ranges()));
        out.put("meanRange", chart.meanRange());
        out.put("sigma", chart.sigma());
        out.put("lower", chart.lower());
        out.put("upper", chart.upper());
        out.put("upperRange", chart.upperRange());
        out.set("beyond", places(chart.beyond()));
        return out;
    }

    private static ObjectNode drift(List<Double> values, Given d) {
        double weight = d.number("weight", USUAL_WEIGHT);
        if (weight > 1) {
            throw CalcInputException.of("drift.weight", String.valueOf(weight), "above 0 and at most 1");
        }
        MovingAverageChart chart = MovingAverageChart.of(
                values, weight, d.number("target"), d.number("sigma"), d.number("width", USUAL_WIDTH));
        ObjectNode out = Json.object();
        out.set("averages", numbers(chart.averages()));
        out.put("lower", chart.lower());
        out.put("upper", chart.upper());
        out.set("beyond", places(chart.beyond()));
        return out;
    }

    private static ObjectNode quantiles(List<Double> values, Given in) {
        ObjectNode out = Json.object();
        for (Quantile q : Quantile.values()) {
            List<Double> found = new ArrayList<>();
            for (double share : in.numbers("shares")) {
                if (share > 1) {
                    throw CalcInputException.of("shares", String.valueOf(share), "0 to 1");
                }
                found.add(q.of(values, share));
            }
            out.set(q.name().toLowerCase(java.util.Locale.ROOT), numbers(found));
        }
        return out;
    }

    private static ObjectNode trend(List<Double> values, Given in) {
        List<List<Double>> rows = in.rows("causes");
        int causes = rows.get(0).size();
        if (rows.size() != values.size() || rows.stream().anyMatch(r -> r.size() != causes)) {
            throw CalcInputException.of(
                    "causes", rows.size() + " rows", values.size() + " rows of " + causes + ", one for each reading");
        }
        Trend trend = Trend.of(
                        array(values), rows.stream().map(ChartTopic::array).toArray(double[][]::new))
                .orElseThrow(() -> CalcInputException.of(
                        "causes",
                        values.size() + " readings with " + causes + " causes",
                        "at least two readings more than causes, and causes that change and can be told apart"));
        ObjectNode out = Json.object();
        out.set("coefficients", column(trend.coefficients().col(0)));
        out.set("standardErrors", column(trend.standardErrors().col(0)));
        out.put("residualDeviation", trend.residualDeviation());
        out.put("explained", trend.explained());
        return out;
    }

    private static double[] array(List<Double> row) {
        return row.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static ArrayNode factors(Given in) {
        ArrayNode all = Json.object().putArray("factors");
        for (double size : in.numbers("groups")) {
            if (size > GroupFactors.MOST) {
                throw CalcInputException.of("groups", Json.shown(in.json("groups")), "2 to " + GroupFactors.MOST);
            }
            GroupFactors g = GroupFactors.of((int) size);
            all.addObject()
                    .put("size", g.size())
                    .put("d2", g.d2())
                    .put("d3", g.d3())
                    .put("c4", g.c4())
                    .put("A2", g.a2())
                    .put("A3", g.a3())
                    .put("D3", g.lowerRange())
                    .put("D4", g.upperRange())
                    .put("B3", g.lowerDeviation())
                    .put("B4", g.upperDeviation());
        }
        return all;
    }

    private static ArrayNode numbers(List<Double> all) {
        ArrayNode out = Json.object().putArray("all");
        all.forEach(out::add);
        return out;
    }

    private static ArrayNode column(double[] all) {
        ArrayNode out = Json.object().putArray("all");
        for (double a : all) {
            out.add(a);
        }
        return out;
    }

    private static ArrayNode places(List<Integer> all) {
        ArrayNode out = Json.object().putArray("all");
        all.forEach(out::add);
        return out;
    }
}

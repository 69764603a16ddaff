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
import fayline.method.rate.LearningCurve;
import java.util.List;
import java.util.Map;

/** What repetition leaves of a time. */
public final class LearningTopic implements CalcTopic {
    private static final String AVERAGE = "average";
    private static final int MOST = 100_000;
    private static final Form FORM = Form.empty()
            .needs("rate", Kind.positive(), "what a doubling of the count leaves, as 0.85")
            .needs("of", Kind.word("unit", AVERAGE), "of the single one, or of the average of all so far")
            .needs("counts", Kind.list(Kind.whole(1), 1), "for the how-many-th it is asked")
            .takes("first", Kind.positive(), "time of the first, in any unit; 1 where it is not given");

    @Override
    public String name() {
        return "learning";
    }

    @Override
    public String about() {
        return "What repetition leaves of a time: of the n-th piece of work, of the first n together and on average.";
    }

    @Override
    public ObjectNode schema() {
        return FORM.schema(name(), about());
    }

    @Override
    public CalcAnswer answer(JsonNode inputs) {
        Given in = FORM.read(inputs);
        boolean average = AVERAGE.equals(in.text("of"));
        LearningCurve curve = new LearningCurve(
                in.number("rate"), average ? LearningCurve.Form.CUMULATIVE_AVERAGE : LearningCurve.Form.UNIT);
        double first = in.number("first", 1);
        ObjectNode out = Json.object();
        out.put("exponent", curve.exponent());
        ArrayNode unit = out.putArray("unit");
        ArrayNode total = out.putArray("total");
        ArrayNode mean = out.putArray(AVERAGE);
        for (double count : in.numbers("counts")) {
            if (count > MOST) {
                throw CalcInputException.of("counts", Json.shown(in.json("counts")), "from 1 to " + MOST);
            }
            unit.add(first * curve.unit((int) count));
            total.add(first * curve.total((int) count));
            mean.add(first * curve.average((int) count));
        }
        return new CalcAnswer(
                out,
                Map.of(),
                List.of(
                        average
                                ? "average of n = first x n^b, b = log2(rate); total n x average; n-th by difference"
                                : "n-th = first x n^b, b = log2(rate); total by adding up"),
                List.of("wright1936"),
                List.of(
                        "A rate means less on the average than on the single one: take it with the form it was found in."),
                false);
    }
}

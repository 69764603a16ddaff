package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.method.fitup.reading.GaugeReading;
import fayline.method.fitup.reading.WideGauge;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** From what a gauge shows to a gap and its standard uncertainty. */
final class ReadingTopic {
    private static final String FEELER = "feelerGoNoGo";
    private static final String TAPER = "taperGauge";
    private static final String CAST = "testCasting";
    private static final String TOUCHES = "touches";

    /** By method: what it needs, then after a stroke what it may have. */
    private static final Map<String, List<List<String>>> FIELDS = fields();

    private ReadingTopic() {}

    private static Map<String, List<List<String>>> fields() {
        Map<String, List<List<String>>> f = new LinkedHashMap<>();
        f.put(FEELER, List.of(List.of("go", "noGo"), List.of("concaveRadius", "gaugeWidth")));
        f.put(TAPER, List.of(List.of("reading"), List.of("std", "tiltDeg", "concaveRadius", "gaugeWidth")));
        f.put(CAST, List.of(List.of("reading"), List.of("std", "film")));
        f.put(TOUCHES, List.of(List.of("thinnest"), List.of()));
        return Map.copyOf(f);
    }

    static CalcTopic topic() {
        Form reading = Form.empty()
                .needs("method", Kind.word(FEELER, TAPER, CAST, TOUCHES), "how it was read")
                .takes("go", Kind.notNegative(), "thickest stack of leaves that enters, mm")
                .takes("noGo", Kind.notNegative(), "thinnest that does not, mm")
                .takes("reading", Kind.notNegative(), "what the taper gauge shows, or the casting's thickness, mm")
                .takes("std", Kind.notNegative(), "standard uncertainty, mm; taper 0.06, casting 0.1 where not given")
                .takes("tiltDeg", Kind.number(), "how far off square a taper gauge was held, degrees")
                .takes("film", Kind.notNegative(), "parting film that was not measured with the casting, mm")
                .takes("thinnest", Kind.notNegative(), "thinnest leaf at hand, which did not enter, mm")
                .takes("concaveRadius", Kind.positive(), "radius of a concave neighbour edge, mm")
                .takes("gaugeWidth", Kind.positive(), "width of the flat gauge that bridges it, mm");
        return new FitTopic(
                "reading",
                "Gap and standard uncertainty from feeler leaves, a taper gauge, a test casting, or edges that touch.",
                Form.empty().needs("readings", Kind.list(reading.asKind(), 1), "one look at one station each"),
                ReadingTopic::answer);
    }

    private static CalcAnswer answer(Given in) {
        List<Given> all = in.objects("readings");
        List<GaugeReading> readings = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            String path = "readings[" + i + "]";
            try {
                readings.add(reading(all.get(i), path));
            } catch (IllegalArgumentException e) {
                throw CalcInputException.of(path, String.valueOf(e.getMessage()), "a reading that can be");
            }
        }
        ObjectNode out = Json.object();
        ArrayNode results = out.putArray("results");
        for (GaugeReading r : readings) {
            ObjectNode one = results.addObject().put("gap", r.gapMm()).put("standardUncertainty", r.deviationMm());
            if (r.oneSided()) {
                one.put("oneSided", true);
            }
        }
        return Replies.of(
                out,
                "go and no-go as a rectangular spread; cosine of the tilt; then what a flat gauge misses on a concave edge",
                "[jcgm100]; defaults of taper gauge and casting: common practice, no source",
                List.of(),
                false);
    }

    private static GaugeReading reading(Given r, String path) {
        String method = r.text("method");
        check(r, method, path);
        Optional<WideGauge> wide = r.has("concaveRadius")
                ? Optional.of(new WideGauge(r.number("concaveRadius"), r.number("gaugeWidth")))
                : Optional.empty();
        return switch (method) {
            case FEELER -> new GaugeReading.Feeler(r.number("go"), r.number("noGo"), wide);
            case TAPER ->
                new GaugeReading.Taper(
                        r.number("reading"),
                        r.number("std", GaugeReading.TAPER_DEVIATION_MM),
                        Math.toRadians(r.number("tiltDeg", 0)),
                        wide);
            case CAST ->
                new GaugeReading.Cast(
                        r.number("reading"), r.number("film", 0), r.number("std", GaugeReading.CAST_DEVIATION_MM));
            default -> new GaugeReading.Touches(r.number("thinnest"));
        };
    }

    private static void check(Given r, String method, String path) {
        List<List<String>> fields = FIELDS.getOrDefault(method, List.of(List.of(), List.of()));
        for (String needed : fields.get(0)) {
            if (!r.has(needed)) {
                throw CalcInputException.of(path + "." + needed, "nothing", "a number: " + method + " needs it");
            }
        }
        for (String name :
                List.of("go", "noGo", "reading", "std", "tiltDeg", "film", "thinnest", "concaveRadius", "gaugeWidth")) {
            if (r.has(name) && !fields.get(0).contains(name) && !fields.get(1).contains(name)) {
                throw CalcInputException.of(
                        path + "." + name,
                        "a field that " + method + " does not have",
                        String.join(", ", fields.get(0)));
            }
        }
        if (r.has("concaveRadius") != r.has("gaugeWidth")) {
            throw CalcInputException.of(path, "one of concaveRadius and gaugeWidth", "both or neither");
        }
    }
}

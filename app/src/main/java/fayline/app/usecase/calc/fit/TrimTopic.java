package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.method.fitup.trim.NeighbourPair;
import fayline.method.fitup.trim.TrimCalculator;
import fayline.method.fitup.trim.TrimGoal;
import fayline.method.fitup.trim.TrimQuestion;
import fayline.method.fitup.trim.TrimResult;
import fayline.method.fitup.trim.TrimRow;
import fayline.method.fitup.trim.TrimRules;
import fayline.method.fitup.trim.TrimStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Least trim with its move; and least material to add where the opening is too large. */
final class TrimTopic {
    private static final String METHOD =
            "move and depths found together by linear programs, each keeping what the one before won";
    private static final String SOURCE = "[boyd-vandenberghe2004]";

    private TrimTopic() {}

    static CalcTopic trim() {
        return new FitTopic(
                "trim",
                "The least area to take off the edges that may be cut, with the move that goes with it.",
                common(station().needs("trimMax", Kind.notNegative(), "most that may come off here, mm"))
                        .needs(
                                "trimmableEdges",
                                Kind.list(Kind.text(), 0),
                                "edges that may be cut, the one to cut first at the head")
                        .takes(
                                "maxTrimSlope",
                                Kind.notNegative(),
                                "most change of depth, mm per mm; 0.004 where not given")
                        .takes(
                                "adjacent",
                                Kind.list(Kind.exactly(3, Kind.passedOver()), 0),
                                "stations side by side, for the slope: id, id, distance in mm")
                        .takes(
                                "goal",
                                Kind.word("leastArea", "fewestEdges"),
                                "what to spare first; leastArea where not given"),
                in -> FitAnswers.refusing(() -> answerTrim(in)));
    }

    static CalcTopic buildUp() {
        return new FitTopic(
                "trim.buildUp",
                "The least area to add where the opening is too large, and the least trim that is then left; every edge may be"
                        + " cut or built up.",
                common(station()),
                in -> FitAnswers.refusing(() -> answerBuildUp(in)));
    }

    private static Form station() {
        return Shapes.wanted(Shapes.station().needs("gap", Kind.number(), "gap as the part lies, mm"))
                .needs("tributary", Kind.notNegative(), "how much of its edge the station speaks for, mm");
    }

    private static Form common(Form station) {
        return Form.empty()
                .takes("pivot", Kind.plane(), "pivot of the move, mm; the middle of the stations where not given")
                .takes(
                        "moveLimits",
                        Shapes.moveLimits().asKind(),
                        "how far it may be moved; 10 mm and 2 degrees where not given")
                .needs("stations", Kind.list(station.asKind(), 1), "the stations in order round the part")
                .takes("objective", Kind.passedOver(), "explanation; not read");
    }

    private static TrimQuestion question(Given in, List<String> edges, List<NeighbourPair> pairs, boolean capped) {
        List<TrimRow> rows = new ArrayList<>();
        for (Given s : in.objects("stations")) {
            rows.add(new TrimRow(
                    Shapes.row(s, s.number("gap")),
                    s.number("tributary"),
                    capped ? s.number("trimMax") : Double.POSITIVE_INFINITY,
                    0));
        }
        TrimGoal goal = in.text("goal", "").equals("fewestEdges") ? TrimGoal.FEWEST_EDGES : TrimGoal.LEAST_AREA;
        return new TrimQuestion(
                rows,
                pairs,
                Shapes.pivot(in, Shapes.stations(in, "stations")),
                Shapes.moveLimits(in),
                new TrimRules(edges, in.number("maxTrimSlope", TrimRules.SLOPE), 0, goal));
    }

    private static CalcAnswer answerTrim(Given in) {
        TrimResult r = TrimCalculator.calculate(question(in, in.texts("trimmableEdges"), pairs(in), true));
        ObjectNode out = Json.object().put("status", r.status().name());
        r.cut().ifPresent(c -> {
            out.put("trimArea", c.areaMm2());
            out.put("trimUnique", c.unique());
            out.set("trim", Shapes.json(c.depthsMm()));
            c.edges().forEach(out.putArray("edges")::add);
            out.set("move", Shapes.json(c.move().inPlane()));
            out.set("gaps", Shapes.json(c.gapsMm()));
        });
        r.withoutCaps().ifPresent(c -> out.put("trimAreaWithEveryEdgeFree", c.areaMm2()));
        r.buildUp().ifPresent(b -> out.put("buildUpArea", b.areaMm2()));
        r.findings().stream()
                .filter(f -> f.about().equals("trim"))
                .findFirst()
                .ifPresent(f -> out.put("words", f.sentence()));
        return Replies.of(out, METHOD, SOURCE, r.findings(), r.status() != TrimStatus.OK);
    }

    private static CalcAnswer answerBuildUp(Given in) {
        List<String> edges = in.objects("stations").stream()
                .map(s -> s.text("edge", ""))
                .distinct()
                .toList();
        TrimQuestion q = question(in, edges, List.of(), false);
        TrimStatus status = TrimCalculator.calculate(q).status();
        Optional<TrimResult.BuildUp> b = TrimCalculator.buildUp(q);
        ObjectNode out = Json.object().put("status", status.name());
        List<Finding> findings = new ArrayList<>();
        b.ifPresent(x -> {
            out.put("buildUpArea", x.areaMm2());
            out.put("trimAreaAfterBuildUp", x.trimAreaMm2());
            out.set("buildUp", Shapes.json(x.heightsMm()));
            out.set("trim", Shapes.json(x.depthsMm()));
            out.set("move", Shapes.json(x.move().inPlane()));
        });
        if (b.isEmpty()) {
            findings.add(new Finding(
                    Severity.STOP,
                    "stations",
                    "No move within its limits brings every gap inside its limits, whatever is cut or added.",
                    SOURCE));
        }
        return Replies.of(out, METHOD, SOURCE, findings, status != TrimStatus.OK);
    }

    private static List<NeighbourPair> pairs(Given in) {
        List<String> ids =
                in.objects("stations").stream().map(s -> s.text("id")).toList();
        List<NeighbourPair> pairs = new ArrayList<>();
        int i = 0;
        for (JsonNode p : in.json("adjacent")) {
            boolean known = p.get(0).isTextual()
                    && ids.contains(p.get(0).textValue())
                    && p.get(1).isTextual()
                    && ids.contains(p.get(1).textValue());
            if (!known || !p.get(2).isNumber() || !(p.get(2).doubleValue() >= 0)) {
                throw CalcInputException.of(
                        "adjacent[" + i + "]", Json.shown(p), "the ids of two stations and a distance of 0 or more");
            }
            pairs.add(new NeighbourPair(
                    p.get(0).textValue(), p.get(1).textValue(), p.get(2).doubleValue()));
            i++;
        }
        return pairs;
    }
}

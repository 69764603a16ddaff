package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Given;
import fayline.basis.finding.Finding;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Station;
import fayline.method.fitup.chain.Chain;
import fayline.method.fitup.chain.ChainCalculator;
import fayline.method.fitup.chain.ChainResult;
import fayline.method.fitup.chain.ChainStation;
import fayline.method.fitup.chain.correct.Correction;
import fayline.method.fitup.chain.correct.CorrectionCalculator;
import fayline.method.fitup.chain.correct.CorrectionResult;
import fayline.method.fitup.chain.correct.CorrectionResult.Way;
import fayline.method.fitup.chain.correct.Neighbour;
import fayline.method.fitup.chain.correct.RemedyCalculator;
import fayline.method.fitup.chain.correct.RemedyResult.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** A part that reaches its place through several bonds. */
final class ChainTopic {
    private ChainTopic() {}

    static CalcTopic topic() {
        return new FitTopic(
                "chain",
                "What a chain of bonds does to the last gaps, which bond spends the tolerance, where a correction goes, what"
                        + " is left after the cure.",
                ChainForm.form(),
                ChainTopic::answer);
    }

    private static CalcAnswer answer(Given in) {
        return Odds.checked(() -> {
            Chain chain = new Chain(
                    in.objects("links").stream().map(ChainForm::link).toList(),
                    in.objects("stations").stream().map(ChainForm::station).toList(),
                    in.maybe("uCommonReading"),
                    in.objects("later").stream().map(ChainForm::later).toList(),
                    List.of(),
                    List.of(),
                    Set.of(),
                    in.has("seed") ? in.whole("seed") : Odds.SEED);
            ObjectNode out = Json.object();
            List<Finding> findings = new ArrayList<>();
            ChainResult r = ChainCalculator.calculate(chain);
            odds(out, r);
            findings.addAll(r.findings());
            findings.addAll(r.dependence());
            List<Neighbour> neighbours =
                    in.objects("neighbours").stream().map(ChainForm::neighbour).toList();
            CorrectionResult c = CorrectionCalculator.calculate(new Correction(chain, neighbours));
            ways(out, c, chain);
            findings.addAll(c.findings());
            remedies(out, in, chain);
            return new CalcAnswer(
                    out,
                    Map.of(),
                    List.of("variances of links carried rigidly to the stations; least largest weighted deviation"),
                    List.of("jcgm100; schonemann1966; boyd-vandenberghe2004"),
                    findings.stream().map(Finding::sentence).distinct().toList(),
                    r.odds().isEmpty());
        });
    }

    private static void odds(ObjectNode out, ChainResult r) {
        r.odds().ifPresent(d -> {
            Odds.write(out, d);
            ArrayNode shares = out.putArray("linkShares");
            r.stations().forEach(s -> shares.add(Shapes.json(s.links())));
        });
        r.spender().ifPresent(s -> out.put("spender", s));
        if (!r.missing().isEmpty()) {
            ArrayNode missing = out.putArray("missing");
            r.missing().forEach(m -> {
                ObjectNode n = missing.addObject().put("what", m.what()).put("about", m.about());
                m.offer().ifPresent(o -> n.put("couldBeAssumed", o.words().toString()));
            });
        }
    }

    private static void ways(ObjectNode out, CorrectionResult c, Chain chain) {
        ArrayNode ways = out.putArray("corrections");
        for (Way w : c.ways()) {
            ObjectNode n = ways.addObject().put("name", w.name());
            n.put("worstDeviation", w.worstDeviation());
            n.put("worstStation", w.worstStation());
            n.put("worstGap", w.worstGapMm());
            n.set("gaps", Shapes.json(w.gapsMm()));
            w.outside().forEach(n.putArray("outOfTolerance")::add);
            ChainCalculator.calculate(chain.withGaps(w.gapsMm()))
                    .odds()
                    .ifPresent(o -> n.put("jointProbability", o.joint().probability()));
            ObjectNode moves = n.putObject("moves");
            w.moves().forEach(m -> moves.set(m.name(), Shapes.json(m.move())));
        }
        c.chosen().ifPresent(w -> out.put("chosen", w.name()));
    }

    private static void remedies(ObjectNode out, Given in, Chain chain) {
        if (!in.has("remedies")) {
            return;
        }
        List<FitRow> rows = chain.stations().stream().map(ChainStation::row).toList();
        ArrayNode list = out.putArray("remedies");
        for (Outcome o : RemedyCalculator.calculate(
                        rows,
                        Station.middle(rows.stream().map(FitRow::station).toList()),
                        in.objects("remedies").stream().map(ChainForm::remedy).toList())
                .outcomes()) {
            ObjectNode n = list.addObject().put("name", o.name());
            n.put(
                    "kind",
                    o.remedies().stream()
                            .map(r -> r.kind().name().toLowerCase(Locale.ROOT))
                            .collect(Collectors.joining(" and ")));
            n.put("cost", o.cost());
            n.put("worstStation", o.worstStation());
            n.put("worstGap", o.worstGapMm());
            n.put("worstDeviation", o.worstDeviation());
            o.outside().forEach(n.putArray("outOfTolerance")::add);
            n.set("gaps", Shapes.json(o.gapsMm()));
            n.set("off", Shapes.json(o.offMm()));
            n.set("on", Shapes.json(o.onMm()));
            o.moves().stream().findFirst().ifPresent(m -> n.set("move", Shapes.json(m)));
        }
    }
}

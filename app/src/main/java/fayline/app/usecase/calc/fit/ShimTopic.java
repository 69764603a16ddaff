package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.shim.IndexPoint;
import fayline.method.fitup.shim.ShimCalculator;
import fayline.method.fitup.shim.ShimFlag;
import fayline.method.fitup.shim.ShimQuestion;
import fayline.method.fitup.shim.ShimResult;
import fayline.method.fitup.shim.ShimStack;
import fayline.method.fitup.shim.ShimStock;
import java.util.List;
import java.util.Optional;

/** Shims that hold a move, exact and from stock. */
final class ShimTopic {
    private ShimTopic() {}

    static CalcTopic topic() {
        Form point =
                Shapes.station().needs("clearance", Kind.number(), "room between part and stop as the part lies, mm");
        Form station = Shapes.wanted(Shapes.station().needs("gap", Kind.number(), "gap as the part lies, mm"));
        return new FitTopic(
                "shim",
                "Thickness of the shims that hold the part at a move, and the stacks of stock that come nearest together.",
                Form.empty()
                        .takes(
                                "pivot",
                                Kind.plane(),
                                "pivot of the move, mm; the middle of the stations where not given")
                        .needs("move", Shapes.move().asKind(), "the move wanted")
                        .needs("indexPoints", Kind.list(point.asKind(), 1), "where shims go")
                        .needs(
                                "stock",
                                Kind.list(Kind.positive(), 0).orNull(),
                                "thicknesses at hand, mm; null to ask for the exact ones only")
                        .needs("maxLayers", Kind.whole(0), "most pieces in a stack")
                        .takes("tape", Kind.notNegative(), "adhesive tape on each stack, mm")
                        .needs("stations", Kind.list(station.asKind(), 1), "the gaps that judge a choice"),
                in -> FitAnswers.refusing(() -> answer(in)));
    }

    private static CalcAnswer answer(Given in) {
        List<FitRow> rows = in.objects("stations").stream()
                .map(s -> Shapes.row(s, s.number("gap")))
                .toList();
        Optional<ShimStock> stock = in.has("stock")
                ? Optional.of(new ShimStock(in.numbers("stock"), in.whole("maxLayers"), in.number("tape", 0)))
                : Optional.empty();
        ShimResult r = ShimCalculator.calculate(new ShimQuestion(
                in.objects("indexPoints").stream()
                        .map(p -> IndexPoint.shim(Shapes.station(p), p.number("clearance")))
                        .toList(),
                Shapes.move(in.object("move")),
                Shapes.pivot(in, Shapes.stations(in, "stations")),
                stock,
                rows));
        ObjectNode out = Json.object();
        out.set("exactShims", Shapes.json(r.exactMm()));
        if (r.free().isEmpty()) {
            out.put("conditionNumberScaled", r.condition());
        }
        r.free().ifPresent(f -> out.set("freeMotion", Shapes.json(f)));
        ArrayNode flags = out.putArray("flags");
        for (ShimFlag f : ShimFlag.values()) {
            if (r.flags().contains(f)) {
                flags.add(f.name());
            }
        }
        r.best().ifPresent(c -> out.set("discrete", choice(c).put("unique", c.unique())));
        r.rounded().ifPresent(c -> out.set("rounded", choice(c)));
        return Replies.of(
                out,
                "what must be filled at each point to hold the move; from stock, every combination of three heights at or below"
                        + " and three above, the one kept whose gaps stray least",
                "[golub-vanloan1996] for the condition; the search: common practice, no source",
                r.findings(),
                r.flags().contains(ShimFlag.INDEX_UNDETERMINED) || r.flags().contains(ShimFlag.STOP_IN_THE_WAY));
    }

    private static ObjectNode choice(ShimResult.Choice c) {
        ObjectNode n = Json.object();
        n.set("shims", Shapes.json(c.stacks().stream().map(ShimStack::heightMm).toList()));
        ArrayNode pieces = n.putArray("pieces");
        c.stacks().forEach(s -> pieces.add(Shapes.json(s.piecesMm())));
        n.put("worstDeviation", c.worstDeviation());
        n.set("move", Shapes.json(c.move()));
        n.set("gaps", Shapes.json(c.gapsMm()));
        return n;
    }
}

package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.method.fitup.Station;
import fayline.method.fitup.mirror.OppositeHand;
import fayline.method.fitup.space.FlushMove;
import java.util.List;

/** The same fit on the opposite hand. */
final class MirrorTopic {
    private MirrorTopic() {}

    static CalcTopic topic() {
        Form flush = Form.empty()
                .needs("dz", Kind.number(), "mm outboard")
                .needs("rxDeg", Kind.number(), "tilt about x, degrees")
                .needs("ryDeg", Kind.number(), "tilt about y, degrees");
        return new FitTopic(
                "mirror",
                "Stations, move and flush move as they are on the opposite hand, in its own frame.",
                Form.empty()
                        .needs(
                                "stations",
                                Kind.list(
                                        Shapes.station()
                                                .needs("gap", Kind.number(), "gap, mm; stays")
                                                .needs("trim", Kind.notNegative(), "trim depth, mm; stays")
                                                .asKind(),
                                        0),
                                "the stations in order round the part")
                        .needs("move", Shapes.move().asKind(), "a move in the part's plane")
                        .needs("flushMove", flush.asKind(), "a move out of it"),
                in -> FitAnswers.refusing(() -> answer(in)));
    }

    private static CalcAnswer answer(Given in) {
        ObjectNode out = Json.object();
        ArrayNode stations = out.putArray("stations");
        List<Given> turned = OppositeHand.turned(in.objects("stations"));
        for (Given g : turned) {
            Station s = OppositeHand.of(Shapes.station(g));
            stations.addObject()
                    .put("id", s.id())
                    .put("x", s.at().xMm())
                    .put("y", s.at().yMm())
                    .put("nx", s.nx())
                    .put("ny", s.ny())
                    .put("gap", g.number("gap"))
                    .put("trim", g.number("trim"));
        }
        out.set("move", Shapes.json(OppositeHand.of(Shapes.move(in.object("move")))));
        Given f = in.object("flushMove");
        FlushMove flush = OppositeHand.of(
                new FlushMove(f.number("dz"), Math.toRadians(f.number("rxDeg")), Math.toRadians(f.number("ryDeg"))));
        out.set(
                "flushMove",
                Json.object()
                        .put("dz", flush.dzMm())
                        .put("rxDeg", Math.toDegrees(flush.rxRad()))
                        .put("ryDeg", Math.toDegrees(flush.ryRad())));
        return Replies.of(out, "reflection x to -x, stations in reverse order", "[goldstein1980]", List.of(), false);
    }
}

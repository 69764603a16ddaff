package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.topic.Topics;
import fayline.app.usecase.fit.LookAtFits;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.FitWay;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.aim.Aim;
import fayline.method.fitup.aim.AimedMove;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The move of a fit judged otherwise than by its worst gap, on its page and through the calculations. */
class FitWaysSiteTest extends AtTheDemo {
    private static final Pattern DRAWING = Pattern.compile("fit-drawing\">(<svg.*?</svg>)", Pattern.DOTALL);

    private static FitResult result(String fit) {
        return LookAtFits.of(demo.view(), fit, false).orElseThrow().result();
    }

    private static FitWay way(FitResult r, Aim aim) {
        return r.advice().orElseThrow().ways().stream()
                .filter(w -> w.aimed().aim() == aim)
                .findFirst()
                .orElseThrow();
    }

    private static String drawing(String html) {
        return DRAWING.matcher(html).results().map(m -> m.group(1)).findFirst().orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"pane-left", "canopy-left"})
    void should_show_every_way_and_draw_the_one_that_the_address_names(String fit) throws Exception {
        FitResult r = result(fit);
        String page = browser.page("/fit/" + fit);
        for (FitWay w : r.advice().orElseThrow().ways()) {
            assertThat(page).contains(w.name());
            w.aimed()
                    .move()
                    .ifPresent(m -> assertThat(page)
                            .contains(w.sentence().toString())
                            .contains(w.aimed().aim() == Aim.WORST ? "recommended" : "?way="));
        }
        FitWay even = way(r, Aim.EVEN);
        String other = browser.page("/fit/" + fit + "?way=even");
        assertThat(other)
                .contains("Drawn here instead: errors evened out")
                .contains("data-way-move>" + even.sentence())
                .contains("after this move")
                .contains("data-move>" + r.advice().orElseThrow().sentence());
        assertThat(drawing(other)).isNotEqualTo(drawing(page));
        // nothing of the choice is kept
        assertThat(drawing(browser.page("/fit/" + fit))).isEqualTo(drawing(page));
        assertThat(browser.get("/fit/" + fit + "?way=best").statusCode()).isEqualTo(404);
        assertThat(browser.page("/fit/" + fit + "?assume=yes")).contains("?way=even&amp;assume=yes");
    }

    @Test
    void should_say_why_of_every_way() throws Exception {
        String why = browser.page("/fit/pane-left/why?of=ways");
        assertThat(why)
                .contains("Least E with every weighted distance")
                .contains("Least sum of the squares")
                .contains("Largest s with every reading")
                .contains("[lawson1974]")
                .contains("/fit/pane-left/why?of=move");
    }

    private static ObjectNode question(FitResult r, FitAdvice a) {
        ObjectNode in = Json.object();
        in.putArray("pivot").add(a.pivot().xMm()).add(a.pivot().yMm());
        MoveLimits l = r.fit().room();
        ObjectNode limits = in.putObject("moveLimits");
        limits.putArray("dx").add(l.dxLowMm()).add(l.dxHighMm());
        limits.putArray("dy").add(l.dyLowMm()).add(l.dyHighMm());
        limits.putArray("thetaDeg").add(Math.toDegrees(l.turnLowRad())).add(Math.toDegrees(l.turnHighRad()));
        ArrayNode stations = in.putArray("stations");
        for (FitRow row : a.rows()) {
            ObjectNode s = stations.addObject()
                    .put("id", row.station().id())
                    .put("x", row.station().at().xMm())
                    .put("y", row.station().at().yMm())
                    .put("nx", row.station().nx())
                    .put("ny", row.station().ny())
                    .put("gap", row.gapMm())
                    .put("nominal", row.nominalMm())
                    .put("lower", row.lowerMm())
                    .put("upper", row.upperMm())
                    .put("weight", row.weight());
            row.minimumMm().ifPresent(m -> s.put("minGap", m));
        }
        return in;
    }

    private static JsonNode calc(String topic, ObjectNode in) {
        return Topics.named(topic).answer(in).outputs();
    }

    private static void same(JsonNode move, AimedMove.Left left) {
        Move m = left.move().inPlane();
        assertThat(m.dxMm()).isCloseTo(move.path("dx").asDouble(Double.NaN), within(1e-6));
        assertThat(m.dyMm()).isCloseTo(move.path("dy").asDouble(Double.NaN), within(1e-6));
        assertThat(Math.toDegrees(m.turnRad())).isCloseTo(move.path("thetaDeg").asDouble(Double.NaN), within(1e-6));
    }

    @Test
    void should_give_the_same_moves_through_the_calculations_for_the_same_readings() {
        FitResult r = result("pane-left");
        FitAdvice a = r.advice().orElseThrow();
        assertThat(a.best().curved()).isFalse();
        ObjectNode in = question(r, a);
        JsonNode best = calc("fit.move", in);
        AimedMove.Left worst = way(r, Aim.WORST).aimed().move().orElseThrow();
        same(best.at("/minimax/move"), worst);
        assertThat(worst.worst()).isCloseTo(best.at("/minimax/worstDeviation").asDouble(), within(0.02));
        same(best.at("/leastSquares/move"), way(r, Aim.EVEN).aimed().move().orElseThrow());
        JsonNode margin = calc("fit.move.maxMargin", in);
        AimedMove.Left inside = way(r, Aim.INSIDE).aimed().move().orElseThrow();
        same(margin.path("move"), inside);
        assertThat(inside.marginMm()).isCloseTo(margin.path("margin").asDouble(), within(0.02));
        AimedMove least = way(r, Aim.LEAST).aimed();
        JsonNode small = calc("fit.move.leastMove", in.deepCopy().put("guard", least.guardMm()));
        assertThat(least.status().name()).isEqualTo(small.path("status").asText());
        least.move().ifPresent(m -> {
            same(small.path("move"), m);
            assertThat(m.sizeMm()).isCloseTo(small.path("scaledNorm").asDouble(), within(1e-6));
        });
        assertThat(List.of(Aim.values())).hasSameSizeAs(a.ways());
    }
}

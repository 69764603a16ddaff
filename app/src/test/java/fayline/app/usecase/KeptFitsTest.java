package fayline.app.usecase;

import static fayline.app.usecase.Teasel.by;
import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.act.CorrectStep;
import fayline.app.usecase.act.Measured;
import fayline.app.usecase.act.TakeReading;
import fayline.app.usecase.fit.BeginFit;
import fayline.app.usecase.fit.FitSight;
import fayline.app.usecase.fit.LookAtFits;
import fayline.app.usecase.fit.NewEdge;
import fayline.app.usecase.fit.NewFit;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.ShopView;
import fayline.basis.units.Length;
import fayline.flow.project.design.Hand;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is kept of a fit is what it would be if it were worked out anew, whatever was entered in between. */
class KeptFitsTest {
    private final Teasel teasel = Teasel.readIn();
    private final LookAtShop looking = new LookAtShop(teasel.shop);
    private final Random random = new Random(11);

    private FitSight check(boolean assume) {
        ShopView view = looking.look(Teasel.PROJECT).orElseThrow();
        FitSight kept = LookAtFits.of(view, "hatch", assume).orElseThrow();
        assertThat(LookAtFits.of(view, "hatch", assume).orElseThrow()).isSameAs(kept);
        assertThat(kept)
                .usingRecursiveComparison()
                .isEqualTo(LookAtFits.sight(
                        view.definition(),
                        view.record().readings(Teasel.PROJECT),
                        view.definition().fits().get("hatch"),
                        assume));
        return kept;
    }

    private long read(String station) {
        String value = 25 + random.nextInt(10) + "";
        return new TakeReading(teasel.shop)
                .take(
                        by("bo", random),
                        Teasel.PROJECT,
                        new Measured(
                                "gap",
                                "hatch",
                                station,
                                "trimmed",
                                Map.of("value", value.charAt(0) + "." + value.charAt(1) + " mm"),
                                Optional.empty()))
                .seq();
    }

    @Test
    void should_equal_the_answer_worked_out_anew_when_readings_come_change_and_go() {
        new BeginFit(teasel.shop)
                .begin(
                        by("ada", random),
                        Teasel.PROJECT,
                        new NewFit(
                                "hatch",
                                "Hatch",
                                Hand.LEFT,
                                "3 mm",
                                "0.5 mm",
                                "0 mm",
                                "0.5 mm",
                                List.of(),
                                Optional.of(NewEdge.rectangle(
                                        Length.ofMillimetres(500), Length.ofMillimetres(300), new Length(0))),
                                List.of(),
                                6,
                                NewFit.Gauge.NONE));
        FitSight before = check(false);
        long seq = 0;
        for (int i = 0; i < 12; i++) {
            seq = read(String.valueOf(1 + i % 6));
            FitSight now = check(random.nextBoolean());
            assertThat(now).isNotSameAs(before);
            before = now;
        }
        int count = LookAtFits.of(looking.look("").orElseThrow(), "hatch", false)
                .orElseThrow()
                .result()
                .now()
                .orElseThrow()
                .stations()
                .get(5)
                .gap()
                .orElseThrow()
                .count();
        assertThat(count).isEqualTo(2);
        new CorrectStep(teasel.shop).withdraw(by("ada", random), seq, "misread");
        assertThat(check(false)
                        .result()
                        .now()
                        .orElseThrow()
                        .stations()
                        .get(5)
                        .gap()
                        .orElseThrow()
                        .count())
                .isEqualTo(1);
    }
}

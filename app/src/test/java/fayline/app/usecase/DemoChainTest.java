package fayline.app.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.app.usecase.fit.LookAtChains;
import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.record.MemoryLog;
import fayline.flow.record.TakenReading;
import fayline.flow.result.fit.chain.CarriedToBench;
import fayline.flow.result.fit.chain.FitChainResult;
import fayline.flow.result.fit.chain.MoveTold;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.chain.correct.Remedy;
import fayline.method.fitup.chain.correct.RemedyResult;
import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The demo's chains of three bonds: measured on the airframe, bonded on the bench. */
class DemoChainTest {
    private static Definition definition;
    private static List<TakenReading> readings;

    @BeforeAll
    static void readIn() throws IOException {
        ShopRecord shop =
                new ShopRecord(new MemoryLog(), Clock.fixed(Instant.parse("2026-03-03T07:05:00Z"), ZoneOffset.UTC));
        assertThat(new ImportFolder(shop)
                        .from(Teasel.root().resolve("demo/ousel"), false)
                        .problems())
                .isEmpty();
        definition = shop.readDefinition("ousel-1");
        readings = shop.state().readings("ousel-1");
    }

    private static FitChainResult chain(String id) {
        return LookAtChains.sight(definition, readings, definition.chains().get(id), false);
    }

    /** As the history says: 0.7 mm aft, 0.3 mm low, 0.06 deg nose-down, the left half 1.3 mm off, and a tenth of noise. */
    @Test
    void should_hold_readings_that_were_made_from_the_motion_that_is_told_beside_them() {
        FitChainResult r = chain("canopy-chain-right");
        Spot middle = Station.middle(r.rows().stream().map(FitRow::station).toList());
        assertThat(middle.xMm()).isEqualTo(-13.06, within(0.01));
        assertThat(middle.yMm()).isEqualTo(-141, within(0.01));
        Move off = new Move(-0.7, -0.3, Math.toRadians(-0.06));
        Map<String, Double> noise = Map.of("F1", -0.1, "R1", -0.1, "S3", 0.1, "C1", 1.3);
        for (FitRow row : r.rows()) {
            double made = row.withGap(44).gapAfterMm(off, middle)
                    + noise.getOrDefault(row.station().id(), 0.0);
            assertThat(row.gapMm()).as(row.station().id()).isEqualTo(made, within(0.051));
        }
    }

    /** The correction undoes that motion and what the struts will do, 0.2 mm aft, to what the noise leaves. */
    @Test
    void should_undo_the_motion_on_the_bench_with_the_neighbour_that_can_move() {
        FitChainResult r = chain("canopy-chain-right");
        List<MoveTold> moves = r.correction().orElseThrow().moves();
        assertThat(moves).extracting(MoveTold::name).containsExactly("Pane into frame", "canopy-frame-left");
        Move pane = moves.get(0).move();
        assertThat(pane.dxMm()).isEqualTo(0.9, within(0.15));
        assertThat(pane.dyMm()).isEqualTo(0.3, within(0.2));
        assertThat(pane.turnRad()).isEqualTo(Math.toRadians(0.06), within(Math.toRadians(0.02)));
        Move bench = moves.get(0).bench().orElseThrow().move();
        // half round: what goes forward on the airframe goes against the bench's x
        assertThat(bench.dxMm()).isEqualTo(-pane.dxMm(), within(1e-3));
        assertThat(bench.dyMm()).isEqualTo(-pane.dyMm(), within(1e-3));
        assertThat(moves.get(1).neighbour()).isTrue();
        assertThat(moves.get(1).move().dyMm()).isEqualTo(-1, within(1e-6));
        assertThat(r.counting().orElseThrow().odds().orElseThrow().joint().probability())
                .isBetween(0.7, 0.9);
    }

    @Test
    void should_carry_each_station_to_where_it_lies_on_the_bench() {
        CarriedToBench bench = chain("canopy-chain-right").carried().get(0);
        assertThat(bench.sure()).isTrue();
        assertThat(bench.laid().pValue()).isGreaterThan(0.05);
        for (FitRow row : chain("canopy-chain-right").rows()) {
            CarriedToBench.Station s = bench.stations().stream()
                    .filter(t -> t.id().equals(row.station().id()))
                    .findFirst()
                    .orElseThrow();
            assertThat(s.bench().xMm()).isEqualTo(900 - row.station().at().xMm(), within(0.3));
            assertThat(s.bench().yMm()).isEqualTo(450 - row.station().at().yMm(), within(0.3));
            assertThat(s.marksMm().orElseThrow()).isBetween(0.05, 0.15);
        }
    }

    @Test
    void should_name_two_remedies_on_the_left_where_none_does_it_alone_for_less() {
        FitChainResult r = chain("canopy-chain-left");
        assertThat(r.correction()).isEmpty();
        RemedyResult.Outcome first = r.remedies().orElseThrow().outcomes().get(0);
        assertThat(first.remedies()).extracting(Remedy::kind).containsExactly(Remedy.Kind.BUILD_UP, Remedy.Kind.REHANG);
        assertThat(first.cost()).isEqualTo(7, within(1e-9));
        assertThat(first.fits()).isTrue();
        r.remedies().orElseThrow().outcomes().stream()
                .filter(o -> o.remedies().size() == 1 && o.cost() < 7)
                .forEach(o -> assertThat(o.fits()).as(o.name()).isFalse());
    }
}

package fayline.method.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.numeric.RandomStream;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a belt drive keeps; the rows of the trade and of print stand in the tables of the shop, belt.csv. */
class BeltDriveTest {
    @Test
    void should_find_the_centre_again_from_the_belt_it_takes() {
        RandomStream random = new RandomStream(7, 0);
        for (int run = 0; run < 300; run++) {
            BeltDrive d =
                    new BeltDrive(0.008, 18 + (int) (random.nextUnit() * 80), 18 + (int) (random.nextUnit() * 80));
            double centre = d.leastCentreM() * (1.001 + 4 * random.nextUnit());
            assertThat(d.centreM(d.beltM(centre)).orElseThrow()).isCloseTo(centre, within(1e-9));
        }
    }

    @Test
    void should_be_the_same_belt_whichever_pulley_drives() {
        BeltDrive down = new BeltDrive(0.008, 56, 89);
        BeltDrive up = new BeltDrive(0.008, 89, 56);
        assertThat(down.beltM(0.3)).isCloseTo(up.beltM(0.3), within(1e-15));
        assertThat(down.inMesh(0.3)).isCloseTo(up.inMesh(0.3), within(1e-12));
        assertThat(down.ratio() * up.ratio()).isCloseTo(1, within(1e-15));
    }

    /** Two tangents and two arcs, added from the points where they touch: the same length without the formula. */
    @Test
    void should_be_as_long_as_its_tangents_and_arcs_measured_one_by_one() {
        BeltDrive d = new BeltDrive(0.008, 56, 89);
        double c = 0.31;
        double r1 = d.driverM() / 2;
        double r2 = d.drivenM() / 2;
        double tangent = Math.sqrt(c * c - (r2 - r1) * (r2 - r1));
        double touch = Math.acos((r2 - r1) / c);
        double whole = 2 * tangent + r1 * 2 * touch + r2 * (2 * Math.PI - 2 * touch);
        assertThat(d.beltM(c)).isCloseTo(whole, within(1e-12));
    }

    @Test
    void should_wrap_half_round_and_load_both_shafts_by_both_pulls_when_pulleys_are_alike() {
        BeltDrive d = new BeltDrive(0.008, 60, 60);
        assertThat(d.wrapRad(0.3)).isCloseTo(Math.PI, within(1e-12));
        assertThat(d.inMesh(0.3)).isCloseTo(30, within(1e-12));
        double pull = 50_000 / d.beltSpeedMPerS(80);
        assertThat(d.hubLoadN(50_000, 80, 0, 0.3)).isCloseTo(pull, within(1e-9));
        assertThat(d.hubLoadN(50_000, 80, 0.25, 0.3)).isCloseTo(pull * 1.25 / 0.75, within(1e-9));
    }

    @Test
    void should_refuse_a_belt_too_short_and_pulleys_that_touch() {
        BeltDrive d = new BeltDrive(0.008, 56, 80);
        assertThat(d.centreM(0.5)).isEmpty();
        assertThatThrownBy(() -> d.beltM(0.15)).hasMessageContaining("the pulleys touch");
        assertThatThrownBy(() -> new BeltDrive(0, 56, 80)).hasMessageContaining("pitch is above nought");
        assertThatThrownBy(() -> new BeltDrive(0.008, 5, 80)).hasMessageContaining("at least 6 teeth");
        assertThatThrownBy(() -> d.hubLoadN(1, 1, 1, 0.3)).hasMessageContaining("below 1");
        assertThatThrownBy(() -> TipSpeed.soundMPerS(-1)).hasMessageContaining("absolute nought");
        assertThatThrownBy(() -> TipSpeed.standingMPerS(0, 1)).hasMessageContaining("diameter above nought");
        assertThatThrownBy(() -> PulleyPairs.near(0, List.of(20), 1)).hasMessageContaining("above nought");
    }

    @Test
    void should_offer_the_pair_nearest_to_a_wanted_ratio_first() {
        List<PulleyPairs.Pair> pairs = PulleyPairs.near(1.59, List.of(50, 56, 80, 89, 90), 3);
        assertThat(pairs.get(0)).isEqualTo(new PulleyPairs.Pair(56, 89));
        assertThat(pairs).hasSize(3);
        assertThat(PulleyPairs.near(1, List.of(20, 40), 9).get(0)).isEqualTo(new PulleyPairs.Pair(40, 40));
        assertThat(BeltDrive.commonFactor(140, 56)).isEqualTo(28);
        assertThat(BeltDrive.commonFactor(140, 89)).isEqualTo(1);
    }

    @Test
    void should_meet_the_air_faster_in_flight_than_standing() {
        assertThat(TipSpeed.helicalMPerS(1.72, 54.5, 60)).isGreaterThan(TipSpeed.standingMPerS(1.72, 54.5));
        assertThat(TipSpeed.helicalMPerS(1.72, 0, 60)).isEqualTo(60);
    }
}

package fayline.method.mix.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Fraction;
import fayline.basis.units.Mass;
import fayline.method.mix.audit.RatioAuditResult.Verdict;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RatioAuditTest {
    private static Mass kg(double v) {
        return Mass.ofKilograms(v);
    }

    private static Counted counted(double before, double beforeU, double left, double leftU) {
        return new Counted(kg(before), kg(beforeU), kg(left), kg(leftU));
    }

    private static RatioAuditResult unread(Counted resin, Counted hardener, RatioAudit.Read read, int unread) {
        return RatioAuditCalculator.calculate(
                new RatioAudit(100, 30, Fraction.ofPercent(3), resin, hardener, read, unread, 0.95));
    }

    /** The stock-take that the product must see through: balances only, so exact figures (mass balance). */
    @Test
    void should_raise_half_the_hardener_when_3_60_kg_were_received_and_2_85_kg_are_left_for_5_kg_of_resin() {
        RatioAuditResult r = unread(
                counted(12.00, 0.0866, 7.00, 0.0058), counted(3.60, 0.0312, 2.85, 0.0058), RatioAudit.Read.NONE, 22);

        assertThat(r.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(r.resinUsed().kilograms()).isCloseTo(5.00, within(1e-9));
        assertThat(r.hardenerUsed().kilograms()).isCloseTo(0.75, within(1e-9));
        assertThat(r.hardenerExpected().kilograms()).isCloseTo(1.50, within(1e-9));
        assertThat(r.hardenerPer100().orElseThrow()).isCloseTo(15.0, within(1e-9));
        assertThat(r.deviation().orElseThrow().percent()).isCloseTo(-50, within(1e-9));
        assertThat(r.findings().get(0).severity()).isEqualTo(Severity.STOP);
        assertThat(r.findings().get(0).sentence())
                .startsWith("The ratio was not kept: half the hardener. 5.00 kg of resin had 750 g of hardener and"
                        + " should have had 1.50 kg: 100:15.0 instead of 100:30.0");
    }

    /** [jcgm100] 5.1.6: of a quotient the relative uncertainties add in squares, here those of differences (5.1.2). */
    @Test
    void should_know_the_deviation_as_well_as_a_quotient_of_differences_is_known() {
        RatioAuditResult r = unread(
                counted(12.00, 0.0866, 7.00, 0.0058), counted(3.60, 0.0312, 2.85, 0.0058), RatioAudit.Read.NONE, 22);

        double resin = Math.hypot(0.0866, 0.0058) / 5.00;
        double hardener = Math.hypot(0.0312, 0.0058) / 0.75;
        double expected = 1.959964 * 0.5 * Math.hypot(resin, hardener);
        assertThat(r.uncertainty().orElseThrow().ratio()).isCloseTo(expected, within(expected * 1e-3));
    }

    @Test
    void should_find_the_slip_of_the_mixes_without_readings_when_the_others_were_weighed_right() {
        // 4 kg and 1.2 kg went into weighed mixes; the rest, 1 kg and 0.15 kg, did not have enough.
        RatioAudit.Read read = new RatioAudit.Read(18, kg(4), kg(1.2), kg(0.001), kg(0.001));
        RatioAuditResult r = unread(counted(12, 0.003, 7, 0.003), counted(3.6, 0.003, 2.25, 0.003), read, 4);

        assertThat(r.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(r.resinUnread().kilograms()).isCloseTo(1, within(1e-9));
        assertThat(r.hardenerPer100().orElseThrow()).isCloseTo(15, within(1e-9));
    }

    @Test
    void should_keep_a_guard_band_on_both_sides_of_the_limit() {
        Counted resin = counted(12, 0.0029, 7, 0.0029);
        assertThat(unread(resin, counted(3.6, 0.0029, 2.10, 0.0029), RatioAudit.Read.NONE, 3)
                        .verdict())
                .isEqualTo(Verdict.PASS);
        // 1.455 kg is 3 percent too little: on the limit itself nothing can be told.
        assertThat(unread(resin, counted(3.6, 0.0029, 2.145, 0.0029), RatioAudit.Read.NONE, 3)
                        .verdict())
                .isEqualTo(Verdict.CANNOT_TELL);
        assertThat(unread(resin, counted(3.6, 0.0029, 2.160, 0.0029), RatioAudit.Read.NONE, 3)
                        .verdict())
                .isEqualTo(Verdict.FAIL);
        // The same good counts with what was received known by the label alone: not sharp enough for 3 percent.
        assertThat(unread(counted(12, 0.0866, 7, 0.0029), counted(3.6, 0.0312, 2.1, 0.0029), RatioAudit.Read.NONE, 3)
                        .verdict())
                .isEqualTo(Verdict.CANNOT_TELL);
    }

    @Test
    void should_not_judge_when_nothing_is_gone_or_more_is_left_than_there_was() {
        RatioAuditResult nothing =
                unread(counted(5, 0.01, 5, 0.01), counted(1.5, 0.01, 1.5, 0.01), RatioAudit.Read.NONE, 0);
        assertThat(nothing.verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(nothing.hardenerPer100()).isEmpty();
        assertThat(nothing.findings().get(0).sentence()).contains("Too little resin is gone");

        RatioAuditResult more =
                unread(counted(5, 0.01, 3, 0.01), counted(1.5, 0.01, 1.9, 0.01), RatioAudit.Read.NONE, 2);
        assertThat(more.verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(more.findings().get(0).sentence()).contains("More is left than there can be");
    }

    @Test
    void should_say_what_is_gone_beyond_the_readings_when_every_mix_has_one() {
        RatioAudit.Read read = new RatioAudit.Read(9, kg(4), kg(1.2), kg(0.002), kg(0.002));
        RatioAuditResult r = unread(counted(12, 0.003, 7, 0.003), counted(3.6, 0.003, 2.1, 0.003), read, 0);

        assertThat(r.verdict()).isEqualTo(Verdict.PASS);
        assertThat(r.resinUnread().kilograms()).isCloseTo(5, within(1e-9));
        assertThat(r.findings().stream().map(Finding::sentence))
                .anyMatch(s -> s.contains("1.00 kg of resin more is gone than the scale readings"))
                .anyMatch(s -> s.contains("300 g of hardener more is gone"));
    }

    @Test
    void should_find_whatever_deviation_went_in_when_counts_are_exact() {
        Random random = new Random(41);
        for (int i = 0; i < 200; i++) {
            double nominal = 10 + 50 * random.nextDouble();
            double off = -0.9 + 2 * random.nextDouble();
            double resin = 0.5 + 10 * random.nextDouble();
            double hardener = resin * nominal / 100 * (1 + off);
            RatioAuditResult r = RatioAuditCalculator.calculate(new RatioAudit(
                    100,
                    nominal,
                    Fraction.ofPercent(2),
                    counted(20, 0, 20 - resin, 0),
                    counted(20, 0, 20 - hardener, 0),
                    RatioAudit.Read.NONE,
                    5,
                    0.95));
            assertThat(r.deviation().orElseThrow().ratio()).isCloseTo(off, within(1e-9));
            assertThat(r.verdict()).isEqualTo(Math.abs(off) <= 0.02 ? Verdict.PASS : Verdict.FAIL);
        }
    }

    @Test
    void should_add_lots_with_their_uncertainties_in_squares() {
        Counted both = counted(6, 0.03, 2, 0.004).plus(counted(4, 0.04, 1, 0.003));
        assertThat(both.used().kilograms()).isCloseTo(7, within(1e-12));
        assertThat(both.beforeUncertainty().kilograms()).isCloseTo(0.05, within(1e-12));
        assertThat(both.leftUncertainty().kilograms()).isCloseTo(0.005, within(1e-12));
    }

    @Test
    void should_refuse_what_cannot_be() {
        assertThatThrownBy(() -> counted(-1, 0, 0, 0)).hasMessageContaining("-1.0 kg");
        assertThatThrownBy(() -> new RatioAudit(
                        100,
                        0,
                        Fraction.ofPercent(3),
                        counted(1, 0, 0, 0),
                        counted(1, 0, 0, 0),
                        RatioAudit.Read.NONE,
                        0,
                        0.95))
                .hasMessageContaining("no ratio");
        assertThatThrownBy(() -> new RatioAudit(
                        100,
                        30,
                        Fraction.ofPercent(3),
                        counted(1, 0, 0, 0),
                        counted(1, 0, 0, 0),
                        RatioAudit.Read.NONE,
                        0,
                        1))
                .hasMessageContaining("a coverage of 1.0");
    }
}

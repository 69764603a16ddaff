package fayline.basis.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.units.Amount;
import fayline.basis.units.Length;
import fayline.basis.units.Measure;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import java.util.IllegalFormatException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Conversions by definition: 1 in = 25.4 mm, 1 lbf = 0.45359237 kg times 9.80665 m/s2 (NIST SP 811, appendix B). */
class PhraseTest {
    @Test
    void should_tell_each_reader_his_own_units_when_one_sentence_is_read_twice() {
        Phrase p =
                Phrase.of("%s at %s (needs %s to %s)", "F1", Amount.mm(3.64, 2), Amount.mm(2.5, 1), Amount.mm(3.5, 1));
        assertEquals("F1 at 3.64 mm (needs 2.5 mm to 3.5 mm)", p.toString());
        // 3.64 / 0.0254 = 143.31, 2.5 / 0.0254 = 98.4, 3.5 / 0.0254 = 137.8.
        assertEquals("F1 at 143.3 thou (needs 98 thou to 138 thou)", p.in(UnitSystem.INCH));
    }

    @Test
    void should_reach_into_phrases_when_they_are_put_together() {
        Phrase p = Phrase.joined(
                "; ", List.of(Phrase.of("%s aft", Amount.shiftMm(0.6)), Phrase.of("%s up", Amount.shiftMm(0.2))));
        assertEquals("0.6 mm aft; 0.2 mm up", p.toString());
        assertEquals("24 thou aft; 8 thou up", p.in(UnitSystem.INCH));
        assertEquals("Expect 0.6 mm aft; 0.2 mm up.", Phrase.of("Expect %s.", p).toString());
        assertTrue(Phrase.joined(", ", List.of()).isEmpty());
        assertTrue(Phrase.NONE.isEmpty());
        assertFalse(p.isEmpty());
    }

    @Test
    void should_convert_every_measure_when_inches_are_read() {
        assertEquals("73 degF", Amount.degC(23).in(UnitSystem.INCH));
        assertEquals("-22 degF", Amount.degC(-30).in(UnitSystem.INCH));
        assertEquals("33.7 lbf", Amount.newtons(150, 0).in(UnitSystem.INCH));
        assertEquals("5.71 lbf per in", Amount.newtonsPerMm(1, 2).in(UnitSystem.INCH));
        assertEquals("1.00 in²", Amount.mm2(645.16).in(UnitSystem.INCH));
        assertEquals("24 thou per foot", Amount.slope(0.002).in(UnitSystem.INCH));
        assertEquals("20.000 in", Amount.placeMm(508, 1).in(UnitSystem.INCH));
        // 1 lbf is 4.4482216152605 N and 1 in 25.4 mm, both exact (NIST SP 811, appendix B.8).
        assertEquals(1, Measure.BENDING.in(UnitSystem.INCH, 4.4482216152605 * 25.4 * 25.4), 1e-12);
        assertEquals("145 psi", new Amount(Measure.STRESS, 1, 2, Amount.Manner.PLAIN).in(UnitSystem.INCH));
        assertEquals("118 thou", new QuantityFormat(UnitSystem.INCH).gap(Length.ofMillimetres(3)));
        assertEquals("3.0 mm", new QuantityFormat(UnitSystem.METRIC).gap(Length.ofMillimetres(3)));
    }

    @Test
    void should_keep_the_sign_and_never_say_minus_nought_when_an_amount_is_signed() {
        assertEquals("+0.4 mm", Amount.signedMm(0.4, 1).toString());
        assertEquals("-16 thou", Amount.signedMm(-0.4, 1).in(UnitSystem.INCH));
        assertEquals("0.0 mm", Amount.mm(-0.01, 1).toString());
        assertEquals("0.0 mm", Amount.signedMm(0.04, 1).toString());
        assertEquals("0.0 mm", Amount.signedMm(-0.04, 1).toString());
        assertEquals("+10.0 mm", Amount.signedMm(10, 1).toString());
        assertEquals("+3 thou", Amount.signedMm(0.08, 1).in(UnitSystem.INCH));
        assertEquals("0.35 mm", Amount.shiftMm(0.35).toString());
        assertEquals("1.0 mm", Amount.shiftMm(1).toString());
        assertThrows(IllegalArgumentException.class, () -> Amount.mm(Double.NaN, 1));
    }

    @Test
    void should_refuse_at_once_when_pattern_and_parts_do_not_go_together() {
        assertThrows(IllegalFormatException.class, () -> Phrase.of("%s and %s", "one"));
        assertThrows(IllegalFormatException.class, () -> Phrase.of("%.1f", Amount.mm(1, 1)));
    }

    @Test
    void should_be_equal_when_they_say_the_same_of_the_same_amounts() {
        assertEquals(Phrase.of("%s off", Amount.mm(1, 1)), Phrase.of("%s off", Amount.mm(1, 1)));
        assertFalse(Phrase.of("%s off", Amount.mm(1, 1)).equals(Phrase.plain("1.0 mm off")));
        assertEquals(
                new Finding(Severity.NOTE, "a", "said", "b"),
                new Finding(Severity.NOTE, "a", Phrase.plain("said"), "b"));
    }
}

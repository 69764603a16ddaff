package fayline.basis.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityParserTest {
    /** Expected values by the exact definitions of inch and pound (NIST SP 811 [nist-sp811], appendix B). */
    @ParameterizedTest
    @CsvSource({
        "15 thou, 0.000381",
        ".050 in, 0.00127",
        "3/32 in, 0.00238125",
        "1 3/32 in, 0.02778125",
        "1-3/32 in, 0.02778125",
        "0.5 mm, 0.0005",
        "-2 mm, -0.002",
        "3/32\", 0.00238125",
        "1e-3 m, 0.001"
    })
    void should_read_a_length_when_written_as_at_the_bench(String text, double metres) {
        Entered<Length> e = QuantityParser.parse(text, QuantityKind.LENGTH);
        assertThat(e.value().metres()).isCloseTo(metres, within(1e-12));
        assertThat(e.asTyped()).isEqualTo(text);
    }

    @Test
    void should_read_every_kind_named_in_the_guide() {
        assertThat(QuantityParser.parse("200 g/m2", QuantityKind.AREAL_MASS)
                        .value()
                        .kilogramsPerSquareMetre())
                .isCloseTo(0.2, within(1e-12));
        assertThat(QuantityParser.parse("5.8 oz/yd2", QuantityKind.AREAL_MASS)
                        .value()
                        .gramsPerSquareMetre())
                .isCloseTo(196.653, within(1e-3));
        assertThat(QuantityParser.parse("90 min", QuantityKind.TIME_SPAN)
                        .value()
                        .hours())
                .isEqualTo(1.5);
        assertThat(QuantityParser.parse("23 degC", QuantityKind.TEMPERATURE)
                        .value()
                        .kelvins())
                .isCloseTo(296.15, within(1e-9));
        assertThat(QuantityParser.parse("70 degF", QuantityKind.TEMPERATURE)
                        .value()
                        .celsius())
                .isCloseTo(21.1111, within(1e-4));
        assertThat(QuantityParser.parse("0.7 bar", QuantityKind.VACUUM).value().kilopascals())
                .isCloseTo(70, within(1e-9));
        assertThat(QuantityParser.parse("24 inHg", QuantityKind.VACUUM).value().kilopascals())
                .isCloseTo(81.2733, within(1e-4));
        assertThat(QuantityParser.parse("15 %", QuantityKind.FRACTION).value().ratio())
                .isCloseTo(0.15, within(1e-12));
        assertThat(QuantityParser.parse("0.15", QuantityKind.FRACTION).value().ratio())
                .isCloseTo(0.15, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "15 | add the unit",
                "15 kg | kg is a unit of mass",
                "1,5 mm | write 1.5 mm",
                "3/0 in | 0 below the line",
                "1 MM | write 1 mm",
                "abc | a length such as",
                "1..5 mm | a length such as",
                "2 1.5 mm | a length such as"
            })
    void should_say_what_was_found_and_expected_when_a_length_is_unreadable(String text, String says) {
        assertThatThrownBy(() -> QuantityParser.parse(text, QuantityKind.LENGTH))
                .isInstanceOf(UnreadableQuantityException.class)
                .hasMessageContaining("found \"" + text + "\"")
                .hasMessageContaining(says);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"3,4 | write 3.4", "3,4 in | write 3.4 in", "3,4x | ''", "3,4 kg | ''", "1,2,3 mm | ''"})
    void should_suggest_a_point_for_a_comma_when_that_can_be_read(String text, String suggestion) {
        assertThatThrownBy(() -> QuantityParser.parse(text, QuantityKind.LENGTH))
                .isInstanceOfSatisfying(
                        UnreadableQuantityException.class,
                        e -> assertThat(e.suggestion()).isEqualTo(suggestion));
    }

    @Test
    void should_refuse_a_temperature_when_below_absolute_zero() {
        assertThatThrownBy(() -> QuantityParser.parse("-300 degC", QuantityKind.TEMPERATURE))
                .isInstanceOf(UnreadableQuantityException.class)
                .hasMessageContaining("below absolute zero");
    }

    @Test
    void should_give_back_the_number_when_read_out_in_the_same_unit() {
        for (String symbol : QuantityKind.TEMPERATURE.symbols()) {
            Temperature t = QuantityKind.TEMPERATURE.of(300, symbol).orElseThrow();
            assertThat(QuantityKind.TEMPERATURE.in(t, symbol)).isCloseTo(300, within(1e-9));
        }
    }
}

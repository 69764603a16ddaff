package fayline.basis.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitOfMeasureTest {
    /** NIST SP 811 [nist-sp811], appendix B.8, seven digits; recalled, the first seven also stand in the unit checks. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "foot; m; 0.3048",
                "pound (avoirdupois); kg; 0.4535924",
                "pound-force; N; 4.448222",
                "inch of mercury, conventional; Pa; 3386.389",
                "gallon (U.S.); m3; 0.003785412",
                "horsepower (550 ft lbf/s); W; 745.6999",
                "slug; kg; 14.59390",
                "acre; m2; 4046.856",
                "fathom; m; 1.828800",
                "ounce (avoirdupois) per square yard; kg/m2; 0.03390575",
                "pound per gallon (U.S.); kg/m3; 119.8264",
                "inch of water, conventional; Pa; 249.0889",
                "calorie (IT); J; 4.1868",
                "mile per hour; km/h; 1.609344",
                "horsepower (metric); W; 735.4988",
                "foot per second squared; m/s2; 0.3048",
                "pound per cubic inch; kg/m3; 27679.90",
                "pound-force second per square foot; Pa s; 47.88026",
                "Btu (IT) per pound; J/kg; 2326",
                "Btu (IT) per pound degree Fahrenheit; J/(kg K); 4186.8",
                "gallons (U.S.) per minute (gpm); m3/s; 6.309020e-05",
                "kilometers per hour; m/s; 0.2777778",
                "inches; mm; 25.4",
                "centipoise; mPa s; 1"
            })
    void should_give_the_printed_factor_when_a_unit_is_named(String unit, String to, double factor) {
        UnitOfMeasure from = UnitOfMeasure.parse(unit).orElseThrow();
        UnitOfMeasure into = UnitOfMeasure.parse(to).orElseThrow();
        assertThat(from.dimension()).isEqualTo(into.dimension());
        assertThat(into.fromSi(from.toSi(1))).isCloseTo(factor, within(factor * 5e-7));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "hPa L/s; 0.1",
                "m3/h; 0.000277777777777778",
                "kg/L; 1000",
                "1/min; 0.0166666666666667",
                "J/(mol K); 1",
                "per 100 by weight; 0.01",
                "percent of nominal hardener; 0.01",
                "kJ/kg of dry air; 1000",
                "h at 23 degC; 3600",
                "inHg in 5 min; 11.2879633333333",
                "ft2/s; 0.09290304",
                "W/(m2 K); 1",
                "m³; 1",
                "s^2; 1",
                "-; 1"
            })
    void should_read_compound_units_when_written_as_in_tables(String unit, double si) {
        assertThat(UnitOfMeasure.parse(unit).orElseThrow().factor()).isCloseTo(si, within(si * 1e-12));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "furball",
                "kg/",
                "/s",
                "m)",
                "(m",
                "kg//s",
                "1e999",
                "0",
                "m9x",
                "furballs",
                "foot per furball",
                "per foot"
            })
    void should_read_nothing_when_the_text_is_no_unit(String text) {
        assertThat(UnitOfMeasure.parse(text)).isEmpty();
    }

    @Test
    void should_keep_the_zero_of_a_temperature_and_drop_it_for_a_difference() {
        UnitOfMeasure f = UnitOfMeasure.parse("degF").orElseThrow();
        assertThat(f.toSi(70)).isCloseTo(294.2611, within(1e-4));
        assertThat(f.ofDifferences().toSi(9)).isCloseTo(5, within(1e-12));
    }

    @Test
    void should_come_back_to_the_number_when_converted_there_and_back() {
        Random random = new Random(20);
        for (QuantityKind<?> kind : QuantityKind.all()) {
            for (String symbol : kind.symbols()) {
                UnitOfMeasure u = UnitOfMeasure.parse(symbol).orElseThrow();
                double x = 1 + random.nextDouble() * 500;
                assertThat(u.fromSi(u.toSi(x))).isCloseTo(x, within(1e-9 * x));
                double byKind = kind.of(x, symbol).orElseThrow().si();
                if (kind != QuantityKind.TEMPERATURE_DIFFERENCE) {
                    assertThat(u.toSi(x)).as(symbol).isCloseTo(byKind, within(1e-9 * Math.abs(byKind)));
                }
            }
        }
    }

    @Test
    void should_split_number_and_unit_when_the_unit_is_a_compound() {
        assertThat(QuantityParser.split("0.36 hPa L/s")).hasValue(new QuantityParser.NumberAndUnit(0.36, "hPa L/s"));
        assertThat(QuantityParser.split("5 1/min")).hasValue(new QuantityParser.NumberAndUnit(5, "1/min"));
        assertThat(QuantityParser.split("3/32 in")).hasValue(new QuantityParser.NumberAndUnit(3.0 / 32, "in"));
        assertThat(QuantityParser.split("60%")).hasValue(new QuantityParser.NumberAndUnit(60, "%"));
        assertThat(QuantityParser.split("1,200 mm")).isEmpty();
        assertThat(QuantityParser.split("soon")).isEmpty();
    }
}

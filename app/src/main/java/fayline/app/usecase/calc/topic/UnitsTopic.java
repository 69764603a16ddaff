package fayline.app.usecase.calc.topic;

import static fayline.app.usecase.calc.Relation.giving;

import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.basis.units.UnitOfMeasure;
import java.util.List;

/** Conversion factors between units, by symbol or by name. */
final class UnitsTopic {
    private UnitsTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "units",
                "What one unit is in another, by symbol or by the name that NIST SP 811 prints.",
                List.of(
                        Term.text("unit", "the unit to convert, as psi or gallon (U.S.)"),
                        Term.text("to", "the unit to convert to, as Pa"),
                        Term.number("number", "-", "how many of the unit; 1 where it is not given"),
                        Term.number("factor", "-", "one of the unit in the other"),
                        Term.number("value", "-", "the number converted; temperatures with their zero")),
                List.of(
                        giving("factor", "unit to", UnitsTopic::factor),
                        giving("value", "unit to number", UnitsTopic::value)));
    }

    private static Object factor(Known k) {
        UnitOfMeasure from = unit(k, "unit").ofDifferences();
        UnitOfMeasure to = to(k, from).ofDifferences();
        k.by("exact definitions of the units", "[nist-sp811]");
        return to.fromSi(from.toSi(1));
    }

    private static Object value(Known k) {
        UnitOfMeasure from = unit(k, "unit");
        k.by("exact definitions of the units", "[nist-sp811]");
        return to(k, from).fromSi(from.toSi(k.si("number")));
    }

    private static UnitOfMeasure unit(Known k, String field) {
        return UnitOfMeasure.parse(k.text(field))
                .orElseThrow(() -> CalcInputException.of(
                        field, k.text(field), "a unit by symbol or by name, as psi, hPa L/s or gallon (U.S.)"));
    }

    private static UnitOfMeasure to(Known k, UnitOfMeasure from) {
        UnitOfMeasure to = unit(k, "to");
        if (!to.dimension().equals(from.dimension())) {
            throw new NotCoveredException(k.text("unit") + " and " + k.text("to") + " measure different things");
        }
        return to;
    }
}

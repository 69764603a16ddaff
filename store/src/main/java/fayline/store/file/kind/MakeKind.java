package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.AREA;
import static fayline.basis.units.QuantityKind.LENGTH;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityParser;
import fayline.flow.project.design.Make;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import fayline.store.file.shape.Named;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What parts and joints share: the recipes that make them, and their sizes. */
final class MakeKind {
    static final Keys MAKE = Keys.of(
            "a way of making",
            must("recipe", Forms.REF, "The recipe."),
            may("with", new Named(Forms.NAME, Forms.TEXT), "The recipe's parameters."),
            may("after", Listed.of(Forms.WORK_REF), "Parts, joints or steps that must be done first."),
            may("not-before", Forms.DATE, "The earliest day."));

    static final Named SIZES =
            new Named(Forms.NAME, new Measure(List.of(LENGTH, AREA), Measure.Range.NOT_NEGATIVE, true));

    private MakeKind() {}

    static List<Make> read(Fields f) {
        return f.list("make").stream()
                .map(m -> new Make(m.text("recipe", ""), m.named("with"), m.texts("after"), m.date("not-before")))
                .toList();
    }

    /** Sizes as plain counts or in SI. */
    static Map<String, Double> sizes(Fields f) {
        Map<String, Double> sizes = new LinkedHashMap<>();
        f.named("sizes").forEach((name, text) -> size(text).ifPresent(v -> sizes.put(name, v)));
        return sizes;
    }

    private static Optional<Double> size(String text) {
        return Fields.attempt(text, Double::valueOf)
                .or(() -> Fields.attempt(text, t -> QuantityParser.parse(t, LENGTH))
                        .map(e -> e.value())
                        .map(Length::metres))
                .or(() -> Fields.attempt(text, t -> QuantityParser.parse(t, AREA))
                        .map(e -> e.value())
                        .map(Area::squareMetres));
    }
}

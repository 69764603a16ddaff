package fayline.app.usecase.calc.hold;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.basis.units.Length;
import fayline.method.atmosphere.StandardAir;
import fayline.method.atmosphere.StandardAtmosphere;
import java.util.List;

/** The standard atmosphere at a height, and the pressure that a cabin holds against it. */
final class AtmosphereTopic {
    private static final String HEIGHT = "height [heightIs]";

    private AtmosphereTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "atmosphere",
                "The standard atmosphere at a height, and the pressure difference between a cabin and the air outside.",
                List.of(
                        number("height", "m", "height; a pressure altitude is geopotential"),
                        Term.text("heightIs", "geopotential or geometric; geopotential where it is not given"),
                        number(
                                "cabin",
                                "m",
                                "geopotential height whose pressure the cabin is held at; the sea where not given"),
                        number("geopotential", "m", "the height as geopotential"),
                        number("temperature", "degC", "temperature"),
                        number("pressure", "kPa", "pressure, absolute"),
                        number("density", "kg/m3", "density"),
                        number("sound", "m/s", "speed of sound"),
                        number("difference", "kPa", "pressure in the cabin less the pressure outside")),
                List.of(
                        giving("geopotential", HEIGHT, k -> height(k).metres()),
                        giving("temperature", HEIGHT, k -> air(k).temperature().si()),
                        giving("pressure", HEIGHT, k -> air(k).pressure().si()),
                        giving("density", HEIGHT, k -> air(k).density().si()),
                        giving("sound", HEIGHT, k -> air(k).sound().si()),
                        giving(
                                "difference",
                                HEIGHT + " [cabin]",
                                k -> at(new Length(k.si("cabin", 0))).pressure().si()
                                        - air(k).pressure().si())));
    }

    private static StandardAir air(Known k) {
        return at(height(k));
    }

    private static StandardAir at(Length height) {
        return StandardAtmosphere.air(height)
                .orElseThrow(() -> new NotCoveredException("the standard atmosphere holds from -5000 to 20000 m"));
    }

    private static Length height(Known k) {
        k.by("288.15 K and 101 325 Pa at the sea, 6.5 K less for each km of geopotential height", "[iso2533]");
        String kind = k.has("heightIs") ? k.text("heightIs") : "geopotential";
        return switch (kind) {
            case "geopotential" -> k.as("height", Length::new);
            case "geometric" -> {
                k.by("H = r z / (r + z), r = 6 356 766 m", "[usstd1976]");
                yield StandardAtmosphere.geopotential(k.as("height", Length::new));
            }
            default -> throw new NotCoveredException("a height is geopotential or geometric, found \"" + kind + "\"");
        };
    }
}

package fayline.app.usecase.calc.topic;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.basis.units.Pressure;
import fayline.basis.units.TimeSpan;
import fayline.basis.units.Vacuum;
import fayline.basis.units.Volume;
import fayline.method.atmosphere.StandardAtmosphere;
import fayline.method.vacuum.ClampPressure;
import fayline.method.vacuum.ClampPressureCalculator;
import fayline.method.vacuum.ClampPressureResult;
import fayline.method.vacuum.LeakDown;
import fayline.method.vacuum.LeakDownCalculator;
import fayline.method.vacuum.LeakDownResult;
import fayline.method.vacuum.PumpDown;
import fayline.method.vacuum.PumpDownCalculator;
import fayline.method.vacuum.PumpDownResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** How hard a bag presses, whether it is tight, and how long a pump takes. */
final class VacuumTopic {
    private static final double MINUTE_S = 60;
    private static final double FIVE_MINUTES_S = 300;
    private static final double STANDARD_PASCALS = 101_325;

    private VacuumTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "vacuum",
                "How hard a bag presses at an elevation, whether it is tight, and how long a pump takes.",
                terms(),
                relations());
    }

    private static List<Term> terms() {
        return List.of(
                number("elevation", "m", "height above the sea"),
                number("ambient", "kPa", "air pressure, absolute; from the elevation where it is not given"),
                number("vacuum", "inHg", "gauge reading, below ambient"),
                number("bagAbsolute", "hPa", "pressure in the bag, absolute"),
                number("clampPressure", "kPa", "pressure of the air on the part"),
                number("area", "m2", "area under pressure"),
                number("length", "m", "length of a rectangle under pressure"),
                number("width", "m", "width of a rectangle under pressure"),
                number("start", "inHg", "first reading below ambient, source valved off"),
                number("end", "inHg", "second reading"),
                number("rise", "hPa", "rise of the bag's pressure between the readings"),
                number("minutes", "min", "time between the readings"),
                number("limit", "inHg/min", "most drop allowed in a minute"),
                number("maxDrop", "inHg in 5 min", "most drop allowed in a time"),
                number("minimum", "inHg", "least vacuum allowed"),
                number("volume", "L", "free volume of bag and hoses"),
                number("bagVolume", "L", "the same as volume"),
                number("pumpSpeed", "m3/h", "pumping speed"),
                number("leak", "hPa L/s", "leak"),
                number("from", "hPa", "absolute pressure at the start; ambient where it is not given"),
                number("to", "hPa", "absolute pressure wanted"),
                number("pressure", "kPa", "the gauge reading as a pressure"),
                number("pressurePsi", "psi", "the gauge reading as a pressure"),
                number("vacuumPercent", "percent", "clamp pressure of ambient"),
                number("force", "kN", "force on the area"),
                number("asWeight", "kgf", "the force as a weight"),
                number("drop", "inHg", "drop of the reading"),
                number("rate", "inHg/min", "drop in a minute"),
                Term.yesNo("ok", "whether every limit is kept, or the pressure wanted is reached"),
                number("ultimate", "hPa", "absolute pressure that pump and leak settle at"),
                number("time", "s", "time to pump down"));
    }

    private static List<Relation> relations() {
        List<Relation> r = new ArrayList<>();
        r.add(giving("ambient", "elevation", VacuumTopic::ambient));
        r.add(giving(
                "clampPressure",
                "bagAbsolute [ambient]",
                k -> clamp(k, ClampPressureResult::clamp).si()));
        r.add(giving(
                "clampPressure",
                "vacuum [ambient]",
                k -> clamp(k, ClampPressureResult::clamp).si()));
        r.add(giving(
                "pressure",
                "vacuum [ambient]",
                k -> clamp(k, ClampPressureResult::clamp).si()));
        r.add(giving(
                "pressurePsi",
                "vacuum [ambient]",
                k -> clamp(k, ClampPressureResult::clamp).si()));
        r.add(giving("pressure", "clampPressure", k -> k.si("clampPressure")));
        r.add(giving("pressurePsi", "clampPressure", k -> k.si("clampPressure")));
        r.add(giving("to", "vacuum pumpSpeed [ambient]", VacuumTopic::target));
        r.add(giving("to", "bagAbsolute pumpSpeed", k -> k.si("bagAbsolute")));
        for (String bag : List.of("bagAbsolute", "vacuum", "clampPressure")) {
            r.add(giving(
                    "vacuumPercent",
                    bag + " [ambient]",
                    k -> clamp(k, ClampPressureResult::ofAmbient).si()));
        }
        r.add(giving(
                "force",
                "clampPressure area",
                k -> clamp(k, ClampPressureResult::force).si()));
        r.add(giving(
                "force",
                "clampPressure length width",
                k -> clamp(k, ClampPressureResult::force).si()));
        r.add(giving("asWeight", "force", k -> k.si("force")));
        r.add(giving(
                "drop",
                "start end [minutes]",
                k -> leak(k, LeakDownResult::drop).si()));
        r.add(giving(
                "rate",
                "start end minutes",
                k -> leak(k, LeakDownResult::perMinute).si() / MINUTE_S));
        r.add(giving(
                "rate", "rise minutes", k -> leak(k, LeakDownResult::perMinute).si() / MINUTE_S));
        for (String volume : List.of("bagVolume", "volume")) {
            r.add(giving("leak", volume + " rise minutes", VacuumTopic::leak));
            r.add(giving("leak", volume + " start end minutes", VacuumTopic::leak));
        }
        r.add(giving("ok", "start end minutes limit [maxDrop] [minimum]", k -> leak(k, LeakDownResult::ok)));
        r.add(giving("ok", "start end minutes maxDrop [minimum]", k -> leak(k, LeakDownResult::ok)));
        r.add(giving("ok", "start end minimum", k -> leak(k, LeakDownResult::ok)));
        r.add(giving("ok", "rise minutes limit", k -> leak(k, LeakDownResult::ok)));
        r.add(giving("ok", "rise minutes maxDrop", k -> leak(k, LeakDownResult::ok)));
        r.add(giving("ok", "clampPressure minimum", k -> leak(k, LeakDownResult::ok)));
        r.add(giving(
                "ultimate",
                "leak pumpSpeed [from] [ambient]",
                k -> pump(k, PumpDownResult::ultimate).si()));
        for (String volume : List.of("volume", "bagVolume")) {
            r.add(giving(
                    "time",
                    volume + " pumpSpeed to [from] [ambient] [leak]",
                    k -> pump(k, PumpDownResult::time).si()));
            r.add(giving("ok", volume + " pumpSpeed to leak [from] [ambient]", k -> {
                pump(k, PumpDownResult::ultimate);
                return pumpDown(k).time().isPresent();
            }));
        }
        return r;
    }

    private static Object ambient(Known k) {
        k.by("288.15 K and 101.325 kPa at the sea, 6.5 K less for each km", "[iso2533]");
        k.caution("The weather moves the air pressure by some 3 percent either way.");
        return StandardAtmosphere.at(k.as("elevation", Length::new))
                .orElseThrow(() -> new NotCoveredException("the standard atmosphere holds from -5000 to 20000 m"))
                .si();
    }

    /** The absolute pressure in a bag that shows a gauge reading. */
    private static Object target(Known k) {
        return new Pressure(k.si("ambient", STANDARD_PASCALS))
                .minus(k.as("vacuum", Pressure::new))
                .si();
    }

    private static <V> V clamp(Known k, Function<ClampPressureResult, Optional<V>> figure) {
        String gauge = k.has("clampPressure") ? "clampPressure" : "vacuum";
        if (k.has("bagAbsolute") && !k.has("ambient")) {
            k.caution("The air pressure is taken as 101.325 kPa, that of the sea in standard weather.");
        }
        ClampPressureResult r = ClampPressureCalculator.calculate(new ClampPressure(
                k.maybe("ambient", Pressure::new),
                Optional.empty(),
                k.maybe(gauge, Vacuum::new),
                k.maybe("bagAbsolute", Pressure::new),
                k.has("area")
                        ? k.maybe("area", Area::new)
                        : k.has("length") ? Optional.of(new Area(k.si("length") * k.si("width"))) : Optional.empty(),
                false));
        r.figures().forEach(k::by);
        return k.take(figure.apply(r), r.findings());
    }

    private static <V> V leak(Known k, Function<LeakDownResult, Optional<V>> figure) {
        LeakDownResult r = leakDown(k);
        return k.take(figure.apply(r), r.findings());
    }

    private static Object leak(Known k) {
        LeakDownResult r = leakDown(k);
        OptionalDouble leak = r.leakPaM3PerS();
        k.by("Q = V dp/dt", "balance of the gas");
        return k.take(leak.isPresent() ? Optional.of(leak.getAsDouble()) : Optional.empty(), r.findings());
    }

    private static LeakDownResult leakDown(Known k) {
        String last = k.has("end") ? "end" : "clampPressure";
        Vacuum first = k.has("rise") ? k.as("rise", Vacuum::new) : k.as(k.has("start") ? "start" : last, Vacuum::new);
        LeakDownResult r = LeakDownCalculator.calculate(new LeakDown(
                first,
                k.has("rise") ? new Vacuum(0) : k.as(last, Vacuum::new),
                // Without a time nothing that depends on it is asked.
                new TimeSpan(k.si("minutes", MINUTE_S)),
                k.has("limit") ? Optional.of(new Vacuum(k.si("limit") * MINUTE_S)) : Optional.empty(),
                k.has("maxDrop") ? Optional.of(new Vacuum(k.si("maxDrop") * FIVE_MINUTES_S)) : Optional.empty(),
                k.maybe("minimum", Vacuum::new),
                k.has("bagVolume") ? k.maybe("bagVolume", Volume::new) : k.maybe("volume", Volume::new)));
        r.figures().forEach(k::by);
        return r;
    }

    private static <V> V pump(Known k, Function<PumpDownResult, Optional<V>> figure) {
        PumpDownResult r = pumpDown(k);
        r.figures().forEach(k::by);
        return k.take(figure.apply(r), r.findings());
    }

    private static PumpDownResult pumpDown(Known k) {
        Pressure from = new Pressure(k.has("from") ? k.si("from") : k.si("ambient", STANDARD_PASCALS));
        return PumpDownCalculator.calculate(new PumpDown(
                k.has("volume") ? k.maybe("volume", Volume::new) : k.maybe("bagVolume", Volume::new),
                k.si("pumpSpeed"),
                from,
                k.maybe("to", Pressure::new),
                k.si("leak", 0)));
    }
}

package fayline.app.usecase.calc.system;

import static fayline.app.usecase.calc.NotCoveredException.refusing;
import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.method.drive.BeltDrive;
import fayline.method.drive.PulleyPairs;
import fayline.method.drive.TipSpeed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A toothed belt between engine and propeller, and the propeller's tips. */
final class DriveTopic {
    private static final String PULLEYS = "pitch driverTeeth drivenTeeth";
    private static final String LENGTH =
            "L = 2 C cos f + pi (d1 + d2)/2 + f (d2 - d1), sin f = (d2 - d1)/2C, d = z p/pi";
    private static final String PITCH_LINE = "[budynas2015]";
    private static final double NOTICEABLE_MACH = 0.85;

    private DriveTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "drive",
                "A toothed belt between engine and propeller: ratio, belt and centre distance, teeth in mesh, speeds, tip Mach.",
                terms(),
                relations());
    }

    private static List<Term> terms() {
        return List.of(
                number("pitch", "mm", "distance of the belt's teeth"),
                Term.count("driverTeeth", "teeth on the engine's side"),
                Term.count("drivenTeeth", "teeth on the propeller's side"),
                Term.count("drivenOld", "teeth of a pulley that is replaced"),
                Term.count("drivenNew", "teeth of the pulley that replaces it"),
                number("beltLength", "mm", "length of the belt at its pitch line"),
                number("wantedCentre", "mm", "centre distance to come near to"),
                Term.list("availableTeeth", "-", "belts that can be had, by their teeth"),
                Term.count("beltTeeth", "the belt whose centre distance is nearest to the wanted one"),
                number("centre", "mm", "distance of the shafts"),
                number("beltTeethExact", "-", "teeth of the belt if it could be made so"),
                number("ratio", "-", "turns of the engine for one of the propeller"),
                number("ratioOld", "-", "the ratio before the pulley is replaced"),
                number("ratioNew", "-", "the ratio after"),
                number("speedChange", "percent", "change of the propeller's speed at the same engine speed"),
                number("change", "mm", "change of the centre distance with the same belt"),
                number("wrap", "deg", "angle of the belt round the smaller pulley"),
                number("inMesh", "-", "teeth of the smaller pulley in mesh"),
                Term.count("inMeshWhole", "whole teeth in mesh, which count"),
                Term.count(
                        "commonFactor", "common factor of the teeth of belt and engine's pulley; 1 wears most evenly"),
                number("engineSpeed", "rpm", "speed of the engine"),
                number("propellerSpeed", "rpm", "speed of the propeller"),
                number("beltSpeed", "m/s", "speed of the belt"),
                number("power", "kW", "power carried"),
                number("slack", "-", "pull of the slack side over that of the tight side"),
                number("hubLoad", "N", "load of the belt on each shaft"),
                number("propellerDiameter", "m", "diameter of the propeller"),
                number("air", "degC", "temperature of the air"),
                number("airspeed", "m/s", "true airspeed"),
                number("tipSpeed", "m/s", "speed of the tips standing still"),
                number("sound", "m/s", "speed of sound"),
                number("tipStatic", "-", "Mach number of the tips standing still"),
                number("tipHelical", "-", "Mach number of the tips in flight"),
                number("wantedRatio", "-", "ratio to come near to"),
                Term.list("pulleys", "-", "pulleys that can be had, by their teeth"),
                Term.rows("pairs", "-,-,-", "pairs nearest to it: driver, driven, ratio"));
    }

    private static List<Relation> relations() {
        List<Relation> r = new ArrayList<>();
        r.add(giving("beltTeeth", PULLEYS + " wantedCentre availableTeeth", DriveTopic::nearest));
        r.add(giving("centre", PULLEYS + " beltLength", k -> centre(k, drive(k), k.si("beltLength"))));
        r.add(giving("centre", PULLEYS + " beltTeeth", k -> centre(k, drive(k), k.si("beltTeeth") * k.si("pitch"))));
        r.add(giving("beltLength", "pitch beltTeeth", k -> k.si("beltTeeth") * k.si("pitch")));
        r.add(giving("beltLength", PULLEYS + " centre", k -> {
            k.by(LENGTH, PITCH_LINE);
            return refusing(() -> drive(k).beltM(k.si("centre")));
        }));
        r.add(giving("beltTeethExact", "beltLength pitch", k -> k.si("beltLength") / k.si("pitch")));
        r.add(giving("ratio", "driverTeeth drivenTeeth", k -> k.si("drivenTeeth") / k.si("driverTeeth")));
        r.add(giving("ratioOld", "driverTeeth drivenOld", k -> k.si("drivenOld") / k.si("driverTeeth")));
        r.add(giving("ratioNew", "driverTeeth drivenNew", k -> k.si("drivenNew") / k.si("driverTeeth")));
        r.add(giving("speedChange", "drivenOld drivenNew", k -> {
            k.caution("Another pulley asks for belt, centre, tension, guard, limits of engine and propeller, weight and"
                    + " ground run to be looked at anew.");
            return k.si("drivenOld") / k.si("drivenNew") - 1;
        }));
        r.add(giving("change", "pitch driverTeeth drivenOld drivenNew beltLength", DriveTopic::change));
        r.add(giving("wrap", PULLEYS + " centre", k -> {
            k.by("pi - 2 f on the smaller pulley", PITCH_LINE);
            return apart(k).wrapRad(k.si("centre"));
        }));
        r.add(giving("inMesh", PULLEYS + " centre", k -> apart(k).inMesh(k.si("centre"))));
        r.add(giving("inMeshWhole", "inMesh", k -> {
            double whole = Math.floor(k.si("inMesh") + 1e-9);
            if (whole < BeltDrive.LEAST_IN_MESH) {
                k.caution("Fewer than six teeth are in mesh (common practice, no source).");
            }
            return whole;
        }));
        r.add(giving("commonFactor", "beltTeeth driverTeeth", k ->
                (double) BeltDrive.commonFactor(k.count("beltTeeth"), k.count("driverTeeth"))));
        r.addAll(speeds());
        r.add(giving("pairs", "wantedRatio pulleys", DriveTopic::pairs));
        return r;
    }

    private static List<Relation> speeds() {
        return List.of(
                giving("propellerSpeed", "engineSpeed ratio", k -> k.si("engineSpeed") / k.si("ratio")),
                giving(
                        "beltSpeed",
                        "pitch driverTeeth engineSpeed",
                        k -> k.si("driverTeeth") * k.si("pitch") * turns(k, "engineSpeed")),
                giving("hubLoad", PULLEYS + " centre power engineSpeed slack", k -> {
                    k.by("both pulls added as vectors; their difference is power over belt speed", "statics");
                    return refusing(() ->
                            apart(k).hubLoadN(k.si("power"), turns(k, "engineSpeed"), k.si("slack"), k.si("centre")));
                }),
                giving(
                        "tipSpeed",
                        "propellerDiameter propellerSpeed",
                        k -> refusing(
                                () -> TipSpeed.standingMPerS(k.si("propellerDiameter"), turns(k, "propellerSpeed")))),
                giving("sound", "air", k -> {
                    k.by("sqrt(1.4 R T)", "[usstd1976]");
                    return refusing(() -> TipSpeed.soundMPerS(k.si("air")));
                }),
                giving("tipStatic", "tipSpeed sound", k -> mach(k, k.si("tipSpeed"))),
                giving(
                        "tipHelical",
                        "tipSpeed sound airspeed",
                        k -> mach(k, Math.hypot(k.si("tipSpeed"), k.si("airspeed")))));
    }

    /** Turns a second; a speed of rotation is reckoned in radians a second. */
    private static double turns(Known k, String term) {
        return k.si(term) / (2 * Math.PI);
    }

    private static double mach(Known k, double speed) {
        double mach = speed / k.si("sound");
        if (mach > NOTICEABLE_MACH) {
            k.caution("Above some Mach 0.80 to 0.85 tips are loud and lose pull (common practice, no source).");
        }
        return mach;
    }

    private static BeltDrive drive(Known k) {
        return refusing(() -> new BeltDrive(k.si("pitch"), k.count("driverTeeth"), k.count("drivenTeeth")));
    }

    /** A drive whose pulleys do not touch at the centre distance. */
    private static BeltDrive apart(Known k) {
        BeltDrive d = drive(k);
        refusing(() -> d.beltM(k.si("centre")));
        return d;
    }

    private static double centre(Known k, BeltDrive d, double beltM) {
        k.by(LENGTH + ", solved for C", PITCH_LINE);
        return d.centreM(beltM)
                .orElseThrow(() -> new NotCoveredException(
                        "a belt of " + 1e3 * beltM + " mm is too short to go round pulleys that do not touch"));
    }

    private static double change(Known k) {
        BeltDrive old = refusing(() -> new BeltDrive(k.si("pitch"), k.count("driverTeeth"), k.count("drivenOld")));
        BeltDrive fresh = refusing(() -> new BeltDrive(k.si("pitch"), k.count("driverTeeth"), k.count("drivenNew")));
        return centre(k, fresh, k.si("beltLength")) - centre(k, old, k.si("beltLength"));
    }

    private static double nearest(Known k) {
        BeltDrive d = drive(k);
        double wanted = k.si("wantedCentre");
        Optional<Double> best = k.list("availableTeeth").stream()
                .filter(t -> d.centreM(t * d.pitchM()).isPresent())
                .min(Comparator.comparingDouble(
                        t -> Math.abs(d.centreM(t * d.pitchM()).getAsDouble() - wanted)));
        return best.orElseThrow(() -> new NotCoveredException("every belt that can be had is too short"));
    }

    private static List<List<Double>> pairs(Known k) {
        List<Integer> teeth =
                k.list("pulleys").stream().map(t -> (int) Math.round(t)).toList();
        return refusing(() -> PulleyPairs.near(k.si("wantedRatio"), teeth, 6)).stream()
                .map(p -> List.of((double) p.driverTeeth(), (double) p.drivenTeeth(), p.ratio()))
                .toList();
    }
}

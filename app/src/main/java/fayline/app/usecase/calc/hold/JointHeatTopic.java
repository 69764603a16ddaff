package fayline.app.usecase.calc.hold;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.method.joint.Adherend;
import fayline.method.joint.Adhesive;
import fayline.method.joint.BondedSheet;
import fayline.method.joint.BondedSheetCalculator;
import fayline.method.joint.BondedSheetResult;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** A sheet bonded to a frame of other expansion: shear, peel and sheet stress as it grows warm or cold. */
final class JointHeatTopic {
    private static final String BOND =
            "sheet sheetModulus sheetAlpha frame frameModulus frameAlpha shear bond length heat"
                    + " [sheetPoisson] [adhesiveModulus] [held] [allRound] [workingStrain] [frameShear]";
    private static final double GUESS_POISSON = 0.37;
    private static final double SOFT = 2.9;

    private JointHeatTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "joint.heat",
                "Shear, peel and sheet stress where a sheet is bonded to a frame of other expansion, closed form and beams side by"
                        + " side, and the least bond line that keeps the adhesive within its working strain.",
                terms(),
                relations());
    }

    private static List<Term> terms() {
        List<Term> t = new ArrayList<>(List.of(
                number("sheet", "mm", "thickness of the sheet"),
                number("sheetModulus", "GPa", "Young's modulus of the sheet"),
                number("sheetPoisson", "-", "Poisson's ratio of the sheet; 0.37 where it is not given"),
                number("sheetAlpha", "1/K", "expansion of the sheet"),
                number("frame", "mm", "thickness of the frame"),
                number("frameModulus", "GPa", "Young's modulus of the frame"),
                number("frameAlpha", "1/K", "expansion of the frame"),
                number("frameShear", "GPa", "shear modulus of the frame through its thickness; E/2.6 where not given"),
                number("shear", "MPa", "shear modulus of the adhesive"),
                number(
                        "adhesiveModulus",
                        "MPa",
                        "Young's modulus of the adhesive; 2.9 times the shear modulus where not given"),
                number("bond", "mm", "thickness of the bond line"),
                number("length", "mm", "length of the bond"),
                number("heat", "K", "temperature less that at which the bond is free of stress"),
                number("set", "degC", "temperature at which the bond is free of stress"),
                number("coldest", "degC", "lowest temperature in service"),
                number("hottest", "degC", "highest temperature in service"),
                Term.text("held", "flat or free to bow; flat where it is not given"),
                Term.yesNo("allRound", "whether the sheet is bonded all round"),
                number("workingStrain", "-", "shear strain that the adhesive may work at"),
                number("crazing", "MPa", "tension that the sheet bears for years"),
                number("otherShear", "MPa", "shear modulus of another adhesive to compare with"),
                number("otherBond", "mm", "thickness of its bond line")));
        t.addAll(answers());
        return t;
    }

    private static List<Term> answers() {
        return List.of(
                number("beta", "1/mm", "how fast the shear dies away from an end"),
                number("reach", "-", "beta L / 2"),
                number("closedShear", "MPa", "closed form: shear stress of the adhesive at the ends"),
                number("closedStrain", "-", "closed form: shear strain of the adhesive there"),
                number("closedSlip", "mm", "closed form: slip at the ends"),
                number("closedSheet", "MPa", "closed form: mean stress in the middle of the sheet"),
                number("closedFrame", "MPa", "closed form: mean stress in the middle of the frame"),
                number("closedOuter", "MPa", "closed form: stress on the sheet's free face there"),
                number("closedBonded", "MPa", "closed form: stress on its bonded face there"),
                number("closedSheetEnd", "mm", "closed form: how far an end of the sheet moves outward"),
                number("closedFrameEnd", "mm", "closed form: how far an end of the frame moves outward"),
                number("closedBow", "mm", "closed form: bow over the length"),
                number(
                        "freeMove",
                        "mm",
                        "how far an end of the one would move against the other, were they not bonded"),
                number("beamShear", "MPa", "beams: shear stress of the adhesive"),
                number("beamPeel", "MPa", "beams: peel stress of the adhesive"),
                number("beamSheet", "MPa", "beams: mean stress in the middle of the sheet"),
                number("beamFrame", "MPa", "beams: mean stress in the middle of the frame"),
                number("beamOuter", "MPa", "beams: stress on the sheet's free face there"),
                number("beamBonded", "MPa", "beams: stress on its bonded face there"),
                number("beamSheetEnd", "mm", "beams: how far an end of the sheet moves outward"),
                number("beamFrameEnd", "mm", "beams: how far an end of the frame moves outward"),
                number("beamBow", "mm", "beams: bow over the length"),
                number("beamSlip", "mm", "beams: slip at the ends, in the bond"),
                number("decidingStrain", "-", "shear strain of the adhesive at the unsafe end of the beams' band"),
                number("tension", "MPa", "largest tension on a face of the sheet, 0 where there is none"),
                number("otherStress", "MPa", "the other adhesive: shear stress, beams at the unsafe end of their band"),
                number("otherStrain", "-", "its shear strain"),
                number("otherSheet", "MPa", "mean stress in the middle of the sheet with it"),
                number("leastBond", "mm", "least bond line that keeps the working strain"),
                Term.yesNo("straight", "whether the bow is at most the whole thickness"),
                Term.yesNo("strainWithin", "whether the adhesive stays within its working strain"),
                Term.yesNo("noCrazing", "whether the sheet's tension stays below what it bears for years"));
    }

    private static List<Relation> relations() {
        List<Relation> r = new ArrayList<>();
        r.add(giving("heat", "set coldest hottest", JointHeatTopic::worse));
        figure(r, "beta", b -> b.closed().betaPerM());
        figure(r, "reach", b -> b.closed().reach());
        figure(r, "closedShear", b -> b.closed().shearPa());
        r.add(giving("closedStrain", BOND, k -> bond(k).closed().shearPa() / k.si("shear")));
        r.add(giving("closedSlip", BOND, k -> bond(k).closed().shearPa() / k.si("shear") * k.si("bond")));
        figure(r, "closedSheet", b -> b.closed().sheetPa());
        figure(r, "closedFrame", b -> b.closed().framePa());
        figure(r, "closedOuter", b -> b.closed().sheetOuterPa());
        figure(r, "closedBonded", b -> b.closed().sheetBondedPa());
        figure(r, "closedSheetEnd", b -> b.closed().sheetEndM());
        figure(r, "closedFrameEnd", b -> b.closed().frameEndM());
        figure(r, "closedBow", b -> b.closed().bowM());
        figure(r, "freeMove", b -> b.closed().freeM());
        figure(r, "beamShear", b -> b.beams().highestShearPa());
        figure(r, "beamPeel", b -> b.beams().highestPeelPa());
        figure(r, "beamSheet", BondedSheetResult::sheetPa);
        r.add(giving("beamFrame", BOND, k -> -bond(k).sheetPa() * k.si("sheet") / k.si("frame")));
        figure(r, "beamOuter", BondedSheetResult::outerPa);
        figure(r, "beamBonded", BondedSheetResult::bondedPa);
        figure(
                r,
                "beamSheetEnd",
                b -> (b.beams().endsM().get(2) - b.beams().endsM().get(0)) / 2);
        figure(
                r,
                "beamFrameEnd",
                b -> (b.beams().endsM().get(3) - b.beams().endsM().get(1)) / 2);
        figure(r, "beamBow", b -> Math.abs(b.beams().bowM()));
        r.add(giving("beamSlip", BOND, k -> bond(k).beams().highestShearPa() / k.si("shear") * k.si("bond")));
        figure(r, "decidingStrain", BondedSheetResult::strain);
        figure(r, "tension", b -> Math.max(0, Math.max(b.outerPa(), b.bondedPa())));
        String other = BOND + " otherShear otherBond";
        r.add(giving("otherStress", other, k -> other(k).shearPa()));
        r.add(giving("otherStrain", other, k -> other(k).strain()));
        r.add(giving("otherSheet", other, k -> other(k).sheetPa()));
        r.add(giving(
                "leastBond", BOND + " workingStrain", k -> bond(k).leastBondM().orElseThrow()));
        r.add(giving("straight", BOND, k -> bond(k).straight()));
        r.add(giving(
                "strainWithin", "decidingStrain workingStrain", k -> k.si("decidingStrain") <= k.si("workingStrain")));
        r.add(giving("noCrazing", "tension crazing", k -> k.si("tension") <= k.si("crazing")));
        return r;
    }

    private static void figure(List<Relation> r, String term, ToDoubleFunction<BondedSheetResult> figure) {
        r.add(giving(term, BOND, k -> figure.applyAsDouble(bond(k))));
    }

    /** The change of temperature that strains the bond more. */
    private static Object worse(Known k) {
        double cold = k.si("coldest") - k.si("set");
        double hot = k.si("hottest") - k.si("set");
        if (k.si("hottest") < k.si("coldest")) {
            throw new NotCoveredException("the hottest temperature in service lies below the coldest");
        }
        k.caution(
                "Reckoned for the end of the service range that strains the bond more; tension in the sheet comes with the cold"
                        + " where it grows more than its frame.");
        return Math.abs(cold) >= Math.abs(hot) ? cold : hot;
    }

    private static BondedSheetResult bond(Known k) {
        k.by(
                "beta^2 = G/t (1/E1 t1 + 1/E2 t2 [+ h^2/(D1 + D2) free to bow]); beside it two beams on the adhesive, finite elements",
                "[chen-nelson1979]");
        k.caution(
                "Not checked: creep and relaxation of sheet and adhesive, moisture, cycles. A figure here does not replace the"
                        + " makers' data or a licensed engineer.");
        assumed(k);
        double modulus = k.si("adhesiveModulus", SOFT * k.si("shear"));
        BondedSheetResult r = bonded(k, k.si("shear"), modulus, k.si("bond"));
        r.findings().forEach(f -> k.caution(f.sentence()));
        return r;
    }

    /** The same sheet and frame with another adhesive and bond line. */
    private static BondedSheetResult other(Known k) {
        return bonded(k, k.si("otherShear"), SOFT * k.si("otherShear"), k.si("otherBond"));
    }

    /** Says what was taken because nobody gave it. */
    private static void assumed(Known k) {
        if (!k.has("sheetPoisson")) {
            k.caution("Assumed: Poisson's ratio 0.37 of the sheet, as of acrylic.");
        }
        if (!k.has("frameShear")) {
            k.caution(
                    "Assumed: the frame's shear modulus through its thickness is its Young's modulus over 2.6; a laminate's is less,"
                            + " which lowers the shear stress of a stiff bond.");
        }
        if (!k.has("adhesiveModulus") && !flat(k)) {
            k.caution("Assumed: Young's modulus of the adhesive 2.9 times its shear modulus; the peel depends on it.");
        }
    }

    private static BondedSheetResult bonded(Known k, double shearPa, double modulusPa, double bondM) {
        return NotCoveredException.refusing(() -> BondedSheetCalculator.calculate(new BondedSheet(
                Adherend.isotropic(
                        k.si("sheetModulus"), k.si("sheetPoisson", GUESS_POISSON), k.si("sheet"), k.si("sheetAlpha")),
                new Adherend(
                        k.si("frameModulus"),
                        0,
                        k.si("frame"),
                        k.si("frameShear", k.si("frameModulus") / 2.6),
                        k.si("frameAlpha")),
                Adhesive.elastic(shearPa, modulusPa, bondM),
                k.si("length"),
                k.si("heat"),
                flat(k),
                k.has("allRound") && k.isTrue("allRound"),
                k.has("workingStrain") ? OptionalDouble.of(k.si("workingStrain")) : OptionalDouble.empty())));
    }

    private static boolean flat(Known k) {
        String held = k.has("held") ? k.text("held") : "flat";
        if (!List.of("flat", "free to bow").contains(held)) {
            throw new NotCoveredException("held is flat or free to bow, found \"" + held + "\"");
        }
        return "flat".equals(held);
    }
}

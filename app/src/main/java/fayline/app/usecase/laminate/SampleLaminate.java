package fayline.app.usecase.laminate;

import fayline.method.laminate.EngineeringConstants;
import fayline.method.laminate.Lamina;
import fayline.method.laminate.Laminate;
import fayline.method.laminate.Ply;
import fayline.method.laminate.SectionLoad;
import fayline.method.laminate.optimum.LightestStack;
import fayline.method.laminate.optimum.LightestStackCalculator;
import fayline.method.laminate.optimum.LightestStackResult;
import fayline.method.laminate.optimum.PlyChoice;
import fayline.method.laminate.optimum.StackRules;
import fayline.method.laminate.optimum.Wanted;
import fayline.method.laminate.strength.Criterion;
import fayline.method.laminate.strength.FirstPlyCalculator;
import fayline.method.laminate.strength.FirstPlyResult;
import fayline.method.laminate.strength.PlyStrength;
import fayline.method.laminate.strength.Strength;
import fayline.method.laminate.strength.StrongPly;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Invented stacks of 16 plies, the same for the same seed, and an invented search for the lightest one. For measuring. */
public final class SampleLaminate {
    private static final int PLIES = 16;
    private static final int STACKS = 64;
    private static final double[] ANGLES = {0, 45, -45, 90, 30, -30, 60, -60};
    private static final Lamina CARBON = new Lamina(126e9, 11e9, 6.6e9, 0.28, -1e-6, 26e-6);
    private static final Lamina GLASS = new Lamina(39e9, 9.5e9, 3.6e9, 0.28, 8e-6, 30e-6);
    private static final PlyStrength CARBON_BEARS = PlyStrength.of(1500e6, 900e6, 40e6, 150e6, 60e6);
    private static final PlyStrength GLASS_BEARS = PlyStrength.of(900e6, 500e6, 32e6, 110e6, 50e6);
    private static final SectionLoad LOAD = new SectionLoad(8e4, 3e4, 2e4, 12, -4, 3, -60);

    private SampleLaminate() {}

    /** Stacks to analyse one after the other. */
    public static List<List<StrongPly>> stacks() {
        SplittableRandom random = new SplittableRandom(1);
        List<List<StrongPly>> all = new ArrayList<>();
        for (int s = 0; s < STACKS; s++) {
            List<StrongPly> plies = new ArrayList<>();
            for (int k = 0; k < PLIES; k++) {
                double angle = ANGLES[random.nextInt(ANGLES.length)];
                plies.add(StrongPly.of(new Ply(CARBON, 0.15e-3, angle), CARBON_BEARS));
            }
            all.add(List.copyOf(plies));
        }
        return List.copyOf(all);
    }

    /**
     * One full analysis: A, B, D, the inverse of the whole, constants in plane and in bending, expansion, the stress of every ply
     * at both faces under forces, moments and cooling, and by Tsai-Wu the strength ratio of every ply. A number from all of it.
     */
    public static double analysed(List<StrongPly> plies, Criterion criterion) {
        FirstPlyResult r = FirstPlyCalculator.calculate(new Strength(plies, LOAD, criterion));
        Laminate l = r.laminate();
        EngineeringConstants c = l.constants();
        return r.first().map(f -> f.ratio()).orElse(0.0)
                + c.exPa()
                + c.flexXPa()
                + l.expansionPerK().kappaXyPerM();
    }

    /** A search: eight plies to choose from, at most 14 in the stack, stiff in plane and in bending, and strong. */
    public static LightestStackResult searched() {
        List<PlyChoice> choices = new ArrayList<>();
        for (double angle : new double[] {0, 45, -45, 90}) {
            choices.add(new PlyChoice(
                    "carbon " + angle, StrongPly.of(new Ply(CARBON, 0.2e-3, angle), CARBON_BEARS), 0.32, 48));
            choices.add(new PlyChoice(
                    "glass " + angle, StrongPly.of(new Ply(GLASS, 0.25e-3, angle), GLASS_BEARS), 0.46, 9));
        }
        Wanted wanted = new Wanted(
                5.5e7, 3e7, 1.6e7, 20, 8, List.of(SectionLoad.inPlane(9e4, 4e4, 2e4)), Criterion.tsaiWu(-0.5), 1.5);
        return LightestStackCalculator.calculate(
                new LightestStack(choices, new StackRules(14, true, 3, true), wanted, Long.MAX_VALUE));
    }
}

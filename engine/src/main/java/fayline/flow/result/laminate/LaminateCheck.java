package fayline.flow.result.laminate;

import fayline.flow.project.design.Laminate;
import fayline.flow.project.design.LaminateLoad;
import fayline.method.laminate.PlyStress;
import fayline.method.laminate.strength.PolarPoint;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What can be said of a laminate.
 *
 * @param laminate the laminate
 * @param verdict the answer over all loads
 * @param why why it is so, a sentence
 * @param smallest the load with the smallest margin, where one could be reckoned
 * @param loads each load
 * @param missing what is not entered, a sentence each; nothing can be reckoned then
 * @param inputs figures the answer rests on, with where they are from
 * @param stack its stiffness, where it could be reckoned
 */
public record LaminateCheck(
        Laminate laminate,
        Verdict verdict,
        String why,
        Optional<LoadCheck> smallest,
        List<LoadCheck> loads,
        List<String> missing,
        List<Input> inputs,
        Optional<Stack> stack) {
    /** Copies the lists. */
    public LaminateCheck {
        loads = List.copyOf(loads);
        missing = List.copyOf(missing);
        inputs = List.copyOf(inputs);
    }

    /** The answer. */
    public enum Verdict {
        /** Every load is borne as many times as it must be, by entered allowables that somebody stands for. */
        WITHIN("Within the entered allowables"),
        /** At least one is not, by such allowables. */
        NOT_WITHIN("Not within the entered allowables"),
        /** Something is missing or assumed. */
        CANNOT_SAY("Cannot be said");

        private final String words;

        Verdict(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /**
     * One load.
     *
     * @param load the load
     * @param ratio how many times it can act until the first ply fails; empty where it makes none fail
     * @param margin ratio over the factor asked, less one; empty where no ply fails
     * @param ply the ply that fails first, counted from the mould face from 1; 0 where none does
     * @param material its material; empty where none fails
     * @param mode how it fails
     * @param criterion the criterion that says so: the lowest of those asked
     * @param ratios the ratio by each criterion asked
     * @param lastRatio how many times it can act until the last ply fails, by ply discount
     * @param stresses stress of each ply at its two faces, mould side first, load and temperature together
     */
    public record LoadCheck(
            LaminateLoad load,
            OptionalDouble ratio,
            OptionalDouble margin,
            int ply,
            String material,
            String mode,
            String criterion,
            List<Ratio> ratios,
            double lastRatio,
            List<List<PlyStress>> stresses) {
        /** Copies the lists. */
        public LoadCheck {
            ratios = List.copyOf(ratios);
            stresses = List.copyOf(stresses);
        }
    }

    /**
     * A ratio by one criterion.
     *
     * @param criterion its name
     * @param ratio the ratio
     */
    public record Ratio(String criterion, double ratio) {}

    /**
     * Where figures are from.
     *
     * @param of what they are figures of
     * @param status how far they are to be trusted
     * @param origin where they are from
     * @param trusted whether somebody stands for them
     */
    public record Input(String of, String status, String origin, boolean trusted) {}

    /**
     * How stiff it is.
     *
     * @param thicknessM thickness, m
     * @param massKgPerM2 mass with resin, kg/m2; empty where a material's mass is not entered
     * @param costPerM2 cloth, tape and core, in the project's currency; empty where a price by area is not entered
     * @param exPa modulus along in plane, Pa
     * @param eyPa modulus across in plane, Pa
     * @param gxyPa shear modulus in plane, Pa
     * @param nuXy contraction across over stretch along
     * @param bendXNm bending stiffness along per width of a strip free to curve, N m
     * @param bendYNm the same across, N m
     * @param coupled whether stretching bends it
     * @param kappaPerK the largest curvature by itself for each kelvin, 1/(m K)
     * @param expansionKnown whether every ply's expansion is entered; else growth and warp say nothing
     * @param expansionXPerK expansion along, 1/K
     * @param expansionYPerK expansion across, 1/K
     * @param round stiffness all round
     */
    public record Stack(
            double thicknessM,
            OptionalDouble massKgPerM2,
            OptionalDouble costPerM2,
            double exPa,
            double eyPa,
            double gxyPa,
            double nuXy,
            double bendXNm,
            double bendYNm,
            boolean coupled,
            double kappaPerK,
            boolean expansionKnown,
            double expansionXPerK,
            double expansionYPerK,
            List<PolarPoint> round) {
        /** Copies the list. */
        public Stack {
            round = List.copyOf(round);
        }
    }
}

package fayline.flow.project.stock;

import fayline.basis.units.Stress;
import fayline.basis.units.Temperature;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How stiff a cloth or tape is once laid and cured, in its own directions, and what it bears.
 *
 * @param along modulus along the fibres
 * @param across modulus across them; of a balanced cloth the same
 * @param shear shear modulus in the plane
 * @param poisson contraction across when pulled along
 * @param expansionAlong expansion along the fibres, 1/K, where it is entered
 * @param expansionAcross expansion across, 1/K, where it is entered
 * @param bears what it bears, where that is entered
 * @param origin where the figures are from
 * @param status how far they are to be trusted
 * @param at the temperature they hold at, where it is entered
 */
public record Lamina(
        Stress along,
        Stress across,
        Stress shear,
        double poisson,
        OptionalDouble expansionAlong,
        OptionalDouble expansionAcross,
        Optional<Bears> bears,
        String origin,
        Status status,
        Optional<Temperature> at) {
    /** How far figures are to be trusted. */
    public enum Status {
        /** Measured on what is laid here. */
        MEASURED("measured"),
        /** From the maker's data sheet. */
        DATA_SHEET("data sheet"),
        /** Assumed, such as typical of the class. */
        ASSUMED("assumed"),
        /** Nothing is said; counts as assumed. */
        UNSAID("not said, counts as assumed");

        private final String words;

        Status(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }

        /** The word for files. */
        public String key() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * What a ply bears in its own directions; all positive.
     *
     * @param pulledAlong pulled along the fibres
     * @param pressedAlong pressed along
     * @param pulledAcross pulled across
     * @param pressedAcross pressed across
     * @param shear sheared in the plane
     */
    public record Bears(
            Stress pulledAlong, Stress pressedAlong, Stress pulledAcross, Stress pressedAcross, Stress shear) {}

    /** Whether the figures are said to be assumed. */
    public boolean assumed() {
        return status == Status.ASSUMED;
    }

    /** Whether nobody has measured the figures and no data sheet stands for them. */
    public boolean isUntrusted() {
        return status == Status.ASSUMED || status == Status.UNSAID;
    }
}

package fayline.method.laminate;

import java.util.List;

/**
 * A narrow strip of layers, free to contract sideways: one dimension, each layer its modulus along the strip. Layers are listed
 * from z = -h/2. Curvature under temperature is Timoshenko's for two layers [timoshenko1925]; bending, shear stress between
 * layers and deflection in three-point bending are those of a compound beam, shear deflection by the energy of that shear
 * stress. For a wide sheet use {@link Laminate}. Left out: large deflection, slip between layers.
 */
public final class LayeredStrip {
    private final List<Layer> layers;
    private final double[] heights;
    private final double stretch;
    private final double first;
    private final double second;

    /**
     * One layer.
     *
     * @param ePa modulus along the strip, Pa; positive
     * @param gPa shear modulus through the thickness, Pa; positive
     * @param alphaPerK expansion along the strip, 1/K
     * @param thicknessM thickness, m; positive
     */
    public record Layer(double ePa, double gPa, double alphaPerK, double thicknessM) {
        /**
         * Refuses what no layer can be.
         *
         * @throws IllegalArgumentException if a modulus or the thickness is not positive
         */
        public Layer {
            if (!(ePa > 0 && gPa > 0 && thicknessM > 0) || !Double.isFinite(ePa + gPa + thicknessM + alphaPerK)) {
                throw new IllegalArgumentException(
                        "a layer of E " + ePa + " Pa, G " + gPa + " Pa, thickness " + thicknessM + " m: all above 0");
            }
        }
    }

    /**
     * What three-point bending does.
     *
     * @param outerStressPa bending stress at midspan at +h/2, Pa
     * @param bendingDeflectionM deflection by bending, m
     * @param shearDeflectionM deflection by shear, m
     */
    public record ThreePoint(double outerStressPa, double bendingDeflectionM, double shearDeflectionM) {}

    /**
     * A strip of layers.
     *
     * @param layers from z = -h/2; at least one
     * @throws IllegalArgumentException if there is none
     */
    public LayeredStrip(List<Layer> layers) {
        if (layers.isEmpty()) {
            throw new IllegalArgumentException("a strip without layers");
        }
        this.layers = List.copyOf(layers);
        heights = new double[layers.size() + 1];
        double h = layers.stream().mapToDouble(Layer::thicknessM).sum();
        heights[0] = -h / 2;
        double sumStretch = 0;
        double sumFirst = 0;
        double sumSecond = 0;
        for (int k = 0; k < layers.size(); k++) {
            heights[k + 1] = heights[k] + layers.get(k).thicknessM();
            double e = layers.get(k).ePa();
            sumStretch += e * (heights[k + 1] - heights[k]);
            sumFirst += e * (square(heights[k + 1]) - square(heights[k])) / 2;
            sumSecond += e * (cube(heights[k + 1]) - cube(heights[k])) / 3;
        }
        stretch = sumStretch;
        first = sumFirst;
        second = sumSecond;
    }

    /** Height of the neutral line above the middle, m. */
    public double neutralM() {
        return first / stretch;
    }

    /** Bending stiffness per width about the neutral line, N m. */
    public double bendingStiffnessNm() {
        return second - first * first / stretch;
    }

    /** Curvature of the free strip for a temperature change, 1/m; positive where the last layer becomes the longer one. */
    public double thermalCurvaturePerM(double changeK) {
        double n = 0;
        double m = 0;
        for (int k = 0; k < layers.size(); k++) {
            double ea = layers.get(k).ePa() * layers.get(k).alphaPerK() * changeK;
            n += ea * (heights[k + 1] - heights[k]);
            m += ea * (square(heights[k + 1]) - square(heights[k])) / 2;
        }
        return (m - first / stretch * n) / bendingStiffnessNm();
    }

    /**
     * Three-point bending.
     *
     * @param loadNPerM load at midspan per width, N/m
     * @param spanM between supports, m; positive
     */
    public ThreePoint threePoint(double loadNPerM, double spanM) {
        double ei = bendingStiffnessNm();
        double moment = loadNPerM * spanM / 4;
        Layer last = layers.get(layers.size() - 1);
        double outer = moment * last.ePa() * (heights[layers.size()] - neutralM()) / ei;
        return new ThreePoint(outer, loadNPerM * cube(spanM) / (48 * ei), loadNPerM * spanM / 4 * shearCompliance());
    }

    /** Shear stress between layer k and the next for a shear force per width, Pa; layers counted from 0. */
    public double shearBetweenPa(int k, double shearNPerM) {
        double s = 0;
        for (int i = 0; i <= k; i++) {
            s -= layers.get(i).ePa() * moment(heights[i], heights[i + 1]);
        }
        return shearNPerM * s / bendingStiffnessNm();
    }

    private double moment(double from, double to) {
        double n = neutralM();
        return (square(to - n) - square(from - n)) / 2;
    }

    /** Integral of (tau/V)^2/G over the thickness, m/N: a square of a parabola, exact with three Gauss points. */
    private double shearCompliance() {
        double ei = bendingStiffnessNm();
        double below = 0;
        double sum = 0;
        for (int k = 0; k < layers.size(); k++) {
            Layer l = layers.get(k);
            double half = l.thicknessM() / 2;
            for (int g = 0; g < GAUSS.length; g++) {
                double z = heights[k] + half * (1 + GAUSS[g][0]);
                double flow = below - l.ePa() * moment(heights[k], z);
                sum += GAUSS[g][1] * half * square(flow / ei) / l.gPa();
            }
            below -= l.ePa() * moment(heights[k], heights[k + 1]);
        }
        return sum;
    }

    private static final double[][] GAUSS = {
        {-Math.sqrt(0.6), 5.0 / 9}, {0, 8.0 / 9}, {Math.sqrt(0.6), 5.0 / 9},
    };

    private static double square(double x) {
        return x * x;
    }

    private static double cube(double x) {
        return x * x * x;
    }
}

package fayline.method.fitup.frame.spring;

import fayline.basis.numeric.DenseMatrix;
import fayline.method.fitup.frame.BeamStrain;
import fayline.method.fitup.frame.FrameStiffness;
import fayline.method.fitup.frame.NodalField;
import fayline.method.fitup.frame.NodeFreedom;
import fayline.method.fitup.frame.bond.BondLine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Puts the unit solutions of a spring-back together. */
final class Release {
    private static final double NO_EFFECT = 1e-9;

    private final SpringBack question;
    private final FrameStiffness part;
    private final FrameStiffness assembly;
    private final DenseMatrix kc;
    private final List<NodalField> shapes;
    private final List<NodalField> moved;

    Release(
            SpringBack question,
            FrameStiffness part,
            FrameStiffness assembly,
            DenseMatrix kc,
            List<NodalField> shapes,
            List<NodalField> moved) {
        this.question = question;
        this.part = part;
        this.assembly = assembly;
        this.kc = kc;
        this.shapes = shapes;
        this.moved = moved;
    }

    SpringBackShape shape() {
        List<Clamp> clamps = question.clamps();
        double[] pulled = clamps.stream()
                .mapToDouble(c -> c.deviationMm() - c.positionMm())
                .toArray();
        double[] position = clamps.stream().mapToDouble(Clamp::positionMm).toArray();
        NodalField free = sum(shapes, pulled);
        NodalField clamped = sum(shapes, position);
        NodalField movement = sum(moved, pulled);
        DenseMatrix sensitivity = sensitivity();
        Optional<DenseMatrix> covariance = question.deviationCovariance()
                .filter(c -> !question.watches().isEmpty())
                .map(c -> sensitivity.times(c).times(sensitivity.transposed()));
        List<Watched> watched = watched(movement, clamped, sensitivity, covariance);
        BondLine line = question.bondLine();
        return new SpringBackShape(
                forces(pulled),
                free,
                clamped,
                movement.plus(clamped),
                movement,
                moved,
                supportForces(movement, free),
                watched,
                sensitivity,
                covariance,
                leastRelief(sensitivity, watched),
                line.forces(movement, question.assemblySupports()),
                line.clearances(question.clearances(), movement, movement),
                question.part().highestBending(free),
                released(movement, free));
    }

    private static NodalField sum(List<NodalField> units, double[] by) {
        NodalField sum = units.get(0).scaled(by[0]);
        for (int j = 1; j < by.length; j++) {
            sum = sum.plus(units.get(j).scaled(by[j]));
        }
        return sum;
    }

    private List<ClampForce> forces(double[] pulled) {
        double[] f = kc.times(pulled);
        List<ClampForce> forces = new ArrayList<>();
        for (int j = 0; j < f.length; j++) {
            Clamp clamp = question.clamps().get(j);
            double force = 0 - f[j];
            boolean wrong = switch (clamp.way()) {
                case BOTH -> false;
                case ALONG_ONLY -> force < 0;
                case AGAINST_ONLY -> force > 0;
            };
            boolean beyond = !clamp.at().freedom().isTurn()
                    && Math.abs(force) > question.limits().handN();
            forces.add(new ClampForce(clamp, force, beyond, wrong));
        }
        return forces;
    }

    /** What the supports put on the assembly: what holds its shape, less what the release put on it. */
    private NodalField supportForces(NodalField movement, NodalField free) {
        NodalField rest = assembly.times(movement).minus(part.times(free));
        NodalField forces = NodalField.zero(movement.nodes());
        for (NodeFreedom s : question.assemblySupports()) {
            forces = forces.with(s, rest.get(s));
        }
        return forces;
    }

    private DenseMatrix sensitivity() {
        double[][] rows = new double[question.watches().size()][moved.size()];
        for (int w = 0; w < rows.length; w++) {
            for (int j = 0; j < moved.size(); j++) {
                rows[w][j] = moved.get(j).get(question.watches().get(w).at());
            }
        }
        return DenseMatrix.of(rows);
    }

    private List<Watched> watched(
            NodalField movement, NodalField clamped, DenseMatrix sensitivity, Optional<DenseMatrix> covariance) {
        List<Watched> all = new ArrayList<>();
        for (int w = 0; w < question.watches().size(); w++) {
            Watch watch = question.watches().get(w);
            boolean ofPart = question.part().carries(watch.at().node());
            double shift = movement.get(watch.at()) + (ofPart ? clamped.get(watch.at()) : 0);
            int row = w;
            OptionalDouble std = covariance.isPresent()
                    ? OptionalDouble.of(Math.sqrt(Math.max(0, covariance.get().get(row, row))))
                    : OptionalDouble.empty();
            all.add(new Watched(watch, shift, std, shares(watch, ofPart, shift, sensitivity.row(row), std)));
        }
        return all;
    }

    private List<Share> shares(Watch watch, boolean ofPart, double shift, double[] row, OptionalDouble std) {
        List<Share> shares = new ArrayList<>();
        for (int j = 0; j < row.length; j++) {
            Clamp clamp = question.clamps().get(j);
            double byPosition = (ofPart ? shapes.get(j).get(watch.at()) : 0) - row[j];
            shares.add(new Share(
                    clamp.id(),
                    row[j],
                    row[j] * (clamp.deviationMm() - clamp.positionMm())
                            + (ofPart ? shapes.get(j).get(watch.at()) * clamp.positionMm() : 0),
                    variance(row, j, std),
                    quotient(-shift, row[j]),
                    quotient(-shift, byPosition)));
        }
        return shares;
    }

    private OptionalDouble variance(double[] row, int j, OptionalDouble std) {
        if (std.isEmpty() || !(std.getAsDouble() > 0)) {
            return OptionalDouble.empty();
        }
        double[] c = question.deviationCovariance().orElseThrow().row(j);
        double sum = 0;
        for (int k = 0; k < c.length; k++) {
            sum += row[j] * c[k] * row[k];
        }
        return OptionalDouble.of(sum / (std.getAsDouble() * std.getAsDouble()));
    }

    private static OptionalDouble quotient(double of, double by) {
        return Math.abs(by) > NO_EFFECT ? OptionalDouble.of(of / by) : OptionalDouble.empty();
    }

    private static List<Double> leastRelief(DenseMatrix sensitivity, List<Watched> watched) {
        if (watched.isEmpty()) {
            return List.of();
        }
        double[] wanted = watched.stream().mapToDouble(w -> 0 - w.shiftMm()).toArray();
        double[] relief = sensitivity.pseudoInverse(NO_EFFECT).times(wanted);
        return Arrays.stream(relief).boxed().toList();
    }

    private Optional<BeamStrain> released(NodalField movement, NodalField free) {
        return Stream.of(
                        question.part().highestBending(movement.minus(free)),
                        question.structure().highestBending(movement))
                .flatMap(Optional::stream)
                .max(Comparator.comparingDouble(BeamStrain::strain));
    }
}

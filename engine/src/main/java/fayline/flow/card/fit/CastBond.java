package fayline.flow.card.fit;

import fayline.basis.units.Mass;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Joint;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.fit.CastLine;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.quantity.JointResult;
import java.util.Optional;

/**
 * The bond line as test castings show it, against the joint that will have it. Adhesive goes with the thickness: area x bond line x
 * density, over the same area.
 *
 * @param line the castings
 * @param stations how many stations the fit has
 * @param joint the joint; empty where none is known or it takes no adhesive
 */
public record CastBond(CastLine line, int stations, Optional<Glued> joint) {
    /**
     * What the joint would take.
     *
     * @param wantedMm the bond line as drawn, in mm
     * @param drawn adhesive that stays in the joint as drawn
     * @param asCast the same at the mean of the castings
     * @param mixDrawn adhesive to mix as drawn, squeeze-out included
     * @param mixAsCast the same at the mean of the castings
     */
    public record Glued(double wantedMm, Mass drawn, Mass asCast, Mass mixDrawn, Mass mixAsCast) {}

    /** For a fit; empty where its state read last has no casting. */
    public static Optional<CastBond> of(Definition definition, ProjectResult project, FitResult fit) {
        return fit.cast().map(line -> {
            Optional<Joint> joint =
                    new FitWork(definition, project).joints(fit.fit()).stream().findFirst();
            return new CastBond(
                    line,
                    fit.fit().stations().size(),
                    joint.flatMap(j -> project.joint(j.id())
                            .filter(r -> r.inJoint().kilograms() > 0)
                            .map(r -> glued(line, j, r))));
        });
    }

    private static Glued glued(CastLine line, Joint joint, JointResult amounts) {
        double wanted = joint.bondLine().millimetres();
        double more = line.meanMm() / wanted;
        return new Glued(
                wanted,
                amounts.inJoint(),
                amounts.inJoint().times(more),
                amounts.adhesive(),
                amounts.adhesive().times(more));
    }
}

package fayline.method.fitup.frame.bond;

import fayline.method.fitup.frame.NodeMotion;
import java.util.OptionalDouble;

/**
 * What one bond place carries after release.
 *
 * @param partNode node of the part
 * @param structureNode node of the structure; the same where they are tied
 * @param force on the structure, N and N mm
 * @param runMm length of bond line that the place stands for
 * @param peelNPerMm load across the bond line, positive where it is pulled open; empty where no way of opening is given
 * @param openingMm how far the adhesive is pulled open, negative where it is pressed; empty where it is tied or without a way
 * @param overlaps whether it would have to close farther than its thickness
 * @param atSupport whether a support at the same node takes an unknown share
 */
public record BondForce(
        int partNode,
        int structureNode,
        NodeMotion force,
        double runMm,
        OptionalDouble peelNPerMm,
        OptionalDouble openingMm,
        boolean overlaps,
        boolean atSupport) {}

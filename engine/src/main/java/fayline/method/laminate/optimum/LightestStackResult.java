package fayline.method.laminate.optimum;

import java.util.List;

/**
 * The lightest stack, as far as it was found.
 *
 * @param plies from z = -h/2 to z = +h/2; empty if no stack of the rules does
 * @param massKgPerM2 its mass; 0 without a stack
 * @param costPerM2 its cost; 0 without a stack
 * @param proven whether it is proven that no lighter stack does (or, without a stack, that none does)
 * @param boundKgPerM2 no stack lighter than this does; the mass itself where it is proven
 * @param space how many stacks the rules would let one write down, those of every number of plies
 * @param nodes how many part stacks were looked at
 * @param judged how many whole stacks were judged
 */
public record LightestStackResult(
        List<PlyChoice> plies,
        double massKgPerM2,
        double costPerM2,
        boolean proven,
        double boundKgPerM2,
        double space,
        long nodes,
        long judged) {
    /** Copies the list. */
    public LightestStackResult {
        plies = List.copyOf(plies);
    }
}

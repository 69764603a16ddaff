/**
 * What goes into parts, joints and steps: cloth, core, resin, consumables, mass and cost. Start at
 * {@link fayline.flow.result.quantity.PartResult}. An area is of true surface, a mass of resin is of the mixed system.
 * Formulas stand in {@code fayline.method}; when things happen does not belong here.
 */
@NullMarked
package fayline.flow.result.quantity;

import org.jspecify.annotations.NullMarked;

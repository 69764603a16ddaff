/**
 * Airfoil sections and the ribs cut from them. Start at {@link fayline.method.airfoil.NacaSection} and
 * {@link fayline.method.airfoil.Rib}. Sections have a chord of one, x from the leading edge aft, y up; ribs are in metres.
 * NACA 4- and 5-digit sections [naca460], [naca537], [nasa-tm4741]. What does not belong here: reading files.
 */
@NullMarked
package fayline.method.airfoil;

import org.jspecify.annotations.NullMarked;

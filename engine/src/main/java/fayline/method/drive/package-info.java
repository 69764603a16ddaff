/**
 * A toothed belt between an engine and its propeller: ratio, lengths, mesh, speeds, and the Mach number of the tips
 * [budynas2015] for the belt's geometry. Start at {@link fayline.method.drive.BeltDrive}. Lengths in metres, speeds of rotation in
 * turns a second. What does not belong here: what a belt may carry, which is its maker's to say, and torsional vibration.
 */
@NullMarked
package fayline.method.drive;

import org.jspecify.annotations.NullMarked;

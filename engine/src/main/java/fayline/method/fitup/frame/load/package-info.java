/**
 * Frames under forces, and the four lines of a beam table. Start at
 * {@link fayline.method.fitup.frame.load.FrameCalculator} and {@link fayline.method.fitup.frame.load.BeamTableCalculator}.
 * Frame, signs and units are those of the package above. Sources: [przemieniecki1968], [roark1989]. What does not belong here:
 * clamping and bonding.
 */
@NullMarked
package fayline.method.fitup.frame.load;

import org.jspecify.annotations.NullMarked;

/**
 * Constants of a ply from those of its fibre and resin, where nobody has measured it: estimates, always told as such. Start at
 * {@link fayline.method.micro.PlyEstimateCalculator}. Sources: [jones1999], [halpin-tsai1969], [schapery1968]. What does not
 * belong here: strengths, which no such rule gives well enough to build by.
 */
@NullMarked
package fayline.method.micro;

import org.jspecify.annotations.NullMarked;

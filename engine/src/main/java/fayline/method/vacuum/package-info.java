/**
 * What a vacuum does to a bag. Start at {@link fayline.method.vacuum.ClampPressureCalculator},
 * {@link fayline.method.vacuum.LeakDownCalculator} and {@link fayline.method.vacuum.PumpDownCalculator}. Readings are kept with
 * their kind: below ambient ({@link fayline.basis.units.Vacuum}) or absolute ({@link fayline.basis.units.Pressure}). Standard
 * atmosphere [iso2533]; leak limits as read in [ac43-13-1b] and [tm1-1500-204-23]. What does not belong here: pumps and ports
 * of a shop.
 */
@NullMarked
package fayline.method.vacuum;

import org.jspecify.annotations.NullMarked;

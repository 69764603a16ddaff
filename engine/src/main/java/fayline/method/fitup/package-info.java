/**
 * Where a part sits in its opening and what may be done about it before adhesive makes it permanent. This package holds the
 * words that every question shares; each question has a package of its own below it. Start at
 * {@link fayline.method.fitup.FitRow}.
 *
 * <p>Frame of a part on the left side, seen from outside (nose at left): x aft, y up, z outboard, right-handed. A part on the
 * right side has x forward. A positive turn is counter-clockwise seen from outside. Lengths in millimetres, angles in radians,
 * forces in newtons, stresses in megapascals, temperatures in degrees Celsius. A gap is measured along the part edge's outward
 * normal, from part to neighbour, negative where they overlap; flush is positive where the part stands proud.
 *
 * <p>The rows are small-motion kinematics of a rigid body, a small rotation being an axial vector [goldstein1980]. What does not
 * belong here: projects, readings as typed, shop stock.
 */
@NullMarked
package fayline.method.fitup;

import org.jspecify.annotations.NullMarked;

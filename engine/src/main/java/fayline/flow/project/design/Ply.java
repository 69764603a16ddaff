package fayline.flow.project.design;

import fayline.basis.units.Angle;

/**
 * One ply or core layer.
 *
 * @param material cloth, tape or core
 * @param angle fibre direction against the zone's axis, positive anticlockwise seen from the tool side's outside
 * @param stage the lay-up stage it belongs to, from 1
 * @param core whether it is a core layer
 */
public record Ply(String material, Angle angle, int stage, boolean core) {}

package fayline.flow.result.quantity;

import fayline.basis.units.Angle;
import fayline.basis.units.Area;

/**
 * One ply or core layer of one zone: a piece to cut and to lay.
 *
 * @param order its place in the part's lay-up over all zones, from 1, mould face first
 * @param zone the zone
 * @param material the cloth, tape or core
 * @param angle fibre direction against the part's axis: the ply's angle turned by the zone's axis
 * @param stage the lay-up stage
 * @param core whether it is core
 * @param area the area it covers, without waste
 */
public record PlyCut(int order, String zone, String material, Angle angle, int stage, boolean core, Area area) {}

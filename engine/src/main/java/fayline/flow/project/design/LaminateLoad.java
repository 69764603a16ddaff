package fayline.flow.project.design;

import fayline.basis.units.Force;
import fayline.basis.units.LineForce;
import fayline.basis.units.Temperature;
import java.util.Optional;

/**
 * What a laminate must bear somewhere, as an engineer entered it. Along is the direction in which ply angles are nought.
 *
 * @param name what it is
 * @param along force per width along; pulling is positive
 * @param across force per width across
 * @param shear shear force per width
 * @param bendAlong moment per width of the stresses along; positive where the last ply is pulled
 * @param bendAcross moment per width of the stresses across
 * @param twist twisting moment per width
 * @param cure temperature at which the laminate is free of stress
 * @param service temperature at which it is loaded
 * @param factor how many times the load must be borne until the first ply fails
 * @param origin where the load is from
 */
public record LaminateLoad(
        String name,
        LineForce along,
        LineForce across,
        LineForce shear,
        Force bendAlong,
        Force bendAcross,
        Force twist,
        Optional<Temperature> cure,
        Optional<Temperature> service,
        double factor,
        String origin) {}

package fayline.flow.project.design;

import fayline.basis.geometry.Outline;
import fayline.basis.units.Angle;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.flow.project.catalog.Keyed;
import java.util.Optional;

/**
 * An area of a part with its own stack.
 *
 * @param id the id within the part
 * @param name the name
 * @param laminate the stack
 * @param area true surface: from the definition, or from the outline
 * @param edge length of its edge: from the definition, or from the outline
 * @param corners inside corners that the cloth is worked into
 * @param axis direction from which ply angles count, against the part's axis
 * @param outline the plane outline, where one is given
 */
public record Zone(
        String id,
        String name,
        String laminate,
        Area area,
        Length edge,
        int corners,
        Angle axis,
        Optional<Outline> outline)
        implements Keyed {}

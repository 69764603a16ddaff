package fayline.flow.project.fit.frame;

import fayline.flow.project.catalog.Keyed;
import fayline.method.fitup.frame.spring.Clamp;
import java.util.OptionalDouble;

/**
 * A clamp, and how far the part stands off there before it is clamped.
 *
 * @param id its mark
 * @param at the place
 * @param way which way it acts; a shift
 * @param offMm how far the free part stands off its place, positive the way it acts; empty where a station tells
 * @param sureMm standard uncertainty of that, where it is known
 * @param station the station whose gap, or flush for a clamp that acts out of the plane, tells how far; empty where it is entered
 * @param closesToMm where the clamp holds the part, less its place
 * @param acts whether it can pull and push
 */
public record FrameClamp(
        String id,
        String at,
        FrameWay way,
        OptionalDouble offMm,
        OptionalDouble sureMm,
        String station,
        double closesToMm,
        Clamp.Way acts)
        implements Keyed {}

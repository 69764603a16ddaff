package fayline.flow.result.fit.frame;

import fayline.flow.project.fit.frame.FrameClamp;
import java.util.OptionalDouble;

/**
 * How far the part stands off at a clamp.
 *
 * @param clamp the clamp
 * @param offMm how far the free part stands off, positive the way the clamp acts
 * @param sureMm standard uncertainty of that, where it is known
 * @param from who says so: that it was entered, or which reading
 */
public record Pull(FrameClamp clamp, double offMm, OptionalDouble sureMm, String from) {}

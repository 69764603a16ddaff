package fayline.flow.project.fit.frame;

import fayline.flow.project.catalog.Keyed;
import fayline.method.fitup.frame.FramePoint;
import java.util.OptionalDouble;

/**
 * A place where beams meet.
 *
 * @param id its mark
 * @param at where
 * @param runMm length of bond line that it stands for; half the carrier's beams there where empty
 */
public record FramePlace(String id, FramePoint at, OptionalDouble runMm) implements Keyed {}

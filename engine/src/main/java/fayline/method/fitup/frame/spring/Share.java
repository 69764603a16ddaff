package fayline.method.fitup.frame.spring;

import java.util.OptionalDouble;

/**
 * What one clamp has to do with one watched shift.
 *
 * @param clampId the clamp
 * @param perMm shift for one millimetre of deviation there
 * @param shareMm what of the shift its deviation causes
 * @param varianceShare what of the variance of the shift its deviation causes, correlations shared by halves; empty without
 *     covariance
 * @param relieveMm by how much to change the free part's deviation there, this clamp alone, so that the watch ends at nominal
 * @param shimMm by how much to move the clamp's position instead; empty, as the one above, where it has no effect
 */
public record Share(
        String clampId,
        double perMm,
        double shareMm,
        OptionalDouble varianceShare,
        OptionalDouble relieveMm,
        OptionalDouble shimMm) {}

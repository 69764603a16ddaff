package fayline.app.usecase.fit;

import fayline.flow.result.fit.FitResult;
import java.util.Optional;

/**
 * A fit as it stands.
 *
 * @param result what follows from its readings
 * @param opposite the same of the opposite hand's fit, where there is one
 */
public record FitSight(FitResult result, Optional<FitResult> opposite) {}

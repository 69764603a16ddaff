package fayline.flow.project.recipe;

import fayline.basis.units.TimeSpan;
import fayline.method.cure.CureState;
import java.util.Optional;

/**
 * Time without people: a fixed span, or until a system reaches a state.
 *
 * @param span the fixed span, where it is fixed
 * @param until the state to wait for, where the cure decides
 * @param system the system that cures, or {@code with.NAME}; empty where the span is fixed
 */
public record Alone(Optional<TimeSpan> span, Optional<CureState> until, String system) {}

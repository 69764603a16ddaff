package fayline.method.fitup.scheme;

import java.util.List;
import java.util.Optional;

/**
 * Schemes side by side.
 *
 * @param schemes in the order asked
 * @param best the one of highest joint chance among those that have one; the first of equals
 */
public record SchemeComparison(List<SchemeOutcome> schemes, Optional<String> best) {
    /** Copies the list. */
    public SchemeComparison {
        schemes = List.copyOf(schemes);
    }
}

package fayline.app.usecase.act;

import fayline.basis.units.Length;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitState;
import fayline.flow.project.fit.FitStation;
import fayline.flow.project.fit.TypedGap;
import java.util.List;
import java.util.Optional;

/** What is checked of a gap, a flush or a test casting before it is recorded. */
final class FitReadingChecks {
    private static final String FLUSH = "flush";
    private static final String NOGO = "nogo";
    private final Checks checks;
    private final Measured reading;

    FitReadingChecks(Checks checks, Measured reading) {
        this.checks = checks;
        this.reading = reading;
    }

    void check(Optional<Fit> fit) {
        if (fit.isEmpty()) {
            checks.stop("of", quoted(reading.of()), "a fit of the definition", "");
        }
        fit.ifPresent(this::place);
        value();
        round(checks, reading, "which time round it is read");
        Optional.of(typed("temperature"))
                .filter(t -> !t.isBlank())
                .ifPresent(t -> TakeReading.quantity(checks, "temperature", t, QuantityKind.TEMPERATURE));
    }

    static void round(Checks checks, Measured reading, String what) {
        String round = reading.values().getOrDefault("round", "");
        if (!round.isBlank() && !round.matches("[1-9][0-9]{0,3}")) {
            checks.stop("round", quoted(round), what + ", a whole number from 1", "");
        }
    }

    private void place(Fit fit) {
        if (fit.station(reading.station()).isEmpty()) {
            List<String> marks = fit.stations().stream().map(FitStation::id).toList();
            checks.stop(
                    "station",
                    quoted(reading.station()),
                    "a station of " + fit.id() + ": " + String.join(", ", marks),
                    "");
        }
        List<String> states = fit.states().stream().map(FitState::id).toList();
        if (!reading.state().isEmpty() && !states.contains(reading.state())) {
            checks.stop(
                    "state",
                    quoted(reading.state()),
                    "a state of " + fit.id() + ": " + String.join(", ", states),
                    "a fit goes through its own states, see fits.yaml");
        }
    }

    private void value() {
        if (reading.kind().equals(FLUSH)) {
            TakeReading.quantity(checks, "value", typed("value"), QuantityKind.LENGTH);
            return;
        }
        Optional<Length> value = length("value");
        boolean feeler = !typed(NOGO).isBlank();
        if (feeler && !reading.kind().equals("gap")) {
            checks.stop(NOGO, quoted(typed(NOGO)), "a leaf that did not enter only beside a gap", "");
        } else if (feeler) {
            Optional<Length> nogo = length(NOGO);
            if (value.isPresent()
                    && nogo.isPresent()
                    && nogo.get().metres() <= value.get().metres()) {
                checks.stop(
                        NOGO,
                        quoted(typed(NOGO)),
                        "more than the thickest leaf that entered, " + typed("value"),
                        "value is the leaf that enters, nogo the next one that does not");
            }
        }
    }

    private Optional<Length> length(String name) {
        try {
            Length length = TypedGap.read(typed(name)).value();
            if (length.metres() < 0) {
                boolean casting = reading.kind().equals("casting");
                checks.stop(
                        name,
                        quoted(typed(name)),
                        casting ? "the thickness of the film, nought or more" : "a gap of nought or more",
                        casting ? "" : "write 0 mm or touches where the part touches; it cannot be read further");
                return Optional.empty();
            }
            return Optional.of(length);
        } catch (UnreadableQuantityException e) {
            checks.stop(name, quoted(e.found()), e.expected(), e.suggestion());
            return Optional.empty();
        }
    }

    private String typed(String name) {
        return reading.values().getOrDefault(name, "");
    }

    static String quoted(String text) {
        return "\"" + text + "\"";
    }
}

package fayline.app.usecase.act;

import fayline.basis.units.Length;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.frame.FrameWidth;
import fayline.flow.reading.WidthReading;
import java.util.List;
import java.util.Optional;

/** What is checked of the width of a frame before it is recorded. */
final class WidthReadingChecks {
    private final Checks checks;
    private final Measured reading;

    WidthReadingChecks(Checks checks, Measured reading) {
        this.checks = checks;
        this.reading = reading;
    }

    void check(Optional<Fit> fit) {
        if (fit.isEmpty()) {
            checks.stop("of", FitReadingChecks.quoted(reading.of()), "a fit of the definition", "");
        }
        fit.ifPresent(this::width);
        if (WidthReading.State.named(reading.state()).isEmpty()) {
            checks.stop(
                    "state",
                    FitReadingChecks.quoted(reading.state()),
                    "the state of the trial: " + String.join(", ", WidthReading.State.all()),
                    "");
        }
        value();
        FitReadingChecks.round(checks, reading, "which trial it is");
    }

    private void width(Fit fit) {
        List<String> marks = fit.frame().widths().stream().map(FrameWidth::id).toList();
        if (!marks.contains(reading.station())) {
            checks.stop(
                    "station",
                    FitReadingChecks.quoted(reading.station()),
                    marks.isEmpty()
                            ? "a width of " + fit.id() + ", of which there is none"
                            : "a width of " + fit.id() + ": " + String.join(", ", marks),
                    marks.isEmpty() ? "name it under \"widths:\" of the fit" : "");
        }
    }

    private void value() {
        String typed = reading.values().getOrDefault("value", "");
        try {
            Length width = QuantityParser.parse(typed, QuantityKind.LENGTH).value();
            if (!(width.metres() > 0)) {
                checks.stop("value", FitReadingChecks.quoted(typed), "a width above nought", "");
            }
        } catch (UnreadableQuantityException e) {
            checks.stop("value", FitReadingChecks.quoted(e.found()), e.expected(), e.suggestion());
        }
    }
}

package fayline.app.web.fit;

import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.flow.reading.FitReadings;
import fayline.flow.record.MendedReading;
import fayline.flow.record.TakenReading;
import java.util.List;
import java.util.function.Predicate;

/** Readings as they were before they were corrected or withdrawn: struck through, they stay to be seen. */
final class FitFormer {
    private FitFormer() {}

    /** Those of one station in one state, the oldest correction first. */
    static List<FitView.Former> at(Sight sight, String fit, String state, String station) {
        return of(sight, m -> {
            TakenReading r = m.before();
            return r.of().equals(fit)
                    && r.state().equals(state)
                    && r.station().equals(station)
                    && !FitReadings.of(List.of(r), fit).isEmpty();
        });
    }

    /** Those of one reading. */
    static List<FitView.Former> of(Sight sight, long reading) {
        return of(sight, m -> m.before().seq() == reading);
    }

    private static List<FitView.Former> of(Sight sight, Predicate<MendedReading> which) {
        return sight.view().record().mended().stream()
                .filter(m ->
                        m.before().project().equals(sight.definition().facts().id()))
                .filter(which)
                .map(m -> former(sight, m))
                .toList();
    }

    private static FitView.Former former(Sight sight, MendedReading m) {
        return new FitView.Former(
                words(m.before()),
                (m.withdrawn() ? "withdrawn by " : "corrected by ")
                        + sight.personName(m.by())
                        + (m.why().isEmpty() ? "" : ": " + m.why()),
                link(m.before()));
    }

    /** A reading as typed. */
    static String words(TakenReading r) {
        return FitReadings.of(List.of(r), r.of()).stream()
                .findFirst()
                .map(FitWords::typed)
                .orElse(r.value());
    }

    /** The page on which a reading is corrected. */
    static String link(TakenReading r) {
        return link(r.of(), r.seq());
    }

    /** The page on which a fit's reading is corrected. */
    static String link(String fit, long reading) {
        return "/fit/" + Visit.encoded(fit) + "/reading/" + reading;
    }
}

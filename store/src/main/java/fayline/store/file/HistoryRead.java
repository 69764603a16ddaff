package fayline.store.file;

import fayline.basis.finding.InputProblem;
import java.util.List;

/**
 * The history of a folder.
 *
 * @param events what happened, in the order of time; of one moment, in the order written
 * @param problems everything wrong with the files; with a problem that refuses there are no events
 */
public record HistoryRead(List<HistoryEvent> events, List<InputProblem> problems) {
    /** Copies the lists. */
    public HistoryRead {
        events = List.copyOf(events);
        problems = List.copyOf(problems);
    }
}

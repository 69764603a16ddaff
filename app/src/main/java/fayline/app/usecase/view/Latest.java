package fayline.app.usecase.view;

import fayline.flow.record.KeptFile;
import fayline.flow.record.PublishedPlan;
import fayline.flow.record.RecordState;
import java.util.LongSummaryStatistics;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How far a record is and what holds now, in words short enough to be said many times a second.
 *
 * @param record what tells this record from any other; {@code -} while it is empty
 * @param head the sequence number of its last entry; 0 for none
 * @param plan which plan holds: another word for another plan
 * @param definition which definition holds: another word once a file of it was saved or taken out
 */
public record Latest(String record, long head, String plan, String definition) {
    private static final int ENOUGH = 16;

    /**
     * Of a record.
     *
     * @param origin the hash of its first entry; empty while there is none
     * @param state what its entries amount to
     * @param turns how often another plan was followed since the program began
     */
    static Latest of(String origin, RecordState state, int turns) {
        // between two saves files can only be taken out, so their number and the last save name one state of them
        LongSummaryStatistics saves = Stream.concat(
                        Stream.of(state.shopFiles()), state.projectFiles().values().stream())
                .map(Map::values)
                .flatMap(f -> f.stream())
                .mapToLong(KeptFile::seq)
                .summaryStatistics();
        return new Latest(
                origin.isEmpty() ? "-" : origin.substring(0, Math.min(ENOUGH, origin.length())),
                state.head().seq(),
                state.published().map(PublishedPlan::seq).orElse(0L) + "." + turns,
                saves.getCount() + "." + Math.max(0, saves.getMax()));
    }

    /** All of it in one line, in this order, with a blank between. */
    public String line() {
        return Stream.of(record, String.valueOf(head), plan, definition).collect(Collectors.joining(" "));
    }
}

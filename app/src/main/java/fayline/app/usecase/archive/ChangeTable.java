package fayline.app.usecase.archive;

import fayline.flow.record.RecordState;
import fayline.flow.record.change.Change;
import fayline.flow.record.change.Verdict;
import fayline.store.file.table.CsvText;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Changes of the design as a table: one line for each thing that was said of one, in order. */
final class ChangeTable {
    private ChangeTable() {}

    static String of(RecordState state) {
        List<List<String>> rows = new ArrayList<>();
        for (Change c : state.change().changes().values()) {
            String touches = String.join(" ", c.touches());
            row(rows, c, c.seq(), "raised", touches, c.at(), c.by(), "", c.what() + " Why: " + c.why());
            c.verdict().ifPresent(v -> verdict(rows, c, v));
            c.settled().forEach((item, s) -> {
                String drawing = s.drawing().isEmpty() ? "" : s.drawing() + ". ";
                row(rows, c, s.seq(), s.how().words(), item, s.at(), s.by(), "", drawing + s.note());
            });
            c.closed().ifPresent(x -> row(rows, c, x.seq(), "closed", "", x.at(), x.by(), "", x.note()));
        }
        return CsvText.of(
                List.of("project", "change", "entry", "what", "of", "at", "by", "second person", "text"), rows);
    }

    private static void verdict(List<List<String>> rows, Change c, Verdict v) {
        row(rows, c, v.seq(), v.accepted() ? "accepted" : "refused", "", v.at(), v.by(), v.second(), v.note());
        v.withdraws().forEach(w -> row(rows, c, v.seq(), "made otherwise", w.made(), v.at(), v.by(), "", w.drawing()));
    }

    private static void row(
            List<List<String>> rows,
            Change c,
            long entry,
            String what,
            String of,
            Instant at,
            String by,
            String second,
            String text) {
        rows.add(List.of(c.project(), c.name(), String.valueOf(entry), what, of, at.toString(), by, second, text));
    }
}

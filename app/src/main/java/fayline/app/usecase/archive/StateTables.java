package fayline.app.usecase.archive;

import fayline.flow.record.RecordState;
import fayline.flow.record.StepRecord;
import fayline.flow.record.TakenReading;
import fayline.store.file.table.CsvText;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What the entries amount to, as tables that a person or a spreadsheet reads. */
final class StateTables {
    private StateTables() {}

    static Map<String, String> of(RecordState state) {
        Map<String, String> tables = new TreeMap<>();
        tables.put("steps.csv", steps(state));
        tables.put("notes.csv", notes(state));
        tables.put("readings.csv", readings(state));
        tables.put("conflicts.csv", conflicts(state));
        tables.putAll(MadeTables.of(state));
        tables.putAll(StoresTables.of(state));
        tables.putAll(InspectTables.of(state));
        tables.put("changes.csv", ChangeTable.of(state));
        return tables;
    }

    private static String steps(RecordState state) {
        List<List<String>> rows = new ArrayList<>();
        for (StepRecord s : state.steps().values()) {
            rows.add(List.of(
                    s.step(),
                    time(s.started()),
                    time(s.finished()),
                    String.join("; ", s.people()),
                    String.join("; ", s.places()),
                    s.whichWay(),
                    s.signed(),
                    String.valueOf(s.startedBy()),
                    String.valueOf(s.finishedBy())));
        }
        return CsvText.of(
                List.of(
                        "step",
                        "started",
                        "finished",
                        "people",
                        "places",
                        "which way",
                        "signed",
                        "entry of the start",
                        "entry of the finish"),
                rows);
    }

    private static String time(java.util.Optional<Instant> at) {
        return at.map(Instant::toString).orElse("");
    }

    private static String notes(RecordState state) {
        List<List<String>> rows = new ArrayList<>();
        for (StepRecord s : state.steps().values()) {
            for (StepRecord.Note n : s.notes()) {
                rows.add(
                        List.of(String.valueOf(n.seq()), s.step(), n.at().toString(), n.by(), n.shown(ZoneOffset.UTC)));
            }
        }
        return CsvText.of(List.of("entry", "step", "at", "by", "text"), rows);
    }

    /** One line for each named value, each as typed. */
    private static String readings(RecordState state) {
        List<List<String>> rows = new ArrayList<>();
        for (TakenReading r : state.readings()) {
            r.values()
                    .forEach((name, value) -> rows.add(List.of(
                            String.valueOf(r.seq()),
                            r.project(),
                            r.at().toString(),
                            r.by(),
                            r.kind(),
                            r.of(),
                            r.station(),
                            r.state(),
                            name,
                            value)));
        }
        return CsvText.of(
                List.of("entry", "project", "at", "by", "kind", "of", "station", "state", "name", "value"), rows);
    }

    private static String conflicts(RecordState state) {
        List<List<String>> rows = new ArrayList<>();
        state.conflicts()
                .forEach(c ->
                        rows.add(List.of(String.valueOf(c.seq()), String.valueOf(c.other()), c.about(), c.sentence())));
        return CsvText.of(List.of("entry", "entry that counts", "about", "what happened"), rows);
    }
}

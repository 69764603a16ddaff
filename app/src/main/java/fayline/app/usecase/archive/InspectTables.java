package fayline.app.usecase.archive;

import fayline.flow.record.RecordState;
import fayline.flow.record.inspect.FoundFault;
import fayline.flow.record.inspect.HeldVisit;
import fayline.store.file.table.CsvText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Visits and what came of each finding, as tables. */
final class InspectTables {
    private InspectTables() {}

    static Map<String, String> of(RecordState state) {
        return Map.of("visits.csv", visits(state), "findings.csv", findings(state));
    }

    private static String visits(RecordState state) {
        List<List<String>> rows = new ArrayList<>();
        for (HeldVisit v : state.inspect().visits().values()) {
            rows.add(List.of(
                    String.valueOf(v.seq()),
                    v.project(),
                    String.valueOf(v.number()),
                    v.at().toString(),
                    v.stage(),
                    v.who(),
                    v.own() ? "yes" : "",
                    v.text(),
                    String.valueOf(v.photos().size()),
                    v.by()));
        }
        return CsvText.of(
                List.of("entry", "project", "number", "at", "stage", "who", "own look", "text", "photos", "by"), rows);
    }

    /** One line for each thing that was said of a finding, the finding itself first. */
    private static String findings(RecordState state) {
        List<List<String>> rows = new ArrayList<>();
        for (FoundFault f : state.inspect().faults().values()) {
            rows.add(List.of(
                    f.number(), String.valueOf(f.seq()), f.about(), "raised", f.at().toString(), f.by(), "", f.text()));
            for (FoundFault.Step s : f.chain()) {
                String what = f.mended().contains(s) ? "put right" : s.accepted() ? "accepted" : "not accepted";
                rows.add(List.of(
                        f.number(),
                        String.valueOf(s.seq()),
                        f.about(),
                        what,
                        s.at().toString(),
                        s.by(),
                        s.who(),
                        s.text()));
            }
        }
        return CsvText.of(List.of("finding", "entry", "about", "what", "at", "by", "signed by", "text"), rows);
    }
}

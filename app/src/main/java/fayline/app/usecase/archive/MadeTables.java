package fayline.app.usecase.archive;

import fayline.flow.record.RecordState;
import fayline.flow.record.made.Draw;
import fayline.flow.record.made.Laid;
import fayline.flow.record.made.Mix;
import fayline.flow.record.made.StepMade;
import fayline.flow.record.trouble.Deviation;
import fayline.flow.record.trouble.Settlement;
import fayline.store.file.table.CsvText;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What went into steps and what came out other than drawn, as tables. */
final class MadeTables {
    private MadeTables() {}

    static Map<String, String> of(RecordState state) {
        Map<String, String> tables = new TreeMap<>();
        tables.put("lots-drawn.csv", draws(state));
        tables.put("mixes.csv", mixes(state));
        tables.put("plies.csv", plies(state));
        tables.put("deviations.csv", deviations(state));
        return tables;
    }

    private static String draws(RecordState state) {
        List<List<String>> rows = new ArrayList<>();
        for (StepMade s : state.made().steps().values()) {
            for (Draw d : s.draws()) {
                rows.add(List.of(
                        String.valueOf(d.seq()),
                        d.step(),
                        d.at().toString(),
                        d.by(),
                        told(d.told()),
                        d.lot(),
                        d.component(),
                        d.amount(),
                        yes(d.override()),
                        d.why()));
            }
        }
        return CsvText.of(
                List.of("entry", "step", "at", "by", "entered", "lot", "part", "amount", "out of date allowed", "why"),
                rows);
    }

    private static String mixes(RecordState state) {
        List<List<String>> rows = new ArrayList<>();
        for (StepMade s : state.made().steps().values()) {
            for (Mix m : s.mixes()) {
                rows.add(List.of(
                        String.valueOf(m.seq()),
                        m.step(),
                        m.at().toString(),
                        m.by(),
                        told(m.told()),
                        m.batch(),
                        m.system(),
                        m.resinLot(),
                        m.hardenerLot(),
                        m.resin(),
                        m.hardener(),
                        yes(m.weighed()),
                        m.why()));
            }
        }
        return CsvText.of(
                List.of(
                        "entry",
                        "step",
                        "at",
                        "by",
                        "entered",
                        "batch",
                        "system",
                        "resin lot",
                        "hardener lot",
                        "resin",
                        "hardener",
                        "weighed",
                        "why"),
                rows);
    }

    private static String plies(RecordState state) {
        List<List<String>> rows = new ArrayList<>();
        for (StepMade s : state.made().steps().values()) {
            for (Laid p : s.plies()) {
                rows.add(List.of(
                        String.valueOf(p.seq()),
                        p.step(),
                        p.at().toString(),
                        p.by(),
                        told(p.told()),
                        p.ply(),
                        p.name(),
                        p.lot(),
                        yes(p.skipped()),
                        p.why()));
            }
        }
        return CsvText.of(
                List.of("entry", "step", "at", "by", "entered", "ply", "name", "lot", "left out", "why"), rows);
    }

    private static String deviations(RecordState state) {
        List<List<String>> rows = new ArrayList<>();
        for (Deviation d : state.trouble().deviations().values()) {
            Optional<Settlement> s = d.settled();
            rows.add(List.of(
                    String.valueOf(d.seq()),
                    d.about(),
                    d.at().toString(),
                    d.by(),
                    d.text(),
                    yes(d.structural()),
                    yes(d.isOpen()),
                    s.map(x -> x.disposition().key()).orElse(""),
                    s.map(Settlement::by).orElse(""),
                    s.map(Settlement::second).orElse(""),
                    s.map(Settlement::note).orElse("")));
        }
        return CsvText.of(
                List.of(
                        "entry",
                        "about",
                        "at",
                        "by",
                        "what",
                        "structural",
                        "open",
                        "disposition",
                        "decided by",
                        "second person",
                        "note"),
                rows);
    }

    private static String told(Optional<Instant> told) {
        return told.map(Instant::toString).orElse("");
    }

    private static String yes(boolean is) {
        return is ? "yes" : "";
    }
}

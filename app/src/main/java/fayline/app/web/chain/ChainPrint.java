package fayline.app.web.chain;

import fayline.app.drawing.Drawing;
import fayline.app.pdf.chain.ChainSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The page of a chain as a sheet for the bench: the same words, the drawing, what the hands need. */
final class ChainPrint {
    private ChainPrint() {}

    static ChainSheet of(ChainView v, Drawing drawing) {
        List<ChainSheet.Table> tables = new ArrayList<>();
        v.carried().forEach(b -> tables.addAll(bench(b)));
        if (!v.remedies().isEmpty()) {
            tables.add(new ChainSheet.Table(
                    "What is left after the cure",
                    "",
                    List.of("Remedy", "What it does", "Worst gap reached", "All inside", "Cost"),
                    v.remedies().stream()
                            .map(w -> List.of(w.name(), w.does(), w.worst(), w.inside(), w.cost()))
                            .toList()));
        }
        return new ChainSheet(
                v.name(),
                "/chain/" + v.id(),
                drawing,
                v.correction().map(ChainView.Correct::verdict).orElse(""),
                v.correction().map(ChainView.Correct::moves).orElse(List.of()).stream()
                        .map(m -> new ChainSheet.Moved(m.name(), m.move(), more(m)))
                        .toList(),
                sure(v.sure()),
                tables,
                List.of(
                        "Read the stations under clamps once more before the adhesive gels: the last chance.",
                        "Dust from trimming: mask, eyes, extraction; keep it away from wet work. Adhesive: gloves, and a"
                                + " large batch in the pot heats itself and kicks early.",
                        "The drawing, approved data, local rules and a licensed person decide."));
    }

    private static List<String> more(ChainView.Moved m) {
        return Stream.of(m.bench(), m.gaps().isEmpty() ? "" : "Gaps that result: " + m.gaps() + ".")
                .filter(t -> !t.isEmpty())
                .toList();
    }

    private static List<String> sure(ChainView.Sure s) {
        if (s.chance().isEmpty()) {
            return s.missing().stream().map(t -> "Not given: " + t).toList();
        }
        List<String> all = new ArrayList<>();
        all.add(s.chance() + " that every gap ends inside; lowest: " + s.worst() + ".");
        s.assumed().forEach(t -> all.add("Assumed: " + t + "."));
        return all;
    }

    private static List<ChainSheet.Table> bench(ChainView.Carried b) {
        return List.of(
                new ChainSheet.Table(
                        "On the bench: " + b.link(),
                        b.lies() + (b.doubtful().isEmpty() ? "" : " " + b.doubtful()),
                        List.of(
                                "Station",
                                "Place on the bench",
                                "Gap read",
                                "Wanted now",
                                "Edge goes here",
                                "Marks add"),
                        b.stations().stream()
                                .map(s -> List.of(s.id(), s.bench(), s.gap(), s.wanted(), s.goes(), s.marks()))
                                .toList()),
                new ChainSheet.Table(
                        "Marks",
                        "",
                        List.of("Mark", "On the bench", "On the airframe", "Found to", "Off"),
                        b.marks().stream()
                                .map(k -> List.of(k.name(), k.bench(), k.place(), k.sure(), k.off()))
                                .toList()));
    }
}

package fayline.app.web.lots;

import fayline.app.web.frame.Sight;
import fayline.basis.finding.Finding;
import fayline.flow.record.made.Mix;
import fayline.flow.record.stock.StockTake;
import fayline.flow.result.stock.take.LotAudit;
import fayline.method.mix.audit.RatioAuditResult;
import fayline.method.mix.audit.RatioAuditResult.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Stock-takes and what they say, in words. */
final class AuditWords {
    private final Sight sight;

    AuditWords(Sight sight) {
        this.sight = sight;
    }

    CountsView.Take take(StockTake take, List<LotAudit> audits) {
        return new CountsView.Take(
                sight.time().at(take.at()) + ", " + sight.personName(take.by()),
                "/record/entry/" + take.seq(),
                take.counts().stream()
                        .map(c -> new CountsView.Count(LotWords.link(c.lot()), c.left()))
                        .toList(),
                audits.stream()
                        .filter(a -> a.take() == take.seq())
                        .map(this::audit)
                        .toList());
    }

    private CountsView.Audit audit(LotAudit a) {
        Verdict verdict = a.result().map(RatioAuditResult::verdict).orElse(Verdict.CANNOT_TELL);
        return new CountsView.Audit(
                sight.stuffName(a.system()),
                verdict.words(),
                verdict == Verdict.FAIL,
                verdict == Verdict.PASS,
                Stream.concat(a.resinLots().stream(), a.hardenerLots().stream())
                        .map(LotWords::link)
                        .toList(),
                says(a),
                assumed(a),
                a.result().map(this::figures).orElse(List.of()),
                a.suspectMixes().stream().map(this::mix).toList(),
                a.suspectParts().stream().map(p -> LotWords.made(sight, p)).toList());
    }

    private List<String> says(LotAudit a) {
        List<String> says = new ArrayList<>();
        a.result().ifPresent(r -> says.addAll(sight.say(r.findings())));
        if (!a.uncounted().isEmpty()) {
            says.add("Not counted: " + String.join(", ", a.uncounted())
                    + ". Count every lot of a system at one time, then its mixes can be judged.");
        } else if (a.result().isEmpty()) {
            says.add("The stores hold no lot of one of its two parts: nothing can be told.");
        }
        if (!a.untold().isEmpty()) {
            says.add(a.untold().size() + (a.untold().size() == 1 ? " step" : " steps")
                    + " took it without a mix on record: "
                    + String.join("; ", a.untold().stream().map(sight::stepName).toList()) + ".");
        }
        return says;
    }

    private static List<String> assumed(LotAudit a) {
        List<String> assumed = new ArrayList<>();
        if (a.result().isPresent()) {
            assumed.add("Coverage 95 percent; a reading is known to one step of its last digit.");
            if (a.labels()) {
                assumed.add("What came was not weighed: its label may be off by what OIML R 87 tolerates [oiml-r87].");
            }
        }
        return assumed;
    }

    private List<LotView.Fact> figures(RatioAuditResult r) {
        List<LotView.Fact> facts = new ArrayList<>();
        facts.add(new LotView.Fact("Resin used in all", sight.amount(r.resinUsed())));
        facts.add(new LotView.Fact("Hardener used in all", sight.amount(r.hardenerUsed())));
        r.hardenerPer100()
                .ifPresent(
                        p -> facts.add(new LotView.Fact("Found, by mass", String.format(Locale.ROOT, "100:%.1f", p))));
        r.deviation()
                .ifPresent(d -> facts.add(new LotView.Fact(
                        "Hardener off by",
                        String.format(
                                Locale.ROOT,
                                "%+.1f \u00b1 %.1f %%",
                                d.percent(),
                                r.uncertainty().orElseThrow().percent()))));
        r.findings().stream().map(Finding::source).distinct().forEach(s -> facts.add(new LotView.Fact("Source", s)));
        return facts;
    }

    private CountsView.Mix mix(Mix m) {
        return new CountsView.Mix(
                sight.time().at(m.at()) + ", " + sight.personName(m.by()),
                m.batch().isEmpty() ? "a batch" : "batch " + m.batch(),
                LotWords.step(sight, m.step()),
                "/record/entry/" + m.seq());
    }
}

package fayline.flow.result.expand;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.result.mix.MixList;
import fayline.method.mix.batch.WayOut;
import java.util.ArrayList;
import java.util.List;

/**
 * What a scale list says about a step. A lay-up that does not fit is a caution while some way out does, each told with its
 * price; it stops the work where none does.
 */
final class MixFindings {
    private MixFindings() {}

    static List<Finding> of(String about, MixList list) {
        boolean wayOut = list.waysOut().stream().anyMatch(WayOut::possible);
        List<Finding> findings = new ArrayList<>();
        for (Finding f : list.findings()) {
            // What is merely assumed stands with the figure.
            if (f.severity() == Severity.NOTE) {
                continue;
            }
            Severity severity = f.severity() == Severity.STOP && wayOut ? Severity.CAUTION : f.severity();
            findings.add(new Finding(severity, about, f.sentence(), f.source()));
        }
        for (WayOut way : list.waysOut()) {
            String materials = way.possible() && !way.materials().isEmpty() ? " Uses " + way.materials() + "." : "";
            findings.add(new Finding(
                    Severity.NOTE, about, "Way out: " + way.sentence() + materials, "common practice, no source"));
        }
        return findings;
    }
}

package fayline.store.file;

import fayline.basis.finding.InputProblem;
import fayline.flow.project.Definition;
import fayline.store.file.rule.Draft;
import fayline.store.file.rule.able.Feasible;
import fayline.store.file.yaml.Problems;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Tells everything that is wrong with a definition folder on a day: all that {@link DefinitionReader} tells, the history, and
 * what the shop cannot do: expired lots, windows that can never be met in its hours, crews that it does not have.
 */
public final class DefinitionVerifier {
    private DefinitionVerifier() {}

    /**
     * Verifies a folder.
     *
     * @param folder the files
     * @param today the day on which lots must not be past their dates
     * @return every problem and caution, by file and line
     */
    public static List<InputProblem> verify(DefinitionFolder folder, LocalDate today) {
        Problems problems = new Problems();
        return verify(folder, DefinitionReader.draft(folder, problems), today, problems);
    }

    /**
     * Verifies a folder on its own day: what can be read of its clock and zone counts even where something else is wrong.
     *
     * @param folder the files
     * @param asked the moment asked for; empty to take the folder's own clock, else the machine's
     * @param machine the machine's moment
     * @return every problem and caution, by file and line
     */
    public static List<InputProblem> verify(DefinitionFolder folder, Optional<Instant> asked, Instant machine) {
        Problems problems = new Problems();
        Draft draft = DefinitionReader.draft(folder, problems);
        Definition readable = draft.whole();
        Instant at = asked.or(() -> readable.facts().clock()).orElse(machine);
        return verify(folder, draft, LocalDate.ofInstant(at, readable.shop().zone()), problems);
    }

    private static List<InputProblem> verify(DefinitionFolder folder, Draft draft, LocalDate today, Problems problems) {
        boolean whole = problems.stops() == 0;
        Feasible.check(draft, today, problems);
        problems.addAll(HistoryReader.read(folder, draft.whole(), whole).problems());
        return problems.sorted();
    }
}

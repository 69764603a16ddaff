package fayline.store.file;

import fayline.basis.finding.InputProblem;
import fayline.store.file.rule.Draft;
import fayline.store.file.rule.able.Feasible;
import fayline.store.file.yaml.Problems;
import java.time.LocalDate;
import java.util.List;

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
        Draft draft = DefinitionReader.draft(folder, problems);
        boolean whole = problems.stops() == 0;
        Feasible.check(draft, today, problems);
        problems.addAll(HistoryReader.read(folder, draft.whole(), whole).problems());
        return problems.sorted();
    }
}

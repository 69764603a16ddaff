package fayline.store.file;

import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import fayline.flow.project.Definition;
import java.util.List;
import java.util.Optional;

/**
 * What became of a definition folder.
 *
 * @param definition the definition; there only if no problem refuses it
 * @param problems every problem and caution, by file and line
 */
public record DefinitionRead(Optional<Definition> definition, List<InputProblem> problems) {
    /** Copies the list. */
    public DefinitionRead {
        problems = List.copyOf(problems);
    }

    /** The problems that refuse the definition. */
    public List<InputProblem> stops() {
        return problems.stream().filter(p -> p.severity() == Severity.STOP).toList();
    }
}

package fayline.store.file;

import fayline.flow.project.Definition;
import fayline.store.file.rule.Draft;
import fayline.store.file.rule.Structure;
import fayline.store.file.yaml.Problems;
import java.util.Optional;

/**
 * Reads a definition folder and tells everything that is wrong with it at once: form, units, references, trees, orders. What
 * the shop can do in its hours, and what has expired, is asked of {@link DefinitionVerifier}.
 */
public final class DefinitionReader {
    private DefinitionReader() {}

    /**
     * Reads a folder.
     *
     * @param folder the files
     * @return the definition, if nothing refuses it, and every problem
     */
    public static DefinitionRead read(DefinitionFolder folder) {
        Problems problems = new Problems();
        Draft draft = draft(folder, problems);
        Optional<Definition> definition = problems.stops() == 0 ? Optional.of(draft.whole()) : Optional.empty();
        return new DefinitionRead(definition, problems.sorted());
    }

    /** Reads everything that can be read. */
    static Draft draft(DefinitionFolder folder, Problems problems) {
        problems.addAll(folder.faults());
        Draft draft = new DraftReader(folder, problems).read();
        Structure.check(draft, problems);
        return draft;
    }
}

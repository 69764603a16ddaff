package fayline.app.usecase;

import fayline.basis.finding.InputProblem;
import fayline.flow.project.Definition;
import fayline.store.file.DefinitionFolder;
import fayline.store.file.DefinitionRead;
import fayline.store.file.DefinitionReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a definition from a bare folder or from texts; writes nothing. */
public final class ReadDefinition {
    private ReadDefinition() {}

    /**
     * What became of it.
     *
     * @param definition the definition, if nothing refuses it
     * @param problems every problem and caution, by file and line
     */
    public record Outcome(Optional<Definition> definition, List<InputProblem> problems) {
        /** Copies the list. */
        public Outcome {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads a folder.
     *
     * @param folder the folder
     * @throws IOException if it cannot be read
     */
    public static Outcome from(Path folder) throws IOException {
        return outcome(DefinitionFolder.from(folder));
    }

    /** Reads texts by path. */
    public static Outcome of(Map<String, String> texts) {
        return outcome(DefinitionFolder.of(texts));
    }

    private static Outcome outcome(DefinitionFolder folder) {
        DefinitionRead read = DefinitionReader.read(folder);
        return new Outcome(read.definition(), read.problems());
    }
}

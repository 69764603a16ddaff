package fayline.app.usecase;

import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import fayline.store.file.DefinitionFolder;
import fayline.store.file.DefinitionVerifier;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Tells everything that is wrong with a definition folder; writes nothing. */
public final class VerifyDefinition {
    private VerifyDefinition() {}

    /**
     * What was found.
     *
     * @param problems every problem and caution, by file and line
     */
    public record Report(List<InputProblem> problems) {
        /** Copies the list. */
        public Report {
            problems = List.copyOf(problems);
        }

        /** How many refuse the definition. */
        public long stops() {
            return problems.stream().filter(p -> p.severity() == Severity.STOP).count();
        }

        /** How many are cautions. */
        public long cautions() {
            return problems.size() - stops();
        }
    }

    /**
     * Verifies a folder.
     *
     * @param folder the folder
     * @param now the moment asked for; empty to take the project's own clock, else the machine's
     * @param machine the machine's moment
     * @throws IOException if the folder cannot be read
     */
    public static Report verify(Path folder, Optional<Instant> now, Instant machine) throws IOException {
        return new Report(DefinitionVerifier.verify(DefinitionFolder.from(folder), now, machine));
    }
}

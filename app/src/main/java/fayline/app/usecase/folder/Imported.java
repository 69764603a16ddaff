package fayline.app.usecase.folder;

import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import java.util.List;

/**
 * What became of a folder that was read in.
 *
 * @param project the project; empty where the folder could not be read
 * @param files how many files were saved or removed
 * @param events how many events of its history were new
 * @param problems every problem and caution; with a problem that refuses nothing was recorded
 * @param sentence what happened, in a sentence
 */
public record Imported(String project, int files, int events, List<InputProblem> problems, String sentence) {
    /** Copies the list. */
    public Imported {
        problems = List.copyOf(problems);
    }

    /** Whether it was taken. */
    public boolean taken() {
        return problems.stream().noneMatch(p -> p.severity() == Severity.STOP);
    }
}

package fayline.app.usecase.shop;

import fayline.basis.finding.InputProblem;
import java.util.List;

/** A definition that cannot be read; carries every problem. */
public final class UnreadableDefinitionException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<InputProblem> problems;

    /**
     * For a definition.
     *
     * @param what the folder or project
     * @param problems every problem
     */
    public UnreadableDefinitionException(String what, List<InputProblem> problems) {
        super(what + " cannot be read: " + problems.size() + (problems.size() == 1 ? " problem" : " problems"));
        this.problems = List.copyOf(problems);
    }

    /** Every problem. */
    public List<InputProblem> problems() {
        return problems;
    }
}

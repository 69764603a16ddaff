package fayline.app.usecase.calc;

import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import java.util.List;
import java.util.stream.Collectors;

/** Inputs that a topic cannot take; carries every problem found, each naming its field. */
public final class CalcInputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<InputProblem> problems;

    /** Carries the problems; the message says them one a line. */
    public CalcInputException(List<InputProblem> problems) {
        super(problems.stream().map(InputProblem::sentence).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** One problem with one field. */
    public static CalcInputException of(String field, String found, String expected) {
        return new CalcInputException(List.of(problem(field, found, expected, "")));
    }

    static InputProblem problem(String field, String found, String expected, String suggestion) {
        return new InputProblem(Severity.STOP, "", 0, field, found, expected, suggestion);
    }

    /** What is wrong, in the order found. */
    public List<InputProblem> problems() {
        return problems;
    }
}

package fayline.app.usecase.shop;

import fayline.basis.finding.Finding;
import fayline.basis.finding.InputProblem;
import java.util.List;

/**
 * What became of something that was sent.
 *
 * @param kind whether it stands in the record
 * @param seq its place there; 0 where it does not stand there
 * @param sentence what happened, in a sentence for the sender
 * @param problems what was wrong with it, where it was refused
 * @param cautions what to look at, though it was recorded
 * @param meanwhile what others changed of the same since the sender had looked, where it was refused for that
 */
public record Outcome(
        Kind kind,
        long seq,
        String sentence,
        List<InputProblem> problems,
        List<Finding> cautions,
        List<Meanwhile> meanwhile) {
    /** Copies the lists. */
    public Outcome {
        problems = List.copyOf(problems);
        cautions = List.copyOf(cautions);
        meanwhile = List.copyOf(meanwhile);
    }

    /** Where nobody else changed the same. */
    public Outcome(Kind kind, long seq, String sentence, List<InputProblem> problems, List<Finding> cautions) {
        this(kind, seq, sentence, problems, cautions, List.of());
    }

    /** A refusal because others changed the same since the sender had looked; at least one. */
    public static Outcome overtaken(List<Meanwhile> meanwhile) {
        return new Outcome(
                Kind.REFUSED,
                0,
                "Nothing was changed: somebody else changed this since you looked.",
                List.of(),
                List.of(),
                meanwhile);
    }

    /** What can become of it. */
    public enum Kind {
        /** It stands in the record now. */
        RECORDED,
        /** It stood there before. */
        ALREADY,
        /** It was not taken; the sentence says why. */
        REFUSED,
        /** Nobody knows; send it again under the same id. */
        UNKNOWN,
        /** There was nothing to record. */
        NOTHING
    }

    /** Whether it stands in the record. */
    public boolean stands() {
        return kind == Kind.RECORDED || kind == Kind.ALREADY;
    }

    /** It stood in the record before. */
    public static Outcome already(long seq) {
        return new Outcome(Kind.ALREADY, seq, "Was recorded before, as entry " + seq + ".", List.of(), List.of());
    }

    /** A refusal with its reason. */
    public static Outcome refused(String sentence) {
        return new Outcome(Kind.REFUSED, 0, sentence, List.of(), List.of());
    }

    /** A refusal because of what was given. */
    public static Outcome refused(String sentence, List<InputProblem> problems) {
        return new Outcome(Kind.REFUSED, 0, sentence, problems, List.of());
    }

    /** Nothing to record. */
    public static Outcome nothing(String sentence) {
        return new Outcome(Kind.NOTHING, 0, sentence, List.of(), List.of());
    }

    /** The same with a further sentence. */
    public Outcome saying(String more) {
        return new Outcome(kind, seq, sentence + " " + more, problems, cautions, meanwhile);
    }

    /** The same with cautions. */
    public Outcome with(List<Finding> found) {
        return new Outcome(kind, seq, sentence, problems, found, meanwhile);
    }
}

package fayline.basis.finding;

import java.util.Comparator;

/**
 * One thing wrong with what was given, told so that it can be mended: where, what was found, what was expected, what to do.
 *
 * @param severity {@link Severity#STOP} refuses the input, {@link Severity#CAUTION} lets it pass
 * @param file the file, relative to the definition folder; empty where there is none
 * @param line the line, counted from 1; 0 where it is unknown
 * @param key the key path, as {@code parts[3].mould}
 * @param found what was found
 * @param expected what was expected
 * @param suggestion what to do; empty where nothing can be guessed
 */
public record InputProblem(
        Severity severity, String file, int line, String key, String found, String expected, String suggestion)
        implements Comparable<InputProblem> {
    private static final Comparator<InputProblem> BY_PLACE = Comparator.comparing(InputProblem::file)
            .thenComparingInt(InputProblem::line)
            .thenComparing(InputProblem::key)
            .thenComparing(InputProblem::found);

    /** The problem in one line: place, key, found, expected, suggestion. */
    public String sentence() {
        StringBuilder s = new StringBuilder();
        if (!file.isEmpty()) {
            s.append(file);
            if (line > 0) {
                s.append(':').append(line);
            }
            s.append(": ");
        }
        if (severity == Severity.CAUTION) {
            s.append("caution: ");
        }
        if (!key.isEmpty()) {
            s.append(key).append(": ");
        }
        s.append("found ").append(found).append(", expected ").append(expected);
        if (!suggestion.isEmpty()) {
            s.append("; ").append(suggestion);
        }
        return s.toString();
    }

    @Override
    public int compareTo(InputProblem other) {
        return BY_PLACE.compare(this, other);
    }
}

package fayline.app.bench.cases;

import fayline.app.usecase.cases.RawFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Comma-separated tables whose cells {@code inputs} and {@code expected} are pairs {@code name [unit]=value} parted by
 * semicolons, a value being a word or numbers parted by blanks, and whose {@code tolerance} is {@code rel x}, {@code abs x}
 * or {@code exact} for the whole row, or such parts each led by a name.
 */
final class PairLayout implements Layout {
    private static final List<String> COLUMNS = List.of("case_id", "title", "inputs", "expected", "tolerance");
    /** A name may quote a formula with an equals sign, so that only a sign after the bracket ends it. */
    private static final Pattern PAIR = Pattern.compile("\\s*(.+?) \\[([^\\]]*)\\]=(.*)", Pattern.DOTALL);

    private static final Pattern ALLOWED =
            Pattern.compile("\\s*(?:(.+?):? )?(?:(rel|abs) ([0-9.]+(?:[eE][-+]?[0-9]+)?)(?: (.+?))?|(exact))\\s*");

    @Override
    public Optional<CaseFile> read(RawFile file) {
        return CaseRows.of(file, COLUMNS).map(rows -> {
            List<CheckCase> cases = new ArrayList<>();
            for (CaseRows.Row row : rows.rows()) {
                cases.add(new PairCase(
                        row.id(), row.cell("title"), pairs(row, "inputs"), pairs(row, "expected"), allowances(row)));
            }
            return new CaseFile(file.path(), file.name(), cases);
        });
    }

    private static List<Pair> pairs(CaseRows.Row row, String column) {
        List<Pair> pairs = new ArrayList<>();
        for (String part : row.cell(column).split(";")) {
            Matcher m = PAIR.matcher(part);
            if (!m.matches()) {
                throw new UnreadableCasesException("case " + row.id() + ", " + column + ": found \"" + part.trim()
                        + "\", expected name [unit]=value");
            }
            pairs.add(new Pair(
                    m.group(1),
                    m.group(2),
                    m.group(3).trim(),
                    numbers(m.group(3).trim())));
        }
        return pairs;
    }

    private static List<Double> numbers(String value) {
        List<Double> all = new ArrayList<>();
        for (String word : value.split("\\s+")) {
            try {
                all.add(Double.valueOf(word));
            } catch (NumberFormatException e) {
                return List.of();
            }
        }
        return all;
    }

    private static List<Allowance> allowances(CaseRows.Row row) {
        List<Allowance> all = new ArrayList<>();
        for (String part : row.cell("tolerance").split(";")) {
            Matcher m = ALLOWED.matcher(part);
            if (!m.matches()) {
                throw new UnreadableCasesException("case " + row.id() + ", tolerance: found \"" + part.trim()
                        + "\", expected rel x, abs x or exact, led by a name where it is for some outputs only");
            }
            boolean exact = m.group(5) != null;
            OptionalDouble x = exact ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(m.group(3)));
            all.add(new Allowance(
                    m.group(1) == null ? "" : m.group(1),
                    exact ? "exact" : m.group(2),
                    x,
                    m.group(4) == null ? "" : m.group(4)));
        }
        return all;
    }

    /**
     * A named value.
     *
     * @param name its name, which also says the order of several numbers
     * @param unit its unit
     * @param text the value as written
     * @param numbers its numbers; empty for a word
     */
    record Pair(String name, String unit, String text, List<Double> numbers) {
        Pair {
            numbers = List.copyOf(numbers);
        }
    }

    /**
     * How close is close enough.
     *
     * @param name the outputs it is for: those whose name holds it; empty for all
     * @param kind rel, abs or exact
     * @param x how close
     * @param unit the unit of an absolute one, or what it is counted in
     */
    record Allowance(String name, String kind, OptionalDouble x, String unit) {}
}

package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.TextNode;
import fayline.app.bench.cases.PairLayout.Allowance;
import fayline.app.bench.cases.PairLayout.Pair;
import fayline.app.bench.cases.Subject.Reckoned;
import fayline.app.bench.cases.Verdict.Difference;
import fayline.app.bench.cases.Verdict.Outcome;
import fayline.app.usecase.calc.Json;
import fayline.basis.units.UnitOfMeasure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A case of pairs. A name that begins with {@code range} gives a low and a high limit between which the answer must lie; one
 * that begins with {@code reference FE} is there to read and is never asked. A zero in a list is held to a millionth of the
 * list's largest number, a zero alone to 1e-9.
 */
record PairCase(String id, String title, List<Pair> given, List<Pair> expected, List<Allowance> allowances)
        implements CheckCase {
    private static final String RANGE = "range ";
    private static final String LIMITS = ", low high";
    private static final String TO_READ = "reference FE";
    private static final String BY_SYMMETRY = "zero by symmetry";
    private static final double OF_LARGEST = 1e-6;
    private static final double LONE_ZERO = 1e-9;

    PairCase {
        given = List.copyOf(given);
        expected = List.copyOf(expected);
        allowances = List.copyOf(allowances);
    }

    @Override
    public Verdict judge(CaseFile file) {
        Set<String> asked = new LinkedHashSet<>();
        expected.forEach(p -> asked(p).ifPresent(asked::add));
        Subject.Answer answer = PairSubjects.answer(new PairQuestion(title, given, asked));
        if (!answer.why().isEmpty()) {
            return new Verdict(file.path(), id, Outcome.NOT_COVERED, List.of(), answer.why());
        }
        List<Difference> differences = new ArrayList<>();
        for (Pair p : expected) {
            asked(p).ifPresent(name -> difference(p, told(answer, name)).ifPresent(differences::add));
        }
        return new Verdict(file.path(), id, differences.isEmpty() ? Outcome.HOLDS : Outcome.DIFFERS, differences, "");
    }

    private static Reckoned told(Subject.Answer answer, String name) {
        Reckoned found = answer.values().get(name);
        if (found == null) {
            throw new IllegalStateException("the subject answered and left out " + name);
        }
        return found;
    }

    /** What is asked of a pair: nothing where it is there to read. */
    private static Optional<String> asked(Pair p) {
        if (p.name().startsWith(TO_READ)) {
            return Optional.empty();
        }
        return Optional.of(
                p.name().startsWith(RANGE) ? p.name().substring(RANGE.length()).replace(LIMITS, "") : p.name());
    }

    private Optional<Difference> difference(Pair p, Reckoned found) {
        if (p.name().startsWith(RANGE)) {
            return within(p, found);
        }
        if (found.value() instanceof Boolean truth) {
            String word = truth ? "yes" : "no";
            return word.equals(p.text())
                    ? Optional.empty()
                    : Optional.of(new Difference(p.name(), p.text(), word, p.unit()));
        }
        return Comparison.of(new Expectation(p.name(), value(p), PairQuestion.unit(p.unit()), tolerance(p)), found);
    }

    private static Optional<Difference> within(Pair p, Reckoned found) {
        UnitOfMeasure unit = UnitOfMeasure.parse(PairQuestion.unit(p.unit())).orElse(UnitOfMeasure.ONE);
        double low = p.numbers().get(0);
        double high = p.numbers().get(1);
        if (found.value() instanceof Double si
                && unit.dimension().equals(found.unit().dimension())
                && unit.fromSi(si) >= low
                && unit.fromSi(si) <= high) {
            return Optional.empty();
        }
        String shown = found.value() instanceof Double si
                ? String.format(Locale.ROOT, "%.10g", unit.fromSi(si))
                : String.valueOf(found.value());
        return Optional.of(new Difference(p.name(), low + " to " + high, shown, p.unit()));
    }

    private static JsonNode value(Pair p) {
        if (p.numbers().isEmpty()) {
            return TextNode.valueOf(p.text());
        }
        if (p.numbers().size() == 1) {
            return DoubleNode.valueOf(p.numbers().get(0));
        }
        ArrayNode all = Json.array();
        p.numbers().forEach(all::add);
        return all;
    }

    private Tolerance tolerance(Pair p) {
        OptionalDouble none = OptionalDouble.empty();
        OptionalDouble zero = p.numbers().contains(0.0) ? OptionalDouble.of(forZero(p)) : none;
        Optional<Allowance> a = allowance(p.name());
        if (a.isEmpty() || "exact".equals(a.get().kind())) {
            return new Tolerance(none, none, OptionalDouble.of(0));
        }
        double x = a.get().x().orElse(0);
        Optional<UnitOfMeasure> unit = UnitOfMeasure.parse(PairQuestion.unit(p.unit()));
        if ("rel".equals(a.get().kind()) && unit.map(u -> u.offset() != 0).orElse(false)) {
            // A share of a temperature is a share of the absolute one, wherever the scale has its zero.
            double absolute = unit.orElseThrow().toSi(p.numbers().get(0))
                    / unit.orElseThrow().factor();
            return new Tolerance(OptionalDouble.of(x * absolute), none, none);
        }
        return "abs".equals(a.get().kind())
                ? new Tolerance(OptionalDouble.of(x * inUnit(a.get().unit(), p.unit())), none, none)
                : new Tolerance(zero, none, OptionalDouble.of(x));
    }

    private double forZero(Pair p) {
        boolean symmetric = allowances.stream().anyMatch(a -> a.name().contains(BY_SYMMETRY));
        double largest = (symmetric ? expected : List.of(p))
                .stream()
                        .flatMap(e -> e.numbers().stream())
                        .mapToDouble(Math::abs)
                        .max()
                        .orElse(0);
        return largest == 0 ? LONE_ZERO : OF_LARGEST * largest;
    }

    /** The allowance for an output: the longest name that it begins with, else that it holds, else the one for all. */
    private Optional<Allowance> allowance(String output) {
        return allowances.stream()
                .filter(a -> output.contains(a.name()))
                .max(Comparator.comparing((Allowance a) -> output.startsWith(a.name()))
                        .thenComparing(a -> a.name().length()));
    }

    private static double inUnit(String from, String to) {
        Optional<UnitOfMeasure> a = from.isEmpty() ? Optional.empty() : UnitOfMeasure.parse(PairQuestion.unit(from));
        Optional<UnitOfMeasure> b = UnitOfMeasure.parse(PairQuestion.unit(to));
        return a.isPresent() && b.isPresent() ? a.get().factor() / b.get().factor() : 1;
    }
}

package fayline.app.bench.cases;

import fayline.app.bench.cases.Subject.Reckoned;
import fayline.app.bench.cases.Verdict.Difference;
import fayline.app.bench.cases.Verdict.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A case of named quantities.
 *
 * @param id the case
 * @param question what it gives and asks
 * @param expectations what it expects, one for each quantity asked
 */
record QuantityCase(String id, Question question, List<Expectation> expectations) implements CheckCase {
    QuantityCase {
        expectations = List.copyOf(expectations);
    }

    @Override
    public Verdict judge(CaseFile file) {
        Subject.Answer answer = Subjects.answer(file.name(), question);
        if (!answer.why().isEmpty()) {
            return new Verdict(file.path(), id, Outcome.NOT_COVERED, List.of(), answer.why());
        }
        List<Difference> differences = compare(answer.values());
        return new Verdict(file.path(), id, differences.isEmpty() ? Outcome.HOLDS : Outcome.DIFFERS, differences, "");
    }

    private List<Difference> compare(Map<String, Reckoned> reckoned) {
        List<Difference> all = new ArrayList<>();
        for (Expectation e : expectations) {
            Reckoned r = reckoned.get(e.name());
            if (r == null) {
                throw new IllegalStateException("the subject answered and left out " + e.name());
            }
            Comparison.of(e, r).ifPresent(all::add);
        }
        return all;
    }
}

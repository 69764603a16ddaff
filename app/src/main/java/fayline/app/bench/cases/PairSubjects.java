package fayline.app.bench.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The subjects that answer cases of pairs: the first that knows every word and can answer does. */
final class PairSubjects {
    private static final List<PairSubject> ALL = Stream.of(PanelPairs.all(), JointPairs.all(), LaminatePairs.all())
            .flatMap(List::stream)
            .toList();

    private PairSubjects() {}

    static Subject.Answer answer(PairQuestion question) {
        List<String> reasons = new ArrayList<>();
        for (PairSubject s : ALL) {
            if (s.knows(question)) {
                Subject.Answer a = s.answer(question);
                if (a.why().isEmpty()) {
                    return a;
                }
                reasons.add(a.why());
            }
        }
        return Subject.Answer.notCovered(
                reasons.isEmpty()
                        ? "no subject here answers "
                                + question.asked().stream().findFirst().orElse("this")
                        : reasons.get(0));
    }
}

package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.node.TextNode;
import fayline.app.bench.cases.Vocabulary.Choice;
import fayline.app.bench.cases.Vocabulary.NumberInName;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.topic.Topics;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The subjects that answer today. A file of a subject's name is that subject's; any other file (mixed tables, tables under a
 * name of their own) is answered by the first subject that knows every word given and answers every word asked.
 */
final class Subjects {
    private static final List<TopicSubject> ALL = List.of(
            subject(
                    "cure",
                    Map.of(
                            "times", "time",
                            "Tg_minus_Tcure_at_stall", "stallAbove"),
                    Set.of("resin", "constants"),
                    Map.of(
                            Pattern.compile("time_at_alpha_(\\d+(?:p\\d+)?)"),
                            new NumberInName("timeAtAlpha", "alphaLevel", "-")),
                    Map.of(),
                    List.of("cure", "potlife")),
            subject(
                    "climate",
                    Map.of(),
                    Set.of(),
                    Map.of(),
                    // Tables of saturation pressure are made with the finer formula, and formulas must never be mixed
                    // in a row.
                    Map.of("saturation", new Choice("formula", TextNode.valueOf("buck"))),
                    List.of("climate")),
            subject(
                    "mixes",
                    Map.of(),
                    Set.of(),
                    Map.of(
                            Pattern.compile("pot_life_at_(\\d+(?:p\\d+)?)_g"),
                            new NumberInName("potLife", "mixedMass", "g")),
                    Map.of(),
                    List.of("quantities", "mix", "potlife", "totals")),
            subject("bagging", Map.of(), Set.of(), Map.of(), Map.of(), List.of("bag")),
            new TopicSubject(
                    new Vocabulary("vacuum", Map.of(), Set.of(), Map.of(), Map.of(), Map.of("max_drop", "minutes")),
                    List.of(Topics.ofTerms("vacuum"))),
            subject("units", Map.of(), Set.of(), Map.of(), Map.of(), List.of("units")));

    /** Subjects whose words need more than a vocabulary. */
    private static final List<Subject> OTHERS = List.of(
            new BudgetSubject(),
            new ChartSubject(),
            new LearningSubject(),
            new NetSubject(),
            new ProofSubject(),
            new ToleranceFactorSubject(),
            new TubeSubject(subject("tube", Map.of(), Set.of(), Map.of(), Map.of(), List.of("tube"))),
            new BeltSubject(subject("belt", Map.of(), Set.of(), Map.of(), Map.of(), List.of("drive"))),
            new StackSubject(subject("tolerance_stack", Map.of(), Set.of(), Map.of(), Map.of(), List.of("stack"))));

    private Subjects() {}

    static Subject.Answer answer(String fileName, Question question) {
        for (TopicSubject s : ALL) {
            if (s.isOf(fileName)) {
                return s.answer(question);
            }
        }
        for (Subject s : OTHERS) {
            if (s.isOf(fileName)) {
                return s.answer(question);
            }
        }
        List<String> reasons = new ArrayList<>();
        for (TopicSubject s : ALL) {
            if (s.knows(question)) {
                Subject.Answer a = s.answer(question);
                if (a.why().isEmpty()) {
                    return a;
                }
                reasons.add(a.why());
            }
        }
        return Subject.Answer.notCovered(
                reasons.isEmpty() ? "no subject here knows all of these quantities" : reasons.get(0));
    }

    private static TopicSubject subject(
            String file,
            Map<String, String> terms,
            Set<String> passedOver,
            Map<Pattern, NumberInName> patterns,
            Map<String, Choice> choices,
            List<String> topics) {
        List<RelationTopic> answering = new ArrayList<>();
        for (String t : topics) {
            answering.add(Topics.ofTerms(t));
        }
        return new TopicSubject(new Vocabulary(file, terms, passedOver, patterns, choices, Map.of()), answering);
    }
}

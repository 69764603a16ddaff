package fayline.app.bench.cases;

import fayline.basis.units.UnitOfMeasure;
import java.util.List;
import java.util.Map;

/** What answers questions of one field: maps the words of the tables to a topic of {@code fayline calc}. */
interface Subject {
    /** Whether the subject is that of a file. */
    boolean isOf(String fileName);

    /** Answers everything asked, or says why it cannot. */
    Answer answer(Question question);

    /**
     * What came of a question.
     *
     * @param values every quantity asked, by its name; empty if the question is not covered
     * @param why why it is not covered; empty if it is
     */
    record Answer(Map<String, Reckoned> values, String why) {
        public Answer {
            values = Map.copyOf(values);
        }

        static Answer notCovered(String why) {
            return new Answer(Map.of(), why);
        }
    }

    /**
     * A quantity reckoned.
     *
     * @param value in SI: a double, a truth, a word or a list
     * @param unit the unit in which the topic answers it; tells what it measures
     */
    record Reckoned(Object value, UnitOfMeasure unit) {
        boolean isNumeric() {
            Object v = value;
            while (v instanceof List<?> items && !items.isEmpty()) {
                v = items.get(0);
            }
            return v instanceof Double;
        }
    }
}

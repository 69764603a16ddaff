package fayline.app.usecase.calc.system;

import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.RelationTopic;
import java.util.List;
import java.util.function.Supplier;

/** The topics of systems, in the order in which they are listed. */
public final class SystemTopics {
    private static final List<RelationTopic> ALL = List.of(TubeTopic.topic(), DriveTopic.topic());

    private SystemTopics() {}

    /** All of them. */
    public static List<RelationTopic> all() {
        return ALL;
    }

    /** What a method answers; where it refuses its inputs, the rule they break. */
    static <T> T refusing(Supplier<T> answer) {
        try {
            return answer.get();
        } catch (IllegalArgumentException e) {
            throw new NotCoveredException(String.valueOf(e.getMessage()));
        }
    }
}

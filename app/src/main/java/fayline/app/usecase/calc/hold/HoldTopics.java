package fayline.app.usecase.calc.hold;

import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.RelationTopic;
import java.util.List;
import java.util.function.Supplier;

/** The topics that ask whether something holds, in the order in which they are listed. */
public final class HoldTopics {
    private static final List<RelationTopic> ALL = List.of(
            AtmosphereTopic.topic(),
            PlateTopic.topic(),
            SandwichTopic.topic(),
            AllowableTopic.topic(),
            JointTopic.topic(),
            JointHeatTopic.topic());

    private HoldTopics() {}

    /** All of them. */
    public static List<RelationTopic> all() {
        return ALL;
    }

    /** What a calculator answers; where it refuses its inputs, the rule they break. */
    static <T> T refusing(Supplier<T> answer) {
        try {
            return answer.get();
        } catch (IllegalArgumentException e) {
            throw new NotCoveredException(String.valueOf(e.getMessage()));
        }
    }
}

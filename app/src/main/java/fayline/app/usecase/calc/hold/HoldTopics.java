package fayline.app.usecase.calc.hold;

import fayline.app.usecase.calc.RelationTopic;
import java.util.List;

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
}

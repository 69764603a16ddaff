package fayline.app.usecase.calc.system;

import fayline.app.usecase.calc.RelationTopic;
import java.util.List;

/** The topics of systems, in the order in which they are listed. */
public final class SystemTopics {
    private static final List<RelationTopic> ALL = List.of(TubeTopic.topic(), DriveTopic.topic());

    private SystemTopics() {}

    /** All of them. */
    public static List<RelationTopic> all() {
        return ALL;
    }
}

package fayline.app.usecase.calc.laminate;

import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.RelationTopic;
import java.util.List;

/** The topics about laminates. */
public final class LaminateTopics {
    private LaminateTopics() {}

    /** Topics that read a form. */
    public static List<CalcTopic> ofForms() {
        return List.of(new LaminaTopic(), new LaminateTopic(), new StrengthTopic());
    }

    /** Topics of terms and relations. */
    public static List<RelationTopic> ofTerms() {
        return List.of(MicromechanicsTopic.topic(), SpringInTopic.topic(), AsMadeTopic.topic());
    }
}

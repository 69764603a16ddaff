package fayline.app.usecase.calc.fit;

import fayline.app.usecase.calc.CalcTopic;
import java.util.ArrayList;
import java.util.List;

/** The topics of fit-up, in the order in which they are listed. */
public final class FitTopics {
    private FitTopics() {}

    /** All of them. */
    public static List<CalcTopic> all() {
        List<CalcTopic> all = new ArrayList<>();
        all.add(OutlineTopic.topic());
        all.add(ReadingTopic.topic());
        all.add(TrimTopic.trim());
        all.add(TrimTopic.buildUp());
        all.add(ShimTopic.topic());
        all.add(MirrorTopic.topic());
        all.addAll(MoveTopics.all());
        all.addAll(MoveAimTopics.all());
        all.addAll(SpaceTopics.all());
        all.addAll(IndexTopics.all());
        all.add(MonteCarloTopic.topic());
        all.add(AsBuiltTopic.topic());
        all.add(ChainTopic.topic());
        all.addAll(HeatTopics.all());
        all.addAll(FrameTopics.all());
        all.add(TrialTopic.topic());
        return List.copyOf(all);
    }
}

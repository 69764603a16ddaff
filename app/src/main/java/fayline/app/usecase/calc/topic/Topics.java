package fayline.app.usecase.calc.topic;

import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.fit.FitTopics;
import fayline.app.usecase.calc.hold.HoldTopics;
import fayline.app.usecase.calc.laminate.LaminateTopics;
import fayline.app.usecase.calc.system.SystemTopics;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every topic there is. */
public final class Topics {
    private static final List<RelationTopic> OF_TERMS = Stream.of(
                    ownTerms(),
                    HoldTopics.all().stream(),
                    LaminateTopics.ofTerms().stream(),
                    SystemTopics.all().stream())
            .flatMap(s -> s)
            .toList();

    private static Stream<RelationTopic> ownTerms() {
        return Stream.of(
                CureTopic.topic(),
                PotLifeTopic.topic(),
                ClimateTopic.topic(),
                QuantitiesTopic.topic(),
                MixTopic.topic(),
                MixAuditTopic.topic(),
                BagTopic.topic(),
                VacuumTopic.topic(),
                AirfoilTopic.topic(),
                StackTopic.topic(),
                ForecastTopic.topic(),
                UnitsTopic.topic());
    }

    private Topics() {}

    /** The topics, in the order in which they are listed. */
    public static List<CalcTopic> all() {
        List<CalcTopic> all = new ArrayList<>(ofTerms());
        all.add(new UncertaintyTopic());
        all.add(new ChartTopic());
        all.add(new LearningTopic());
        all.add(new NetTopic());
        all.add(new ProofTopic());
        all.addAll(LaminateTopics.ofForms());
        all.addAll(FitTopics.all());
        all.add(new PlanAuditTopic());
        return List.copyOf(all);
    }

    /** The topics that are made of terms and relations. */
    public static List<RelationTopic> ofTerms() {
        return OF_TERMS;
    }

    /** A topic of terms and relations by its name; {@code totals} is how a whole mix follows from quantities. */
    public static RelationTopic ofTerms(String name) {
        return Stream.concat(ofTerms().stream(), Stream.of(MixTopic.totals()))
                .filter(t -> t.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no topic of terms is named " + name));
    }

    /** The names, for messages. */
    public static String names() {
        return all().stream().map(CalcTopic::name).collect(Collectors.joining(", "));
    }

    /**
     * The topic of a name.
     *
     * @throws CalcInputException if there is none
     */
    public static CalcTopic named(String name) {
        return all().stream()
                .filter(t -> t.name().equals(name))
                .findFirst()
                .orElseThrow(() -> CalcInputException.of("topic", "\"" + name + "\"", "one of " + names()));
    }
}

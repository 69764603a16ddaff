package fayline.app.usecase.view;

import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Made;
import fayline.flow.project.shop.Person;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sentences of the plan, which know things by their ids, in the names that people use. */
public final class SaidByName {
    private static final Pattern STEP_ID =
            Pattern.compile("[a-z0-9][a-z0-9-]*/[a-z0-9][a-z0-9-]*/\\d+/[a-z0-9][a-z0-9-]*");

    /** A word with a hyphen, or any after "of": what no sentence of ours holds but as an id. */
    private static final Pattern OTHER_ID =
            Pattern.compile("(?<= of )[a-z0-9-]+|(?<![\\w/-])[a-z0-9]+(?:-[a-z0-9]+)+(?![\\w/-])");

    /** Whom the plan does not know it quotes. */
    private static final Pattern QUOTED_ID = Pattern.compile("\"([a-z0-9][a-z0-9-]*)\"");

    private final Definition definition;
    private final Map<String, WorkStep> works = new HashMap<>();

    /** Names of a shop and its project. */
    public SaidByName(ShopView view) {
        this(view.definition(), view.work());
    }

    /** Names of a project and of some work. */
    public SaidByName(Definition definition, Work work) {
        this.definition = definition;
        work.steps().forEach(s -> works.putIfAbsent(s.id(), s));
    }

    /** A sentence with ids of steps, people, parts, joints and stuff replaced by what people call them. */
    public String named(String sentence) {
        String people = QUOTED_ID
                .matcher(sentence)
                .replaceAll(m -> Matcher.quoteReplacement(definition
                        .shop()
                        .people()
                        .find(m.group(1))
                        .map(Person::name)
                        .orElse(m.group())));
        String steps = STEP_ID.matcher(people)
                .replaceAll(m -> Matcher.quoteReplacement(
                        works.containsKey(m.group()) ? "\"" + stepName(m.group()) + "\"" : m.group()));
        return OTHER_ID.matcher(steps).replaceAll(m -> Matcher.quoteReplacement(stuffName(m.group())));
    }

    /** A step's title and what it is done on; its id where there is no such step. */
    public String stepName(String id) {
        return Optional.ofNullable(works.get(id))
                .map(s -> s.title() + ", " + made(s.made()).map(Made::name).orElse(s.made()))
                .orElse(id);
    }

    /** A part or joint. */
    public Optional<Made> made(String id) {
        Optional<Made> part = definition.parts().find(id).map(p -> p);
        return part.isPresent() ? part : definition.joints().find(id).map(j -> j);
    }

    /** A part, joint, material or resin system. */
    private String stuffName(String id) {
        return made(id).map(Made::name)
                .or(() -> definition.materials().find(id).map(m -> m.name()))
                .or(() -> definition.systems().find(id).map(s -> s.name()))
                .orElse(id);
    }
}

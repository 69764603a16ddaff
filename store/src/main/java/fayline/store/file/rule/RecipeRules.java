package fayline.store.file.rule;

import fayline.flow.card.Caution;
import fayline.flow.card.Cautions;
import fayline.flow.project.recipe.Recipe;
import fayline.flow.project.recipe.RecipeStep;
import fayline.store.file.kind.Kind;
import fayline.store.file.yaml.Nearest;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What must hold within one recipe. */
final class RecipeRules {
    /** The parameter that a joint fills in by itself. */
    static final String ADHESIVE = "adhesive";

    private static final Pattern WITH = Pattern.compile("\\bwith\\.([a-z0-9]+(?:-[a-z0-9]+)*)");
    private final Draft d;
    private final Placed<Recipe> recipe;
    private final Problems problems;
    private final List<String> steps;
    private final List<String> parameters;

    RecipeRules(Draft draft, Placed<Recipe> recipe, Problems problems) {
        this.d = draft;
        this.recipe = recipe;
        this.problems = problems;
        this.steps = recipe.value().steps().stream().map(RecipeStep::id).toList();
        this.parameters = new ArrayList<>(
                recipe.value().parameters().stream().map(Recipe.Parameter::id).toList());
        parameters.add(ADHESIVE);
    }

    void check() {
        holds();
        List<Tree> trees = recipe.at().down("steps").items();
        for (int i = 0; i < trees.size(); i++) {
            Tree t = trees.get(i);
            if (t.form() != Tree.Form.MAPPING) {
                continue;
            }
            after(t, i);
            parametersIn(t);
            t.get("when").ifPresent(this::when);
            systems(t);
            windows(t);
            t.down("cautions").items().forEach(this::caution);
            recipe.value().steps().stream()
                    .filter(s -> s.id().equals(t.down("id").text()))
                    .findFirst()
                    .ifPresent(s -> crew(t, s));
        }
    }

    private void holds() {
        for (Tree h : recipe.at().down("holds").items()) {
            step(h.get("from"));
            step(h.get("to"));
            int from = steps.indexOf(h.down("from").text());
            int to = steps.indexOf(h.down("to").text());
            if (from >= 0 && to >= 0 && to < from) {
                problems.stop(
                        h.down("to"), Problems.quote(h.down("to").text()), "a step not before the hold's first", "");
            }
            parametersIn(h);
        }
    }

    private void step(Optional<Tree> at) {
        at.filter(t -> t.form() == Tree.Form.SCALAR && !t.isBlank() && !steps.contains(t.text()))
                .ifPresent(t -> problems.stop(
                        t,
                        Problems.quote(t.text()),
                        "a step of the recipe " + recipe.id(),
                        Nearest.suggest(t.text(), steps)));
    }

    private void after(Tree t, int position) {
        for (Tree link : t.down("after").items()) {
            Tree name = link.form() == Tree.Form.SCALAR ? link : link.down("step");
            step(Optional.of(name));
            if (steps.indexOf(name.text()) >= position) {
                problems.stop(
                        name,
                        Problems.quote(name.text()) + ", which does not stand above",
                        "an earlier step",
                        "steps stand in the order in which they can be done");
            }
        }
    }

    private void when(Tree t) {
        String name = t.text().startsWith("with.") ? t.text().substring("with.".length()) : t.text();
        if (!parameters.contains(name)) {
            unknown(t, name);
        }
    }

    /** Every {@code with.NAME} of a step names a parameter. */
    private void parametersIn(Tree t) {
        if (t.form() == Tree.Form.SCALAR) {
            if (t.path().endsWith(".when")) {
                return;
            }
            Matcher m = WITH.matcher(t.text());
            while (m.find()) {
                if (!parameters.contains(m.group(1))) {
                    unknown(t, m.group(1));
                }
            }
        }
        t.entries().values().forEach(this::parametersIn);
        t.items().forEach(this::parametersIn);
    }

    private void unknown(Tree t, String name) {
        problems.stop(
                t,
                "with." + name,
                "a parameter of the recipe " + recipe.id(),
                parameters.size() > 1 ? Nearest.suggest(name, parameters) : "add it under \"parameters:\"");
    }

    /** Systems that are named outright must exist. */
    private void systems(Tree t) {
        if (t.form() == Tree.Form.MAPPING) {
            Optional<Tree> system = t.get("system");
            List<String> known = Draft.ids(d.systems());
            system.filter(s -> s.form() == Tree.Form.SCALAR && !s.isBlank())
                    .filter(s -> d.all(Kind.SYSTEMS) && !s.text().startsWith("with.") && !known.contains(s.text()))
                    .ifPresent(s -> problems.stop(
                            s, Problems.quote(s.text()), "a system that exists", Nearest.suggest(s.text(), known)));
        }
        t.entries().values().forEach(this::systems);
        t.items().forEach(this::systems);
    }

    private void crew(Tree t, RecipeStep s) {
        if (s.crew().least() > s.crew().useful()) {
            problems.stop(
                    t.down("crew"),
                    Problems.quote(t.down("crew").text()),
                    "least and most useful number of people in this order",
                    "write " + s.crew().useful() + "-" + s.crew().least());
        }
        s.skills().forEach((skill, n) -> {
            if (n > s.crew().useful()) {
                problems.stop(
                        t.down("skills", skill.key()),
                        n + " with the skill " + skill.key() + " in a crew of at most "
                                + s.crew().useful(),
                        "no more than the crew",
                        "");
            }
        });
        if (s.air() == RecipeStep.Air.WET && s.interruptible()) {
            problems.stop(
                    t.down("interruptible"),
                    "wet work that may stop",
                    "\"interruptible: no\" for wet work",
                    "resin does not wait");
        }
        for (Tree m : t.down("mixes").items()) {
            String purpose = m.down("purpose").text();
            boolean needs = List.of("core-bedding", "coat", "fillet", "amount").contains(purpose);
            if (needs && m.get("amount").isEmpty()) {
                problems.stopAtKey(
                        m,
                        "amount",
                        "nothing",
                        "an amount, which a mix for " + purpose + " must have",
                        "such as 0.5 kg/m2");
            }
        }
    }

    /** A window must not shut before it opens. */
    private void windows(Tree t) {
        recipe.value().steps().stream()
                .filter(s -> s.id().equals(t.down("id").text()))
                .flatMap(s -> s.after().stream())
                .filter(a -> a.opens().flatMap(o -> o.span()).isPresent()
                        && a.shuts().flatMap(s -> s.span()).isPresent())
                .forEach(a -> {
                    double opens = a.opens()
                            .flatMap(o -> o.span())
                            .map(x -> x.minutes())
                            .orElse(0.0);
                    double shuts = a.shuts()
                            .flatMap(s -> s.span())
                            .map(x -> x.minutes())
                            .orElse(0.0);
                    if (shuts < opens) {
                        Tree link = t.down("after").items().stream()
                                .filter(l -> l.down("step").text().equals(a.step()))
                                .findFirst()
                                .orElse(t);
                        problems.stop(
                                link.down("shuts"),
                                Problems.quote(link.down("shuts").text()),
                                "a time not before the window opens ("
                                        + link.down("opens").text() + ")",
                                "");
                    }
                });
    }

    private void caution(Tree t) {
        List<String> known = Cautions.all().stream().map(Caution::key).toList();
        if (t.form() == Tree.Form.SCALAR && !known.contains(t.text())) {
            problems.caution(
                    t,
                    Problems.quote(t.text()),
                    "a key of the caution table: " + String.join(", ", known),
                    Nearest.suggest(t.text(), known));
        }
    }
}

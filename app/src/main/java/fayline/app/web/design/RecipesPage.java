package fayline.app.web.design;

import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.project.design.Made;
import fayline.flow.project.recipe.HandsRate;
import fayline.flow.project.recipe.Recipe;
import fayline.flow.project.recipe.RecipeStep;
import io.javalin.config.RoutesConfig;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The recipes: the ways of making, as the definition says them, with the origin of every rate. */
public final class RecipesPage implements Page {
    private final Sights sights;

    /** Makes the page. */
    public RecipesPage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/recipes", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(
                    visit,
                    sight -> sights.show(
                            visit, "recipes.jte", sights.frame(visit, sight, "Recipes", "/recipes"), view(sight)));
        });
    }

    static RecipesView view(Sight sight) {
        return new RecipesView(
                sight.definition().recipes().stream().map(r -> recipe(sight, r)).toList());
    }

    private static RecipesView.Way recipe(Sight sight, Recipe r) {
        List<String> used = Stream.<Made>concat(
                        sight.definition().parts().stream(), sight.definition().joints().stream())
                .filter(m -> m.make().stream().anyMatch(k -> k.recipe().equals(r.id())))
                .map(Made::name)
                .toList();
        return new RecipesView.Way(
                r.id(),
                r.name(),
                r.about(),
                r.source(),
                used,
                r.parameters().stream()
                        .map(p -> p.id() + ": " + p.about() + (p.usual().isEmpty() ? "" : ", usually " + p.usual()))
                        .toList(),
                r.steps().stream().map(RecipesPage::step).toList());
    }

    private static RecipesView.Step step(RecipeStep s) {
        String crew = s.crew().least() == s.crew().useful()
                ? s.crew().least() + (s.crew().least() == 1 ? " person" : " people")
                : s.crew().least() + " to " + s.crew().useful() + " people";
        return new RecipesView.Step(
                s.title(),
                s.kind().key().replace('-', ' '),
                s.hands().isEmpty() ? "no hands" : crew,
                s.hands().stream().map(RecipesPage::rate).toList(),
                s.hold());
    }

    private static String rate(HandsRate h) {
        String minutes = h.minutes() == Math.rint(h.minutes())
                ? String.format(Locale.ROOT, "%.0f", h.minutes())
                : String.format(Locale.ROOT, "%.1f", h.minutes());
        return minutes + " min per " + h.per() + (h.times().equals("1") ? "" : " x " + h.times()) + " ("
                + h.origin().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ")";
    }
}

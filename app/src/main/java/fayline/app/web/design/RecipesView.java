package fayline.app.web.design;

import java.util.List;

/**
 * What Recipes shows.
 *
 * @param ways the recipes
 */
public record RecipesView(List<Way> ways) {
    /** Copies the list. */
    public RecipesView {
        ways = List.copyOf(ways);
    }

    /**
     * A recipe.
     *
     * @param id its id
     * @param name its name
     * @param about when to use it
     * @param source where it comes from
     * @param used parts and joints that use it
     * @param parameters what a part must say
     * @param steps its steps
     */
    public record Way(
            String id,
            String name,
            String about,
            String source,
            List<String> used,
            List<String> parameters,
            List<Step> steps) {
        /** Copies the lists. */
        public Way {
            used = List.copyOf(used);
            parameters = List.copyOf(parameters);
            steps = List.copyOf(steps);
        }
    }

    /**
     * A step.
     *
     * @param title its title
     * @param kind what sort of work
     * @param crew how many people
     * @param rates hands-on rates with their origin
     * @param hold whether it is a hold point
     */
    public record Step(String title, String kind, String crew, List<String> rates, boolean hold) {
        /** Copies the list. */
        public Step {
            rates = List.copyOf(rates);
        }
    }
}

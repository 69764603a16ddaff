package fayline.flow.project.piece;

import fayline.basis.finding.Figure.Origin;
import fayline.flow.project.Definition;
import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Make;
import fayline.flow.project.design.Part;
import fayline.flow.project.recipe.After;
import fayline.flow.project.recipe.HandsRate;
import fayline.flow.project.recipe.RecipeStep;
import fayline.flow.project.recipe.StepKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A definition with the work that puts deviations right: steps beyond the recipe, after the step at which the deviation was seen. What
 * waits for them follows from the work, not from here.
 */
public final class ReworkSteps {
    /** How the key of such a step begins. */
    public static final String KEY = "rework-";

    private ReworkSteps() {}

    /**
     * A piece of such work.
     *
     * @param made the part or joint
     * @param make the make number, from 1
     * @param after key of the step it follows
     * @param number its number among such work of that make, from 1
     * @param what what is to be done
     * @param minutes person-minutes
     * @param kind the sort of work
     */
    public record Piece(String made, int make, String after, int number, String what, double minutes, StepKind kind) {
        /** The step's id within the project. */
        public String local() {
            return made + "/" + make + "/" + key();
        }

        private String key() {
            return KEY + number;
        }

        /** The id within the project of the step it follows. */
        public String afterLocal() {
            return made + "/" + make + "/" + after;
        }
    }

    /** A definition with pieces of work; one that has them already stays as it is. */
    public static Definition on(Definition d, List<Piece> pieces) {
        if (pieces.isEmpty()) {
            return d;
        }
        List<Part> parts = d.parts().stream()
                .map(p -> p.withMake(makes(p.id(), p.make(), pieces)))
                .toList();
        List<Joint> joints = d.joints().stream()
                .map(j -> j.withMake(makes(j.id(), j.make(), pieces)))
                .toList();
        return d.withMade(new Catalog<>(parts), new Catalog<>(joints), d.deliveries());
    }

    private static List<Make> makes(String made, List<Make> makes, List<Piece> pieces) {
        List<Make> all = new ArrayList<>();
        for (Make make : makes) {
            int n = all.size() + 1;
            List<RecipeStep> extra = pieces.stream()
                    .filter(p -> p.made().equals(made) && p.make() == n)
                    .map(ReworkSteps::step)
                    .toList();
            all.add(extra.isEmpty() ? make : make.withExtra(extra));
        }
        return all;
    }

    private static RecipeStep step(Piece p) {
        return new RecipeStep(
                p.key(),
                p.kind(),
                "Rework: " + p.what(),
                List.of(p.what()),
                List.of(new HandsRate(p.minutes(), "step", "1", Origin.ASSUMED)),
                new RecipeStep.Crew(1, 2),
                Map.of(),
                Map.of(),
                air(p.kind()),
                air(p.kind()) != RecipeStep.Air.WET,
                Optional.empty(),
                List.of(),
                "",
                false,
                List.of(new After(p.after(), After.Moment.END, Optional.empty(), Optional.empty(), Optional.empty())),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                false,
                false,
                "");
    }

    private static RecipeStep.Air air(StepKind kind) {
        return switch (kind) {
            case COAT, LAY_UP, CORE, BAG, BOND -> RecipeStep.Air.WET;
            case SHAPE, TRIM, PREPARE -> RecipeStep.Air.DUST;
            case RELEASE, CUT, CURE, DEBAG, DEMOULD, DRY_FIT, INSPECT, CLOSE_OUT, SYSTEM, WEIGH, RECEIVE ->
                RecipeStep.Air.QUIET;
        };
    }
}

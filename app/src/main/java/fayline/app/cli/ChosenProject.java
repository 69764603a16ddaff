package fayline.app.cli;

import fayline.app.usecase.shop.ShopRecord;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Which of a record's projects a command is about. */
final class ChosenProject {
    private ChosenProject() {}

    /**
     * The one asked for, or the only one there is.
     *
     * @throws BadInputException if none is asked for where there are several, or one that is not there
     */
    static String of(ShopRecord shop, @Nullable String asked) {
        List<String> projects = shop.state().projects();
        String chosen = asked != null ? asked : projects.size() == 1 ? projects.get(0) : "";
        if (!projects.contains(chosen)) {
            throw new BadInputException("found "
                    + (chosen.isEmpty() ? "no --project" : "--project " + chosen) + ", expected "
                    + (projects.isEmpty()
                            ? "a data folder that holds a project: import one first"
                            : "one of " + String.join(", ", projects)));
        }
        return chosen;
    }
}

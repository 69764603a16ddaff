package fayline.flow.project.local;

import fayline.flow.project.catalog.Keyed;
import java.util.List;

/**
 * A stage at which the authority, or whoever acts for it, looks before work goes on.
 *
 * @param id its id
 * @param name what it is called
 * @param of assemblies, parts and joints that are looked at
 * @param before steps, as {@code made/number/key}, that do not begin before somebody has looked and nothing found is open
 * @param lookAt what is looked at, in words
 * @param photos how many pictures are there before those steps begin, each with its scale and its direction noted
 */
public record LocalStage(String id, String name, List<String> of, List<String> before, List<String> lookAt, int photos)
        implements Keyed {
    /** Copies the lists. */
    public LocalStage {
        of = List.copyOf(of);
        before = List.copyOf(before);
        lookAt = List.copyOf(lookAt);
    }
}

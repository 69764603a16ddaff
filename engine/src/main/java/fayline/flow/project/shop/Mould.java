package fayline.flow.project.shop;

import fayline.flow.project.catalog.Keyed;
import java.util.Optional;

/**
 * A tool and the state of its release.
 *
 * @param id the id
 * @param name the name
 * @param stand the stand it cannot leave, where there is one
 * @param pulls pulls so far
 * @param sinceTouchUp pulls since the last release touch-up
 * @param sinceFull pulls since the last full release
 * @param touchUpEvery pulls after which a touch-up is due
 * @param fullEvery pulls after which a full release is due
 * @param each whether it stands for one mould for each piece, of which a set takes its own
 */
public record Mould(
        String id,
        String name,
        Optional<String> stand,
        int pulls,
        int sinceTouchUp,
        int sinceFull,
        int touchUpEvery,
        int fullEvery,
        boolean each)
        implements Keyed {
    /** A mould that is one. */
    public Mould(
            String id,
            String name,
            Optional<String> stand,
            int pulls,
            int sinceTouchUp,
            int sinceFull,
            int touchUpEvery,
            int fullEvery) {
        this(id, name, stand, pulls, sinceTouchUp, sinceFull, touchUpEvery, fullEvery, false);
    }
}

package fayline.app.drawing.fit;

import fayline.flow.project.design.Hand;
import fayline.method.fitup.outline.PartOutline;
import java.util.List;
import java.util.Optional;

/**
 * What a drawing of the gaps shows.
 *
 * @param title what it is of
 * @param outline the part's edge, where it is known
 * @param hand which hand the part is; tells the directions
 * @param stations the stations
 * @param current the mark of the station that is read now
 * @param beforeName what the dashed line is, as {@code as read}
 * @param afterName what the solid line is, as {@code after the move}
 */
public record GapPicture(
        String title,
        Optional<PartOutline> outline,
        Hand hand,
        List<StationPicture> stations,
        Optional<String> current,
        String beforeName,
        String afterName) {
    /** Copies the list. */
    public GapPicture {
        stations = List.copyOf(stations);
    }

    /** Whether every station has a place. */
    boolean placed() {
        return !stations.isEmpty() && stations.stream().allMatch(s -> s.place().isPresent());
    }

    /** Whether any gap after is known; else the gaps before are drawn as what counts. */
    boolean hasAfter() {
        return stations.stream().anyMatch(s -> s.afterMm().isPresent());
    }

    boolean isCurrent(StationPicture station) {
        return current.isPresent() && current.get().equals(station.id());
    }
}

package fayline.app.usecase.act;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a correction puts in the place of what was wrong; what is empty stays as it was.
 *
 * @param at when it really happened
 * @param people who really worked on it
 * @param places where it really was
 * @param whichWay which way round it really lies
 * @param signed who really signed
 * @param note the note as it should read
 * @param of what was really measured
 * @param station the station at which it was really measured
 * @param state the state in which it was really measured
 * @param values values as they should have been typed, by name
 */
public record Mended(
        Optional<Instant> at,
        List<String> people,
        List<String> places,
        String whichWay,
        String signed,
        String note,
        String of,
        String station,
        String state,
        Map<String, String> values) {
    /** Copies the collections. */
    public Mended {
        people = List.copyOf(people);
        places = List.copyOf(places);
        values = Map.copyOf(values);
    }

    /** Another time. */
    public static Mended time(Instant at) {
        return new Mended(Optional.of(at), List.of(), List.of(), "", "", "", "", "", "", Map.of());
    }

    /** Another note. */
    public static Mended note(String text) {
        return new Mended(Optional.empty(), List.of(), List.of(), "", "", text, "", "", "", Map.of());
    }

    /** Other people. */
    public static Mended people(List<String> people) {
        return new Mended(Optional.empty(), people, List.of(), "", "", "", "", "", "", Map.of());
    }

    /** Another value of a reading, as typed. */
    public static Mended value(String typed) {
        return new Mended(Optional.empty(), List.of(), List.of(), "", "", "", "", "", "", Map.of("value", typed));
    }
}

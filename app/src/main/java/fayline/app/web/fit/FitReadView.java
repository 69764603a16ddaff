package fayline.app.web.fit;

import fayline.app.web.frame.Frame;
import java.util.List;

/**
 * What the entry of readings shows.
 *
 * @param id the fit
 * @param name its name
 * @param setup what was chosen once
 * @param said the state and kind in words
 * @param chooser the choices of state, kind and unit
 * @param drawing the fit with the station at hand marked; empty where no place is known
 * @param current the station at hand; its mark is empty where every station is read
 * @param stations all stations, for going to one
 * @param back the address of the station before; empty at the first
 * @param skip the address of what comes when this station is passed over; empty where none is at hand
 * @param again why the station at hand is asked for again, a sentence each; empty where it is not
 * @param draft the name under which what is being typed is kept
 * @param draftMany the same of the paste box
 * @param move the move so far, in words, a line each; empty while too little is read
 * @param suspects what to read again, a sentence each
 * @param next what to read when this is done
 * @param refused why something was not kept, a sentence each
 * @param kept what was kept all the same; empty for nothing
 * @param value the value as it was typed, where it was refused
 * @param nogo the leaf that did not enter as typed, where it was refused
 * @param many the lines that were not kept
 */
public record FitReadView(
        String id,
        String name,
        FitSetup setup,
        String said,
        Chooser chooser,
        String drawing,
        Station current,
        List<Station> stations,
        String back,
        String skip,
        List<String> again,
        String draft,
        String draftMany,
        List<String> move,
        List<String> suspects,
        List<Next> next,
        List<String> refused,
        String kept,
        String value,
        String nogo,
        String many) {
    /** Copies the lists. */
    public FitReadView {
        stations = List.copyOf(stations);
        again = List.copyOf(again);
        move = List.copyOf(move);
        suspects = List.copyOf(suspects);
        next = List.copyOf(next);
        refused = List.copyOf(refused);
    }

    /** Whether every station is read. */
    public boolean done() {
        return current.mark().isEmpty();
    }

    /** How many stations have a reading. */
    public long read() {
        return stations.stream().filter(s -> !s.typed().isEmpty()).count();
    }

    /**
     * What can be chosen.
     *
     * @param states the states
     * @param kinds what can be read
     * @param units the units
     */
    public record Chooser(List<Frame.Choice> states, List<Frame.Choice> kinds, List<Frame.Choice> units) {
        /** Copies the lists. */
        public Chooser {
            states = List.copyOf(states);
            kinds = List.copyOf(kinds);
            units = List.copyOf(units);
        }
    }

    /**
     * A station.
     *
     * @param mark its mark; empty for none
     * @param where where it is
     * @param wanted what is wanted there
     * @param typed its readings so far, as typed, joined; empty where it has none
     * @param link the address of its entry
     * @param then the address of its flush, where that is read after all gaps; empty where it is not
     * @param here whether it is the one at hand
     */
    public record Station(
            String mark, String where, String wanted, String typed, String link, String then, boolean here) {}

    /**
     * Something to go on with.
     *
     * @param name what it is
     * @param link its address
     */
    public record Next(String name, String link) {}
}

package fayline.app.web.people;

import java.util.List;

/**
 * A one-time code to show to somebody.
 *
 * @param what what it is for, in a sentence
 * @param code the code
 * @param address where it is entered
 * @param drawing the address with the code, as a drawing to be read by a phone; empty where none is needed
 * @param steps what to do, a sentence each
 */
public record CodeView(String what, String code, String address, String drawing, List<String> steps) {
    /** Copies the list. */
    public CodeView {
        steps = List.copyOf(steps);
    }
}

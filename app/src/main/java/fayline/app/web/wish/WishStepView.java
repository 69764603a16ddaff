package fayline.app.web.wish;

import fayline.app.web.frame.Frame;
import java.util.List;

/**
 * What the page shows on which the lead decides about one step.
 *
 * @param name what people call the step
 * @param action the address of this page, to which its form goes
 * @param card its card
 * @param now who, where and when as planned; empty where it has no place in the plan
 * @param trouble why it has none, a sentence each
 * @param wishes what is wished of it
 * @param costs address that tells what each costs; empty where that is told or there is nothing to tell
 * @param open whether it has not begun, so that something may be wished of it
 * @param hands whether hands are needed for it
 * @param people who is planned
 * @param others who else there is
 * @param places where it is planned, as far as there is a choice
 * @param elsewhere where else it may be
 * @param start when it begins, in words; empty where it has no place
 * @param halfDay the half day of that, in words
 * @param field the same moment as a form's field takes it
 * @param swaps steps with other people with which it may change them
 * @param refused why the last form was refused, a sentence each
 */
public record WishStepView(
        String name,
        String action,
        String card,
        String now,
        List<String> trouble,
        List<WishRow> wishes,
        String costs,
        boolean open,
        boolean hands,
        List<Frame.Choice> people,
        List<Frame.Choice> others,
        List<Frame.Choice> places,
        List<Frame.Choice> elsewhere,
        String start,
        String halfDay,
        String field,
        List<Frame.Choice> swaps,
        List<String> refused) {
    /** Copies the lists. */
    public WishStepView {
        trouble = List.copyOf(trouble);
        wishes = List.copyOf(wishes);
        people = List.copyOf(people);
        others = List.copyOf(others);
        places = List.copyOf(places);
        elsewhere = List.copyOf(elsewhere);
        swaps = List.copyOf(swaps);
        refused = List.copyOf(refused);
    }
}

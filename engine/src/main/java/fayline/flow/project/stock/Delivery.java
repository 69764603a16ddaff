package fayline.flow.project.stock;

import fayline.flow.project.catalog.Keyed;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Something on order.
 *
 * @param id the id
 * @param what the material, system or made part
 * @param quantity how much, as written
 * @param due the promised day
 * @param latest the day it may slip to, where a doubt was written down; plans count with it
 * @param arrived the day it came, where it did
 * @param needed the parts, joints or steps that wait for it ({@code part} or {@code part/step})
 */
public record Delivery(
        String id,
        String what,
        String quantity,
        LocalDate due,
        Optional<LocalDate> latest,
        Optional<LocalDate> arrived,
        List<String> needed)
        implements Keyed {
    /** Copies the list. */
    public Delivery {
        needed = List.copyOf(needed);
    }

    /** The day to plan with: arrived, else the latest written doubt, else the promise. */
    public LocalDate planned() {
        return arrived.orElse(latest.orElse(due));
    }
}

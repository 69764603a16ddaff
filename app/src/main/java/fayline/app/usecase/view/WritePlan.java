package fayline.app.usecase.view;

import fayline.store.file.plan.PlanCalendar;
import fayline.store.file.plan.PlanCsv;
import fayline.store.file.plan.PlanJson;
import java.util.Optional;

/** Writes the plan of a shop as a text for other programs. */
public final class WritePlan {
    private WritePlan() {}

    /** The forms there are. */
    public enum Form {
        /** The plan format, whole in itself; what {@code calc plan.audit} takes. */
        JSON,
        /** A table, a line for each planned step. */
        TABLE,
        /** A calendar (RFC 5545), an event for each planned step. */
        CALENDAR
    }

    /** The work of one person as a calendar. */
    public static String calendar(ShopView view, String person) {
        return PlanCalendar.write(view.work(), view.plan(), Optional.of(person));
    }

    /** The text of the plan that is seen. */
    public static String of(ShopView view, Form form) {
        return switch (form) {
            case JSON -> PlanJson.write(view.work(), view.plan());
            case TABLE -> PlanCsv.write(view.work(), view.plan());
            case CALENDAR -> PlanCalendar.write(view.work(), view.plan(), Optional.empty());
        };
    }
}

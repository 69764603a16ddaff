package fayline.app.web.whatif;

import java.util.List;

/**
 * What the page shows.
 *
 * @param trouble why a question could not be taken; empty for none
 * @param kept the questions in the address
 * @param columns what is compared, the plan as it is leading
 * @param rows the comparison
 * @param longWork work too long for one day of its least crew
 * @param people the crew to choose from
 * @param moulds the moulds to choose from
 * @param deliveries what is on order
 * @param tomorrow the day that the forms begin with
 * @param saturday the coming Saturday
 */
public record WhatIfView(
        String trouble,
        String kept,
        List<Column> columns,
        List<Row> rows,
        List<LongStep> longWork,
        List<Choice> people,
        List<Choice> moulds,
        List<Choice> deliveries,
        String tomorrow,
        String saturday) {
    /** Copies the lists. */
    public WhatIfView {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        longWork = List.copyOf(longWork);
        people = List.copyOf(people);
        moulds = List.copyOf(moulds);
        deliveries = List.copyOf(deliveries);
    }

    /**
     * Work too long for one day of its least crew.
     *
     * @param name the step
     * @param words how long it takes and how it is planned
     * @param link address of the page with each way out side by side
     */
    public record LongStep(String name, String words, String link) {}

    /**
     * A column.
     *
     * @param name what is otherwise
     * @param without address of the page without it; empty for none
     */
    public record Column(String name, String without) {}

    /**
     * A row.
     *
     * @param name what is compared
     * @param cells one for each column
     */
    public record Row(String name, List<Cell> cells) {
        /** Copies the list. */
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A cell.
     *
     * @param value the value
     * @param difference against the plan as it is, in words; empty for none
     * @param worse whether that is worse
     */
    public record Cell(String value, String difference, boolean worse) {}

    /**
     * Something to choose.
     *
     * @param id its id
     * @param name its name
     */
    public record Choice(String id, String name) {}
}

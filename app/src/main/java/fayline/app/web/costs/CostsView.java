package fayline.app.web.costs;

import java.util.List;

/**
 * What the page of costs shows. Amounts are in whole units of the currency.
 *
 * @param currency the currency
 * @param whole the whole project
 * @param assemblies assemblies with all that is in them
 * @param made parts and joints that cost anything
 * @param rework what deviations cost in planned rework
 * @param says what is assumed or missing
 */
public record CostsView(
        String currency, Row whole, List<Row> assemblies, List<Row> made, Row rework, List<String> says) {
    /** Copies the lists. */
    public CostsView {
        assemblies = List.copyOf(assemblies);
        made = List.copyOf(made);
        says = List.copyOf(says);
    }

    /**
     * A row.
     *
     * @param name what
     * @param link its page; empty for none
     * @param toDate spent
     * @param material of it and of what is to come: from the stores
     * @param hands hours
     * @param orders from outside
     * @param toGo still to be spent
     * @param all at completion
     * @param budget the budget; empty where there is none
     * @param left what the budget leaves, in words; empty where there is none
     * @param over whether it is overrun
     */
    public record Row(
            String name,
            String link,
            String toDate,
            String material,
            String hands,
            String orders,
            String toGo,
            String all,
            String budget,
            String left,
            boolean over) {}
}

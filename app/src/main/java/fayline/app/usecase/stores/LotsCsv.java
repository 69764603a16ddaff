package fayline.app.usecase.stores;

import fayline.flow.result.stock.LotStanding;
import fayline.store.file.table.CsvText;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The lots of the stores as a table for spreadsheets: the columns of an import, and what is left. */
public final class LotsCsv {
    private LotsCsv() {}

    /**
     * The table.
     *
     * @param lots the lots as they stand
     * @param format words an amount with its unit
     */
    public static String of(List<LotStanding> lots, java.util.function.Function<LotStanding, String> format) {
        List<String> header = new ArrayList<>(LotSheet.COLUMNS);
        header.add("left");
        header.add("use by");
        return CsvText.of(
                header,
                lots.stream()
                        .map(s -> List.of(
                                s.lot().id(),
                                s.lot().of(),
                                s.lot().quantity().asTyped(),
                                s.lot().received().toString(),
                                s.lot().component(),
                                s.lot().weighed() ? "yes" : "",
                                s.lot().expires().map(LocalDate::toString).orElse(""),
                                "",
                                s.lot()
                                        .price()
                                        .map(p -> p.amount() + " per " + p.per())
                                        .orElse(""),
                                "",
                                format.apply(s),
                                s.lastDay().map(LocalDate::toString).orElse("")))
                        .toList());
    }
}

package fayline.app.bench.cases;

import fayline.app.usecase.cases.RawFile;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The rows of a table whose header names its columns.
 *
 * @param rows the rows, each with its case's name
 */
record CaseRows(List<Row> rows) {
    CaseRows {
        rows = List.copyOf(rows);
    }

    /** The rows, or empty if the file is no table with these columns; other columns may stand beside them. */
    static Optional<CaseRows> of(RawFile file, List<String> columns) {
        if (file.table().isEmpty() || !file.table().get().get(0).containsAll(columns)) {
            return Optional.empty();
        }
        List<String> header = file.table().get().get(0);
        List<Row> rows = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (List<String> cells :
                file.table().get().subList(1, file.table().get().size())) {
            if (cells.size() == 1 && cells.get(0).isBlank()) {
                continue;
            }
            if (cells.size() != header.size()) {
                throw new UnreadableCasesException("case " + cells.get(0) + ": found " + cells.size()
                        + " cells, expected " + header.size() + ": " + String.join(", ", header));
            }
            Map<String, String> named = new HashMap<>();
            for (int i = 0; i < cells.size(); i++) {
                named.put(header.get(i), cells.get(i));
            }
            Row row = new Row(named);
            if (row.id().isBlank() || !ids.add(row.id())) {
                throw new UnreadableCasesException("case \"" + row.id() + "\": found a name that is empty or stands"
                        + " twice, expected one of its own");
            }
            rows.add(row);
        }
        return Optional.of(new CaseRows(rows));
    }

    /**
     * One row.
     *
     * @param cells its cells by column
     */
    record Row(Map<String, String> cells) {
        Row {
            cells = Map.copyOf(cells);
        }

        String id() {
            return cell("case_id");
        }

        String cell(String column) {
            return cells.getOrDefault(column, "");
        }
    }
}

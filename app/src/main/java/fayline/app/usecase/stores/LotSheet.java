package fayline.app.usecase.stores;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import fayline.store.file.table.CsvTable;
import fayline.store.file.table.CsvText;
import fayline.store.file.table.Sheet;
import fayline.store.file.table.UnreadableSheetException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Lots from a table: comma-separated text or a spreadsheet, of which only values are read. Every wrong cell is named by sheet, row and
 * column; nothing is taken while one is wrong.
 */
public final class LotSheet {
    /** The columns, in the order in which they are written; the first four are needed. */
    public static final List<String> COLUMNS =
            List.of("lot", "of", "quantity", "received", "part", "weighed", "expires", "opened life", "price", "order");

    private static final int NEEDED = 4;
    private static final int MOST = 2000;
    private final ShopRecord shop;

    /** On a shop's record. */
    public LotSheet(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * A table as read.
     *
     * @param rows its lots, in order
     * @param problems what is wrong; empty where all of it can be taken
     * @param text the same as comma-separated text, to be sent once more when it is taken
     */
    public record Read(List<ReceivedLot> rows, List<InputProblem> problems, String text) {
        /** Copies the lists. */
        public Read {
            rows = List.copyOf(rows);
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads and checks a table, and takes nothing.
     *
     * @param sent who looks at it
     * @param project a project whose definition names the materials
     * @param bytes the file
     */
    public Read read(Sent sent, String project, byte[] bytes) {
        Sheet sheet;
        try {
            sheet = Sheet.read(bytes);
        } catch (UnreadableSheetException e) {
            return new Read(List.of(), List.of(stop("table", 0, "", String.valueOf(e.getMessage()), "a table")), "");
        }
        List<InputProblem> problems = new ArrayList<>();
        Map<String, Integer> at = columns(sheet, problems);
        List<ReceivedLot> lots = new ArrayList<>();
        List<CsvTable.Row> rows = new ArrayList<>();
        if (problems.isEmpty()) {
            for (CsvTable.Row r : sheet.table().rows()) {
                if (r.cells().stream().anyMatch(c -> !c.isBlank())) {
                    lots.add(lot(at, r.cells()));
                    rows.add(r);
                }
            }
            if (rows.isEmpty() || rows.size() > MOST) {
                problems.add(
                        stop(sheet.name(), 0, "", rows.size() + " rows", "1 to " + MOST + " lots below the first row"));
            } else {
                problems.addAll(checked(sent, project, sheet, at, rows, lots));
            }
        }
        return new Read(lots, problems, text(lots));
    }

    /** Takes what was read, all of it or nothing. */
    public List<Outcome> take(Sent sent, String project, Read read) {
        return new ReceiveLot(shop).receiveAll(sent, project, read.rows());
    }

    private static Map<String, Integer> columns(Sheet sheet, List<InputProblem> problems) {
        Map<String, Integer> at = new HashMap<>();
        List<String> header = sheet.table().header();
        for (int i = 0; i < header.size(); i++) {
            String name = header.get(i).strip().toLowerCase(Locale.ROOT).replaceAll("[ _-]+", " ");
            if (name.isEmpty()) {
                continue;
            }
            if (!COLUMNS.contains(name) || at.putIfAbsent(name, i) != null) {
                problems.add(stop(
                        sheet.name(),
                        1,
                        Sheet.column(i),
                        "\"" + header.get(i) + "\"",
                        "one of " + String.join(", ", COLUMNS) + ", each once"));
            }
        }
        for (String needed : COLUMNS.subList(0, NEEDED)) {
            if (!at.containsKey(needed)) {
                problems.add(stop(sheet.name(), 1, "", "no column \"" + needed + "\"", "it in the first row"));
            }
        }
        return at;
    }

    private static ReceivedLot lot(Map<String, Integer> at, List<String> cells) {
        return new ReceivedLot(
                cell(at, cells, "lot"),
                cell(at, cells, "of"),
                cell(at, cells, "part"),
                cell(at, cells, "quantity"),
                cell(at, cells, "weighed").equalsIgnoreCase("yes"),
                cell(at, cells, "received"),
                cell(at, cells, "expires"),
                cell(at, cells, "opened life"),
                cell(at, cells, "price"),
                cell(at, cells, "order"));
    }

    private static String cell(Map<String, Integer> at, List<String> cells, String name) {
        Integer i = at.get(name);
        String text = i == null || i >= cells.size() ? "" : cells.get(i).strip();
        // Our own tables lead what looks like a formula by an apostrophe.
        return text.startsWith("'") ? text.substring(1) : text;
    }

    private List<InputProblem> checked(
            Sent sent,
            String project,
            Sheet sheet,
            Map<String, Integer> at,
            List<CsvTable.Row> rows,
            List<ReceivedLot> lots) {
        List<InputProblem> problems = new ArrayList<>();
        Map<String, Long> seen = new HashMap<>();
        ReceiveLot act = new ReceiveLot(shop);
        for (int i = 0; i < rows.size(); i++) {
            long line = rows.get(i).line();
            Long before = seen.putIfAbsent(lots.get(i).lot(), line);
            if (before != null) {
                problems.add(stop(
                        sheet.name(),
                        line,
                        column(at, "lot"),
                        "lot " + lots.get(i).lot() + " again, as in row " + before,
                        "each lot once"));
            }
            String weighed = cell(at, rows.get(i).cells(), "weighed");
            if (!weighed.matches("(?i)yes|no|")) {
                problems.add(stop(sheet.name(), line, column(at, "weighed"), "\"" + weighed + "\"", "yes or no"));
            }
            for (InputProblem p : act.look(sent, project, lots.get(i))) {
                problems.add(new InputProblem(
                        p.severity(),
                        sheet.name(),
                        Math.toIntExact(line),
                        "column " + column(at, named(p.key())),
                        p.found(),
                        p.expected(),
                        p.suggestion()));
            }
        }
        return problems;
    }

    private static String named(String key) {
        return key.equals("component") ? "part" : key.replace('-', ' ');
    }

    private static String column(Map<String, Integer> at, String name) {
        Integer i = at.get(name);
        return i == null ? name : Sheet.column(i) + " (" + name + ")";
    }

    private static InputProblem stop(String sheet, long line, String column, String found, String expected) {
        return new InputProblem(
                Severity.STOP,
                sheet,
                Math.toIntExact(line),
                column.isEmpty() || column.startsWith("column") ? column : "column " + column,
                found,
                expected,
                "");
    }

    private static String text(List<ReceivedLot> lots) {
        return CsvText.of(
                COLUMNS,
                lots.stream()
                        .map(l -> List.of(
                                l.lot(),
                                l.of(),
                                l.quantity(),
                                l.received(),
                                l.component(),
                                l.weighed() ? "yes" : "",
                                l.expires(),
                                l.openedLife(),
                                l.price(),
                                l.order()))
                        .toList());
    }
}

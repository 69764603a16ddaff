package fayline.store.file.net;

import fayline.flow.plan.net.Net;
import fayline.store.file.table.CsvTable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A folder of nets: one sub-folder per set with a file per net, and a table {@value #TABLE} of what is known of them, with the
 * columns {@code set, instance, lower_bound, upper_bound}.
 */
public final class NetSets {
    /** The table that makes a folder one of nets. */
    public static final String TABLE = "best_known.csv";

    private static final String SECTIONED = ".sm";
    private static final String LAGGED = ".sch";
    private static final List<String> COLUMNS = List.of("set", "instance", "lower_bound", "upper_bound");
    private static final String NO_SCHEDULE = "infeasible";

    private NetSets() {}

    /**
     * What is known of a net.
     *
     * @param lower a makespan that no schedule is shorter than
     * @param upper the shortest makespan known
     * @param infeasible whether there is no schedule; then the bounds mean nothing
     */
    public record Known(int lower, int upper, boolean infeasible) {}

    /**
     * One net in its file.
     *
     * @param set the sub-folder's name
     * @param instance the file's name without its ending
     * @param file the file
     * @param known what the table says of it; empty where it says nothing
     */
    public record Entry(String set, String instance, Path file, Optional<Known> known) {}

    /** Whether a folder is one of nets rather than anything else. */
    public static boolean isAt(Path folder) {
        return Files.isRegularFile(folder.resolve(TABLE));
    }

    /**
     * Lists a folder: first what the table names, in its order, then what else lies there, by name.
     *
     * @throws IOException if a file cannot be read
     * @throws UnreadableNetException if the table is not understood or names a net that is not there
     */
    public static List<Entry> list(Path folder) throws IOException {
        Map<String, Entry> entries = new LinkedHashMap<>();
        CsvTable table = CsvTable.read(folder.resolve(TABLE));
        List<Integer> at = COLUMNS.stream().map(table.header()::indexOf).toList();
        if (at.contains(-1)) {
            throw new UnreadableNetException(
                    TABLE, 1, "columns", String.join(",", table.header()), String.join(",", COLUMNS));
        }
        for (CsvTable.Row row : table.rows()) {
            Entry e = entry(folder, row, at);
            if (entries.put(e.set() + "/" + e.instance(), e) != null) {
                throw new UnreadableNetException(
                        TABLE, (int) row.line(), "instance", e.set() + "/" + e.instance() + " again", "once");
            }
        }
        for (Path file : files(folder)) {
            Entry e =
                    new Entry(folder.relativize(file).getName(0).toString(), bare(name(file)), file, Optional.empty());
            entries.putIfAbsent(e.set() + "/" + e.instance(), e);
        }
        return List.copyOf(entries.values());
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> within = Files.walk(folder, 2)) {
            return within.filter(p -> folder.relativize(p).getNameCount() == 2 && isNet(name(p)))
                    .sorted()
                    .toList();
        }
    }

    private static Entry entry(Path folder, CsvTable.Row row, List<Integer> at) {
        int line = (int) row.line();
        List<String> cells = new ArrayList<>();
        for (int i : at) {
            if (i >= row.cells().size()) {
                throw new UnreadableNetException(
                        TABLE, line, "cells", row.cells().size() + " cells", "as many as columns");
            }
            cells.add(row.cells().get(i).strip());
        }
        String place = cells.get(0) + "/" + cells.get(1);
        for (String ending : List.of(SECTIONED, LAGGED)) {
            Path file =
                    folder.resolve(cells.get(0)).resolve(cells.get(1) + ending).normalize();
            if (file.startsWith(folder.normalize()) && Files.isRegularFile(file)) {
                return new Entry(cells.get(0), cells.get(1), file, Optional.of(known(line, cells)));
            }
        }
        throw new UnreadableNetException(
                TABLE, line, "instance", "no file " + place + SECTIONED + " or " + place + LAGGED, "one of them");
    }

    private static Known known(int line, List<String> cells) {
        if (cells.get(2).equals(NO_SCHEDULE) && cells.get(3).equals(NO_SCHEDULE)) {
            return new Known(0, 0, true);
        }
        int lower = bound(line, COLUMNS.get(2), cells.get(2));
        int upper = bound(line, COLUMNS.get(3), cells.get(3));
        if (lower > upper) {
            throw new UnreadableNetException(TABLE, line, COLUMNS.get(2), "" + lower, "at most " + upper);
        }
        return new Known(lower, upper, false);
    }

    private static int bound(int line, String key, String text) {
        try {
            int n = Integer.parseInt(text);
            if (n >= 0) {
                return n;
            }
        } catch (NumberFormatException e) {
            // Told below, as a negative number is.
        }
        throw new UnreadableNetException(
                TABLE, line, key, Lines.quoted(text), "a whole number from 0, or \"infeasible\" in both bounds");
    }

    /**
     * Reads a net, by its file's ending.
     *
     * @throws IOException if the file cannot be read
     * @throws UnreadableNetException if it is not understood
     */
    public static Net read(Path file) throws IOException {
        Lines lines = new Lines(file.toString(), Files.readAllLines(file, StandardCharsets.ISO_8859_1));
        return name(file).endsWith(LAGGED) ? new LaggedNet(lines).read() : new SectionedNet(lines).read();
    }

    private static boolean isNet(String name) {
        return name.endsWith(SECTIONED) || name.endsWith(LAGGED);
    }

    private static String bare(String name) {
        return name.substring(0, name.lastIndexOf('.'));
    }

    private static String name(Path path) {
        return String.valueOf(path.getFileName());
    }
}

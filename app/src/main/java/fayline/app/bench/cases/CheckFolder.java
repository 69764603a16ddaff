package fayline.app.bench.cases;

import fayline.app.usecase.cases.RawFile;
import fayline.app.usecase.cases.ReadCaseFiles;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Runs every case of a folder. */
public final class CheckFolder {
    private CheckFolder() {}

    /**
     * Reads the files, reckons each case and compares.
     *
     * @param folder the folder; what lies deeper counts too
     * @param only names of files (without ending) or folders to keep to; empty means all
     */
    public static Report run(Path folder, List<String> only) {
        List<Verdict> verdicts = new ArrayList<>();
        Map<String, String> unreadable = new LinkedHashMap<>();
        List<RawFile> files = ReadCaseFiles.below(folder);
        List<String> missing = only.stream()
                .filter(n -> files.stream().noneMatch(f -> f.isNamed(n)))
                .toList();
        for (RawFile file : files) {
            if (!only.isEmpty() && only.stream().noneMatch(file::isNamed)) {
                continue;
            }
            if (file.unreadable().isPresent()) {
                unreadable.put(file.path(), file.unreadable().get());
                continue;
            }
            try {
                read(file).ifPresent(f -> f.cases().forEach(c -> verdicts.add(c.judge(f))));
            } catch (UnreadableCasesException e) {
                unreadable.put(file.path(), String.valueOf(e.getMessage()));
            }
        }
        return new Report(verdicts, unreadable, missing);
    }

    private static Optional<CaseFile> read(RawFile file) {
        for (Layout layout : Layout.all()) {
            Optional<CaseFile> cases = layout.read(file);
            if (cases.isPresent()) {
                return cases;
            }
        }
        return Optional.empty();
    }

    /**
     * What came of a folder.
     *
     * @param verdicts one for each case, in the order of files and lines
     * @param unreadable why a file could not be read, by its path
     * @param missing names asked for that no file or folder has
     */
    public record Report(List<Verdict> verdicts, Map<String, String> unreadable, List<String> missing) {
        /** Copies lists and map. */
        public Report {
            verdicts = List.copyOf(verdicts);
            unreadable = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(unreadable));
            missing = List.copyOf(missing);
        }

        /** How many cases came out so. */
        public long count(Verdict.Outcome outcome) {
            return verdicts.stream().filter(v -> v.outcome() == outcome).count();
        }
    }
}

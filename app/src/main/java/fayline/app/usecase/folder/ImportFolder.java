package fayline.app.usecase.folder;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import fayline.flow.project.Definition;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryFiles;
import fayline.flow.record.EntryKind;
import fayline.flow.record.KeptFile;
import fayline.flow.record.MemoryFiles;
import fayline.flow.record.MemoryLog;
import fayline.flow.record.NewEntry;
import fayline.flow.record.RecordState;
import fayline.flow.record.payload.Value;
import fayline.store.file.DefinitionFolder;
import fayline.store.file.DefinitionRead;
import fayline.store.file.DefinitionReader;
import fayline.store.file.FolderFiles;
import fayline.store.file.HistoryEvent;
import fayline.store.file.HistoryPhoto;
import fayline.store.file.HistoryRead;
import fayline.store.file.HistoryReader;
import fayline.store.file.kind.Kind;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Reads a definition folder into the record: one entry for each file that changed, then its history through the ordinary use
 * cases. All of it in one transaction, or nothing. Files of the shop that a second project brings are kept where they are the
 * same, added where they are new, and refused where they differ, unless they are to be taken.
 */
public final class ImportFolder {
    /** What export adds to the history; replayed and not kept as a file, since the entries themselves are kept. */
    static final String RECORD = "history/record.yaml";

    private final ShopRecord shop;

    /** Into a shop's record. */
    public ImportFolder(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * Reads a folder in.
     *
     * @param folder the folder
     * @param takeShop whether files of the shop that differ are taken from the folder
     * @throws IOException if the folder cannot be read
     */
    public Imported from(Path folder, boolean takeShop) throws IOException {
        return of(DefinitionFolder.from(folder), photosOf(folder), takeShop);
    }

    /** The photos of notes that lie in a folder. */
    public static EntryFiles photosOf(Path folder) {
        return new FolderFiles(folder.resolve(HistoryPhoto.FOLDER));
    }

    /** Reads files in whose history names no photos. */
    public Imported of(DefinitionFolder files, boolean takeShop) {
        return of(files, new MemoryFiles(), takeShop);
    }

    /**
     * Reads files in.
     *
     * @param files the files
     * @param photos the photos that their history may name; only read
     * @param takeShop whether files of the shop that differ are taken
     */
    public Imported of(DefinitionFolder files, EntryFiles photos, boolean takeShop) {
        return shop.deciding(() -> decide(files, photos, takeShop, Map.of()));
    }

    /**
     * Reads in the files of a project that begins with one of them.
     *
     * @param files the files
     * @param path the one file that somebody sent
     * @param sent who sent it under which id, so that it is known again when it is sent twice
     */
    public Imported begun(DefinitionFolder files, String path, Sent sent) {
        return shop.deciding(() -> decide(files, new MemoryFiles(), false, Map.of(path, sent)));
    }

    private Imported decide(DefinitionFolder files, EntryFiles photos, boolean takeShop, Map<String, Sent> senders) {
        DefinitionRead alone = DefinitionReader.read(files);
        if (alone.definition().isEmpty()) {
            return refused("", alone.problems());
        }
        String project = alone.definition().get().facts().id();
        RecordState state = shop.state();
        boolean shared = state.projects().stream().anyMatch(p -> !p.equals(project));
        SortedMap<String, KeptFile> kept = new TreeMap<>();
        for (String path : files.paths()) {
            if (!path.equals(RECORD)) {
                kept.put(path, KeptFile.of(path, files.bytes(path).orElseThrow()));
            }
        }
        List<InputProblem> clashes = shared && !takeShop ? clashes(state, kept) : List.of();
        if (!clashes.isEmpty()) {
            return refused(project, clashes);
        }
        List<NewEntry> changes = changes(state, project, kept, shared, senders);
        ShopRecord trial = new ShopRecord(new MemoryLog(shop.entries(1)), photos, shop.clock());
        if (!state.projects().contains(project)) {
            Value.Fields who = Value.Fields.NONE
                    .with("id", project)
                    .with("name", alone.definition().get().facts().name());
            trial.append(NewEntry.of(Sent.freshId(), "", shop.now(), project, EntryKind.PROJECT_ADDED, who));
        }
        trial.append(changes);
        return replayAndKeep(trial, state, project, files, changes.size());
    }

    private Imported replayAndKeep(
            ShopRecord trial, RecordState before, String project, DefinitionFolder files, int changed) {
        List<InputProblem> problems = new ArrayList<>(trial.problems(project));
        // What the shop's files mean to the other projects counts as well.
        trial.state().projects().stream()
                .filter(p -> !p.equals(project))
                .forEach(p -> problems.addAll(stops(trial.problems(p))));
        Optional<Definition> definition = trial.definition(project);
        if (definition.isEmpty() || !stops(problems).isEmpty()) {
            return refused(project, problems);
        }
        HistoryRead others = HistoryReader.read(files.without(RECORD), definition.get());
        HistoryRead whole = HistoryReader.read(files, definition.get());
        problems.addAll(whole.problems());
        if (!stops(problems).isEmpty()) {
            return refused(project, problems);
        }
        HistoryReplay replay = new HistoryReplay(trial, definition.get());
        replay.replay(others.events());
        replay.replay(inOrder(whole));
        problems.addAll(replay.problems());
        if (!stops(problems).isEmpty()) {
            return refused(project, problems);
        }
        if (trial.state().head().equals(before.head())) {
            return new Imported(project, 0, 0, problems, "Everything in the folder is already in the record.");
        }
        Value.Fields closing = Value.Fields.NONE
                .with("files", changed)
                .with("events", replay.recorded())
                .with("definition", definition.get().hash());
        trial.append(NewEntry.of(Sent.freshId(), "", shop.now(), project, EntryKind.FOLDER_IMPORTED, closing));
        return keep(trial, before, project, changed, replay.recorded(), problems);
    }

    /** The events of the exported record in the order in which they stand there, which is the order of their entries. */
    private static List<HistoryEvent> inOrder(HistoryRead whole) {
        return whole.events().stream()
                .filter(e -> e.file().equals(RECORD))
                .sorted(Comparator.comparingInt(HistoryEvent::line))
                .toList();
    }

    private Imported keep(
            ShopRecord trial, RecordState before, String project, int files, int events, List<InputProblem> problems) {
        List<NewEntry> fresh = trial.entries(before.head().seq() + 1).stream()
                .map(ImportFolder::again)
                .toList();
        fresh.stream()
                .filter(n -> !n.kind().equals(EntryKind.FILE_SAVED.key()))
                .flatMap(n -> n.files().stream())
                .distinct()
                .flatMap(hash -> trial.files().get(hash).stream())
                .forEach(shop.files()::put);
        for (Outcome outcome : shop.append(fresh)) {
            if (!outcome.stands()) {
                throw new IllegalStateException("the import was not recorded: " + outcome.sentence());
            }
        }
        return new Imported(
                project,
                files,
                events,
                problems,
                "Project " + project + ": " + files + (files == 1 ? " file and " : " files and ") + events
                        + (events == 1 ? " event" : " events") + " recorded.");
    }

    private static NewEntry again(Entry e) {
        return new NewEntry(e.client(), e.by(), e.phone(), e.taken(), e.project(), e.kind(), e.fields(), e.files());
    }

    private static List<InputProblem> stops(List<InputProblem> problems) {
        return problems.stream().filter(p -> p.severity() == Severity.STOP).toList();
    }

    private static Imported refused(String project, List<InputProblem> problems) {
        return new Imported(project, 0, 0, problems, "The folder was not read in; nothing was recorded.");
    }

    private static boolean ofShop(String path) {
        return Kind.ofPath(path).filter(Kind::ofShop).isPresent();
    }

    private static List<InputProblem> clashes(RecordState state, Map<String, KeptFile> kept) {
        List<InputProblem> clashes = new ArrayList<>();
        kept.forEach((path, file) -> {
            KeptFile now = state.shopFiles().get(path);
            if (ofShop(path) && now != null && !now.sha256().equals(file.sha256())) {
                clashes.add(new InputProblem(
                        Severity.STOP,
                        path,
                        0,
                        "",
                        "another text than the shop's own file has",
                        "the shop's file, since other projects use it too",
                        "leave the file out, make it the same, or read in with --take-shop"));
            }
        });
        return clashes;
    }

    private List<NewEntry> changes(
            RecordState state,
            String project,
            SortedMap<String, KeptFile> kept,
            boolean shared,
            Map<String, Sent> senders) {
        List<NewEntry> changes = new ArrayList<>();
        SortedMap<String, KeptFile> now = state.files(project);
        kept.forEach((path, file) -> {
            KeptFile known = now.get(path);
            if (known == null || !known.sha256().equals(file.sha256())) {
                changes.add(entry(
                        senders.getOrDefault(path, Sent.once("")),
                        project,
                        ofShop(path),
                        EntryKind.FILE_SAVED,
                        file.payload(ofShop(path)),
                        List.of(file.sha256())));
            }
        });
        now.keySet().stream()
                .filter(path -> !kept.containsKey(path) && !(shared && ofShop(path)))
                .forEach(path -> changes.add(entry(
                        Sent.once(""),
                        project,
                        ofShop(path),
                        EntryKind.FILE_REMOVED,
                        Value.Fields.NONE
                                .with("scope", ofShop(path) ? "shop" : "project")
                                .with("path", path),
                        List.of())));
        return changes;
    }

    private NewEntry entry(
            Sent sent, String project, boolean ofShop, EntryKind kind, Value.Fields payload, List<String> files) {
        return new NewEntry(
                sent.client(), sent.by(), "", shop.now(), ofShop ? "" : project, kind.key(), payload, files);
    }
}

package fayline.app.usecase.act;

import fayline.app.usecase.shop.Meanwhile;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.Finding;
import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import fayline.flow.project.Definition;
import fayline.flow.record.EntryKind;
import fayline.flow.record.KeptFile;
import fayline.flow.record.NewEntry;
import fayline.flow.record.RecordState;
import fayline.flow.record.payload.Value;
import fayline.store.file.DefinitionFolder;
import fayline.store.file.DefinitionRead;
import fayline.store.file.DefinitionReader;
import fayline.store.file.kind.Kind;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Changes a definition file: refused with every problem where the definition could not be read with it, in whichever project
 * of the shop; otherwise one entry with the whole text.
 */
public final class SaveFile {
    private final ShopRecord shop;

    /** On a shop's record. */
    public SaveFile(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * Saves a text.
     *
     * @param sent who sends it under which id
     * @param project the project that is seen; a file of the shop is saved for the shop
     * @param path path within the folder, with forward slashes
     * @param text the whole text
     */
    public Outcome save(Sent sent, String project, String path, String text) {
        return shop.deciding(() -> {
            if (!isWritable(text)) {
                return Outcome.refused("The text holds a broken character and cannot be kept.");
            }
            KeptFile file = KeptFile.of(path, text.getBytes(StandardCharsets.UTF_8));
            Optional<KeptFile> now = now(project, path);
            if (now.isPresent() && now.get().sha256().equals(file.sha256()) && !shop.knows(sent.client())) {
                return Outcome.nothing("Nothing in " + path + " was changed.");
            }
            return change(sent, project, path, Optional.of(file));
        });
    }

    /**
     * Saves a text that was made from another one: refused where someone else saved the file in between.
     *
     * @param basedOn SHA-256 of the text that was changed; empty for a file that was new
     */
    public Outcome save(Sent sent, String project, String path, String text, String basedOn) {
        return shop.deciding(() -> {
            String now = now(project, path).map(KeptFile::sha256).orElse("");
            boolean resent = KeptFile.of(path, text.getBytes(StandardCharsets.UTF_8))
                    .sha256()
                    .equals(now);
            if (!now.equals(basedOn) && !resent) {
                return Outcome.overtaken(lines(project, path, basedOn));
            }
            return save(sent, project, path, text);
        });
    }

    /**
     * Saves files of the project in one transaction: all of them or none. The first carries the sender's id, each further one an
     * id made from it.
     *
     * @param files the whole texts by path, in order; none of them a file of the shop
     */
    public Outcome saveTogether(Sent sent, String project, Map<String, String> files) {
        if (files.size() == 1) {
            Map.Entry<String, String> one = files.entrySet().iterator().next();
            return save(sent, project, one.getKey(), one.getValue());
        }
        return shop.deciding(() -> {
            if (!shop.state().projects().contains(project)) {
                return Outcome.refused("The project " + project + " is not in this shop.");
            }
            if (!files.values().stream().allMatch(SaveFile::isWritable)) {
                return Outcome.refused("The text holds a broken character and cannot be kept.");
            }
            DefinitionFolder folder = shop.folder(project);
            List<NewEntry> entries = new ArrayList<>();
            for (Map.Entry<String, String> f : files.entrySet()) {
                KeptFile file = KeptFile.of(f.getKey(), f.getValue().getBytes(StandardCharsets.UTF_8));
                folder = with(folder, f.getKey(), file);
                Sent as = entries.isEmpty()
                        ? sent
                        : new Sent(sent.client() + "-" + entries.size(), sent.by(), sent.live(), sent.seen());
                entries.add(entry(as, project, false, f.getKey(), Optional.of(file)));
            }
            DefinitionRead read = DefinitionReader.read(folder);
            if (!read.stops().isEmpty()) {
                return Outcome.refused("Nothing was saved.", read.stops());
            }
            List<Outcome> outcomes = shop.append(entries);
            return outcomes.stream()
                    .filter(o -> !o.stands())
                    .findFirst()
                    .orElse(outcomes.get(0))
                    .with(files.keySet().stream()
                            .flatMap(path -> cautionsIn(read, path).stream())
                            .toList());
        });
    }

    /** What others changed of a file since it had a hash: from the first line that differs to the last. */
    private List<Meanwhile> lines(String project, String path, String basedOn) {
        List<SinceSeen.Version> versions = new SinceSeen(shop, project, path).versionsFrom(basedOn);
        Optional<KeptFile> now = now(project, path);
        if (versions.isEmpty()) {
            return List.of(new Meanwhile(
                    path,
                    basedOn.isEmpty() ? "" : "another text",
                    now.map(KeptFile::content).orElse(""),
                    "",
                    "",
                    now.map(KeptFile::seq).orElse(0L)));
        }
        SinceSeen.Version last = versions.get(versions.size() - 1);
        return List.of(ChangedLines.between(versions.get(0).text(), last.text()).by(last.by(), last.seq()));
    }

    /**
     * Takes a file out of the definition that was looked at: refused where someone else saved it in between.
     *
     * @param basedOn SHA-256 of the text that was looked at
     */
    public Outcome remove(Sent sent, String project, String path, String basedOn) {
        return shop.deciding(() -> {
            String now = now(project, path).map(KeptFile::sha256).orElse("");
            return now.isEmpty() || now.equals(basedOn)
                    ? remove(sent, project, path)
                    : Outcome.overtaken(lines(project, path, basedOn));
        });
    }

    /** Takes a file out of the definition. */
    public Outcome remove(Sent sent, String project, String path) {
        return shop.deciding(() -> now(project, path).isEmpty()
                ? Outcome.refused("There is no file " + path + ".")
                : change(sent, project, path, Optional.empty()));
    }

    private static boolean isWritable(String text) {
        try {
            return !new Value.Text(text).canonical().isEmpty();
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private Optional<KeptFile> now(String project, String path) {
        return Optional.ofNullable(shop.state().files(project).get(path));
    }

    private Outcome change(Sent sent, String project, String path, Optional<KeptFile> file) {
        Optional<Kind> kind = Kind.ofPath(path);
        if (kind.filter(k -> k == Kind.HISTORY).isPresent()) {
            return Outcome.refused(
                    "History comes in by importing a folder. To mend what was recorded, correct it on its card.");
        }
        RecordState state = shop.state();
        if (!state.projects().contains(project)) {
            return Outcome.refused("The project " + project + " is not in this shop.");
        }
        boolean ofShop = kind.filter(Kind::ofShop).isPresent();
        Set<InputProblem> stops = new LinkedHashSet<>();
        List<Finding> cautions = new ArrayList<>();
        for (String p : ofShop ? state.projects() : List.of(project)) {
            DefinitionFolder before = shop.folder(p);
            DefinitionRead read =
                    DefinitionReader.read(file.isPresent() ? with(before, path, file.get()) : before.without(path));
            stops.addAll(read.stops());
            cautions.addAll(cautionsIn(read, path));
            read.definition().flatMap(d -> otherId(d, p, path)).ifPresent(stops::add);
        }
        if (!stops.isEmpty()) {
            return Outcome.refused(path + " was not saved.", List.copyOf(stops));
        }
        return shop.append(entry(sent, ofShop ? "" : project, ofShop, path, file))
                .with(cautions);
    }

    private static DefinitionFolder with(DefinitionFolder folder, String path, KeptFile file) {
        return folder.with(path, new String(file.bytes(), StandardCharsets.UTF_8));
    }

    private static List<Finding> cautionsIn(DefinitionRead read, String path) {
        return read.problems().stream()
                .filter(c -> c.severity() == Severity.CAUTION && c.file().equals(path))
                .map(c -> new Finding(Severity.CAUTION, path, c.sentence(), "the definition"))
                .toList();
    }

    private static Optional<InputProblem> otherId(Definition d, String project, String path) {
        return d.facts().id().equals(project)
                ? Optional.empty()
                : Optional.of(new InputProblem(
                        Severity.STOP,
                        path,
                        0,
                        "project.id",
                        d.facts().id(),
                        project,
                        "a project keeps its id; another aircraft comes in as a folder of its own"));
    }

    private NewEntry entry(Sent sent, String project, boolean ofShop, String path, Optional<KeptFile> file) {
        Value.Fields removed =
                Value.Fields.NONE.with("scope", ofShop ? "shop" : "project").with("path", path);
        return new NewEntry(
                sent.client(),
                sent.by(),
                "",
                shop.now(),
                project,
                (file.isPresent() ? EntryKind.FILE_SAVED : EntryKind.FILE_REMOVED).key(),
                file.map(f -> f.payload(ofShop)).orElse(removed),
                file.map(f -> List.of(f.sha256())).orElse(List.of()));
    }
}

package fayline.flow.record;

import fayline.flow.record.payload.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Folds what tells of projects and of their definition files. */
final class FileFold {
    private static final String SHOP = "shop";
    private static final String SCOPE = "scope";
    private final List<String> projects = new ArrayList<>();
    private final SortedMap<String, KeptFile> ofShop = new TreeMap<>();
    private final SortedMap<String, SortedMap<String, KeptFile>> ofProjects = new TreeMap<>();

    List<String> projects() {
        return projects;
    }

    SortedMap<String, KeptFile> ofShop() {
        return ofShop;
    }

    SortedMap<String, SortedMap<String, KeptFile>> ofProjects() {
        return ofProjects;
    }

    /** A file of a project, or of the shop where the project is empty. */
    Optional<KeptFile> file(String project, String path) {
        SortedMap<String, KeptFile> files = project.isEmpty() ? ofShop : ofProjects.get(project);
        return files == null ? Optional.empty() : Optional.ofNullable(files.get(path));
    }

    Touched save(Entry entry, Value.Fields f) {
        boolean binary = f.fields().containsKey("base64");
        KeptFile file =
                new KeptFile(f.text("path"), f.text(binary ? "base64" : "text"), binary, f.text("sha256"), entry.seq());
        scope(entry, f).put(file.path(), file);
        return Touched.file(isOfShop(f) ? "" : entry.project(), file.path());
    }

    Touched remove(Entry entry, Value.Fields f) {
        scope(entry, f).remove(f.text("path"));
        return Touched.file(isOfShop(f) ? "" : entry.project(), f.text("path"));
    }

    Touched addProject(String project) {
        if (!projects.contains(project)) {
            projects.add(project);
            ofProjects.computeIfAbsent(project, p -> new TreeMap<>());
        }
        return Touched.NOTHING;
    }

    private SortedMap<String, KeptFile> scope(Entry entry, Value.Fields f) {
        return isOfShop(f) ? ofShop : ofProjects.computeIfAbsent(entry.project(), p -> new TreeMap<>());
    }

    private static boolean isOfShop(Value.Fields f) {
        return f.text(SCOPE).equals(SHOP);
    }
}

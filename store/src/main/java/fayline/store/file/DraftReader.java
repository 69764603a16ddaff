package fayline.store.file;

import fayline.basis.geometry.Outline;
import fayline.flow.project.Definition;
import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.catalog.Keyed;
import fayline.flow.project.shop.LeadWish;
import fayline.flow.project.shop.Mould;
import fayline.flow.project.shop.Person;
import fayline.flow.project.stock.Material;
import fayline.store.file.kind.ChainKind;
import fayline.store.file.kind.ClimateKind;
import fayline.store.file.kind.CrewKind;
import fayline.store.file.kind.Fields;
import fayline.store.file.kind.FitKind;
import fayline.store.file.kind.JointKind;
import fayline.store.file.kind.Kind;
import fayline.store.file.kind.LaminateKind;
import fayline.store.file.kind.LocalKind;
import fayline.store.file.kind.PartKind;
import fayline.store.file.kind.ProjectKind;
import fayline.store.file.kind.RecipeKind;
import fayline.store.file.kind.ShopKind;
import fayline.store.file.kind.StockKind;
import fayline.store.file.kind.SystemKind;
import fayline.store.file.kind.WishKind;
import fayline.store.file.outline.OutlineReader;
import fayline.store.file.rule.Draft;
import fayline.store.file.rule.Placed;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.yaml.Nearest;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import fayline.store.file.yaml.YamlDoor;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Reads every file of a folder into a draft. */
final class DraftReader {
    private static final List<Kind> NEEDED = List.of(Kind.PROJECT, Kind.SHOP, Kind.PEOPLE, Kind.CLIMATE);

    private final DefinitionFolder folder;
    private final Problems problems;
    private final Map<Kind, List<Tree>> trees = new EnumMap<>(Kind.class);
    private final Set<Kind> unread = EnumSet.noneOf(Kind.class);

    DraftReader(DefinitionFolder folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    Draft read() {
        readFiles();
        Tree shopTree = single(Kind.SHOP);
        Tree projectTree = single(Kind.PROJECT);
        Tree climateTree = single(Kind.CLIMATE);
        Tree localTree = single(Kind.LOCAL);
        ZoneId zone = ShopKind.zone(new Fields(shopTree));
        OutlineReader outlines = new OutlineReader(folder::text, folder.paths(), problems);
        Function<Tree, Optional<Outline>> outline = outlines::read;

        List<Placed<Person>> people = placed(Kind.PEOPLE, CrewKind::person);
        List<Placed<Mould>> moulds = placed(Kind.MOULDS, CrewKind::mould);
        List<Placed<LeadWish>> wishes = placed(Kind.WISHES, WishKind::wish);
        List<Placed<Material>> materials = placed(Kind.MATERIALS, StockKind::material);
        Catalog<Material> known = Draft.catalog(materials);
        var systems = placed(Kind.SYSTEMS, SystemKind::read);
        var lots = placed(Kind.LOTS, StockKind::lot);
        var deliveries = placed(Kind.DELIVERIES, StockKind::delivery);
        var laminates = placed(Kind.LAMINATES, f -> LaminateKind.laminate(f, known));
        var assemblies = placed(Kind.ASSEMBLIES, LaminateKind::assembly);
        var parts = placed(Kind.PARTS, f -> PartKind.read(f, outline));
        var recipes = placed(Kind.RECIPES, RecipeKind::read);
        var joints = placed(Kind.JOINTS, JointKind::joint);
        var fits = placed(Kind.FITS, f -> FitKind.fit(f, outline));
        var chains = placed(Kind.CHAINS, ChainKind::chain);
        Definition whole = new Definition(
                folder.hash(),
                ProjectKind.read(new Fields(projectTree), zone),
                ShopKind.read(
                        new Fields(shopTree),
                        people.stream().map(Placed::value).toList(),
                        moulds.stream().map(Placed::value).toList(),
                        wishes.stream().map(Placed::value).toList()),
                known,
                Draft.catalog(systems),
                Draft.catalog(lots),
                Draft.catalog(deliveries),
                Draft.catalog(laminates),
                Draft.catalog(assemblies),
                Draft.catalog(parts),
                Draft.catalog(recipes),
                Draft.catalog(joints),
                Draft.catalog(fits),
                Draft.catalog(chains),
                ClimateKind.read(new Fields(climateTree), zone),
                LocalKind.read(new Fields(localTree)));
        return new Draft(
                whole,
                projectTree,
                shopTree,
                climateTree,
                localTree,
                people,
                moulds,
                wishes,
                materials,
                systems,
                lots,
                deliveries,
                laminates,
                assemblies,
                parts,
                recipes,
                joints,
                fits,
                chains,
                unread);
    }

    private void readFiles() {
        for (String path : folder.paths()) {
            Optional<Kind> kind = Kind.ofPath(path);
            if (kind.isEmpty()) {
                cautionUnread(path);
                continue;
            }
            Optional<String> text = folder.text(path);
            if (text.isEmpty()) {
                unread.add(kind.get());
                problems.stopFile(path, 0, "bytes that are no UTF-8 text", "UTF-8", "save it again as UTF-8");
                continue;
            }
            YamlDoor.read(path, text.get(), problems)
                    .ifPresentOrElse(root -> keep(kind.get(), root), () -> unread.add(kind.get()));
        }
        for (Kind kind : NEEDED) {
            if (trees.getOrDefault(kind, List.of()).isEmpty()
                    && folder.paths().stream()
                            .noneMatch(p -> Kind.ofPath(p).filter(kind::equals).isPresent())) {
                problems.stopFile(kind.key() + ".yaml", 0, "no such file", kind.about(), "add " + kind.key() + ".yaml");
            }
        }
    }

    private void cautionUnread(String path) {
        if (path.endsWith(".yaml") || path.endsWith(".yml")) {
            String word = path.contains("/")
                    ? path.substring(0, path.indexOf('/'))
                    : path.substring(0, path.lastIndexOf('.'));
            problems.cautionFile(
                    path,
                    "a name that says no kind, so it is kept and not read",
                    "one of " + String.join(", ", Kind.keys()),
                    Nearest.suggest(word, Kind.keys()));
        }
    }

    private void keep(Kind kind, Tree root) {
        if (root.form() != Tree.Form.MAPPING) {
            unread.add(kind);
            problems.stop(root, Problems.found(root), "the key \"" + kind.key() + ":\" with its content below", "");
            return;
        }
        Keys whole = kind.file();
        if (kind == Kind.HISTORY) {
            whole.check(root, problems);
            return;
        }
        for (String key : root.entries().keySet()) {
            if (!key.equals(kind.key())) {
                problems.stopAtKey(
                        root,
                        key,
                        "an unknown key",
                        "only \"" + kind.key() + ":\" in a file of this name",
                        Kind.keys().contains(key) ? "move it to " + key + ".yaml" : Nearest.suggest(key, Kind.keys()));
            }
        }
        Optional<Tree> top = root.get(kind.key());
        if (top.isEmpty()) {
            unread.add(kind);
            problems.stopAtKey(root, kind.key(), "nothing", "the key \"" + kind.key() + ":\" at the top", "");
            return;
        }
        trees.computeIfAbsent(kind, k -> new ArrayList<>()).add(top.get());
    }

    private Tree single(Kind kind) {
        List<Tree> found = trees.getOrDefault(kind, List.of());
        if (found.isEmpty()) {
            return Tree.nothing(kind.key() + ".yaml", kind.key());
        }
        for (Tree more : found.subList(1, found.size())) {
            problems.stop(
                    more,
                    "a second " + kind.key(),
                    "one in the folder",
                    "it stands in " + found.get(0).file());
        }
        kind.shape().check(found.get(0), problems);
        return found.get(0);
    }

    private <T extends Keyed> List<Placed<T>> placed(Kind kind, Function<Fields, T> reader) {
        List<Placed<T>> all = new ArrayList<>();
        Map<String, Tree> first = new HashMap<>();
        Listed shape = (Listed) kind.shape();
        for (Tree list : trees.getOrDefault(kind, List.of())) {
            if (list.form() != Tree.Form.LIST || list.items().size() < shape.least()) {
                unread.add(kind);
                shape.check(list, problems);
                continue;
            }
            for (Tree item : list.items()) {
                int before = problems.count();
                shape.item().check(item, problems);
                if (item.form() != Tree.Form.MAPPING) {
                    unread.add(kind);
                    continue;
                }
                T value = reader.apply(new Fields(item));
                all.add(new Placed<>(value, item, problems.count() == before));
                if (item.get("id").isEmpty()) {
                    unread.add(kind);
                }
                Tree other = value.id().isEmpty() ? null : first.putIfAbsent(value.id(), item);
                if (other != null) {
                    problems.stop(
                            item.down("id"),
                            Problems.quote(value.id()) + " a second time",
                            "each id once among " + kind.key(),
                            "it stands in " + other.file() + ":" + other.line() + " too");
                }
            }
        }
        return all;
    }
}

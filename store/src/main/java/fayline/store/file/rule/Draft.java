package fayline.store.file.rule;

import fayline.flow.project.Definition;
import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.catalog.Keyed;
import fayline.flow.project.chain.FitChain;
import fayline.flow.project.design.Assembly;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Laminate;
import fayline.flow.project.design.Made;
import fayline.flow.project.design.Part;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.recipe.Recipe;
import fayline.flow.project.shop.LeadWish;
import fayline.flow.project.shop.Mould;
import fayline.flow.project.shop.Person;
import fayline.flow.project.stock.Delivery;
import fayline.flow.project.stock.Lot;
import fayline.flow.project.stock.Material;
import fayline.flow.project.stock.ResinSystem;
import fayline.store.file.kind.Kind;
import fayline.store.file.yaml.Tree;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A definition as read, before it is known to hold together: every value with its place.
 *
 * @param whole all values as a definition
 * @param project where the project is written
 * @param shop where the shop is written
 * @param climate where the climate is written
 * @param local where the local rules are written
 * @param people people with their places
 * @param moulds moulds with their places
 * @param wishes wishes with their places
 * @param materials materials with their places
 * @param systems systems with their places
 * @param lots lots with their places
 * @param deliveries deliveries with their places
 * @param laminates laminates with their places
 * @param assemblies assemblies with their places
 * @param parts parts with their places
 * @param recipes recipes with their places
 * @param joints joints with their places
 * @param fits fits with their places
 * @param chains chains of bonds
 * @param unread kinds of which a file or an item could not be read: what is missing there may yet be written
 */
public record Draft(
        Definition whole,
        Tree project,
        Tree shop,
        Tree climate,
        Tree local,
        List<Placed<Person>> people,
        List<Placed<Mould>> moulds,
        List<Placed<LeadWish>> wishes,
        List<Placed<Material>> materials,
        List<Placed<ResinSystem>> systems,
        List<Placed<Lot>> lots,
        List<Placed<Delivery>> deliveries,
        List<Placed<Laminate>> laminates,
        List<Placed<Assembly>> assemblies,
        List<Placed<Part>> parts,
        List<Placed<Recipe>> recipes,
        List<Placed<Joint>> joints,
        List<Placed<Fit>> fits,
        List<Placed<FitChain>> chains,
        Set<Kind> unread) {

    /** Copies the lists. */
    public Draft {
        people = List.copyOf(people);
        moulds = List.copyOf(moulds);
        wishes = List.copyOf(wishes);
        materials = List.copyOf(materials);
        systems = List.copyOf(systems);
        lots = List.copyOf(lots);
        deliveries = List.copyOf(deliveries);
        laminates = List.copyOf(laminates);
        assemblies = List.copyOf(assemblies);
        parts = List.copyOf(parts);
        recipes = List.copyOf(recipes);
        joints = List.copyOf(joints);
        fits = List.copyOf(fits);
        chains = List.copyOf(chains);
        unread = Set.copyOf(unread);
    }

    /** Whether every file of some kinds was read, so that what is not there is missing. */
    boolean all(Kind... kinds) {
        return Stream.of(kinds).noneMatch(unread::contains);
    }

    /** A catalog of placed values. */
    public static <T extends Keyed> Catalog<T> catalog(List<Placed<T>> placed) {
        return new Catalog<>(placed.stream().map(Placed::value).toList());
    }

    /** The ids of placed values. */
    static List<String> ids(List<? extends Placed<?>> placed) {
        return placed.stream().map(Placed::id).toList();
    }

    /** Everything that recipes make: parts, then joints. */
    public List<Placed<? extends Keyed>> made() {
        List<Placed<? extends Keyed>> all = new ArrayList<>(parts);
        all.addAll(joints);
        return all;
    }

    /** A part or joint by id. */
    Optional<Made> made(String id) {
        Optional<Part> part = whole.parts().find(id);
        return part.isPresent()
                ? part.map(p -> (Made) p)
                : whole.joints().find(id).map(j -> (Made) j);
    }
}

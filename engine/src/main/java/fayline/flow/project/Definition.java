package fayline.flow.project;

import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.chain.FitChain;
import fayline.flow.project.design.Assembly;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Laminate;
import fayline.flow.project.design.Part;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.local.LocalRules;
import fayline.flow.project.recipe.Recipe;
import fayline.flow.project.shop.Shop;
import fayline.flow.project.stock.Delivery;
import fayline.flow.project.stock.Lot;
import fayline.flow.project.stock.Material;
import fayline.flow.project.stock.ResinSystem;
import java.util.List;

/**
 * One project in its shop, whole: what the definition folder says, with every reference resolved by id.
 *
 * @param hash the definition's version: a hash over its sorted paths and file hashes
 * @param facts the project's own facts
 * @param shop people, hours, places, moulds, climate limits
 * @param materials what is bought but for mixed systems
 * @param systems mixed systems: resins, coats, adhesives
 * @param lots opening stock
 * @param deliveries what is on order
 * @param laminates stacks
 * @param assemblies the tree above the parts
 * @param parts what is made
 * @param recipes ways of making
 * @param joints bonded joints
 * @param fits edges against neighbours
 * @param chains parts that reach their place through several bonds
 * @param climate readings and forecast of the shop's air
 * @param local what the local authority asks
 */
public record Definition(
        String hash,
        ProjectFacts facts,
        Shop shop,
        Catalog<Material> materials,
        Catalog<ResinSystem> systems,
        Catalog<Lot> lots,
        Catalog<Delivery> deliveries,
        Catalog<Laminate> laminates,
        Catalog<Assembly> assemblies,
        Catalog<Part> parts,
        Catalog<Recipe> recipes,
        Catalog<Joint> joints,
        Catalog<Fit> fits,
        Catalog<FitChain> chains,
        Climate climate,
        LocalRules local) {
    /** The same in another shop. */
    public Definition withShop(Shop other) {
        return with(other, deliveries, climate, parts, joints);
    }

    /** The same with other things on order. */
    public Definition withDeliveries(List<Delivery> others) {
        return with(shop, new Catalog<>(others), climate, parts, joints);
    }

    /** The same in another climate. */
    public Definition withClimate(Climate other) {
        return with(shop, deliveries, other, parts, joints);
    }

    /** The same with other things made, and what waits for deliveries named anew. */
    public Definition withMade(Catalog<Part> others, Catalog<Joint> joined, Catalog<Delivery> ordered) {
        return with(shop, ordered, climate, others, joined);
    }

    private Definition with(
            Shop inShop, Catalog<Delivery> ordered, Climate inClimate, Catalog<Part> made, Catalog<Joint> joined) {
        return new Definition(
                hash,
                facts,
                inShop,
                materials,
                systems,
                lots,
                ordered,
                laminates,
                assemblies,
                made,
                recipes,
                joined,
                fits,
                chains,
                inClimate,
                local);
    }
}

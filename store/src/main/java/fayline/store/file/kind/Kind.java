package fayline.store.file.kind;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.store.file.shape.Key;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Shape;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The kinds of definition file. The file's name or the folder it lies in says its kind; its one top key says it again. */
public enum Kind {
    /** The project's own facts. */
    PROJECT(ProjectKind.SHAPE, "the project's own facts", false),
    /** The shop. */
    SHOP(ShopKind.SHAPE, "the shop: places, climate limits, waste", true),
    /** The crew. */
    PEOPLE(Listed.some(CrewKind.PERSON), "the crew with skills, hours and absences", true),
    /** What the lead has decided about steps beforehand. */
    WISHES(Listed.of(WishKind.WISH), "what the lead has decided about steps beforehand, kept by every plan", true),
    /** Tools. */
    MOULDS(Listed.of(CrewKind.MOULD), "moulds with the state of their release", true),
    /** What is bought. */
    MATERIALS(Listed.of(StockKind.MATERIAL), "what is bought and not mixed", true),
    /** Mixed systems. */
    SYSTEMS(Listed.of(SystemKind.SHAPE), "resins, coats and adhesives with their data-sheet points", true),
    /** Opening stock. */
    LOTS(Listed.of(StockKind.LOT), "delivered batches in the stores", true),
    /** What is on order. */
    DELIVERIES(Listed.of(StockKind.DELIVERY), "what is on order", true),
    /** Stacks. */
    LAMINATES(Listed.of(LaminateKind.LAMINATE), "ordered plies, the first against the mould", false),
    /** The tree above the parts. */
    ASSEMBLIES(Listed.of(LaminateKind.ASSEMBLY), "the tree above the parts", false),
    /** What is made. */
    PARTS(Listed.of(PartKind.SHAPE), "what is made, with zones and the recipes that make it", false),
    /** Ways of making. */
    RECIPES(Listed.of(RecipeKind.SHAPE), "ways of making as parametric steps", true),
    /** Bonded joints. */
    JOINTS(Listed.of(JointKind.JOINT), "bonded joints", false),
    /** Edges against neighbours. */
    FITS(Listed.of(FitKind.FIT), "edges that are fitted against their neighbours", false),
    /** Parts that reach their place through several bonds. */
    CHAINS(Listed.of(ChainKind.CHAIN), "parts that reach their place through several bonds", false),
    /** The shop's air. */
    CLIMATE(ClimateKind.SHAPE, "readings and forecast of the shop's air", true),
    /** What the local authority asks. */
    LOCAL(LocalKind.SHAPE, "what the local authority asks: who counts, tasks, stages that it looks at", false),
    /** What has happened. */
    HISTORY(Listed.of(HistoryKind.SHAPE), "what has happened so far", false);

    @SuppressWarnings("ImmutableEnumChecker") // shapes are records of values and never change
    private final Shape shape;

    private final String about;
    private final boolean ofShop;

    Kind(Shape shape, String about, boolean ofShop) {
        this.shape = shape;
        this.about = about;
        this.ofShop = ofShop;
    }

    /** The top key, and the name of the file or folder. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What a file of this kind holds, in a few words. */
    public String about() {
        return about;
    }

    /** Whether it belongs to the shop rather than to one project. */
    public boolean ofShop() {
        return ofShop;
    }

    /** Whether it is a list, which several files may hold together. */
    public boolean isList() {
        return shape instanceof Listed;
    }

    /** What stands below the top key. */
    public Shape shape() {
        return shape;
    }

    /** What a whole file may hold, as a JSON Schema (2020-12), for editors. */
    public ObjectNode schema() {
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("$id", "fayline:definition:" + key());
        schema.put("title", "Fayline definition: " + key());
        schema.put(
                "description",
                "What " + key() + ".yaml holds" + (isList() ? ", or every file in " + key() + "/" : "") + ": " + about
                        + ".");
        schema.setAll(file().schema());
        return schema;
    }

    /** What a whole file may hold. */
    public Keys file() {
        return Keys.of("a file of kind " + key(), Key.must(key(), shape, about));
    }

    /** The names of all kinds. */
    public static List<String> keys() {
        return Arrays.stream(values()).map(Kind::key).toList();
    }

    /** The kind of a file by its path; empty for a file that is kept and not read. */
    public static Optional<Kind> ofPath(String path) {
        if (!path.endsWith(".yaml") && !path.endsWith(".yml")) {
            return Optional.empty();
        }
        int slash = path.indexOf('/');
        String word = slash >= 0 ? path.substring(0, slash) : path.substring(0, path.lastIndexOf('.'));
        String modern = word.equals("molds") ? "moulds" : word;
        return Arrays.stream(values()).filter(k -> k.key().equals(modern)).findFirst();
    }
}

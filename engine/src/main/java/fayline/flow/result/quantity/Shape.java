package fayline.flow.result.quantity;

import fayline.basis.units.Angle;
import fayline.basis.units.Area;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Laminate;
import fayline.flow.project.design.Made;
import fayline.flow.project.design.Part;
import fayline.flow.project.design.Ply;
import fayline.flow.project.design.Zone;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The measures of a part or joint on which rates and amounts are counted. A measure may be asked for one lay-up stage: then
 * only zones with plies of that stage count; stage 0 stands for the whole. Areas in m2, lengths in m.
 */
public final class Shape {
    /** Spacing of pleats along an edge: 0.4 to 0.6 m, common practice, no source. */
    static final double PLEAT_SPACING_M = 0.5;

    private final List<Zone> zones;
    private final List<PlyCut> plies;
    private final Map<String, Double> sizes;
    private final double jointLengthM;
    private final double jointAreaM2;

    private Shape(
            List<Zone> zones, List<PlyCut> plies, Map<String, Double> sizes, double jointLengthM, double jointAreaM2) {
        this.zones = zones;
        this.plies = plies;
        this.sizes = sizes;
        this.jointLengthM = jointLengthM;
        this.jointAreaM2 = jointAreaM2;
    }

    /** The measures of something made. */
    public static Shape of(Definition definition, Made made) {
        if (made instanceof Part part) {
            return new Shape(
                    part.zones(),
                    plies(definition, part),
                    part.sizes(),
                    part.sizes().getOrDefault("joint-m", 0.0),
                    part.sizes().getOrDefault("joint-m2", 0.0));
        }
        if (made instanceof Joint joint) {
            return new Shape(
                    List.of(),
                    List.of(),
                    joint.sizes(),
                    joint.length().metres(),
                    joint.fayingArea().squareMetres());
        }
        throw new IllegalArgumentException("neither part nor joint: " + made.id());
    }

    private static List<PlyCut> plies(Definition definition, Part part) {
        List<PlyCut> cuts = new ArrayList<>();
        int deepest = part.zones().stream()
                .flatMap(z -> definition.laminates().get(z.laminate()).plies().stream())
                .mapToInt(Ply::stage)
                .max()
                .orElse(0);
        for (int stage = 1; stage <= deepest; stage++) {
            for (Zone zone : part.zones()) {
                Laminate laminate = definition.laminates().get(zone.laminate());
                for (Ply ply : laminate.plies()) {
                    if (ply.stage() == stage) {
                        cuts.add(cut(cuts.size() + 1, zone, ply));
                    }
                }
            }
        }
        return List.copyOf(cuts);
    }

    private static PlyCut cut(int order, Zone zone, Ply ply) {
        Angle angle = new Angle(ply.angle().si() + zone.axis().si());
        return new PlyCut(order, zone.id(), ply.material(), angle, ply.stage(), ply.core(), zone.area());
    }

    /** Plies and core layers of a stage, or of all, in the order of laying. */
    public List<PlyCut> plies(int stage) {
        return plies.stream().filter(p -> stage == 0 || p.stage() == stage).toList();
    }

    /** Area of the zones that a stage covers; of a part without zones the size {@code area}, of a joint its faying area. */
    public Area area(int stage) {
        return new Area(areaM2(stage));
    }

    /** Length of edge: the size {@code edge} where it is stated, else the sum over the zones that a stage covers. */
    public double edgeM(int stage) {
        Double stated = sizes.get("edge");
        return stated != null
                ? stated
                : zones(stage).stream().mapToDouble(z -> z.edge().metres()).sum();
    }

    /** Whether the edge is the sum over several zones, and so more than the outline. */
    public boolean edgeIsSum(int stage) {
        return !sizes.containsKey("edge") && zones(stage).size() > 1;
    }

    /** Inside corners. */
    public int corners(int stage) {
        return zones(stage).stream().mapToInt(Zone::corners).sum();
    }

    /** Pleats of a bag: the size {@code pleats} where it is stated, else one every half metre of edge and at each corner. */
    public int pleats(int stage) {
        Double stated = sizes.get("pleats");
        return stated != null
                ? (int) Math.round(stated)
                : (int) Math.ceil(edgeM(stage) / PLEAT_SPACING_M - 1e-9) + corners(stage);
    }

    /** Depth of the mould, 0 where none is stated. */
    public double depthM() {
        return sizes.getOrDefault("depth", 0.0);
    }

    /** A size that the definition states. */
    public OptionalDouble size(String name) {
        Double v = sizes.get(name);
        return v == null ? OptionalDouble.empty() : OptionalDouble.of(v);
    }

    /** Area of the core of a stage. */
    public double coreAreaM2(int stage) {
        return plies(stage).stream()
                .filter(PlyCut::core)
                .mapToDouble(p -> p.area().squareMetres())
                .sum();
    }

    /** Length of the joint. */
    public double jointLengthM() {
        return jointLengthM;
    }

    /**
     * The value of a driver that does not depend on batches or on the bag.
     *
     * @param driver its name, as recipes write it
     * @param stage the stage; 0 for all
     * @return the value; empty where the driver is none of these and no size has its name
     */
    public OptionalDouble driver(String driver, int stage) {
        OptionalDouble stated = size(driver);
        if (stated.isPresent()) {
            return stated;
        }
        List<PlyCut> laid = plies(stage).stream().filter(p -> !p.core()).toList();
        return switch (driver) {
            case "step" -> OptionalDouble.of(1);
            case "m2", "coat-m2" -> OptionalDouble.of(areaM2(stage));
            case "ply" -> OptionalDouble.of(laid.size());
            case "ply-m2" ->
                OptionalDouble.of(
                        laid.stream().mapToDouble(p -> p.area().squareMetres()).sum());
            case "m" -> OptionalDouble.of(jointLengthM > 0 && zones.isEmpty() ? jointLengthM : edgeM(stage));
            case "corner" -> OptionalDouble.of(corners(stage));
            case "pleat" -> OptionalDouble.of(pleats(stage));
            case "core-m2" -> OptionalDouble.of(coreAreaM2(stage));
            case "joint-m" -> OptionalDouble.of(jointLengthM);
            case "joint-m2" -> OptionalDouble.of(jointAreaM2);
            default -> OptionalDouble.empty();
        };
    }

    private double areaM2(int stage) {
        if (zones.isEmpty()) {
            return sizes.getOrDefault("area", jointAreaM2);
        }
        return zones(stage).stream().mapToDouble(z -> z.area().squareMetres()).sum();
    }

    /** Zones with plies of a stage; all where the stage is 0 or no zone has plies of it. */
    private List<Zone> zones(int stage) {
        if (stage == 0) {
            return zones;
        }
        List<Zone> with = zones.stream()
                .filter(z -> plies.stream()
                        .anyMatch(p -> p.stage() == stage && p.zone().equals(z.id())))
                .toList();
        return with.isEmpty() ? zones : with;
    }
}

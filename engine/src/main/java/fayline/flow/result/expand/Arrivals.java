package fayline.flow.result.expand;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.plan.Work.Awaited;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.Delivery;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Deliveries and what waits for them. A delivery is counted on from noon of the day with which to plan; one that is overdue, from
 * noon of tomorrow (common practice, no source). What has arrived is waited for no more.
 */
public final class Arrivals {
    private static final LocalTime UNPACKED = LocalTime.NOON;

    private final List<Awaited> awaited = new ArrayList<>();
    private final Map<String, List<String>> byStep = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    /**
     * Reads the deliveries.
     *
     * @param definition the definition
     * @param now the present
     * @param tree what references mean
     */
    public Arrivals(Definition definition, Instant now, MakeTree tree) {
        LocalDate today = now.atZone(definition.shop().zone()).toLocalDate();
        for (Delivery d : definition.deliveries()) {
            boolean here = d.arrived().filter(a -> !a.isAfter(today)).isPresent();
            LocalDate day = d.arrived().orElse(d.latest().orElse(d.due()));
            if (!here && day.isBefore(today)) {
                day = today.plusDays(1);
                findings.add(new Finding(
                        Severity.CAUTION,
                        d.id(),
                        d.what() + " should have come by " + d.latest().orElse(d.due())
                                + " and has not been booked in; it is counted on from tomorrow. Ask the sender.",
                        "the definition"));
            }
            if (here) {
                continue;
            }
            awaited.add(new Awaited(
                    d.id(),
                    d.what(),
                    day.atTime(UNPACKED).atZone(definition.shop().zone()).toInstant()));
            for (String ref : d.needed()) {
                List<String> steps = tree.starts(ref);
                steps.forEach(
                        s -> byStep.computeIfAbsent(s, k -> new ArrayList<>()).add(d.id()));
                if (steps.isEmpty()) {
                    findings.add(new Finding(
                            Severity.CAUTION,
                            d.id(),
                            "Delivery " + d.id() + " is needed by " + ref + ", which is no step of the project.",
                            "the definition"));
                }
            }
        }
    }

    /** What is still awaited. */
    public List<Awaited> awaited() {
        return List.copyOf(awaited);
    }

    /** The deliveries that a step waits for, by its local id. */
    List<String> awaitedBy(String local) {
        return List.copyOf(byStep.getOrDefault(local, List.of()));
    }

    /** What is overdue, or leads nowhere. */
    List<Finding> findings() {
        return List.copyOf(findings);
    }
}

package fayline.flow.audit;

import fayline.flow.plan.Place;
import fayline.flow.plan.Worker.Stretch;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** In a room, dusty hands are done and the air has settled before wet hands start, and dust waits until they leave. */
final class DustStaysAwayFromWetWork implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<Job> wet = inAir(audited, "wet");
        List<Job> dusty = inAir(audited, "dust");
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : wet) {
            for (Job other : dusty) {
                if (!(job.begun() && other.begun()) && shareRoom(audited, job, other)) {
                    check(audited, job, other, found);
                }
            }
        }
        return found;
    }

    private void check(Audited audited, Job wet, Job dusty, List<BrokenRule> found) {
        long settlesS = 60L * audited.work().dustSettlesMin();
        Instant start = wet.planned().start();
        Instant end = wet.planned().handsEnd();
        for (Stretch dust : dusty.stretches()) {
            if (dust.from().isBefore(end) && dust.to().plusSeconds(settlesS).isAfter(start)) {
                found.add(broken(
                        wet.id(),
                        dusty.id(),
                        wet.id() + " is wet work from " + audited.tell(start) + " to " + audited.tell(end)
                                + ", and " + dusty.id() + " makes dust in the same room from "
                                + audited.tell(dust.from()) + " to " + audited.tell(dust.to())
                                + "; expected the dust after it or over "
                                + Minutes.tell(audited.work().dustSettlesMin()) + " before it"));
            }
        }
    }

    private static List<Job> inAir(Audited audited, String air) {
        return audited.jobs().stream()
                .filter(j -> j.work().air().equals(air))
                .filter(j -> j.planned().start().isBefore(j.planned().handsEnd()))
                .toList();
    }

    private static boolean shareRoom(Audited audited, Job one, Job other) {
        return rooms(audited, one).stream().anyMatch(rooms(audited, other)::contains);
    }

    private static Set<String> rooms(Audited audited, Job job) {
        return job.planned().places().stream()
                .flatMap(p -> audited.place(p).stream())
                .filter(p -> p.kind() == Place.Kind.STAND)
                .map(Place::room)
                .collect(Collectors.toSet());
    }
}

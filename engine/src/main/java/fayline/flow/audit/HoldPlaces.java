package fayline.flow.audit;

import fayline.flow.plan.Hold;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Works out which hold takes which places, from the places that the plan gives to its steps. Where holds share steps and
 * candidates, any way of sharing the places out that fits all their steps will do.
 */
final class HoldPlaces {
    private final Audited audited;
    private final Map<Hold, List<String>> chosen = new LinkedHashMap<>();
    private final List<BrokenRule> broken = new ArrayList<>();

    private HoldPlaces(Audited audited) {
        this.audited = audited;
    }

    static HoldPlaces of(Audited audited) {
        HoldPlaces found = new HoldPlaces(audited);
        found.shareOut();
        return found;
    }

    List<BrokenRule> broken() {
        return List.copyOf(broken);
    }

    List<Occupation> occupations() {
        List<Occupation> all = new ArrayList<>();
        chosen.forEach((hold, places) -> {
            List<Job> jobs = jobs(hold);
            Job first = jobs.stream()
                    .min(Comparator.comparing(j -> j.planned().start()))
                    .orElseThrow();
            boolean whole = hold.steps().stream()
                    .filter(s -> audited.step(s).isPresent())
                    .allMatch(s -> audited.job(s).isPresent());
            Instant to = whole
                    ? jobs.stream()
                            .map(j -> j.planned().end())
                            .max(Comparator.naturalOrder())
                            .orElseThrow()
                    : Instant.MAX;
            boolean begun = jobs.stream().anyMatch(Job::begun);
            for (String place : places) {
                all.add(new Occupation(hold, place, first.planned().start(), to, first.id(), begun));
            }
        });
        return List.copyOf(all);
    }

    private List<Job> jobs(Hold hold) {
        return hold.steps().stream().flatMap(s -> audited.job(s).stream()).toList();
    }

    private void shareOut() {
        Map<Hold, List<String>> common = new LinkedHashMap<>();
        for (Hold hold : audited.work().holds()) {
            common(hold).ifPresentOrAppend(common, hold, broken);
        }
        for (Set<Hold> group : groups(common)) {
            List<Hold> holds = List.copyOf(group);
            new SharingOut(holds, common).find().ifPresentOrElse(chosen::putAll, () -> broken.add(cannotShare(holds)));
        }
    }

    private static BrokenRule cannotShare(List<Hold> holds) {
        return new BrokenRule(
                HoldsStayInPlace.class.getSimpleName(),
                holds.get(0).steps(),
                "the holds " + holds.stream().map(Hold::id).toList()
                        + " share steps, and the places given cannot be shared out among them; expected places of"
                        + " their own for each");
    }

    /** What the steps of a hold have in common, or what is wrong with it. */
    private record Common(boolean any, List<String> places, List<BrokenRule> wrong) {
        void ifPresentOrAppend(Map<Hold, List<String>> common, Hold hold, List<BrokenRule> broken) {
            broken.addAll(wrong);
            if (any) {
                common.put(hold, places);
            }
        }
    }

    private Common common(Hold hold) {
        Set<String> common = new LinkedHashSet<>(hold.candidates());
        List<BrokenRule> wrong = new ArrayList<>();
        boolean any = false;
        String before = "";
        for (Job job : jobs(hold)) {
            Set<String> offered = new LinkedHashSet<>(job.planned().places());
            offered.retainAll(hold.candidates());
            if (job.begun() && offered.isEmpty()) {
                continue;
            }
            if (offered.size() < hold.count()) {
                if (!job.begun()) {
                    wrong.add(new BrokenRule(
                            HoldsStayInPlace.class.getSimpleName(),
                            List.of(job.id()),
                            job.id() + " is given " + offered + " of the hold " + hold.id() + "; expected "
                                    + hold.count() + " of " + hold.candidates()));
                }
                continue;
            }
            Set<String> kept = new LinkedHashSet<>(common);
            kept.retainAll(offered);
            if (any && kept.size() < hold.count()) {
                wrong.add(new BrokenRule(
                        HoldsStayInPlace.class.getSimpleName(),
                        List.of(job.id(), before),
                        job.id() + " is at " + offered + ", but " + before + " of the same hold " + hold.id()
                                + " is at " + common + "; expected the same " + hold.count() + " for all its steps"));
                continue;
            }
            common = kept;
            any = true;
            before = job.id();
        }
        return new Common(any, List.copyOf(common), wrong);
    }

    /** Holds that must be looked at together, because they share a step and a place that either could take. */
    private static List<Set<Hold>> groups(Map<Hold, List<String>> common) {
        List<Set<Hold>> groups = new ArrayList<>();
        Set<Hold> seen = new HashSet<>();
        for (Hold start : common.keySet()) {
            if (!seen.add(start)) {
                continue;
            }
            List<Hold> group = new ArrayList<>(List.of(start));
            for (int i = 0; i < group.size(); i++) {
                Hold hold = group.get(i);
                for (Hold other : common.keySet()) {
                    if (!seen.contains(other)
                            && shareAStep(hold, other)
                            && common.getOrDefault(hold, List.of()).stream()
                                    .anyMatch(common.getOrDefault(other, List.of())::contains)) {
                        seen.add(other);
                        group.add(other);
                    }
                }
            }
            groups.add(new LinkedHashSet<>(group));
        }
        return groups;
    }

    static boolean shareAStep(Hold a, Hold b) {
        return a.steps().stream().anyMatch(b.steps()::contains);
    }
}

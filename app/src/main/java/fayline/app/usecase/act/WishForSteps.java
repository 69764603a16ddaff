package fayline.app.usecase.act;

import fayline.app.usecase.shop.Meanwhile;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.shop.LeadWish;
import fayline.flow.project.shop.Shop;
import fayline.store.file.DefinitionFolder;
import fayline.store.file.kind.Kind;
import fayline.store.file.yaml.UneditableException;
import fayline.store.file.yaml.YamlEdit;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Writes down what the lead decides about steps, and takes it back. Each act, however many wishes it makes or ends, is one change of
 * the definition's wishes and so one entry; only their own lines change.
 */
public final class WishForSteps {
    private static final String FILE = "wishes.yaml";
    private static final String LIST = "wishes";
    /** An editor's way to a list in block style: an item to be taken out again once another stands beside it. */
    private static final String SEED = "wishes:\n  - {id: seed}\n";

    private final ShopRecord shop;

    /** On a shop's record. */
    public WishForSteps(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * One thing wished.
     *
     * @param step the step
     * @param kind what
     * @param on the person or place; empty for a start
     * @param from for a start: the earliest, in the shop's time
     * @param before for a start: the moment before which it is
     */
    public record Asked(
            String step, LeadWish.Kind kind, String on, Optional<LocalDateTime> from, Optional<LocalDateTime> before) {
        /** Somebody or some place. */
        public static Asked of(String step, LeadWish.Kind kind, String on) {
            return new Asked(step, kind, on, Optional.empty(), Optional.empty());
        }

        /** A start. */
        public static Asked start(String step, Optional<LocalDateTime> from, Optional<LocalDateTime> before) {
            return new Asked(step, LeadWish.Kind.START, "", from, before);
        }
    }

    /**
     * Wishes in one act. What they take the place of ends with it: the opposite wish, another start, another place of the kind.
     *
     * @param sent who wishes it under which id
     * @param project the project that is seen
     * @param asked what; at least one
     * @param why the reason; may be empty
     */
    public Outcome wish(Sent sent, String project, List<Asked> asked, String why) {
        return shop.deciding(() -> {
            List<LeadWish> made = made(sent, project, asked, why);
            List<LeadWish> there = all(project);
            if (shop.knows(sent.client())) {
                return there.containsAll(made)
                        ? Outcome.already(shop.seqOf(sent.client()).orElse(0L))
                        : Outcome.refused(
                                "This page was sent before with something else. Open it again and choose anew.");
            }
            List<LeadWish> ends = new ArrayList<>();
            for (LeadWish w : there) {
                if (made.stream().anyMatch(m -> replaces(project, m, w))) {
                    ends.addAll(actOf(there, w));
                }
            }
            List<LeadWish> fresh = made.stream()
                    .filter(m -> there.stream().noneMatch(w -> !ends.contains(w) && saysTheSame(m, w)))
                    .toList();
            if (fresh.isEmpty()) {
                return Outcome.nothing("That is wished already.");
            }
            List<Meanwhile> meanwhile = unseen(sent, project, ends);
            if (!meanwhile.isEmpty()) {
                return Outcome.overtaken(meanwhile);
            }
            Outcome outcome = write(sent, project, ends, fresh);
            return ends.isEmpty() || !outcome.stands()
                    ? outcome
                    : new Outcome(
                            outcome.kind(),
                            outcome.seq(),
                            outcome.sentence() + " It takes the place of an earlier wish.",
                            outcome.problems(),
                            outcome.cautions());
        });
    }

    /**
     * Withdraws a wish and those that were made with it.
     *
     * @param sent who withdraws it under which id
     * @param project the project that is seen
     * @param id the wish
     */
    public Outcome withdraw(Sent sent, String project, String id) {
        return shop.deciding(() -> {
            List<LeadWish> there = all(project);
            Optional<LeadWish> wish =
                    there.stream().filter(w -> w.id().equals(id)).findFirst();
            if (wish.isEmpty()) {
                return shop.knows(sent.client())
                        ? Outcome.already(shop.seqOf(sent.client()).orElse(0L))
                        : Outcome.refused("That wish is withdrawn already. Look again at what is wished now.");
            }
            return write(sent, project, actOf(there, wish.get()), List.of());
        });
    }

    /** Wishes that would end and that the sender has not seen yet. */
    private List<Meanwhile> unseen(Sent sent, String project, List<LeadWish> ends) {
        List<Meanwhile> all = new ArrayList<>();
        for (LeadWish w : ends) {
            String path = new ChangeLines(shop).fileOf(project, LIST, w.id()).orElse(FILE);
            new SinceSeen(shop, project, path)
                    .touching(sent, List.of(new ChangeLines.TakeOut(LIST + "[" + w.id() + "]")))
                    .forEach(all::add);
        }
        return all;
    }

    private List<LeadWish> all(String project) {
        return shop.readDefinition(project).shop().wishes().stream().toList();
    }

    private List<LeadWish> made(Sent sent, String project, List<Asked> asked, String why) {
        LocalDateTime said = LocalDateTime.ofInstant(
                        shop.timeOf(sent), shop.readDefinition(project).shop().zone())
                .truncatedTo(ChronoUnit.MINUTES);
        String first = "w-" + sent.client().replace("-", "").substring(0, 10);
        List<LeadWish> made = new ArrayList<>();
        for (Asked a : asked) {
            boolean leads = made.isEmpty();
            made.add(new LeadWish(
                    leads ? first : first + "-" + (made.size() + 1),
                    a.step(),
                    a.kind(),
                    a.on(),
                    a.from(),
                    a.before(),
                    leads ? "" : first,
                    sent.by(),
                    Optional.of(said),
                    why));
        }
        return made;
    }

    private static boolean saysTheSame(LeadWish a, LeadWish b) {
        return a.step().equals(b.step())
                && a.kind() == b.kind()
                && a.on().equals(b.on())
                && a.from().equals(b.from())
                && a.before().equals(b.before());
    }

    /** Whether a new wish cannot stand beside an older one. */
    private boolean replaces(String project, LeadWish now, LeadWish old) {
        if (!now.step().equals(old.step()) || saysTheSame(now, old)) {
            return false;
        }
        return switch (now.kind()) {
            case WITH -> old.kind() == LeadWish.Kind.WITHOUT && old.on().equals(now.on());
            case WITHOUT -> old.kind() == LeadWish.Kind.WITH && old.on().equals(now.on());
            case AT ->
                old.kind() == LeadWish.Kind.AWAY
                        ? old.on().equals(now.on())
                        : old.kind() == LeadWish.Kind.AT
                                && sort(project, old.on()).equals(sort(project, now.on()));
            case AWAY -> old.kind() == LeadWish.Kind.AT && old.on().equals(now.on());
            case START -> old.kind() == LeadWish.Kind.START;
        };
    }

    /** Whether a place is a mould, a stand or a port. */
    private String sort(String project, String place) {
        Shop places = shop.readDefinition(project).shop();
        return places.moulds().find(place).isPresent()
                ? "mould"
                : places.stands().find(place).isPresent() ? "stand" : "port";
    }

    private static List<LeadWish> actOf(List<LeadWish> all, LeadWish one) {
        return all.stream().filter(w -> w.act().equals(one.act())).toList();
    }

    private Outcome write(Sent sent, String project, List<LeadWish> ends, List<LeadWish> fresh) {
        DefinitionFolder folder = shop.folder(project);
        Map<String, String> files = new LinkedHashMap<>();
        try {
            for (LeadWish w : ends) {
                String path =
                        new ChangeLines(shop).fileOf(project, LIST, w.id()).orElse(FILE);
                change(
                        files,
                        folder,
                        path,
                        t -> t.value(LIST + "[" + w.id() + "].id").isPresent()
                                ? t.remove(LIST + "[" + w.id() + "]")
                                : t);
            }
            if (!fresh.isEmpty()) {
                String path = folder.paths().stream()
                        .filter(p ->
                                Kind.ofPath(p).filter(k -> k == Kind.WISHES).isPresent())
                        .findFirst()
                        .orElse(FILE);
                boolean begins = folder.text(path).isEmpty() || isEmpty(files.getOrDefault(path, ""));
                if (begins) {
                    files.put(path, SEED);
                }
                for (LeadWish w : fresh) {
                    change(files, folder, path, t -> t.append(LIST, fields(w)));
                }
                if (begins) {
                    change(files, folder, path, t -> t.remove(LIST + "[seed]"));
                }
            }
        } catch (UneditableException e) {
            return Outcome.refused("The wishes were not changed: " + e.getMessage() + ".");
        }
        return save(sent, project, files);
    }

    private static boolean isEmpty(String text) {
        return text.strip().equals("wishes: []");
    }

    private static void change(
            Map<String, String> files, DefinitionFolder folder, String path, UnaryOperator<YamlEdit> how) {
        String now = files.containsKey(path)
                ? files.getOrDefault(path, "")
                : folder.text(path).orElse("wishes: []\n");
        files.put(path, how.apply(YamlEdit.of(path, now)).text());
    }

    private Outcome save(Sent sent, String project, Map<String, String> files) {
        Set<String> changed = new LinkedHashSet<>(files.keySet());
        if (changed.size() > 1) {
            return Outcome.refused("These wishes stand in several files: " + String.join(", ", changed)
                    + ". Withdraw them one after the other.");
        }
        String path = changed.iterator().next();
        String text = files.getOrDefault(path, "");
        // With its last wish the file goes too, and the definition is what it was before.
        return isEmpty(text)
                ? new SaveFile(shop).remove(sent, project, path)
                : new SaveFile(shop).save(sent, project, path, text);
    }

    private static Map<String, String> fields(LeadWish w) {
        Map<String, String> f = new LinkedHashMap<>();
        f.put("id", w.id());
        f.put("step", w.step());
        f.put(
                switch (w.kind()) {
                    case WITH -> "with";
                    case WITHOUT -> "without";
                    case AT -> "at";
                    case AWAY -> "away-from";
                    case START -> "";
                },
                w.on());
        f.put("from", w.from().map(LocalDateTime::toString).orElse(""));
        f.put("before", w.before().map(LocalDateTime::toString).orElse(""));
        f.put("together", w.together());
        f.put("by", w.by());
        f.put("said", w.said().map(LocalDateTime::toString).orElse(""));
        f.put("why", w.why());
        f.values().removeIf(String::isEmpty);
        return f;
    }
}

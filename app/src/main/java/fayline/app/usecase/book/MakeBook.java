package fayline.app.usecase.book;

import fayline.app.usecase.book.Chapter.Done;
import fayline.app.usecase.book.Chapter.Signature;
import fayline.app.usecase.fit.LookAtFits;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.view.RecordedProject;
import fayline.flow.project.design.Made;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.record.Chain;
import fayline.flow.record.Entry;
import fayline.flow.record.StepRecord;
import fayline.flow.record.TakenReading;
import fayline.flow.record.change.Change;
import fayline.flow.record.stock.Order;
import fayline.flow.result.coupon.CouponCalculator;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.step.StepResult;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Puts a book together from a record. */
public final class MakeBook {
    private static final String CLIMATE = "climate";

    /** How long before a step the air may have been read to tell of it: the shop reads it twice a day. */
    private static final Duration AIR_BEFORE = Duration.ofHours(14);

    /** Steps on which the air bears. */
    private static final Set<StepKind> OPEN_TO_AIR =
            EnumSet.of(StepKind.COAT, StepKind.LAY_UP, StepKind.CORE, StepKind.BAG, StepKind.BOND, StepKind.PREPARE);

    private final RecordedProject seen;
    private final List<Entry> entries;
    private final SignInLog signIns;

    private MakeBook(RecordedProject seen, List<Entry> entries) {
        this.seen = seen;
        this.entries = entries;
        this.signIns = new SignInLog(entries);
    }

    /**
     * Makes a book.
     *
     * @param shop the record, ending where the book ends
     * @param project the project
     * @param id a part, joint or assembly; empty for everything
     * @return empty where there is no such project or thing, or where the record is empty
     */
    public static Optional<Book> of(ShopRecord shop, String project, String id) {
        List<Entry> entries = shop.entries(1);
        return RecordedProject.of(shop, project)
                .flatMap(seen -> BookScope.of(seen.definition(), id).map(scope -> book(seen, entries, scope)));
    }

    private static Book book(RecordedProject seen, List<Entry> entries, BookScope scope) {
        MakeBook maker = new MakeBook(seen, entries);
        Chain chain = new Chain();
        entries.forEach(chain::next);
        Entry last = entries.get(entries.size() - 1);
        List<Chapter> chapters =
                scope.covers(seen.definition()).stream().map(maker::chapter).toList();
        List<Order> others = scope.sort() == BookScope.Sort.WHOLE
                ? maker.orders()
                        .filter(o -> chapters.stream().noneMatch(c -> c.orders().contains(o)))
                        .toList()
                : List.of();
        return new Book(
                seen.definition(),
                seen.result().work(),
                scope,
                last.taken(),
                chain.treeHead(),
                last.hash(),
                chapters,
                maker.changes()
                        .filter(c -> scope.sort() == BookScope.Sort.WHOLE
                                || chapters.stream().anyMatch(x -> x.changes().contains(c)))
                        .toList(),
                others);
    }

    private Chapter chapter(Made made) {
        List<Done> steps =
                seen.result().stepsOf(made.id()).stream().map(this::done).toList();
        List<FitResult> fits = seen.definition().fits().stream()
                .filter(f -> f.part().equals(Optional.of(made.id())))
                .map(f -> LookAtFits.sight(seen.definition(), seen.record(), f, false)
                        .result())
                .toList();
        List<TakenReading> read = readings().stream()
                .filter(r -> isOf(r, made.id()))
                .sorted(Comparator.comparing(TakenReading::at))
                .toList();
        ChapterEntries told = new ChapterEntries(
                entries,
                seen.definition().facts().id(),
                made.id(),
                fits.stream().map(f -> f.fit().id()).toList());
        return new Chapter(
                made,
                BookScope.above(seen.definition(), made),
                seen.result().part(made.id()),
                seen.result().joint(made.id()),
                steps,
                read,
                fits,
                seen.record().trouble().ofMade(seen.definition().facts().id() + "/" + made.id()),
                seen.record().inspect().faultsOf(seen.definition().facts().id()).stream()
                        .filter(f -> f.made().equals(made.id()))
                        .toList(),
                seen.definition().parts().find(made.id()).stream()
                        .flatMap(p -> CouponCalculator.calculate(p, readings()).stream())
                        .toList(),
                orders().filter(o -> isFor(o, made.id())).toList(),
                changes().filter(c -> isOn(c, made.id())).toList(),
                told.mendings(),
                told.late());
    }

    private Stream<Change> changes() {
        return seen.record().change().ofProject(seen.definition().facts().id()).stream();
    }

    /** Whether a change alters a part or joint, or was decided to. */
    private static boolean isOn(Change c, String made) {
        return c.verdict().filter(v -> v.isOn(made)).isPresent()
                || c.touches().stream().anyMatch(t -> t.equals("part/" + made) || t.equals("joint/" + made));
    }

    private Stream<Order> orders() {
        return seen.record().stock().orders().stream()
                .filter(o -> o.project().equals(seen.definition().facts().id()));
    }

    /** Whether an order is of something made, or that waits for it. */
    private static boolean isFor(Order o, String made) {
        return o.what().equals(made) || o.needed().stream().anyMatch(n -> n.split("/", -1)[0].equals(made));
    }

    private List<TakenReading> readings() {
        return seen.record().readings(seen.definition().facts().id());
    }

    private static boolean isOf(TakenReading r, String made) {
        return r.of().equals(made) || r.of().startsWith(made + "/");
    }

    private Done done(StepResult step) {
        StepRecord record = seen.record().step(step.id());
        Optional<Signature> signature = record.signed().isEmpty()
                ? Optional.empty()
                : record.finished()
                        .map(at -> new Signature(
                                record.signed(), at, record.finishedBy(), signIns.under(record.finishedBy())));
        return new Done(step, record, seen.record().made().step(step.id()), air(step, record), signature);
    }

    private List<TakenReading> air(StepResult step, StepRecord record) {
        if (!OPEN_TO_AIR.contains(step.kind()) || record.started().isEmpty()) {
            return List.of();
        }
        Instant from = record.started().get();
        Instant to = record.finished().orElse(seen.now());
        List<TakenReading> during =
                air().filter(r -> !r.at().isBefore(from) && !r.at().isAfter(to)).toList();
        Optional<TakenReading> before = air().filter(
                        r -> r.at().isBefore(from) && !r.at().isBefore(from.minus(AIR_BEFORE)))
                .max(Comparator.comparing(TakenReading::at));
        return during.isEmpty() ? before.stream().toList() : during;
    }

    private Stream<TakenReading> air() {
        return readings().stream().filter(r -> r.kind().equals(CLIMATE));
    }
}

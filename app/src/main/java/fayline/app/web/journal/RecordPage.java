package fayline.app.web.journal;

import fayline.app.pdf.RecordSheetPdf;
import fayline.app.usecase.act.EraseEntry;
import fayline.app.usecase.book.BookScope;
import fayline.app.usecase.journal.Journal;
import fayline.app.usecase.journal.RecordTree;
import fayline.app.usecase.journal.Sheets;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.people.Rights;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Printing;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.TimeWords;
import fayline.app.web.frame.Visit;
import fayline.flow.record.Chain;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.KeptHead;
import fayline.flow.record.erasure.Erasure;
import fayline.flow.record.payload.Value;
import fayline.flow.record.proof.Digest;
import io.javalin.config.RoutesConfig;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The record itself: what was entered, by whom and when; whether it is sound; sheets that keep its head on paper. */
public final class RecordPage implements Page {
    private static final String HERE = "/record";
    private static final int AT_ONCE = 60;
    private static final Duration TOLD_LATER = Duration.ofHours(1);
    private static final Duration SHEET_EVERY = Duration.ofDays(7);
    private static final Map<String, Kinds> SORTS = sorts();
    private final Sights sights;
    private final ShopRecord shop;
    private final RecordTree tree;
    private final Journal journal;
    private final Sheets sheets;
    private final EraseEntry erase;

    /**
     * Makes the pages.
     *
     * @param sights shows pages
     * @param shop the record
     * @param tree the tree over its entries
     * @param sheets the sheets of its head
     */
    public RecordPage(Sights sights, ShopRecord shop, RecordTree tree, Sheets sheets) {
        this.sights = sights;
        this.shop = shop;
        this.tree = tree;
        this.journal = new Journal(shop, tree);
        this.sheets = sheets;
        this.erase = new EraseEntry(shop);
    }

    private record Kinds(String words, List<EntryKind> kinds) {}

    private static Map<String, Kinds> sorts() {
        Map<String, Kinds> s = new LinkedHashMap<>();
        s.put("work", new Kinds("starts and finishes", List.of(EntryKind.STEP_STARTED, EntryKind.STEP_FINISHED)));
        s.put("notes", new Kinds("notes", List.of(EntryKind.STEP_NOTED)));
        s.put("readings", new Kinds("readings", List.of(EntryKind.READING_TAKEN)));
        s.put("corrections", new Kinds("corrections", List.of(EntryKind.CORRECTED)));
        s.put(
                "definition",
                new Kinds(
                        "definition",
                        List.of(
                                EntryKind.FILE_SAVED,
                                EntryKind.FILE_REMOVED,
                                EntryKind.PROJECT_ADDED,
                                EntryKind.FOLDER_IMPORTED)));
        s.put("erased", new Kinds("what was erased", List.of(EntryKind.ERASED)));
        s.put("plans", new Kinds("plans told", List.of(EntryKind.PLAN_PUBLISHED)));
        s.put(
                "people",
                new Kinds(
                        "people",
                        java.util.Arrays.stream(EntryKind.values())
                                .filter(EntryKind::isOfPeople)
                                .toList()));
        return Collections.unmodifiableMap(s);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(HERE, ctx -> with(new Visit(ctx), this::show));
        routes.get(HERE + "/entry/{seq}", ctx -> with(new Visit(ctx), this::entry));
        routes.get(HERE + "/sheet/{number}.pdf", ctx -> with(new Visit(ctx), this::sheet));
        routes.post(HERE + "/entry/{seq}/erase", ctx -> with(new Visit(ctx), this::erase), Asks.to(Act.ERASE));
        routes.post(HERE + "/sheet", ctx -> with(new Visit(ctx), this::print), Asks.to(Act.PRINT_SHEET));
    }

    private void with(Visit visit, java.util.function.BiConsumer<Visit, Sight> then) {
        sights.with(visit, sight -> then.accept(visit, sight));
    }

    private void show(Visit visit, Sight sight) {
        Optional<Chain> checked = visit.query("check").isEmpty() ? Optional.empty() : Optional.of(check(visit));
        RecordTree.End end = tree.end();
        String sort = visit.query("sort");
        Journal.Leaf leaf = journal.leaf(
                number(visit.query("below")),
                SORTS.containsKey(sort)
                        ? SORTS.getOrDefault(sort, new Kinds("", List.of())).kinds()
                        : List.of(),
                visit.query("text"),
                AT_ONCE);
        EntryWords words = new EntryWords(sight);
        List<Sheets.Sheet> printed = new ArrayList<>(sheets.all());
        Collections.reverse(printed);
        RecordView view = new RecordView(
                end.tree().seq(),
                end.tree().paper(),
                end.tree().seq() + "-" + end.hash(),
                checked.map(c -> found(c, !visit.query("head").isBlank())).orElse(""),
                checked.flatMap(Chain::end).isEmpty(),
                visit.query("head"),
                visit.query("text"),
                SORTS.entrySet().stream()
                        .map(s -> new RecordView.Sort(
                                s.getKey(), s.getValue().words(), s.getKey().equals(sort)))
                        .toList(),
                leaf.entries().stream().map(e -> line(sight, words, e)).toList(),
                leaf.further() == 0
                        ? ""
                        : HERE + "?below=" + leaf.further() + "&sort=" + Visit.encoded(sort) + "&text="
                                + Visit.encoded(visit.query("text")),
                printed.stream().map(s -> sheet(sight, words, s)).toList(),
                advice(sight.time(), printed),
                visit.actor().map(a -> Rights.may(a, Act.PRINT_SHEET)).orElse(true));
        sights.show(visit, "journal/record.jte", sights.frame(visit, sight, "Record", HERE), view);
    }

    private Chain check(Visit visit) {
        Chain chain = new Chain(typed(visit));
        shop.entries(1).forEach(chain::next);
        return chain;
    }

    private static Optional<KeptHead> typed(Visit visit) {
        String head = visit.query("head").strip();
        if (head.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(KeptHead.parse(head));
        } catch (IllegalArgumentException e) {
            throw Refusal.input("The head from paper: " + e.getMessage() + ".");
        }
    }

    private static String found(Chain chain, boolean againstPaper) {
        String held = againstPaper ? " The head from paper fits." : "";
        String typed = againstPaper ? " Compare first what was typed with the paper." : "";
        return chain.end()
                .map(f -> "Not sound: " + f.sentence() + "." + typed)
                .orElseGet(() -> chain.head().seq() + " entries, all sound." + held);
    }

    private static long number(String text) {
        return text.matches("[0-9]{1,15}") ? Long.parseLong(text) : 0;
    }

    private static RecordView.Line line(Sight sight, EntryWords words, Entry e) {
        return new RecordView.Line(e.seq(), when(sight, e), words.by(e), words.says(e));
    }

    /** When it happened; where it was told long afterwards, that too. */
    private static String when(Sight sight, Entry e) {
        Optional<Instant> happened = instant(e.fields().text("at")).filter(h -> isLater(h, e));
        return happened.map(h -> sight.time().at(h) + ", told " + sight.time().at(e.taken()))
                .orElseGet(() -> sight.time().at(e.taken()));
    }

    private static boolean isLater(Instant happened, Entry e) {
        return Duration.between(happened, e.taken()).compareTo(TOLD_LATER) >= 0;
    }

    private static Optional<Instant> instant(String text) {
        try {
            return Optional.of(Instant.parse(text));
        } catch (java.time.format.DateTimeParseException none) {
            return Optional.empty();
        }
    }

    private static RecordView.Sheet sheet(Sight sight, EntryWords words, Sheets.Sheet s) {
        return new RecordView.Sheet(
                s.number(),
                s.book()
                        .map(b -> BookScope.of(sight.definition(), b.of())
                                .map(BookScope::name)
                                .orElse(b.of()))
                        .orElse(""),
                sight.time().at(Instant.parse(s.head().at())),
                s.by().isEmpty() ? "" : sight.personName(s.by()),
                s.head().head().paper());
    }

    private static String advice(TimeWords time, List<Sheets.Sheet> newestFirst) {
        if (newestFirst.isEmpty()) {
            return "No sheet was printed yet: the record has no witness outside this machine.";
        }
        Instant last = Instant.parse(newestFirst.get(0).head().at());
        return last.plus(SHEET_EVERY).isBefore(time.now())
                ? "The last sheet is " + time.span(Duration.between(last, time.now())) + " old: print one every week."
                : "";
    }

    private void print(Visit visit, Sight sight) {
        Outcome outcome = sheets.print(Sent.live(visit.once(), sight.sender(visit)));
        if (!outcome.stands()) {
            throw Refusal.input(outcome.sentence());
        }
        visit.say("Record sheet " + sheets.all().size() + " is made, as entry " + outcome.seq()
                + ". Print it, sign it and keep it elsewhere.");
        visit.lead(HERE + "#sheets");
    }

    private void sheet(Visit visit, Sight sight) {
        Sheets.Sheet s =
                sheets.sheet(number(visit.inPath("number"))).orElseThrow(() -> Refusal.absent("such record sheet"));
        RecordSheetPdf.Content content = new RecordSheetPdf.Content(
                sight.definition().shop().name(),
                s.number(),
                "Taken "
                        + new TimeWords(
                                        sight.time().zone(),
                                        Instant.parse(s.head().at()))
                                .full() + (s.by().isEmpty() ? "" : " by " + sight.personName(s.by())),
                s.head().head().seq(),
                s.head().head().paper(),
                s.lastHash(),
                s.before().map(b -> b.paper()).orElse(""),
                s.head().text(),
                s.head().keyFingerprint());
        visit.send(
                RecordSheetPdf.print(content, Printing.paper(visit)),
                "application/pdf",
                "record-sheet-" + s.number() + ".pdf");
    }

    private void entry(Visit visit, Sight sight) {
        Journal.Shown shown =
                journal.entry(number(visit.inPath("seq"))).orElseThrow(() -> Refusal.absent("such entry"));
        Entry e = shown.entry();
        RecordTree.Proven proof = shown.proof();
        EntryWords words = new EntryWords(sight);
        EntryView view = new EntryView(
                e.seq(),
                words.says(e),
                facts(sight, words, e),
                shown.changes(),
                fields(e),
                shown.laterCorrections(),
                words.erased(e).orElse(""),
                sight.view().record().erasures().of(e.seq()).map(Erasure::seq).orElse(0L),
                shown.mayErase()
                        && visit.actor().map(a -> Rights.may(a, Act.ERASE)).orElse(true),
                EntryWords.link(e),
                List.of(
                        new EntryView.Row("hash of this entry", e.hash()),
                        new EntryView.Row("hash of the entry before", e.previous()),
                        new EntryView.Row("hash of what it says", e.payloadHash())),
                proof.path().stream().map(Digest::hex).toList(),
                "In the tree over " + proof.size() + " entries, whose root is "
                        + proof.root().hex(),
                e.seq() == 1,
                e.seq() == proof.size());
        sights.show(visit, "journal/entry.jte", sights.frame(visit, sight, "Entry " + e.seq(), HERE), view);
    }

    private void erase(Visit visit, Sight sight) {
        long seq = number(visit.inPath("seq"));
        if (!visit.field("sure").equals("yes")) {
            throw Refusal.input("Nothing was erased: tick that you know what remains.");
        }
        Outcome outcome = erase.erase(Sent.live(visit.once(), sight.sender(visit)), seq, visit.field("why"));
        if (!outcome.stands()) {
            throw Refusal.input(String.join(" ", Answers.refused(outcome)));
        }
        visit.say("Erased what was personal in entry " + seq + ". " + Answers.said(outcome));
        visit.lead(HERE + "/entry/" + seq);
    }

    private static List<EntryView.Row> facts(Sight sight, EntryWords words, Entry e) {
        List<EntryView.Row> rows = new ArrayList<>();
        rows.add(new EntryView.Row("By", words.by(e)));
        rows.add(new EntryView.Row(
                "Taken into the record", new TimeWords(sight.time().zone(), e.taken()).full()));
        String happened = e.fields().text("at");
        if (!happened.isEmpty()) {
            rows.add(new EntryView.Row("Happened", happened(sight, e, happened)));
        }
        if (!e.phone().isEmpty()) {
            rows.add(new EntryView.Row("By the phone's own clock", e.phone()));
        }
        if (!e.project().isEmpty()) {
            rows.add(new EntryView.Row("Project", e.project()));
        }
        return rows;
    }

    /** An entry that was made long after what it tells says so. */
    private static String happened(Sight sight, Entry e, String at) {
        return instant(at)
                .map(h -> new TimeWords(sight.time().zone(), h).full()
                        + (isLater(h, e)
                                ? ", told " + sight.time().span(Duration.between(h, e.taken())) + " later"
                                : ""))
                .orElse(at);
    }

    private static List<EntryView.Row> fields(Entry e) {
        List<EntryView.Row> rows = new ArrayList<>();
        e.fields()
                .fields()
                .forEach((name, value) -> rows.add(
                        new EntryView.Row(name, value instanceof Value.Text t ? t.text() : value.canonical())));
        return rows;
    }
}

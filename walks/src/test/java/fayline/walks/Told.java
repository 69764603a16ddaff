package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.store.sql.DataFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What people at browsers did and were told of it, to be held against the record one for one. */
final class Told {
    private static final Pattern ENTRY = Pattern.compile("entry (\\d+)");
    /** What a page says after a form: the entry's number, that the phone keeps it, or why it was not taken. */
    private static final String VERDICT = """
            () => {
              const no = document.querySelector(".said.trouble[role=alert]");
              if (no) return `no: ${no.textContent}`;
              const said = document.querySelector(".said[role=status]");
              if (said && /entry \\d+/.test(said.textContent)) return said.textContent;
              // a phone that is quick may have sent it by now
              return location.hash === "#kept" && document.querySelector("[data-kept-here] li") ? "kept" : null;
            }""";

    private final Shopfloor shop;
    private final long before;
    private final Map<Long, EntryKind> told = new TreeMap<>();
    /** What the one phone keeps, in the order of its making. */
    private final List<EntryKind> waiting = new ArrayList<>();
    /** How many the phone has sent from its list. */
    private int arrived;

    /** From here on. */
    Told(Shopfloor shop, Page page) {
        this.shop = shop;
        this.before = ((Number) page.evaluate("async () => (await (await fetch('/kept/head?size=0')).json()).size"))
                .longValue();
    }

    /** Sends a form and waits for what is said of it; where the phone kept it, it is sent from its list and the page opened again. */
    void deed(Page page, EntryKind kind, Runnable send) {
        String back = page.url().replaceAll("#.*", "");
        if (!sent(page, kind, send)) {
            arrive(page);
            shop.fresh(page, back.substring(back.indexOf('/', back.indexOf("//") + 2)));
        }
    }

    /** Sends a form without network: the phone must keep it and say so. */
    void kept(Page page, EntryKind kind, Runnable send) {
        assertThat(sent(page, kind, send)).as("%s reached the shop", kind).isFalse();
    }

    /** Sends a form while anything may happen to the shop; whether the shop answered. */
    boolean sent(Page page, EntryKind kind, Runnable send) {
        Shopfloor.leaving(page, send);
        String said = String.valueOf(page.waitForFunction(VERDICT).jsonValue());
        assertThat(said).as("%s at %s", kind, page.url()).doesNotStartWith("no:");
        if (said.equals("kept")) {
            waiting.add(kind);
            return false;
        }
        add(said, kind);
        return true;
    }

    /** Lets the phone send what it keeps, and hears what became of each. */
    void arrive(Page page) {
        page.navigate(shop.at("/kept"));
        arrived += waiting.size();
        page.waitForFunction(
                "(n) => document.querySelectorAll('[data-kept-sent] > li').length === n"
                        + " && document.querySelectorAll('[data-kept-list] > li').length === 0",
                arrived);
        List<String> rows = new ArrayList<>();
        for (Locator row : page.locator("[data-kept-sent] > li").all()) {
            rows.add(row.innerText());
        }
        // the newest stands first
        for (int i = 0; i < waiting.size(); i++) {
            String row = rows.get(waiting.size() - 1 - i);
            assertThat(row).contains("in the record");
            // it may name another entry that it is about before its own
            add(row.substring(row.lastIndexOf("entry ")), waiting.get(i));
        }
        waiting.clear();
    }

    private void add(String said, EntryKind kind) {
        Matcher entry = ENTRY.matcher(said);
        assertThat(entry.find()).as(said).isTrue();
        assertThat(told.put(Long.parseLong(entry.group(1)), kind))
                .as("told twice: %s", said)
                .isNull();
    }

    /** The record holds what was told, in the same places and of the same kinds, and nothing besides. */
    void isTheRecord(Path data) throws IOException {
        assertThat(waiting).isEmpty();
        try (DataFolder folder = DataFolder.open(data)) {
            Map<Long, String> record = folder.log().read(before + 1).stream()
                    .collect(Collectors.toMap(Entry::seq, Entry::kind, (a, b) -> a, TreeMap::new));
            Map<Long, String> said = new TreeMap<>();
            told.forEach((seq, kind) -> said.put(seq, kind.key()));
            assertThat(record).isEqualTo(said);
        }
    }
}

package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.people.Actor;
import fayline.app.usecase.people.Role;
import fayline.flow.record.Entry;
import fayline.flow.record.payload.Value;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** On the shop's network what a phone kept belongs to whoever typed it, whoever is signed in when it is sent. */
class NetworkKeptTest extends OnTheNetwork {
    private static final String LATELY = "2026-03-03T07:02:00Z";

    private String ned = "";
    private String ilse = "";

    @BeforeEach
    void begin() {
        served.lead();
        ned = served.admit(1, Role.CREW);
        ilse = served.admit(2, Role.CREW);
    }

    private static Value.Fields note(String id, String by) {
        return Value.Fields.NONE
                .with("id", id)
                .with("path", "/card/chine-doubler-left/1/cut/note?project=ousel-1")
                .with("project", "ousel-1")
                .with("by", by)
                .with("at", LATELY)
                .with("fields", List.of("text", "Typed by " + by));
    }

    private static String token(Browser phone) throws Exception {
        return ((Value.Fields) Value.parse(phone.page("/kept/head"))).text("token");
    }

    private static HttpResponse<String> post(Browser phone, String token, Value.Fields entry) throws Exception {
        Value.Fields batch = Value.Fields.NONE
                .with("format", 1)
                .with("record", "")
                .with("entries", new Value.Many(List.<Value>of(entry)));
        return phone.postJson("/kept/send", token, batch.canonical());
    }

    private static Value.Fields answer(Browser phone, Value.Fields entry) throws Exception {
        HttpResponse<String> r = post(phone, token(phone), entry);
        assertThat(r.statusCode()).as(r.body()).isEqualTo(200);
        return (Value.Fields)
                ((Value.Fields) Value.parse(r.body())).items("answers").get(0);
    }

    private static List<Entry> under(String id) {
        return served.open().shop().entries(1).stream()
                .filter(e -> e.client().equals(id))
                .toList();
    }

    @Test
    void should_take_an_entry_from_nobody_but_its_own_person_when_a_device_has_changed_hands() throws Exception {
        String id = UUID.randomUUID().toString();
        Value.Fields other = answer(served.phoneOf(ilse), note(id, ned));
        assertThat(other.text("what")).isEqualTo("refused");
        assertThat(other.text("say")).contains(ned).contains("must sign in");
        assertThat(under(id)).isEmpty();
        Browser own = served.phoneOf(ned);
        assertThat(answer(own, note(id, ned)).text("what")).isEqualTo("taken");
        assertThat(answer(own, note(id, ned)).text("what")).isEqualTo("there");
        assertThat(under(id)).extracting(Entry::by).containsExactly(ned);
    }

    @Test
    void should_take_nothing_from_an_ended_sign_in_and_all_once_its_person_is_back() throws Exception {
        String id = UUID.randomUUID().toString();
        Browser phone = served.phoneOf(ned);
        String token = token(phone);
        Actor lead = served.people()
                .signIns()
                .byPassword(served.person(0), ServedNetwork.PASSWORD, "desk")
                .actor();
        served.people().devices().all().forEach(d -> served.people().devices().end(lead, d.id()));
        assertThat(post(phone, token, note(id, ned)).statusCode()).isEqualTo(401);
        assertThat(under(id)).isEmpty();
        assertThat(answer(served.phoneOf(ned), note(id, ned)).text("what")).isEqualTo("taken");
        assertThat(under(id)).extracting(Entry::by).containsExactly(ned);
    }

    @Test
    void should_say_why_when_its_person_may_no_longer_make_it() throws Exception {
        String id = UUID.randomUUID().toString();
        // which ends what was signed in before
        served.people().roster().change(served.person(0), ned, Role.INSPECTOR);
        Value.Fields answer = answer(served.phoneOf(ned), note(id, ned));
        assertThat(answer.text("what")).isEqualTo("refused");
        assertThat(answer.text("say")).contains("you may not enter work and readings");
        assertThat(under(id)).isEmpty();
    }

    @Test
    void should_name_on_a_page_whose_it_is_so_that_nothing_of_others_is_shown() throws Exception {
        assertThat(served.phoneOf(ned).page("/kept")).contains("data-person=\"" + ned + '"');
        assertThat(served.browser().page("/kept")).doesNotContain("data-person");
    }
}

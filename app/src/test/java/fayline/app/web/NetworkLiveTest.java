package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.people.Role;
import fayline.app.usecase.people.Way;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Who may follow the record on the shop's network, and for how long. The times are guards against hanging. */
@Timeout(120)
class NetworkLiveTest extends OnTheNetwork {
    @Test
    void should_show_a_visitor_the_door_and_nothing_of_the_record() throws Exception {
        served.lead();
        HttpResponse<Stream<String>> answer = served.browser().follow();
        try (Stream<String> lines = answer.body()) {
            assertThat(answer.statusCode()).isEqualTo(401);
            assertThat(lines.toList().toString()).contains("not signed in").doesNotContain("data:");
        }
        HttpResponse<String> asked = served.browser().raw("GET", "/live/head", "");
        assertThat(asked.statusCode()).isEqualTo(303);
        assertThat(asked.headers().firstValue("Location").orElse("")).startsWith("/sign-in");
        assertThat(asked.body()).doesNotContain(served.open().shop().origin().substring(0, 16));
    }

    @Test
    void should_end_the_stream_of_a_sign_in_that_was_ended_and_tell_it_nothing_more() throws Exception {
        served.lead();
        String crew = served.admit(2, Role.CREW);
        Browser phone = served.phoneOf(crew);
        try (Stream<String> lines = phone.follow().body()) {
            Iterator<String> said = lines.iterator();
            LiveSiteTest.next(said);
            long before = served.head();
            served.people()
                    .change(
                            served.people()
                                    .signIns()
                                    .byPassword(served.person(0), ServedNetwork.PASSWORD, "desk")
                                    .actor(),
                            crew,
                            Role.INSPECTOR);
            List<Long> heads = new ArrayList<>();
            while (said.hasNext()) {
                String line = said.next();
                if (line.startsWith("data:")) {
                    heads.add(Long.parseLong(line.substring(5).strip().split(" ")[1]));
                }
            }
            // the lead's own sign-in may still be told, the change of the role not
            assertThat(served.head()).isGreaterThan(before + 1);
            assertThat(heads).allMatch(h -> h < served.head());
        }
        assertThat(phone.follow().statusCode()).isEqualTo(401);
    }

    @Test
    void should_not_let_a_sign_in_last_longer_because_a_page_stays_open() throws Exception {
        served.lead();
        String crew = served.admit(2, Role.CREW);
        Browser tablet = served.browser();
        tablet.code(served.pairingCode("", "tablet"));
        tablet.send("/sign-in", "/sign-in/pin", "person", crew, "pin", ServedNetwork.PIN);
        try (Stream<String> lines = tablet.follow().body()) {
            Iterator<String> said = lines.iterator();
            LiveSiteTest.next(said);
            for (int i = 0; i < 3; i++) {
                served.clock().by(Way.PIN.idle().dividedBy(4));
                assertThat(tablet.raw("GET", "/", "", "Fayline-By-Itself", "yes")
                                .statusCode())
                        .isEqualTo(200);
                assertThat(tablet.raw("GET", "/live/head", "", "Fayline-By-Itself", "yes")
                                .statusCode())
                        .isEqualTo(200);
            }
            served.clock().by(Way.PIN.idle().dividedBy(4).plus(Duration.ofSeconds(1)));
            assertThat(tablet.raw("GET", "/", "", "Fayline-By-Itself", "yes").statusCode())
                    .isEqualTo(303);
            while (said.hasNext()) {
                said.next();
            }
        }
    }

    @Test
    void should_tell_the_second_at_a_desk_that_a_role_is_another_by_now() throws Exception {
        served.lead();
        String crew = served.admit(2, Role.CREW);
        Browser one = served.leadAtDesk();
        Browser other = served.leadAtDesk();
        String seen = other.page("/people");
        assertThat(one.send("/people", "/people/role", "person", crew, "was", "crew", "role", "inspector")
                        .statusCode())
                .isEqualTo(200);
        long before = served.head();
        HttpResponse<String> told =
                other.sendFrom(seen, "/people/role", "person", crew, "was", "crew", "role", "viewer");
        assertThat(told.statusCode()).isEqualTo(422);
        assertThat(told.body()).contains("was crew when you opened the page and is inspector now");
        assertThat(served.head()).isEqualTo(before);
        assertThat(other.sendFrom(told.body(), "/people/role", "person", crew, "was", "inspector", "role", "crew")
                        .statusCode())
                .isEqualTo(200);
        assertThat(served.people().roster().find(crew).orElseThrow().role()).isEqualTo(Role.CREW);
    }

    @Test
    void should_tell_the_oldest_stream_of_a_sign_in_that_there_are_enough() throws Exception {
        served.lead();
        Browser phone = served.phoneOf(served.admit(2, Role.CREW));
        List<Stream<String>> open = new ArrayList<>();
        try (Stream<String> first = phone.follow().body()) {
            Iterator<String> said = first.iterator();
            LiveSiteTest.next(said);
            for (int i = 0; i < 6; i++) {
                Stream<String> more = phone.follow().body();
                open.add(more);
                LiveSiteTest.next(more.iterator());
            }
            StringBuilder rest = new StringBuilder();
            while (said.hasNext()) {
                rest.append(said.next());
            }
            assertThat(rest.toString()).endsWith("event: enoughdata: ");
        } finally {
            open.forEach(Stream::close);
        }
    }
}

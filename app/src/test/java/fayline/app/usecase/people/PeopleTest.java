package fayline.app.usecase.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fayline.app.usecase.open.OpenShop;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PeopleTest {
    private static final String PASSWORD = "seven planks under the tarpaulin";
    private static final String PIN = "402917";

    @TempDir
    static Path folder;

    private static OpenShop open;
    private MovedClock clock;
    private People people;
    private long before;

    @BeforeAll
    static void open() throws Exception {
        open = OpenShop.openWith(folder.resolve("data"), Path.of("../demo/ousel"), new MovedClock(), Optional.empty());
    }

    @AfterAll
    static void close() {
        open.close();
    }

    @BeforeEach
    void begin() {
        open.people().people().forEach(p -> open.people().removePerson(p.person()));
        open.people().devices().forEach(d -> open.people().removeDevice(d.id()));
        clock = new MovedClock();
        people = again();
        before = open.shop().state().head().seq();
    }

    /** The same people after the program was started anew. */
    private People again() {
        return new People(open.shop(), open.people(), clock, new SecureRandom());
    }

    private static String lead() {
        return open.shop().definitions().get(0).shop().people().items().get(0).id();
    }

    private static String crew() {
        return open.shop().definitions().get(0).shop().people().items().get(1).id();
    }

    private Actor setUp() {
        Grant grant = people.use(people.setUpCode(), "console");
        people.setUp((Grant.SetUp) grant, lead(), PASSWORD);
        return people.signIns().byPassword(lead(), PASSWORD, "here").actor();
    }

    private Devices.Device tablet(Actor by) {
        Grant grant = people.use(people.pairingCode(by, "", "bench tablet"), "tablet");
        return people.pair((Grant.Pairing) grant).device();
    }

    private List<Entry> told(EntryKind kind) {
        return open.shop().entries(before + 1).stream()
                .filter(e -> e.kind().equals(kind.key()))
                .toList();
    }

    @Test
    void should_have_nobody_at_first_and_make_the_lead_by_the_code_of_the_console() {
        assertThat(people.roster().all()).isEmpty();
        assertThat(people.roster().hasLead()).isFalse();
        Actor lead = setUp();
        assertThat(people.roster().hasLead()).isTrue();
        assertThat(lead.role()).isEqualTo(Role.LEAD);
        assertThat(lead.way()).isEqualTo(Way.PASSWORD);
        assertThat(told(EntryKind.PERSON_ADMITTED)).hasSize(1);
        assertThat(told(EntryKind.SIGNED_IN)).hasSize(1);
    }

    @Test
    void should_take_a_code_once_and_within_its_life() {
        String code = people.setUpCode();
        assertThat(code).matches("[0-9A-Z]{4}-[0-9A-Z]{4}-[0-9A-Z]{4}");
        assertThat(people.use(code.toLowerCase(java.util.Locale.ROOT).replace("-", " "), "a"))
                .isInstanceOf(Grant.SetUp.class);
        assertThatThrownBy(() -> people.use(code, "a"))
                .isInstanceOf(DeniedException.class)
                .hasMessageContaining("used before");
        Actor lead = setUp();
        String pairing = people.pairingCode(lead, "", "tablet");
        clock.by(people.codeLife());
        assertThatThrownBy(() -> people.use(pairing, "b")).isInstanceOf(DeniedException.class);
        String late = people.setUpCode();
        clock.by(people.setUpLife());
        assertThatThrownBy(() -> people.use(late, "c")).isInstanceOf(DeniedException.class);
        String backwards = people.setUpCode();
        clock.by(Duration.ofDays(-30));
        assertThatThrownBy(() -> people.use(backwards, "d")).isInstanceOf(DeniedException.class);
    }

    @Test
    void should_end_the_first_set_up_code_when_another_is_made() {
        String first = people.setUpCode();
        people.setUpCode();
        assertThatThrownBy(() -> people.use(first, "a")).isInstanceOf(DeniedException.class);
    }

    @Test
    void should_keep_no_secret_as_typed_beside_the_record_or_in_it() {
        Actor lead = setUp();
        people.roster().setPin(lead.person(), lead.person(), PIN);
        SignIns.Entered entered = people.signIns().byPassword(lead(), PASSWORD, "here");
        String kept = open.people().people() + " " + open.people().signIns() + " "
                + open.people().devices() + open.shop().entries(before + 1);
        assertThat(kept).doesNotContain(PASSWORD).doesNotContain(PIN).doesNotContain(entered.token());
        assertThat(open.people().person(lead()).orElseThrow().passwordHash())
                .startsWith("$argon2id$v=19$m=19456,t=2,p=1$");
        assertThat(open.shop().entries(before + 1).toString()).doesNotContain("argon2id");
    }

    @Test
    void should_say_the_same_when_the_name_or_the_password_is_wrong() {
        setUp();
        String one = message(() -> people.signIns().byPassword(lead(), "not the password", "x"));
        String other = message(() -> people.signIns().byPassword("nobody", PASSWORD, "x"));
        assertThat(one).isEqualTo(other).contains("do not belong together");
    }

    private static String message(org.assertj.core.api.ThrowableAssert.ThrowingCallable work) {
        return String.valueOf(
                org.assertj.core.api.Assertions.catchThrowable(work).getMessage());
    }

    @Test
    void should_slow_a_thousand_guesses_and_let_others_in_meanwhile() {
        setUp();
        int heard = 0;
        for (int i = 0; i < 1000; i++) {
            String said = message(() -> people.signIns().byPassword(lead(), "a guess", "10.0.0.66"));
            heard += said.contains("belong together") ? 1 : 0;
            clock.by(Duration.ofSeconds(1));
        }
        // five, then waits of 1, 2, 4, 8 minutes within 1000 s
        assertThat(heard).isBetween(5, 25);
        assertThat(people.signIns()
                        .byPassword(lead(), PASSWORD, "10.0.0.7")
                        .actor()
                        .person())
                .isEqualTo(lead());
        assertThat(told(EntryKind.SIGN_IN_BARRED)).isNotEmpty().hasSizeLessThan(6);
        assertThat(told(EntryKind.SIGN_IN_BARRED).get(0).fields().text("from")).isEqualTo("10.0.0.66");
    }

    @Test
    void should_hold_the_rate_when_guesses_come_from_many_places_and_let_the_console_in() {
        setUp();
        clock.by(Duration.ofMinutes(1));
        int heard = 0;
        for (int i = 0; i < 1000; i++) {
            String from = "10.0." + i / 250 + "." + i % 250;
            heard += message(() -> people.use("0000-0000-0000", from)).contains("not right") ? 1 : 0;
        }
        assertThat(heard).isEqualTo(Guesses.ALL_TRIES_A_MINUTE);
        clock.by(Duration.ofMinutes(1));
        people.setUp((Grant.SetUp) people.use(people.setUpCode(), "console"), lead(), "another very long one 7");
    }

    @Test
    void should_tell_how_many_wrong_tries_went_before_a_right_one() {
        setUp();
        for (int i = 0; i < 3; i++) {
            message(() -> people.signIns().byPassword(lead(), "a guess", "z"));
        }
        people.signIns().byPassword(lead(), PASSWORD, "z");
        List<Entry> told = told(EntryKind.SIGNED_IN);
        assertThat(told.get(told.size() - 1).fields().text("tries")).isEqualTo("3");
    }

    @Test
    void should_end_a_sign_in_when_idle_old_or_the_clock_went_back() {
        setUp();
        SignIns.Entered idle = people.signIns().byPassword(lead(), PASSWORD, "a");
        clock.by(Way.PASSWORD.idle().plusSeconds(1));
        assertThat(people.signIns().who(idle.token())).isEmpty();
        SignIns.Entered old = people.signIns().byPassword(lead(), PASSWORD, "a");
        for (Duration d = Duration.ZERO; d.compareTo(Way.PASSWORD.age()) < 0; d = d.plusHours(6)) {
            assertThat(people.signIns().who(old.token())).as(d.toString()).isPresent();
            clock.by(Duration.ofHours(6));
        }
        clock.by(Duration.ofSeconds(1));
        assertThat(people.signIns().who(old.token())).isEmpty();
        SignIns.Entered back = people.signIns().byPassword(lead(), PASSWORD, "a");
        clock.by(Duration.ofDays(-30));
        assertThat(people.signIns().who(back.token())).isEmpty();
        clock.by(Duration.ofDays(30));
        assertThat(people.signIns().who(back.token())).as("ended for good").isEmpty();
    }

    @Test
    void should_know_a_sign_in_after_a_restart_and_forget_one_that_was_left() {
        setUp();
        SignIns.Entered in = people.signIns().byPassword(lead(), PASSWORD, "a");
        SignIns.Entered other = people.signIns().byPassword(lead(), PASSWORD, "a");
        assertThat(in.token()).isNotEqualTo(other.token());
        assertThat(again().signIns().who(in.token())).isPresent();
        people.signIns().leave(in.actor());
        assertThat(people.signIns().who(in.token())).isEmpty();
        assertThat(again().signIns().who(in.token())).isEmpty();
        assertThat(people.signIns().who(other.token())).isPresent();
        assertThat(people.signIns().who("")).isEmpty();
        assertThat(people.signIns().who(other.token() + "x")).isEmpty();
    }

    @Test
    void should_switch_person_by_pin_on_a_shared_tablet_and_unpair_it_after_twenty_wrong_ones() {
        Actor lead = setUp();
        people.roster().admit(lead.person(), crew(), "", Role.CREW);
        people.roster().setPin(lead.person(), crew(), PIN);
        Devices.Device tablet = tablet(lead);
        Actor at = people.signIns().byPin(tablet, crew(), PIN).actor();
        assertThat(at.way()).isEqualTo(Way.PIN);
        assertThat(at.device()).isEqualTo(tablet.id());
        int wrong = 0;
        String said = "";
        for (int i = 0; i < 400 && !said.contains("pair it anew"); i++) {
            said = message(() -> people.signIns().byPin(tablet, crew(), "999111"));
            wrong += said.contains("too many") || said.contains("too fast") ? 0 : 1;
            clock.by(Duration.ofMinutes(1));
        }
        assertThat(said).contains("pair it anew");
        assertThat(wrong).isEqualTo(SignIns.WRONG_PINS_BEFORE_UNPAIRING);
        assertThat(people.devices().all()).isEmpty();
        assertThat(people.signIns().all()).noneMatch(s -> s.person().equals(crew()));
        assertThat(told(EntryKind.DEVICE_ENDED)).hasSize(1);
    }

    @Test
    void should_let_nobody_else_in_on_a_phone_of_ones_own() {
        Actor lead = setUp();
        people.roster().admit(lead.person(), crew(), "", Role.CREW);
        people.roster().setPin(lead.person(), lead.person(), PIN);
        Devices.Paired phone = people.pair((Grant.Pairing) people.use(people.pairingCode(lead, crew(), "phone"), "p"));
        assertThat(people.enterOn(phone).actor().person()).isEqualTo(crew());
        assertThat(message(() -> people.signIns().byPin(phone.device(), lead.person(), PIN)))
                .contains("not right");
    }

    @Test
    void should_end_every_sign_in_when_a_person_or_a_device_is_ended() {
        Actor lead = setUp();
        people.roster().admit(lead.person(), crew(), "", Role.CREW);
        Devices.Paired one = people.pair((Grant.Pairing) people.use(people.pairingCode(lead, crew(), "one"), "p"));
        Devices.Paired two = people.pair((Grant.Pairing) people.use(people.pairingCode(lead, crew(), "two"), "p"));
        String first = people.enterOn(one).token();
        String second = people.enterOn(two).token();
        people.devices().end(lead, one.device().id());
        assertThat(people.signIns().who(first)).isEmpty();
        assertThat(people.devices().of(one.token())).isEmpty();
        assertThat(people.signIns().who(second)).isPresent();
        people.remove(lead, crew());
        assertThat(people.signIns().who(second)).isEmpty();
        assertThat(people.devices().all()).isEmpty();
    }

    @Test
    void should_keep_one_lead_and_take_signing_names_from_the_list_of_people() {
        Actor lead = setUp();
        assertThat(message(() -> people.remove(lead, lead.person()))).contains("only lead");
        assertThat(message(() -> people.roster().change(lead.person(), lead.person(), Role.CREW)))
                .contains("only lead");
        assertThat(message(() -> people.roster().admit(lead.person(), "stranger", "", Role.INSPECTOR)))
                .contains("people.yaml");
        Roster.Known viewer = people.roster().admit(lead.person(), "", "Zo\u00eb O\u2019Hara", Role.VIEWER);
        assertThat(viewer.person()).isEqualTo("guest-zoe-o-hara");
        assertThat(message(() -> people.roster().change(lead.person(), viewer.person(), Role.CREW)))
                .contains("only be a viewer");
    }

    @Test
    void should_admit_nobody_when_the_first_password_or_the_person_is_refused() {
        Grant.SetUp grant = (Grant.SetUp) people.use(people.setUpCode(), "console");
        assertThat(message(() -> people.setUp(grant, lead(), "passwordpassword")))
                .contains("common");
        assertThat(message(() -> people.setUp(grant, "", PASSWORD))).contains("Nobody is picked");
        assertThat(message(() -> people.setUp(grant, "ghost", PASSWORD))).contains("\"ghost\"");
        assertThat(message(() -> people.roster().admit(lead(), "ghost", "Some One", Role.VIEWER)))
                .contains("\"ghost\"");
        assertThat(message(() -> people.roster().admit(lead(), "", "n".repeat(101), Role.VIEWER)))
                .contains("101 characters, expected at most 100");
        assertThat(people.roster().all()).isEmpty();
        assertThat(told(EntryKind.PERSON_ADMITTED)).isEmpty();
    }

    @Test
    void should_change_a_password_only_with_the_old_one_and_end_the_other_sign_ins() {
        Actor lead = setUp();
        String other = people.signIns().byPassword(lead(), PASSWORD, "b").token();
        assertThat(message(() -> people.changePassword(lead, "", "a wholly new long one 5")))
                .contains("not right");
        assertThat(people.signIns().who(other)).isPresent();
        people.changePassword(lead, PASSWORD, "a wholly new long one 5");
        assertThat(people.signIns().who(other)).isEmpty();
        assertThat(people.signIns().all()).extracting("id").containsExactly(lead.signIn());
        assertThat(message(() -> people.signIns().byPassword(lead(), PASSWORD, "c")))
                .contains("belong together");
    }

    @Test
    void should_enter_refused_attempts_but_not_a_flood_of_them() {
        Actor lead = setUp();
        for (int i = 0; i < 500; i++) {
            people.refused(lead, Act.SEE_COSTS, "GET /costs");
        }
        assertThat(told(EntryKind.ACT_REFUSED)).hasSize(30).allMatch(e -> e.by().equals(lead.person()));
        clock.by(Duration.ofMinutes(1));
        people.refused(lead, Act.SEE_COSTS, "GET /costs");
        assertThat(told(EntryKind.ACT_REFUSED)).hasSize(31);
    }

    @Test
    void should_let_only_a_lead_with_a_password_say_who_may_enter() {
        Actor lead = setUp();
        people.roster().setPin(lead.person(), lead.person(), PIN);
        Actor byPin = people.signIns().byPin(tablet(lead), lead.person(), PIN).actor();
        assertThat(byPin.may(Act.CHANGE_DEFINITION)).isTrue();
        assertThat(byPin.may(Act.KEEP_PEOPLE)).isFalse();
        assertThat(message(() -> people.pairingCode(byPin, "", "x"))).contains("may not say who may enter");
        assertThat(message(() -> people.admit(byPin, crew(), "", Role.LEAD))).contains("may not");
        assertThat(message(() -> people.change(byPin, lead.person(), Role.CREW)))
                .contains("may not");
        assertThat(message(() -> people.secretCode(byPin, lead.person()))).contains("may not");
        assertThat(message(() -> people.remove(byPin, lead.person()))).contains("may not");
    }
}

package fayline.store.sql;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.RecordState;
import fayline.flow.record.payload.Value;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** What every database must do that keeps who may enter. */
interface PeopleTablesContract {
    /** The folder in which the database is. */
    Path folder();

    Instant MORNING = EntryLogContract.MORNING;

    @Test
    default void should_keep_people_devices_and_sign_ins_over_a_restart_and_end_them_with_the_person() {
        PeopleTables.KnownPerson ada = new PeopleTables.KnownPerson("ada", "Ada", "lead", "$argon2id$x", "");
        PeopleTables.KnownPerson bo = new PeopleTables.KnownPerson("bo", "Bo O'Neil \"; --", "crew", "", "$argon2id$y");
        PeopleTables.KnownDevice phone =
                new PeopleTables.KnownDevice("d-1", "phone of Bo", "own", "bo", "a".repeat(64), MORNING);
        PeopleTables.KnownDevice tablet =
                new PeopleTables.KnownDevice("d-2", "bench", "shared", "", "b".repeat(64), MORNING.plusSeconds(1));
        try (DataFolder data = DataFolder.open(folder())) {
            PeopleTables people = data.people();
            people.put(ada);
            people.put(bo);
            people.put(new PeopleTables.KnownPerson("bo", bo.name(), "viewer", "", ""));
            people.put(bo);
            people.add(phone);
            people.add(tablet);
            people.add(signIn("s-1", "bo", "d-1"));
            people.add(signIn("s-2", "bo", "d-2"));
            people.add(signIn("s-3", "ada", "d-2"));
            people.seen("s-3", MORNING.plusSeconds(60));
        }
        try (DataFolder data = DataFolder.open(folder())) {
            PeopleTables people = data.people();
            assertThat(people.people()).containsExactly(ada, bo);
            assertThat(people.person("bo")).contains(bo);
            assertThat(people.devices()).containsExactly(phone, tablet);
            assertThat(people.deviceOf("a".repeat(64))).contains(phone);
            assertThat(people.signInOf("s-3 hash").orElseThrow().seen()).isEqualTo(MORNING.plusSeconds(60));
            people.removePerson("bo");
            assertThat(people.person("bo")).isEmpty();
            assertThat(people.deviceOf(phone.tokenHash())).isEmpty();
            assertThat(people.signIns()).extracting(PeopleTables.SignIn::id).containsExactly("s-3");
            people.removeDevice("d-2");
            assertThat(people.signIns()).isEmpty();
            assertThat(people.devices()).isEmpty();
        }
    }

    @Test
    default void should_end_one_sign_in_or_all_of_somebody_but_the_present_one() {
        try (DataFolder data = DataFolder.open(folder())) {
            PeopleTables people = data.people();
            people.add(signIn("s-1", "ada", ""));
            people.add(signIn("s-2", "ada", ""));
            people.add(signIn("s-3", "bo", ""));
            people.removeSignInsOf("ada", "s-2");
            assertThat(people.signIns()).extracting(PeopleTables.SignIn::id).containsExactly("s-2", "s-3");
            people.removeSignIn("s-3");
            assertThat(people.signInOf("s-3 hash")).isEmpty();
        }
    }

    private static PeopleTables.SignIn signIn(String id, String person, String device) {
        return new PeopleTables.SignIn(id, id + " hash", person, device, "pin", MORNING, MORNING);
    }

    @Test
    default void should_hold_entries_of_people_apart_from_the_work() {
        try (DataFolder data = DataFolder.open(folder())) {
            data.log().append(EntryLogContract.note("client-one", "as told"));
            Value.Fields who = Value.Fields.NONE.with("person", "ada").with("way", "password");
            data.log().append(NewEntry.of("client-two", "ada", MORNING, "", EntryKind.SIGNED_IN, who));
            RecordState state = RecordState.of(data.log().read(1));
            assertThat(state.head().seq()).isEqualTo(2);
            assertThat(state.work()).isEqualTo(1);
            assertThat(state.unknown()).isZero();
        }
    }
}

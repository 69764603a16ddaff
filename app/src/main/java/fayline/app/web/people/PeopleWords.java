package fayline.app.web.people;

import fayline.app.usecase.people.Act;
import fayline.app.usecase.people.Devices;
import fayline.app.usecase.people.People;
import fayline.app.usecase.people.Rights;
import fayline.app.usecase.people.Role;
import fayline.app.usecase.people.Roster;
import fayline.app.usecase.people.SignIns;
import fayline.app.web.frame.TimeWords;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** People, devices and sign-ins as pages word them. */
final class PeopleWords {
    private final People people;
    private final TimeWords time;
    private final TimeWords record;

    /**
     * Words them.
     *
     * @param people the people
     * @param zone the shop's zone
     * @param now the shop's time, by which entries are told
     */
    PeopleWords(People people, ZoneId zone, Instant now) {
        this.people = people;
        this.time = new TimeWords(zone, people.minute());
        this.record = new TimeWords(zone, now);
    }

    String name(String person) {
        return people.roster().find(person).map(Roster.Known::name).orElse(person);
    }

    List<PeopleView.Person> everybody() {
        return people.roster().all().stream()
                .map(p -> new PeopleView.Person(p.person(), p.name(), p.role().word(), secrets(p)))
                .toList();
    }

    private static String secrets(Roster.Known p) {
        List<String> set = new ArrayList<>();
        if (p.password()) {
            set.add("password");
        }
        if (p.pin()) {
            set.add("PIN");
        }
        return set.isEmpty() ? "none yet" : String.join(", ", set);
    }

    PeopleView.Device device(Devices.Device d) {
        return new PeopleView.Device(
                d.id(), d.label(), d.isShared() ? "shared" : name(d.person()), time.at(d.paired()));
    }

    PeopleView.SignIn signIn(SignIns.Current s, String here) {
        String on = people.devices().all().stream()
                .filter(d -> d.id().equals(s.device()))
                .map(d -> " on " + d.label())
                .findFirst()
                .orElse("");
        String how = switch (s.way()) {
            case PASSWORD -> "by password";
            case DEVICE -> "own device";
            case PIN -> "by PIN";
        };
        return new PeopleView.SignIn(
                s.id(), name(s.person()), how + on, time.at(s.began()), time.at(s.seen()), s.id().equals(here));
    }

    static List<PeopleView.Right> table() {
        return Arrays.stream(Act.values())
                .map(act -> new PeopleView.Right(
                        act.words(),
                        Arrays.stream(Role.values())
                                .filter(role -> Rights.may(role, act))
                                .map(Role::word)
                                .toList()))
                .toList();
    }

    /** An entry about people in words; nothing for any other. */
    Optional<PeopleView.Told> told(Entry e) {
        Optional<EntryKind> kind = EntryKind.of(e.kind()).filter(EntryKind::isOfPeople);
        return kind.map(k -> new PeopleView.Told(record.at(Instant.parse(e.at())), sentence(e, k), e.seq()));
    }

    private String sentence(Entry e, EntryKind kind) {
        String by = e.by().isEmpty() ? "the console" : name(e.by());
        String told = PeopleSentences.of(e, kind, this::name);
        return switch (kind) {
            case PERSON_ADMITTED -> told + ", says " + by;
            case PERSON_CHANGED, DEVICE_PAIRED -> told + ", by " + by;
            case ACT_REFUSED -> name(e.by()) + " (" + e.fields().text("role") + ") " + told;
            default -> told;
        };
    }
}

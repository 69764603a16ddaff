package fayline.flow.audit;

import static fayline.flow.audit.TinyShop.at;
import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.audit.TinyShop.Put;
import fayline.flow.plan.Place;
import fayline.flow.plan.WorkWish;
import fayline.flow.plan.WorkWish.Kind;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A tiny plan that keeps what the lead wishes, and its twins that do not. */
class WishesAreKeptTest {
    private final TinyShop shop = new TinyShop();

    private void wish(Kind kind, String on, Optional<Instant> from, Optional<Instant> before) {
        shop.wishes.add(new WorkWish("w-" + shop.wishes.size(), "a", kind, on, from, before, "ada", "so be it"));
    }

    private void wish(Kind kind, String on) {
        wish(kind, on, Optional.empty(), Optional.empty());
    }

    private Put planned() {
        shop.step("a").hands(1, 60);
        shop.hold("h", Place.Kind.MOULD, List.of("m-1", "m-2"), 1, "a");
        Put put = shop.put("a", "mon 09:00", "ada");
        put.places = List.of("m-1");
        return put;
    }

    private void only() {
        List<BrokenRule> found = shop.audit();
        assertThat(found).extracting(BrokenRule::rule).as("%s", found).containsOnly("WishesAreKept");
        assertThat(found.get(0).steps()).containsExactly("a");
        assertThat(found.get(0).sentence()).contains("expected what is wished", "so be it");
    }

    @Test
    void should_find_nothing_when_all_is_as_wished() {
        planned();
        wish(Kind.WITH, "ada");
        wish(Kind.WITHOUT, "bo");
        wish(Kind.AT, "m-1");
        wish(Kind.AWAY, "m-2");
        wish(Kind.START, "", Optional.of(at("mon 09:00")), Optional.of(at("mon 09:01")));
        assertThat(shop.audit()).isEmpty();
    }

    @Test
    void should_find_who_is_in_the_crew_against_a_wish() {
        planned();
        wish(Kind.WITH, "bo");
        only();
        shop.wishes.clear();
        wish(Kind.WITHOUT, "ada");
        only();
    }

    @Test
    void should_find_a_place_against_a_wish() {
        planned();
        wish(Kind.AT, "m-2");
        only();
        shop.wishes.clear();
        wish(Kind.AWAY, "m-1");
        only();
    }

    @Test
    void should_find_a_start_outside_the_time_wished_on_either_side_and_none_when_that_time_is_over() {
        planned();
        wish(Kind.START, "", Optional.of(at("mon 09:01")), Optional.empty());
        only();
        shop.wishes.clear();
        wish(Kind.START, "", Optional.empty(), Optional.of(at("mon 09:00")));
        only();
        shop.wishes.clear();
        wish(Kind.START, "", Optional.empty(), Optional.of(at("mon 06:00")));
        assertThat(shop.audit()).isEmpty();
    }

    @Test
    void should_find_a_wish_for_a_step_that_is_not_there() {
        shop.wishes.add(new WorkWish("w", "gone", Kind.WITH, "ada", Optional.empty(), Optional.empty(), "ada", ""));
        assertThat(shop.audit()).extracting(BrokenRule::rule).containsExactly("NamesInTheWorkAreKnown");
    }
}

package fayline.app.web.frame;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import java.util.Optional;

/** A page whose forms may come late, from a phone that kept them while it had no network. */
public interface TakesKept {
    /**
     * Takes a form that was kept on a phone.
     *
     * @param sight the shop, at the project that the form is about
     * @param address where the form would have been sent, without what stands after the question mark
     * @param typed what was typed, and when
     * @param sent who sends it, under which id
     * @return what became of it; empty where the address is none of this page's
     * @throws Refusal where the address names something that is not there
     */
    Optional<Outcome> takeKept(Sight sight, String address, Typed typed, Sent sent);
}

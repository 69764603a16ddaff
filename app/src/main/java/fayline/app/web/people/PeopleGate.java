package fayline.app.web.people;

import fayline.app.usecase.people.Act;
import fayline.app.usecase.people.Actor;
import fayline.app.usecase.people.People;
import fayline.app.usecase.people.Rights;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Door;
import fayline.app.web.frame.Gate;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Visit;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;

/** Asks of every request who it is, by the token of the sign-in, and of every address whether their role may. */
public final class PeopleGate implements Gate {
    private static final Set<String> READING = Set.of("GET", "HEAD");
    private final People people;

    /** For the people of a shop. */
    public PeopleGate(People people) {
        this.people = people;
    }

    /** What a visitor whom nobody knows may see: the door itself, and files that tell nothing of a shop. */
    private static boolean isOpen(String path) {
        return SignInPage.ADDRESSES.contains(path) || TrustPage.ADDRESSES.contains(path) || Door.isFile(path);
    }

    @Override
    public boolean who(Context ctx) {
        if (Door.isFile(ctx.path())) {
            return true;
        }
        Visit visit = new Visit(ctx);
        Optional<Actor> actor =
                Tokens.signIn(visit).flatMap(visit.byItself() ? people.signIns()::holder : people.signIns()::who);
        actor.ifPresent(visit::actor);
        if (actor.isPresent() || isOpen(ctx.path())) {
            return true;
        }
        if (isFollowed(ctx)) {
            ctx.redirect(SignInPage.DOOR + "?back=" + Visit.encoded(visit.path()), HttpStatus.SEE_OTHER);
            return false;
        }
        throw new Refusal(
                401,
                "You are not signed in, or your sign-in has ended. Nothing was done.",
                List.of("Go back, keep what you typed, sign in on another tab, and send it again."));
    }

    /** Whether somebody opened a page, so that the door can be shown instead. */
    private static boolean isFollowed(Context ctx) {
        String accepted = ctx.header("Accept");
        return READING.contains(ctx.method().name())
                && ctx.header("HX-Request") == null
                && (accepted == null || accepted.contains("text/html") || accepted.contains("*/*"));
    }

    @Override
    public void may(Context ctx) {
        if (Door.isFile(ctx.path())) {
            return;
        }
        Optional<Asks> asked = ctx.routeRoles().stream()
                .filter(Asks.class::isInstance)
                .map(Asks.class::cast)
                .findFirst();
        if (asked.filter(Asks.NOTHING::equals).isPresent()) {
            return;
        }
        if (asked.isEmpty() && !READING.contains(ctx.method().name())) {
            throw new Refusal(403, "Nobody may do this while people sign in.", List.of("Go back."));
        }
        Asks asks = asked.orElseGet(() -> Asks.to(Act.SEE));
        Actor who = Denied.actor(new Visit(ctx));
        if (asks.anyOf().stream().noneMatch(who::may)) {
            Act act = asks.inOrder().get(0);
            people.refused(who, act, ctx.method() + " " + ctx.path());
            throw new Refusal(
                    403, "As " + who.role().word() + " you may not " + act.words() + ".", List.of(remedy(who, act)));
        }
    }

    @Override
    public BooleanSupplier stays(Context ctx) {
        Optional<String> token = Tokens.signIn(new Visit(ctx));
        return () -> token.flatMap(people.signIns()::holder).isPresent();
    }

    private static String remedy(Actor who, Act act) {
        boolean byPassword = act == Act.KEEP_PEOPLE && Rights.may(who.role(), act);
        return byPassword
                ? "Sign in with your password to do this; a PIN or a paired phone is not enough."
                : "The lead decides who may.";
    }
}

package fayline.app.web.fit;

import fayline.app.usecase.act.Measured;
import fayline.app.usecase.act.TakeReading;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Typed;
import fayline.flow.project.fit.Fit;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;

/**
 * Takes readings of one fit under one choice, so that each is one entry. A form that is sent at once makes an id of its number
 * and what was typed, because a form that is gone back to may hold another reading; one that was kept on a phone has its number
 * as id. Whichever comes first, the other finds it.
 */
final class FitTaking {
    private final ShopRecord shop;
    private final Sight sight;
    private final Fit fit;
    private final FitSetup setup;

    FitTaking(ShopRecord shop, Sight sight, Fit fit, FitSetup setup) {
        this.shop = shop;
        this.sight = sight;
        this.fit = fit;
        this.setup = setup;
    }

    /** A reading sent at once. */
    Outcome now(Sent sent, String station, String value, String nogo) {
        Map<String, String> values = values(value, nogo);
        return shop.deciding(() -> shop.knows(sent.client())
                ? take(sent, station, values, Optional.empty())
                : take(under(id(sent, station, values), sent), station, values, Optional.empty()));
    }

    /** A reading that was kept on a phone. */
    Outcome keptBefore(Typed typed, Sent sent) {
        Map<String, String> values = values(typed.field("value"), typed.field("nogo"));
        String station = typed.field("station");
        String id = id(sent, station, values);
        return shop.deciding(() -> shop.knows(id)
                ? take(under(id, sent), station, values, Optional.empty())
                : take(sent, station, values, typed.moment()));
    }

    private static Sent under(String id, Sent sent) {
        return new Sent(id, sent.by(), sent.live());
    }

    private Outcome take(Sent sent, String station, Map<String, String> values, Optional<Instant> at) {
        Measured measured = new Measured(setup.kind().word(), fit.id(), station, setup.state(), values, at);
        return new TakeReading(shop).take(sent, sight.definition().facts().id(), measured);
    }

    private Map<String, String> values(String value, String nogo) {
        Map<String, String> values = new HashMap<>();
        values.put("value", setup.withUnit(value));
        put(values, "nogo", nogo.isEmpty() ? "" : setup.withUnit(nogo));
        put(values, "instrument", setup.instrument());
        put(values, "temperature", setup.temperatureWithUnit());
        put(values, "round", setup.round() > 1 ? String.valueOf(setup.round()) : "");
        return values;
    }

    /** The same reading sent twice with the same form has the same id; another value in that form has another. */
    private String id(Sent sent, String station, Map<String, String> values) {
        String all = String.join("\n", sent.client(), station, setup.state(), values.toString());
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(all.getBytes(StandardCharsets.UTF_8)), 0, 20);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("this Java has no SHA-256", e);
        }
    }

    private static void put(Map<String, String> values, String name, String value) {
        if (!value.isEmpty()) {
            values.put(name, value);
        }
    }
}

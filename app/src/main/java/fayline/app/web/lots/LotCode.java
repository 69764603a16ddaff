package fayline.app.web.lots;

import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Pattern;

/** What the square code on a lot's label says. */
public final class LotCode {
    private static final Pattern ADDRESS = Pattern.compile("https?://.*", Pattern.CASE_INSENSITIVE);
    private static final String NUMBER = "lot=";

    private LotCode() {}

    /**
     * The lot's number in what was typed or scanned: a maker's label holds the number alone, our own the address of the lot's
     * page. Any other address stays as it is, to be refused as it was read.
     */
    public static String number(String scanned) {
        String text = scanned.strip();
        if (!ADDRESS.matcher(text).matches()) {
            return text;
        }
        try {
            String query = URI.create(text).getRawQuery();
            return query == null
                    ? text
                    : Arrays.stream(query.split("&", -1))
                            .filter(p -> p.startsWith(NUMBER))
                            .map(p -> URLDecoder.decode(p.substring(NUMBER.length()), StandardCharsets.UTF_8))
                            .findFirst()
                            .orElse(text);
        } catch (IllegalArgumentException e) {
            return text;
        }
    }
}

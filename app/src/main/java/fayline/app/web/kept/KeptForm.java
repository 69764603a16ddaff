package fayline.app.web.kept;

import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Typed;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * One form as a phone kept it.
 *
 * @param id its own random number
 * @param address where it would have been sent, without what stands after the question mark
 * @param project the project that was on the screen
 * @param by who typed it
 * @param typedAt when, by the shop's clock as the phone knew it
 * @param typed the fields as typed, in their order
 */
record KeptForm(String id, String address, String project, String by, Instant typedAt, List<Pair> typed) {
    KeptForm {
        typed = List.copyOf(typed);
    }

    /** A field of a form. */
    record Pair(String name, String value) {}

    /**
     * The form as its page reads it.
     *
     * @param moment when it was typed; empty where it was sent before and stands with a moment already
     */
    Typed as(Optional<Instant> moment) {
        return new Reading(this, moment);
    }

    private record Reading(KeptForm form, Optional<Instant> moment) implements Typed {
        @Override
        public String field(String name) {
            return first(name).strip();
        }

        @Override
        public String text(String name) {
            return first(name).replace("\r\n", "\n");
        }

        private String first(String name) {
            return fields(name).stream().findFirst().orElse("");
        }

        @Override
        public List<Parcel> parcels(String name) {
            return fields(name).stream().map(Reading::parcel).toList();
        }

        /** A file as the phone keeps it: {@code data:image/jpeg;base64,} and its bytes in Base64. */
        private static Parcel parcel(String kept) {
            try {
                return new KeptFile(Base64.getDecoder().decode(kept.substring(kept.indexOf(',') + 1)));
            } catch (IllegalArgumentException e) {
                throw new Refusal(422, "A photo that the phone kept cannot be read.", List.of());
            }
        }

        @Override
        public List<String> fields(String name) {
            return form.typed().stream()
                    .filter(p -> p.name().equals(name))
                    .map(Pair::value)
                    .toList();
        }
    }

    @SuppressWarnings("ArrayRecordComponent") // made here for one reader, and compared with nothing
    private record KeptFile(byte[] bytes) implements Typed.Parcel {
        @Override
        public long length() {
            return bytes.length;
        }
    }
}

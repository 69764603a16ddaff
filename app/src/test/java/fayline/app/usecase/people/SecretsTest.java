package fayline.app.usecase.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.security.SecureRandom;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a password, a PIN, a token and a code must be, and how a secret is compared. */
class SecretsTest {
    private static final String PIN = "402917";

    @Test
    void should_make_tokens_of_256_bits_and_codes_of_60_that_never_repeat() {
        Secrets secrets = new Secrets(new SecureRandom());
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < 100_000; i++) {
            assertThat(seen.add(secrets.token())).isTrue();
        }
        assertThat(java.util.Base64.getUrlDecoder().decode(seen.iterator().next()))
                .hasSize(32);
        Set<String> codes = new HashSet<>();
        for (int i = 0; i < 10_000; i++) {
            codes.add(Secrets.readCode(secrets.code()));
        }
        assertThat(codes).hasSize(10_000).allMatch(c -> c.length() == 12);
        assertThat(codes.stream().flatMapToInt(String::chars).distinct().count())
                .isEqualTo(32);
    }

    @Test
    void should_check_a_password_exactly_as_typed() {
        Secrets secrets = new Secrets(new SecureRandom());
        String composed = "caf\u00e9 on the slipway";
        String long1 = "x".repeat(80) + "a";
        assertThat(secrets.isRight(composed, secrets.hash(composed))).isTrue();
        for (String other :
                List.of("cafe\u0301 on the slipway", composed + " ", " " + composed, "Caf\u00e9 on the slipway")) {
            assertThat(secrets.isRight(other, secrets.hash(composed))).as(other).isFalse();
        }
        assertThat(secrets.isRight("x".repeat(80) + "b", secrets.hash(long1))).isFalse();
        assertThat(secrets.isRight(long1, secrets.hash(long1))).isTrue();
        assertThat(secrets.isRight("", "")).isFalse();
    }

    @Test
    void should_take_a_long_password_of_any_mix_and_refuse_short_and_common_ones() {
        for (String good : List.of("copperkettlemoth", "seven planks under the tarpaulin", "k3!kP0_zQ8#vM2xL")) {
            SecretRules.requirePassword(good, List.of("ada"));
        }
        for (String bad : List.of("", "k3!kP0_", "k3!kP0_zQ8#vM2", "x7 ".repeat(67))) {
            assertThatThrownBy(() -> SecretRules.requirePassword(bad, List.of()))
                    .as(bad)
                    .isInstanceOf(DeniedException.class)
                    .hasMessageContaining("expected 15 to 200");
        }
        for (String common : List.of(
                "passwordpassword",
                "123456789012345",
                "qwertyuiopasdfgh",
                "aaaaaaaaaaaaaaaa",
                "password12345678",
                "abcdefghijklmnop",
                "fayline fayline ")) {
            assertThatThrownBy(() -> SecretRules.requirePassword(common, List.of("fayline")))
                    .as(common)
                    .hasMessageContaining("common");
        }
    }

    @Test
    void should_take_six_digits_as_a_pin_but_not_the_first_that_come_to_mind() {
        SecretRules.requirePin(PIN);
        for (String bad : List.of("", "12345", "1234567", "12a456", "\u0661\u0662\u0663\u0664\u0665\u0666")) {
            assertThatThrownBy(() -> SecretRules.requirePin(bad)).as(bad).hasMessageContaining("6 digits");
        }
        for (String simple : List.of("000000", "123456", "890123", "654321", "121212", "123123")) {
            assertThatThrownBy(() -> SecretRules.requirePin(simple))
                    .as(simple)
                    .hasMessageContaining("others would try");
        }
    }
}

package fayline.app.usecase.week;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Words of a week's account. */
class WeekWordsTest {
    @Test
    void should_say_what_each_of_several_pieces_should_weigh() {
        assertThat(WeekWords.aim("6 x 0.867 kg")).isEqualTo("0.867 kg for each of 6");
        assertThat(WeekWords.aim("11.9 kg")).isEqualTo("11.9 kg");
        assertThat(WeekWords.aim("1 lb 3 oz")).isEqualTo("1 lb 3 oz");
    }
}

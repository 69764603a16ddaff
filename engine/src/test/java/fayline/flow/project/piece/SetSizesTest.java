package fayline.flow.project.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SetSizesTest {
    @Test
    void should_begin_with_fewest_sets_as_even_as_can_be() {
        assertThat(SetSizes.of(18, 4, 6)).containsExactly(List.of(6, 6, 6), List.of(5, 5, 4, 4));
        assertThat(SetSizes.of(16, 3, 6)).startsWith(List.of(6, 5, 5), List.of(6, 6, 4));
        assertThat(SetSizes.of(6, 3, 6)).containsExactly(List.of(6), List.of(3, 3));
    }

    @Test
    void should_make_one_smaller_set_only_where_whole_ones_do_not_come_out() {
        assertThat(SetSizes.of(5, 4, 4)).containsExactly(List.of(3, 2));
        assertThat(SetSizes.of(2, 3, 6)).containsExactly(List.of(2));
    }

    @Test
    void should_keep_count_and_limits_whatever_is_divided() {
        for (int pieces = 1; pieces <= 40; pieces++) {
            for (int most = 1; most <= 9; most++) {
                for (int least = 1; least <= most; least++) {
                    List<List<Integer>> ways = SetSizes.of(pieces, least, most);
                    assertThat(ways).isNotEmpty().doesNotHaveDuplicates();
                    boolean comesOut = (pieces + most - 1) / most * least <= pieces;
                    for (List<Integer> way : ways) {
                        int min = least;
                        int max = most;
                        assertThat(way.stream().mapToInt(i -> i).sum()).isEqualTo(pieces);
                        assertThat(way).allSatisfy(n -> assertThat(n).isBetween(comesOut ? min : 1, max));
                    }
                }
            }
        }
    }
}

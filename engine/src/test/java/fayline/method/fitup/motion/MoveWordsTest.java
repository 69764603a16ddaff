package fayline.method.fitup.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Words worked out by hand: nose at the left on the left side, so a counter-clockwise turn puts the nose down. */
class MoveWordsTest {
    private static final Spot MIDDLE = new Spot(0, 0);

    @Test
    void should_tell_way_turn_and_pivot_when_a_part_is_on_the_left() {
        MoveWords w = new MoveWords(Side.LEFT, MIDDLE, "the middle of the stations");
        assertEquals(
                "0.6 mm aft, 0.2 mm up, turn 0.12 deg nose-up (2.09 mm per metre), about the middle of the stations",
                w.sentence(new Move(0.6, 0.2, Math.toRadians(-0.12))));
        assertEquals(
                "0.35 mm forward, 1.0 mm down, about the middle of the stations", w.sentence(new Move(-0.35, -1, 0)));
        assertEquals("turn 0.050 deg nose-down (0.87 mm per metre)", w.turn(Math.toRadians(0.05)));
        assertEquals("Leave it where it is", w.sentence(new Move(0.002, 0, 0)));
    }

    @Test
    void should_turn_the_words_round_when_a_part_is_on_the_right() {
        MoveWords w = new MoveWords(Side.RIGHT, MIDDLE, "pin 1");
        assertEquals(
                "0.6 mm forward, 0.2 mm up, turn 0.12 deg nose-down (2.09 mm per metre), about pin 1",
                w.sentence(new Move(0.6, 0.2, Math.toRadians(-0.12))));
        assertEquals(Side.LEFT, Side.RIGHT.opposite());
    }

    @Test
    void should_tell_marked_points_when_a_turn_cannot_be_set() {
        MoveWords w = new MoveWords(Side.LEFT, MIDDLE, "the middle of the stations");
        // A turn of 0.001 rad counter-clockwise moves the point (300, 200) by (-0.2, +0.3).
        assertEquals(
                List.of(
                        "upper aft corner goes 0.4 mm aft, 0.3 mm up",
                        "lower forward corner goes 0.8 mm aft, 0.3 mm down"),
                w.at(
                        new Move(0.6, 0, 0.001),
                        List.of(new Spot(300, 200), new Spot(-300, -200)),
                        List.of("upper aft corner", "lower forward corner")));
        assertEquals("hinge stays", w.at(Move.NONE, new Spot(1, 1), "hinge"));
        assertThrows(IllegalArgumentException.class, () -> w.at(Move.NONE, List.of(MIDDLE), List.of()));
    }
}

package fayline.method.fitup.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fayline.basis.finding.Phrase;
import fayline.basis.units.UnitSystem;
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
                w.sentence(new Move(0.6, 0.2, Math.toRadians(-0.12))).toString());
        assertEquals(
                "0.35 mm forward, 1.0 mm down, about the middle of the stations",
                w.sentence(new Move(-0.35, -1, 0)).toString());
        assertEquals(
                "turn 0.050 deg nose-down (0.87 mm per metre)",
                w.turn(Math.toRadians(0.05)).toString());
        assertEquals("Leave it where it is", w.sentence(new Move(0.002, 0, 0)).toString());
    }

    @Test
    void should_turn_the_words_round_when_a_part_is_on_the_right() {
        MoveWords w = new MoveWords(Side.RIGHT, MIDDLE, "pin 1");
        assertEquals(
                "0.6 mm forward, 0.2 mm up, turn 0.12 deg nose-down (2.09 mm per metre), about pin 1",
                w.sentence(new Move(0.6, 0.2, Math.toRadians(-0.12))).toString());
        assertEquals(Side.LEFT, Side.RIGHT.opposite());
    }

    @Test
    void should_tell_thou_and_thou_per_foot_when_inches_are_read() {
        MoveWords w = new MoveWords(Side.LEFT, MIDDLE, "pin 1");
        // 0.6 mm / 0.0254 mm = 23.6 thou; 0.2 mm = 7.9 thou; 0.12 deg = 2.094 mm per metre = 25.1 thou per foot.
        assertEquals(
                "24 thou aft, 8 thou up, turn 0.12 deg nose-up (25 thou per foot), about pin 1",
                w.sentence(new Move(0.6, 0.2, Math.toRadians(-0.12))).in(UnitSystem.INCH));
    }

    @Test
    void should_tell_marked_points_when_a_turn_cannot_be_set() {
        MoveWords w = new MoveWords(Side.LEFT, MIDDLE, "the middle of the stations");
        // A turn of 0.001 rad counter-clockwise moves the point (300, 200) by (-0.2, +0.3).
        assertEquals(
                List.of(
                        "upper aft corner goes 0.4 mm aft, 0.3 mm up",
                        "lower forward corner goes 0.8 mm aft, 0.3 mm down"),
                w
                        .at(
                                new Move(0.6, 0, 0.001),
                                List.of(new Spot(300, 200), new Spot(-300, -200)),
                                List.of("upper aft corner", "lower forward corner"))
                        .stream()
                        .map(Phrase::toString)
                        .toList());
        assertEquals("hinge stays", w.at(Move.NONE, new Spot(1, 1), "hinge").toString());
        assertThrows(IllegalArgumentException.class, () -> w.at(Move.NONE, List.of(MIDDLE), List.of()));
    }
}

package fayline.app.web.laminate;

import java.util.List;

/**
 * What the page of a laminate shows.
 *
 * @param id the laminate
 * @param name its name
 * @param parts the parts it is laid up on
 * @param answer the answer in words
 * @param good whether it is within
 * @param bad whether it is not within
 * @param why why, a sentence
 * @param stack drawing of the stack
 * @param round drawing of its stiffness all round; empty where it cannot be reckoned
 * @param facts its figures, each with its name
 * @param loads each load
 * @param inputs what the answer rests on
 * @param missing what is not entered, a sentence each
 * @param swap one ply exchanged
 */
public record LaminateView(
        String id,
        String name,
        List<Link> parts,
        String answer,
        boolean good,
        boolean bad,
        String why,
        String stack,
        String round,
        List<Fact> facts,
        List<Load> loads,
        List<Input> inputs,
        List<String> missing,
        Swap swap) {
    /** Copies the lists. */
    public LaminateView {
        parts = List.copyOf(parts);
        facts = List.copyOf(facts);
        loads = List.copyOf(loads);
        inputs = List.copyOf(inputs);
        missing = List.copyOf(missing);
    }

    /**
     * A way to somewhere.
     *
     * @param name what is there
     * @param to the address
     */
    public record Link(String name, String to) {}

    /**
     * A figure.
     *
     * @param name what it is
     * @param value its value
     */
    public record Fact(String name, String value) {}

    /**
     * A load.
     *
     * @param name what it is
     * @param facts what acts, how often it can, and where it ends
     * @param plies each ply's stress at its two faces
     */
    public record Load(String name, List<Fact> facts, List<PlyRow> plies) {
        /** Copies the lists. */
        public Load {
            facts = List.copyOf(facts);
            plies = List.copyOf(plies);
        }
    }

    /**
     * Stress of a ply.
     *
     * @param number from the mould face from 1
     * @param material its material
     * @param angle its direction
     * @param along stress along at both faces, the mould side first
     * @param across stress across
     * @param shear shear stress
     */
    public record PlyRow(int number, String material, String angle, String along, String across, String shear) {}

    /**
     * What an answer rests on.
     *
     * @param of what it is a figure of
     * @param status how far it is to be trusted
     * @param origin where it is from
     * @param trusted whether somebody stands for it
     */
    public record Input(String of, String status, String origin, boolean trusted) {}

    /**
     * One ply exchanged.
     *
     * @param ply the ply as chosen
     * @param of the material as chosen
     * @param angle the direction as typed
     * @param plies the plies to choose from
     * @param materials the materials to choose from
     * @param refused why it cannot be reckoned; empty if it can or was not asked
     * @param rows each figure as it is and as it would be; empty where nothing was asked
     */
    public record Swap(
            String ply,
            String of,
            String angle,
            List<Choice> plies,
            List<Choice> materials,
            String refused,
            List<Row> rows) {
        /** Copies the lists. */
        public Swap {
            plies = List.copyOf(plies);
            materials = List.copyOf(materials);
            rows = List.copyOf(rows);
        }
    }

    /**
     * Something to choose.
     *
     * @param value as it is sent
     * @param name as it is read
     */
    public record Choice(String value, String name) {}

    /**
     * A figure as it is and as it would be.
     *
     * @param name what it is
     * @param now as it is
     * @param then as it would be
     */
    public record Row(String name, String now, String then) {}
}

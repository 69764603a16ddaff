package fayline.flow.plan;

/**
 * A mould, stand or port.
 *
 * @param id the id, unique over all kinds
 * @param name the name
 * @param kind which kind
 * @param room the room of a stand; empty otherwise
 * @param dust whether dusty work may happen on a stand
 * @param wet whether wet work may happen on a stand
 */
public record Place(String id, String name, Kind kind, String room, boolean dust, boolean wet) {
    /** Kinds of places. */
    public enum Kind {
        MOULD,
        STAND,
        PORT
    }
}

package fayline.store.file.plan;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.flow.plan.OppositeHands;
import fayline.flow.plan.OppositeHands.Follow;
import fayline.flow.plan.OppositeHands.Taught;
import fayline.flow.plan.PieceGroup;
import fayline.flow.plan.PieceGroup.Limit;
import fayline.flow.plan.PieceGroup.PieceSet;
import fayline.flow.plan.SetChoice;
import fayline.flow.plan.Work;
import java.util.List;
import java.util.Locale;

/** What second hands take over, and the sets of a plan, in a plan file; left out where there is nothing of it. */
final class HandsAndSets {
    private HandsAndSets() {}

    static void write(Work work, ObjectNode node) {
        if (!work.hands().equals(OppositeHands.NONE)) {
            ObjectNode hands = node.putObject("hands");
            ArrayNode follows = hands.putArray("follows");
            work.hands()
                    .follows()
                    .forEach(f -> follows.addObject()
                            .put("step", f.step())
                            .put("first", f.first())
                            .put("crew", f.crew().name().toLowerCase(Locale.ROOT)));
            ArrayNode lessons = hands.putArray("lessons");
            work.hands()
                    .lessons()
                    .forEach(t -> lessons.addObject()
                            .put("step", t.step())
                            .put("first", t.first())
                            .put("of", t.of()));
        }
        if (!work.sets().groups().isEmpty()) {
            ArrayNode groups = node.putArray("groups");
            work.sets().groups().forEach(g -> group(g, groups.addObject()));
        }
    }

    private static void group(PieceGroup g, ObjectNode node) {
        node.put("id", g.id()).put("name", g.name()).put("pieces", g.pieces());
        node.put("least", g.least()).put("most", g.most()).put("why", g.why());
        ArrayNode sets = node.putArray("sets");
        g.sets()
                .forEach(s -> sets.addObject()
                        .put("made", s.made())
                        .put("from", s.from())
                        .put("to", s.to()));
        ArrayNode limits = node.putArray("limits");
        g.limits().forEach(l -> limits.addObject().put("place", l.place()).put("most", l.most()));
    }

    static OppositeHands hands(JsonAt work) {
        return work.optionalObject("hands").map(HandsAndSets::taken).orElse(OppositeHands.NONE);
    }

    static SetChoice sets(JsonAt work) {
        return new SetChoice(work.optionalList("groups", HandsAndSets::group), List.of());
    }

    private static OppositeHands taken(JsonAt at) {
        OppositeHands hands =
                new OppositeHands(at.list("follows", HandsAndSets::follow), at.list("lessons", HandsAndSets::taught));
        at.noOthers();
        return hands;
    }

    private static Follow follow(JsonAt at) {
        Follow follow = new Follow(at.text("step"), at.text("first"), at.word("crew", OppositeHands.Crew.values()));
        at.noOthers();
        return follow;
    }

    private static Taught taught(JsonAt at) {
        Taught taught = new Taught(at.text("step"), at.text("first"), at.text("of"));
        at.noOthers();
        return taught;
    }

    private static PieceGroup group(JsonAt at) {
        PieceGroup group = new PieceGroup(
                at.text("id"),
                at.text("name"),
                at.whole("pieces"),
                at.whole("least"),
                at.whole("most"),
                at.text("why"),
                at.list("sets", HandsAndSets::set),
                at.list("limits", HandsAndSets::limit));
        at.noOthers();
        return group;
    }

    private static PieceSet set(JsonAt at) {
        PieceSet set = new PieceSet(at.text("made"), at.whole("from"), at.whole("to"));
        at.noOthers();
        return set;
    }

    private static Limit limit(JsonAt at) {
        Limit limit = new Limit(at.text("place"), at.whole("most"));
        at.noOthers();
        return limit;
    }
}

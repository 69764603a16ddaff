package fayline.store.file.rule;

import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.HashMap;
import java.util.Map;

/** Ids within a thing, each once; and one id for one thing where a reference does not say its kind. */
final class Doubles {
    private final Draft d;
    private final Problems problems;

    Doubles(Draft draft, Problems problems) {
        this.d = draft;
        this.problems = problems;
    }

    void check() {
        once(d.project().down("milestones"), "id", "a milestone");
        once(d.shop().down("stands"), "id", "a stand");
        once(d.shop().down("ports"), "id", "a port");
        once(d.climate().down("forecast"), "date", "a forecast day");
        d.parts().forEach(p -> once(p.at().down("zones"), "id", "a zone"));
        d.fits().forEach(f -> {
            once(f.at().down("stations"), "id", "a station");
            once(f.at().down("states"), "id", "a state");
            once(f.at().down("points"), "id", "a point");
            once(f.at().down("schemes"), "name", "a scheme");
            once(f.at().down("marks"), "name", "a marked place");
            once(f.at().down("widths"), "id", "a width");
            Tree frame = f.at().down("frame");
            once(frame.down("places"), "id", "a place");
            once(frame.down("sections"), "id", "a section");
            once(frame.down("clamps"), "id", "a clamp");
            once(frame.down("fittings"), "id", "a fitting");
        });
        d.chains().forEach(c -> {
            once(c.at().down("links"), "name", "a link");
            once(c.at().down("links"), "part", "a link");
            once(c.at().down("remedies"), "name", "a remedy");
            once(c.at().down("neighbours"), "name", "a neighbour");
            c.at().down("links").items().forEach(l -> {
                once(l.down("points"), "id", "a point");
                once(l.down("schemes"), "name", "a scheme");
                once(l.down("marks"), "name", "a mark");
            });
        });
        d.recipes().forEach(r -> {
            once(r.at().down("steps"), "id", "a step");
            once(r.at().down("parameters"), "id", "a parameter");
        });
        Map<String, String> things = new HashMap<>();
        d.parts().forEach(p -> things.put(p.id(), "part"));
        d.joints().forEach(j -> apart(j, things, "a joint and a part"));
        d.assemblies().forEach(a -> apart(a, things, "an assembly and a part"));
        Map<String, String> stock = new HashMap<>();
        d.materials().forEach(m -> stock.put(m.id(), "material"));
        d.systems().forEach(s -> apart(s, stock, "a system and a material"));
    }

    private void apart(Placed<?> p, Map<String, String> taken, String both) {
        if (taken.containsKey(p.id())) {
            problems.stop(
                    p.at().down("id"),
                    Problems.quote(p.id()) + " for " + both,
                    "different ids, since both are named in the same places",
                    "");
        }
    }

    private void once(Tree list, String key, String what) {
        Map<String, Tree> first = new HashMap<>();
        for (Tree item : list.items()) {
            Tree id = item.down(key);
            if (id.form() != Tree.Form.SCALAR || id.isBlank()) {
                continue;
            }
            Tree other = first.putIfAbsent(id.text(), id);
            if (other != null) {
                problems.stop(
                        id,
                        Problems.quote(id.text()) + " a second time",
                        "each " + key + " of " + what + " once",
                        "it stands in line " + other.line() + " too");
            }
        }
    }
}

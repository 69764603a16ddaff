package fayline.app.web.inspect;

import fayline.app.web.frame.PhotoView;
import fayline.app.web.frame.Sight;
import fayline.app.web.inspect.InspectView.Answer;
import fayline.app.web.inspect.InspectView.Choice;
import fayline.app.web.inspect.InspectView.Fault;
import fayline.app.web.inspect.InspectView.Group;
import fayline.app.web.inspect.InspectView.Stage;
import fayline.app.web.inspect.InspectView.Visited;
import fayline.flow.project.design.Assembly;
import fayline.flow.project.design.Made;
import fayline.flow.project.local.LocalStage;
import fayline.flow.record.inspect.FoundFault;
import fayline.flow.record.inspect.HeldVisit;
import fayline.flow.record.inspect.InspectState;
import fayline.flow.record.inspect.StageGate;
import fayline.flow.record.inspect.StagePhoto;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Words stages, visits and findings of one project. */
final class InspectViews {
    private final Sight sight;
    private final InspectState state;
    private final StageGate gate;

    InspectViews(Sight sight) {
        this.sight = sight;
        this.state = sight.view().record().inspect();
        this.gate = new StageGate(sight.definition(), state);
    }

    InspectView view(boolean byDate) {
        List<Visited> visits = new ArrayList<>(state.visitsOf(sight.view().project()).stream()
                .map(this::visited)
                .toList());
        Collections.reverse(visits);
        return new InspectView(
                sight.definition().local().authority(),
                sight.definition().local().stages().stream().map(this::stage).toList(),
                byDate,
                visits,
                groups(),
                made().map(m -> new Choice(m.id(), m.name())).toList(),
                state.faultsOf(sight.view().project()).stream()
                        .filter(FoundFault::isOpen)
                        .count());
    }

    private Stream<Made> made() {
        return Stream.concat(sight.definition().parts().stream(), sight.definition().joints().stream());
    }

    private Stage stage(LocalStage s) {
        return new Stage(
                s.id(),
                s.name(),
                s.lookAt(),
                s.photos() == 0 ? "" : gate.photos(s) + " of " + s.photos() + " pictures with scale and direction",
                gate.missing(s));
    }

    private Visited visited(HeldVisit v) {
        String stage = sight.definition()
                .local()
                .stage(v.stage())
                .map(LocalStage::name)
                .orElse(v.stage());
        String says = sight.time().at(v.at()) + (stage.isEmpty() ? "" : ", " + stage) + ", entered by "
                + sight.personName(v.by());
        String shows = v.photos().stream()
                .filter(StagePhoto::isTold)
                .map(p -> p.facing() + "; scale: " + p.scale())
                .findFirst()
                .orElse("");
        return new Visited(
                v.seq(),
                (v.own() ? "Own look " : "Visit ") + v.number() + (v.who().isEmpty() ? "" : ", " + v.who()),
                says,
                v.text() + (shows.isEmpty() ? "" : (v.text().isEmpty() ? "" : " ") + "Pictures: " + shows + "."),
                PhotoView.of(v.photos().stream().map(StagePhoto::photo).toList(), says),
                state.of(v).stream().map(this::fault).toList());
    }

    private Fault fault(FoundFault f) {
        String says = "Raised " + sight.time().at(f.at()) + " by " + sight.personName(f.by());
        return new Fault(
                f.seq(),
                f.number(),
                sight.madeName(f.made()),
                sight.madeLink(f.made()),
                f.text(),
                says,
                word(f),
                f.isOpen(),
                f.isOpen() && !f.waitsForSignature(),
                f.waitsForSignature(),
                PhotoView.of(f.photos(), says),
                f.chain().stream().map(s -> answer(f, s)).toList());
    }

    private static String word(FoundFault f) {
        return f.waitsForSignature() ? "put right, not signed" : f.isOpen() ? "open" : "accepted";
    }

    private Answer answer(FoundFault f, FoundFault.Step s) {
        boolean mended = f.mended().contains(s);
        String who = s.who().isEmpty()
                ? sight.personName(s.by())
                : s.who() + " (entered by " + sight.personName(s.by()) + ")";
        String what = mended ? "Put right " : s.accepted() ? "Accepted and signed " : "Not accepted ";
        String says = what + sight.time().at(s.at()) + " by " + who;
        return new Answer(says, s.text(), PhotoView.of(s.photos(), says));
    }

    /** Findings by assembly and part, as the tree of the aircraft stands. */
    private List<Group> groups() {
        Map<String, List<Fault>> by = new LinkedHashMap<>();
        for (Assembly a : sight.definition().assemblies()) {
            made().filter(m -> m.in().equals(a.id())).forEach(m -> put(by, a.name(), m));
        }
        made().filter(m -> sight.definition().assemblies().find(m.in()).isEmpty())
                .forEach(m -> put(by, "Other", m));
        return by.entrySet().stream()
                .map(e -> new Group(e.getKey(), e.getValue()))
                .toList();
    }

    private void put(Map<String, List<Fault>> by, String assembly, Made m) {
        state.faultsOf(sight.view().project()).stream()
                .filter(f -> f.made().equals(m.id()))
                .forEach(f ->
                        by.computeIfAbsent(assembly, x -> new ArrayList<>()).add(fault(f)));
    }
}

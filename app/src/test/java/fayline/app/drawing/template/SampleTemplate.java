package fayline.app.drawing.template;

import fayline.flow.project.design.Hand;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.outline.EdgePoint;
import fayline.method.fitup.outline.OutlineCalculator;
import fayline.method.fitup.outline.PartOutline;
import fayline.method.fitup.outline.RoundedPolygon;
import fayline.method.fitup.trim.cut.CutLine;
import fayline.method.fitup.trim.cut.CutSide;
import java.util.List;

/** An invented pane of 620 x 380 mm with rounded corners, cut along its top and, on the neighbour, along its rear. */
public final class SampleTemplate {
    private SampleTemplate() {}

    public static PartOutline outline() {
        return OutlineCalculator.calculate(new RoundedPolygon(
                        List.of(new Spot(0, 0), new Spot(620, 0), new Spot(580, 380), new Spot(60, 340)),
                        List.of(40.0, 60.0, 50.0, 30.0)))
                .outline()
                .orElseThrow();
    }

    public static Template of(CutSide rear) {
        PartOutline o = outline();
        double top = o.nearest(new Spot(500, 374)).sMm();
        double end = o.nearest(new Spot(120, 345)).sMm();
        double aft = o.nearest(new Spot(605, 120)).sMm();
        CutLine upper = new CutLine(
                "top",
                CutSide.PART,
                List.of(
                        new CutLine.Stop("T1", true, top, 0, 0),
                        new CutLine.Stop("T2", true, (top + end) / 2, 1.8, 1.5),
                        new CutLine.Stop("front end", false, end, 1.2, 0.9)));
        CutLine lower = new CutLine(
                "rear",
                rear,
                List.of(new CutLine.Stop("R1", true, aft, 2, 1.7), new CutLine.Stop("R2", true, aft + 160, 1, 0.7)));
        EdgePoint s = o.nearest(new Spot(300, 0));
        return Template.of(
                new Template.Heading("Canopy pane <left> & frame", "Trimmed", "Revision C, 9f2c44d1", "Tue 3 Mar 2026"),
                Hand.LEFT,
                o,
                List.of(upper, lower),
                List.of(new Station("B1", s.at(), s.nx(), s.ny()), new Station("T1", s.at(), 0, -1)));
    }
}

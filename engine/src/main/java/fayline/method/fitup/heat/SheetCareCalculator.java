package fayline.method.fitup.heat;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Growth of extruded sheet with moisture as one maker gives it, 0.2, 0.3, 0.6 % at 60, 80, 100 % [acrylic-maker1], and the
 * temperature for cutting and drilling: 24 to 27 degC wanted, below 15 degC it cracks easily (common practice, no source).
 */
public final class SheetCareCalculator {
    private static final String MAKER = "[acrylic-maker1]";
    private static final String PRACTICE = "common practice, no source";
    private static final double COLD = 15;
    private static final double WARM_ENOUGH = 24;

    private SheetCareCalculator() {}

    /** Answers the question. */
    public static SheetCareResult calculate(SheetCare sheet) {
        List<SheetCareResult.Growth> growth = List.of(
                new SheetCareResult.Growth(60, 0.002 * sheet.reachMm()),
                new SheetCareResult.Growth(80, 0.003 * sheet.reachMm()),
                new SheetCareResult.Growth(100, 0.006 * sheet.reachMm()));
        List<Finding> findings = new ArrayList<>();
        findings.add(new Finding(
                Severity.NOTE,
                "sheet",
                String.format(
                        Locale.ROOT,
                        "Acrylic also grows with moisture over weeks: extruded sheet by %.1f mm at the far edge in air of"
                                + " 60 %%, %.1f mm in air of 80 %%. It is not in the gaps shown.",
                        growth.get(0).mm(),
                        growth.get(1).mm()),
                MAKER));
        if (sheet.shopDegC() < WARM_ENOUGH) {
            boolean cold = sheet.shopDegC() < COLD;
            findings.add(new Finding(
                    cold ? Severity.CAUTION : Severity.NOTE,
                    "sheet",
                    String.format(
                            Locale.ROOT,
                            cold
                                    ? "Do not cut or drill acrylic at %.0f degC: below 15 degC it cracks."
                                            + " Warm it to 24 to 27 degC first."
                                    : "Warm acrylic to 24 to 27 degC before cutting or drilling; it is at %.0f degC.",
                            sheet.shopDegC()),
                    PRACTICE));
        }
        return new SheetCareResult(growth, findings);
    }
}

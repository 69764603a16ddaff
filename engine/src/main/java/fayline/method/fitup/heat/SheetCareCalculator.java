package fayline.method.fitup.heat;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import java.util.ArrayList;
import java.util.List;

/**
 * Growth of extruded sheet with moisture as one maker gives it, 0.2, 0.3, 0.6 % at 60, 80, 100 % [acrylic-maker1], and the
 * temperature for cutting and drilling: 24 to 27 degC wanted, below 15 degC it cracks easily (common practice, no source).
 */
public final class SheetCareCalculator {
    private static final String MAKER = "[acrylic-maker1]";
    private static final String PRACTICE = "common practice, no source";
    private static final double COLD = 15;
    private static final double WARM_ENOUGH = 24;
    private static final double WARM_MOST = 27;

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
                Phrase.of(
                        "Acrylic also grows with moisture over weeks: extruded sheet by %s at the far edge in air of"
                                + " 60 %%, %s in air of 80 %%. It is not in the gaps shown.",
                        Amount.mm(growth.get(0).mm(), 1),
                        Amount.mm(growth.get(1).mm(), 1)),
                MAKER));
        if (sheet.shopDegC() < WARM_ENOUGH) {
            boolean cold = sheet.shopDegC() < COLD;
            findings.add(new Finding(
                    cold ? Severity.CAUTION : Severity.NOTE,
                    "sheet",
                    cold
                            ? Phrase.of(
                                    "Do not cut or drill acrylic at %s: below %s it cracks. Warm it to %s to %s first.",
                                    Amount.degC(sheet.shopDegC()),
                                    Amount.degC(COLD),
                                    Amount.bareDegC(WARM_ENOUGH),
                                    Amount.degC(WARM_MOST))
                            : Phrase.of(
                                    "Warm acrylic to %s to %s before cutting or drilling; it is at %s.",
                                    Amount.bareDegC(WARM_ENOUGH),
                                    Amount.degC(WARM_MOST),
                                    Amount.degC(sheet.shopDegC())),
                    PRACTICE));
        }
        return new SheetCareResult(growth, findings);
    }
}

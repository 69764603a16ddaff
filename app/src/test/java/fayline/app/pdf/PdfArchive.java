package fayline.app.pdf;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.stream.Collectors;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Asks another program's rules (the veraPDF library) whether a file is PDF/A-2a, ISO 19005-2 level A. */
public final class PdfArchive {
    private PdfArchive() {}

    /** What breaks the standard, one sentence each; empty where it is kept. */
    public static List<String> faults(byte[] pdf) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFA_2_A);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFA_2_A, false)) {
            ValidationResult result = validator.validate(parser);
            List<String> faults = result.getTestAssertions().stream()
                    .filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
                    .map(a ->
                            a.getRuleId().getClause() + " test " + a.getRuleId().getTestNumber() + ": " + a.getMessage()
                                    + " at " + a.getLocation().getContext())
                    .distinct()
                    .collect(Collectors.toList());
            if (faults.isEmpty() && !result.isCompliant()) {
                faults.add("not compliant, and no rule named");
            }
            return faults;
        }
    }
}

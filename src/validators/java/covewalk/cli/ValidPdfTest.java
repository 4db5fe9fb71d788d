package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** The PDFs keep what a machine can check of PDF/UA-1 (ISO 14289-1), says veraPDF. */
class ValidPdfTest {

    @TempDir
    Path folder;

    @Test
    void keepsTheRulesForReadingAids() throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        List<String> broken = new ArrayList<>();
        for (Path pdf : PrintedDemo.pages(folder, ".pdf")) {
            broken(pdf).forEach(rule -> broken.add(folder.relativize(pdf) + ": " + rule));
        }
        assertEquals(List.of(), broken);
    }

    /** More than forty coves: the parts were laid out one by one. */
    @Test
    void keepsThemInAReportThatWasBoundFromParts() throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        assertEquals(List.of(), broken(LongDemo.print(folder)));
    }

    private static List<String> broken(Path pdf) throws Exception {
        try (PDFAParser parser = Foundries.defaultInstance().createParser(pdf.toFile(), PDFAFlavour.PDFUA_1);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            return validator.validate(parser).getTestAssertions().stream().filter(rule -> rule.getStatus() == TestAssertion.Status.FAILED)
                    .map(rule -> rule.getRuleId().getClause() + "-" + rule.getRuleId().getTestNumber() + " " + rule.getMessage() + " "
                            + rule.getLocation().getContext()).toList();
        }
    }
}

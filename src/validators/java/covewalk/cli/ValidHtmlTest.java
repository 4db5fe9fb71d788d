package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages are HTML as the living standard has it, says the checker that stands behind validator.w3.org. */
class ValidHtmlTest {

    @TempDir
    Path folder;

    @Test
    void isHtmlWithoutAnythingToRemark() throws Exception {
        for (Path page : PrintedDemo.pages(folder, ".html")) {
            assertEquals("", said().validate(page), folder.relativize(page).toString());
        }
    }

    @Test
    void theCheckerRemarksOnWhatIsWrong() throws Exception {
        String wrong = "<!DOCTYPE html><html lang=\"en\"><head><title>x</title></head><body><p><div></p></body></html>";
        assertEquals(3, said().validate(new ByteArrayInputStream(wrong.getBytes(StandardCharsets.UTF_8))).lines().count());
    }

    private static EmbeddedValidator said() {
        EmbeddedValidator validator = new EmbeddedValidator();
        validator.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
        return validator;
    }
}

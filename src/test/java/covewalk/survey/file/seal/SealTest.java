package covewalk.survey.file.seal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.Seen;
import covewalk.survey.file.SurveyText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SealTest {

    @TempDir
    private Path folder;

    @BeforeEach
    void describe() throws IOException {
        SurveyText.folder(folder, "{}\n", "header\nrow\n");
    }

    private String issue() throws IOException {
        return Seal.issue(folder).value().orElseThrow();
    }

    private String seals() throws IOException {
        return Files.readString(folder.resolve("seal.json"));
    }

    /** Hashes by sha256sum (GNU coreutils 9.1); the code by Python 3's hashlib and integers, over the canonical lines. */
    @Test
    void sealsEveryFileWithItsHashAndLength() throws IOException {
        String code = issue();
        assertEquals("""
                {
                  "format": "covewalk-seal/1",
                  "seals": [
                    {
                      "code": "%s",
                      "files": [
                        {
                          "name": "readings.csv",
                          "length": 11,
                          "sha256": "1c131eede78f200a76f00be22148db81139b6ad19bb33f1eafcc0873e4147256"
                        },
                        {
                          "name": "survey.json",
                          "length": 3,
                          "sha256": "ca3d163bab055381827226140568f3bef7eaac187cebd76878e0b63e9e442356"
                        }
                      ]
                    }
                  ]
                }
                """.formatted(code), seals());
        assertEquals("K2Y3-DT9W-TRWA-DWCD", code);
    }

    @Test
    void theSameSurveyGivesTheSameSealAndTheSameBytes() throws IOException {
        String code = issue();
        byte[] bytes = Files.readAllBytes(folder.resolve("seal.json"));
        Files.writeString(folder.resolve("lock"), "");
        Files.writeString(folder.resolve("lock-holder"), "somebody");
        assertEquals(code, issue());
        assertArrayEquals(bytes, Files.readAllBytes(folder.resolve("seal.json")));
    }

    @Test
    void everyKindOfFileCounts() throws IOException {
        String code = issue();
        for (String name : List.of("originals/walk.csv", "photos/C1.jpg", "photos/reels/R1.jpg", "punch.csv", "set-aside.csv")) {
            Files.createDirectories(folder.resolve(name).getParent());
            Files.writeString(folder.resolve(name), "x\n");
            assertNotEquals(code, code = issue(), name);
            assertTrue(seals().contains("\"" + name + "\""), seals());
        }
        Files.writeString(folder.resolve("survey.json"), "{} \n");
        assertNotEquals(code, issue());
    }

    @Test
    void anUnfinishedLastLineIsNotSealed() throws IOException {
        String code = issue();
        Files.writeString(folder.resolve("readings.csv"), "header\nrow\nunfin");
        assertEquals(code, issue());
        Files.writeString(folder.resolve("readings.csv"), "header\nrow\nfinished\n");
        assertNotEquals(code, issue());
    }

    @Test
    void earlierSealsStay() throws IOException {
        String first = issue();
        Files.writeString(folder.resolve("readings.csv"), "header\nrow\nanother\n");
        String second = issue();
        assertTrue(seals().indexOf(first) > 0 && seals().indexOf(second) > seals().indexOf(first), seals());
    }

    @Test
    void sealsThatWereChangedAreNotAddedTo() throws IOException {
        String code = issue();
        Files.writeString(folder.resolve("seal.json"), seals().replace("\"length\": 3", "\"length\": 4"));
        assertEquals("R seal.json:5: seals[0].code: The files listed here do not have the code " + code
                + ": the seal was changed. Restore the file from a copy.", Seen.all(Seal.issue(folder).problems()));
        Files.writeString(folder.resolve("seal.json"), "{ \"format\": \"covewalk-seal/9\" }");
        assertEquals("R seal.json:1: format: This file has the format covewalk-seal/9; this program reads covewalk-seal/1."
                + " Use a newer version of the program.", Seen.all(Seal.issue(folder).problems()));
        Files.writeString(folder.resolve("seal.json"), "x");
        assertTrue(Seal.issue(folder).refused());
    }

    @Test
    void aFolderThatIsNotThereHasNoSeal() throws IOException {
        assertEquals("R There is no such folder. Give the folder of a survey.",
                Seen.all(Seal.issue(folder.resolve("nowhere")).problems()));
    }
}

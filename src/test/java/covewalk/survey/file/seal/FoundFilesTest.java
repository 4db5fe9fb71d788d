package covewalk.survey.file.seal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import covewalk.survey.file.Photo;
import covewalk.survey.file.Photos;
import covewalk.survey.file.SurveyText;
import covewalk.survey.file.TakenAlong;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FoundFilesTest {

    @TempDir
    private Path temporary;
    private Path survey;
    private Path photos;

    @BeforeEach
    void describe() throws IOException {
        survey = Files.createDirectories(temporary.resolve("survey"));
        photos = Files.createDirectories(survey.resolve("photos"));
        SurveyText.folder(survey, "{}\n", "header\nrow\n");
        Files.write(photos.resolve("R1.jpg"), new byte[] {1, 2, 3});
    }

    private void linkPictures() throws IOException {
        assumeTrue(!System.getProperty("os.name").startsWith("Windows"), "links need a right there that few have");
        Path outside = Files.createDirectories(temporary.resolve("outside"));
        Files.createSymbolicLink(photos.resolve("R1-far.jpg"), Files.write(outside.resolve("far.jpg"), new byte[] {4}));
        Files.createSymbolicLink(photos.resolve("ring"), outside);
    }

    @Test
    void aSealCoversNoLink() throws IOException {
        linkPictures();
        assertEquals(List.of("photos/R1.jpg", "readings.csv", "survey.json"),
                SealedFiles.in(survey).files().stream().map(SealedFile::name).toList());
    }

    @Test
    void aPageShowsNoLink() throws IOException {
        linkPictures();
        assertEquals(List.of("R1.jpg"), Photos.of(survey, "R1").stream().map(Photo::name).toList());
    }

    @Test
    void aCopyTakesNoLinkAlongAndNamesIt() throws IOException {
        linkPictures();
        Path other = Files.createDirectories(temporary.resolve("other"));
        List<String> left = new TakenAlong(survey, other).whatLiesBeside();
        assertEquals(List.of("photos/R1-far.jpg", "photos/ring"), left.stream().sorted().toList());
        assertTrue(Files.exists(other.resolve("photos/R1.jpg")));
    }

    @Test
    void aFolderThatCannotBeReadIsAFailureOfTheDiskForAllThatLookIntoIt() throws IOException {
        assumeTrue(System.getProperty("os.name").startsWith("Linux"), "elsewhere paths end sooner or later than here");
        Path folder = Files.createDirectories(temporary.resolve("d"));
        Path deep = Files.createDirectories(folder.resolve(Path.of(("x".repeat(250) + "/").repeat(15))));
        assertTrue(deep.toString().length() < 4096, "PATH_MAX of Linux (limits.h)");
        Path farther = Files.createDirectories(photos.resolve("y".repeat(250)).resolve("y".repeat(250))).resolve("d");
        Files.move(folder, farther);
        try {
            assertThrows(IOException.class, () -> SealedFiles.in(survey));
            assertThrows(IOException.class, () -> Photos.of(survey, "R1"));
            assertEquals(List.of("photos"), new TakenAlong(survey, Files.createDirectories(temporary.resolve("other"))).whatLiesBeside());
        } finally {
            Files.move(farther, folder); // or nobody can delete it
        }
    }
}

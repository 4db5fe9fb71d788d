package covewalk.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.Cove;
import covewalk.survey.Joint;
import covewalk.survey.Placement;
import covewalk.survey.Survey;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SurveyFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The committed demonstration survey is what its tables make, and they and {@code survey.json} say the same. */
class DemoFilesTest {

    /** Everything that is not planted lies within this many steps of its neighbour. */
    private static final double WELL_WITHIN = 0.8;

    private final List<TrueColour> colours = TrueColour.all();
    private ReadSurvey folder;
    private Survey survey;

    @BeforeEach
    void read() throws IOException {
        folder = SurveyFolder.at(MakeDemo.FOLDER).read();
        survey = folder.survey().orElseThrow();
    }

    @Test
    void readingsAreThoseThatTheTablesMakeByteForByte() throws IOException {
        assertEquals(MakeDemo.log(MakeDemo.SEED), Files.readString(MakeDemo.LOG), "run MakeDemo after a change of the tables");
    }

    @Test
    void nothingInTheFolderIsRefused() {
        assertFalse(folder.refused(), folder.problems().toString());
    }

    @Test
    void nothingLooksWrongButTheGap() {
        List<String> meant = List.of("survey.gap");
        assertEquals(List.of(), folder.warnings().stream().filter(warning -> !meant.contains(warning.key())).toList());
    }

    @Test
    void sealIsThatOfTheFilesAsTheyAre(@TempDir Path copy) throws IOException {
        for (Path file : List.of(MakeDemo.LOG, MakeDemo.PUNCH, MakeDemo.SEALS, MakeDemo.FOLDER.resolve("survey.json"))) {
            Files.copy(file, copy.resolve(file.getFileName()));
        }
        MakeDemo.register(copy); // adds a row or a seal where something has changed since the last
        assertEquals(Files.readString(MakeDemo.PUNCH), Files.readString(copy.resolve("punch.csv")), "run MakeDemo");
        assertEquals(Files.readString(MakeDemo.SEALS), Files.readString(copy.resolve("seal.json")), "run MakeDemo");
    }

    @Test
    void saysThatItIsInvented() {
        assertTrue(survey.site().name().contains("invented"));
        assertTrue(survey.limits().setBy().contains("invented"));
        assertTrue(survey.setUps().stream().allMatch(setUp -> setUp.meter().contains("invented")));
        assertTrue(survey.reels().stream().allMatch(reel -> reel.maker().contains("invented")));
    }

    @Test
    void meterScattersAsMuchAsTheDescriptionDeclares() {
        assertEquals(Meter.REPEATABILITY_UV, survey.firstSetUp().repeatabilityUv());
    }

    @Test
    void everyPlacementHasItsTrueColourFromEndToEnd() {
        for (Cove cove : survey.coves()) {
            for (Placement placement : cove.placements()) {
                List<TrueColour> parts = partsOf(placement);
                assertEquals(placement.fromM(), parts.get(0).fromM(), placement.toString());
                assertEquals(placement.toM(), parts.get(parts.size() - 1).toM(), placement.toString());
                assertTrue(parts.stream().allMatch(part -> part.cove().equals(cove.id())), placement.toString());
            }
        }
    }

    @Test
    void jointsDifferAsPlantedAndAllOthersLittle() {
        List<Planted> planted = Planted.all();
        for (Cove cove : survey.coves()) {
            for (Joint joint : cove.joints()) {
                double steps = trueSteps(joint);
                planted.stream().filter(row -> row.isAt(cove.id(), joint)).findFirst().ifPresentOrElse(
                        row -> assertEquals(row.steps(), steps, 0.051, cove.id() + " " + joint),
                        () -> assertTrue(steps < WELL_WITHIN, cove.id() + " " + joint + " differ by " + steps));
            }
        }
    }

    private double trueSteps(Joint joint) {
        List<TrueColour> before = partsOf(joint.before());
        Offset end = before.get(before.size() - 1).at(joint.before().toM());
        return end.plus(partsOf(joint.after()).get(0).start().times(-1)).steps();
    }

    private List<TrueColour> partsOf(Placement placement) {
        return colours.stream().filter(part -> part.reel().equals(placement.reel())).toList();
    }
}

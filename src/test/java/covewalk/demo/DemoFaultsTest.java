package covewalk.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SurveyFolder;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Fault;
import covewalk.verdict.Judge;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Judgement;
import covewalk.verdict.limit.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The judge finds what is planted in the demonstration survey, and nothing else. The outside source is the tables. */
class DemoFaultsTest {

    private static final List<Planted> FAULTS = Planted.all().stream().filter(Planted::isFault).toList();

    @Test
    void findsExactlyWhatIsPlantedAndHintsAtIt() throws IOException {
        assertEquals(lines(FAULTS), lines(found(judge(MakeDemo.FOLDER))));
    }

    @Test
    void callsEveryOtherJointWithin() throws IOException {
        for (CoveJudgement cove : judge(MakeDemo.FOLDER).coves()) {
            for (JudgedJoint joint : cove.joints()) {
                if (FAULTS.stream().noneMatch(fault -> fault.isAt(cove.cove().id(), joint.joint()))) {
                    assertEquals(Verdict.WITHIN, joint.verdict(), cove.cove().id() + " " + joint);
                }
            }
        }
    }

    /** Other noise may leave a place unsettled or hide the drift's shape, but shows nothing that is not there. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void callsNothingElseBeyondWhateverTheNoise(long seed, @TempDir Path folder) throws IOException {
        Files.copy(MakeDemo.FOLDER.resolve("survey.json"), folder.resolve("survey.json"));
        Files.writeString(folder.resolve("readings.csv"), MakeDemo.log(seed));
        List<Planted> elsewhere = found(judge(folder)).stream()
                .filter(place -> place.verdict().equals("beyond") && !FAULTS.contains(place))
                .toList();
        assertEquals("", lines(elsewhere));
    }

    private static Judgement judge(Path folder) throws IOException {
        ReadSurvey survey = SurveyFolder.at(folder).read();
        return new Judge().judge(survey.survey().orElseThrow(), survey.log());
    }

    /** The faults found, each as the planted place that it stands for, or as what it is. */
    private static List<Planted> found(Judgement judgement) {
        List<Planted> found = new ArrayList<>();
        for (CoveJudgement cove : judgement.coves()) {
            for (Fault fault : cove.faults()) {
                Planted place = asPlace(cove.cove().id(), fault);
                found.add(FAULTS.stream().filter(planted -> planted.holds(place)).findFirst().orElse(place));
            }
        }
        return found;
    }

    private static Planted asPlace(String cove, Fault fault) {
        return new Planted(cove, fault.kind().code(), fault.fromM(), fault.toM(), fault.reels(), fault.verdict().code(),
                fault.difference().steps(), fault.hint().code());
    }

    private static String lines(List<Planted> places) {
        return String.join("\n", places.stream().map(DemoFaultsTest::line).sorted().toList());
    }

    private static String line(Planted place) {
        return String.format(Locale.ROOT, "%s %s %.2f to %.2f m %s %s %.2f steps: %s", place.cove(), place.kind(), place.fromM(),
                place.toM(), place.reels(), place.verdict(), place.steps(), place.hint());
    }
}

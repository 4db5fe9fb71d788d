package covewalk.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SurveyFolder;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Fault;
import covewalk.verdict.Judge;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Judgement;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The judge finds what is planted in the demonstration survey, and nothing else. */
class DemoFaultsTest {

    private Judgement judgement;

    @BeforeEach
    void judge() throws IOException {
        ReadSurvey folder = SurveyFolder.at(MakeDemo.FOLDER).read();
        judgement = new Judge().judge(folder.survey().orElseThrow(), folder.log());
    }

    @Test
    void findsExactlyWhatIsPlanted() {
        List<String> planted = Planted.all().stream().filter(Planted::isFault).map(DemoFaultsTest::line).sorted().toList();
        List<String> found = found().stream().sorted().toList();
        assertEquals(String.join("\n", planted), String.join("\n", found));
    }

    @Test
    void callsEveryOtherJointWithin() {
        List<Planted> faults = Planted.all().stream().filter(Planted::isFault).toList();
        for (CoveJudgement cove : judgement.coves()) {
            for (JudgedJoint joint : cove.joints()) {
                if (faults.stream().noneMatch(fault -> fault.isAt(cove.cove().id(), joint.joint()))) {
                    assertEquals("within", joint.verdict().code(), cove.cove().id() + " " + joint);
                }
            }
        }
    }

    /** The faults found, each as the planted place it stands for, or as what it is where nothing is planted. */
    private List<String> found() {
        List<String> lines = new ArrayList<>();
        for (CoveJudgement cove : judgement.coves()) {
            for (Fault fault : cove.faults()) {
                lines.add(Planted.all().stream().filter(place -> stands(place, cove, fault)).findFirst()
                        .map(DemoFaultsTest::line).orElse(describe(cove, fault)));
            }
        }
        return lines;
    }

    private static boolean stands(Planted place, CoveJudgement cove, Fault fault) {
        return place.isFault() && place.cove().equals(cove.cove().id()) && place.kind().equals(fault.kind().code())
                && place.verdict().equals(fault.verdict().code()) && place.reels().equals(fault.reels())
                && fault.fromM() >= place.fromM() - 1e-9 && fault.toM() <= place.toM() + 1e-9;
    }

    private static String line(Planted place) {
        return place.cove() + " " + place.kind() + " " + place.fromM() + " " + place.reels() + " " + place.verdict();
    }

    private static String describe(CoveJudgement cove, Fault fault) {
        return String.format(Locale.ROOT, "%s %s at %.2f (%.2f to %.2f) %s %s: %.2f +- %.2f steps, not planted",
                cove.cove().id(), fault.kind().code(), fault.positionM(), fault.fromM(), fault.toM(), fault.reels(),
                fault.verdict().code(), fault.difference().steps(), fault.difference().standardUncertaintySteps());
    }
}

package covewalk.survey.file.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.survey.file.SurveyText;
import covewalk.survey.file.disk.FolderLock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SetAsideTest {

    @TempDir
    private Path folder;

    private void add(SetAsideRow... rows) throws IOException {
        try (FolderLock lock = FolderLock.take(folder, SurveyText.holder()).value().orElseThrow()) {
            SetAside.of(lock).add(List.of(rows));
        }
    }

    private String file() throws IOException {
        return Files.readString(folder.resolve("set-aside.csv"));
    }

    @Test
    void addsRowsUnderOneHeader() throws IOException {
        add(new SetAsideRow("walk.csv", 14, "duv", "0.34 is outside -0.05 to 0.05.", "2700;0,34"));
        add(new SetAsideRow("walk.csv", 15, "", "says \"over\", nothing else", "2700,\"over\""));
        assertEquals("""
                source,line,column,reason,row
                walk.csv,14,duv,0.34 is outside -0.05 to 0.05.,"2700;0,34"
                walk.csv,15,,"says ""over"", nothing else","2700,""over\"""
                """, file());
    }

    /** CSV injection as OWASP describes it: what begins with =, +, - or @ is run by spreadsheets. */
    @Test
    void writesNothingThatASpreadsheetWouldRun() throws IOException {
        add(new SetAsideRow("walk.csv", 3, "=cct", "+1 is no cove", "@SUM(A1:A9)"));
        assertEquals("source,line,column,reason,row\nwalk.csv,3,'=cct,'+1 is no cove,'@SUM(A1:A9)\n", file());
    }

    @Test
    void endsAnUnfinishedLineFirst() throws IOException {
        Files.writeString(folder.resolve("set-aside.csv"), "source,line,column,reason,row\nwalk.csv,14,du");
        add(new SetAsideRow("walk.csv", 15, "", "no number", "x"));
        assertEquals("source,line,column,reason,row\nwalk.csv,14,du\nwalk.csv,15,,no number,x\n", file());
    }

    @Test
    void nothingToSetAsideMakesNoFile() throws IOException {
        add();
        assertEquals(false, Files.exists(folder.resolve("set-aside.csv")));
    }
}

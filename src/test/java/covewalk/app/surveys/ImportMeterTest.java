package covewalk.app.surveys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Desks;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ImportMeterTest {

    @TempDir
    Path folder;
    private Desk desk;
    private ImportMeter model;
    private int before;

    @BeforeEach
    void openTheDemonstration() {
        desk = Desks.withDemo(folder);
        model = new ImportMeter(desk, folder, desk.texts(ImportMeter.class));
        before = desk.survey().log().size();
    }

    private void file(String content) throws IOException {
        model.fileProperty().set(Files.writeString(folder.resolve("export.csv"), content).toString());
    }

    private int added() {
        return desk.survey().log().size() - before;
    }

    @Test
    void whatTheFileDoesNotSayIsAskedForInThePage() throws IOException {
        file("CCT,Duv\n2700,0.0010\n2710,0.0012\n");
        model.start();
        assertTrue(model.troubleProperty().get().contains("Say above which one was read"), model.troubleProperty().get());
        assertFalse(model.troubleProperty().get().contains("--"), "no options of the commands");
        model.coveProperty().set("C1");
        model.start();
        assertTrue(model.troubleProperty().get().contains("Say above where the first row was read"), model.troubleProperty().get());
        model.startProperty().set("0,5");
        model.everyProperty().set("50 cm");
        model.start();
        assertEquals("2 rows: 2 added, 0 were there already, 0 set aside with the reason.", model.saysProperty().get());
        assertEquals(2, added());
        assertEquals(1.0, desk.survey().log().get(before + 1).positionM().value());
    }

    @Test
    void theSameFileAgainAddsNothing() throws IOException {
        file("Cove,Position (m),x,y\nC1,0.5,0.4580,0.4103\n");
        model.start();
        model.start();
        assertEquals(1, added());
        assertTrue(model.saysProperty().get().startsWith("1 rows: 0 added, 1 were there already"), model.saysProperty().get());
    }

    @Test
    void badRowsAreListedAndTheOthersKept() throws IOException {
        file("Cove,Position (m),x,y\nC1,0.5,0.4580,0.4103\nC1,99,0.4580,0.4103\nC1,1,Over,0.41\n");
        model.start();
        assertEquals(1, added());
        assertTrue(model.troubleProperty().get().contains("export.csv:3:") && model.troubleProperty().get().contains("export.csv:4:"),
                model.troubleProperty().get());
    }

    @Test
    void walkedBackTheRowsGoTowardsTheDatum() throws IOException {
        file("x,y\n0.4580,0.4103\n0.4580,0.4103\n");
        model.coveProperty().set("C1");
        model.startProperty().set("20");
        model.everyProperty().set("0.5");
        model.backProperty().set(true);
        model.start();
        assertEquals(19.5, desk.survey().log().get(before + 1).positionM().value());
    }

    @Test
    void columnsThatAreNotKnownCanBeNamed() throws IOException {
        file("Cove;Position (m);Ton;Gruen\nC1;0,5;2700;0,0010\n");
        model.start();
        assertTrue(model.troubleProperty().get().contains("Name them above"), model.troubleProperty().get());
        model.columnsProperty().set("Ton=cct_k; Gruen=duv");
        model.start();
        assertEquals(1, added());
    }

    @Test
    void noFileOrHalfTheLengthsIsSaid() throws IOException {
        model.fileProperty().set("nowhere.csv");
        model.start();
        assertTrue(model.troubleProperty().get().startsWith("There is no such file"));
        file("x,y\n0.4580,0.4103\n");
        model.startProperty().set("0.5");
        model.start();
        assertTrue(model.troubleProperty().get().startsWith("Give both"));
        assertEquals(0, added());
    }

    @Test
    void withoutASurveyNothingCanBeAdded() {
        desk.close();
        assertFalse(model.possibleProperty().get());
    }
}

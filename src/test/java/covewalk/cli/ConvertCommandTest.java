package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.cli.FrontDoor.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ConvertCommandTest {

    private static final String TABLE = "name,x,y\nfirst,0.4585,0.4104\n";

    @TempDir
    Path folder;

    @Test
    void readsAFileOrTheStandardInputAlike() throws IOException {
        Path file = Files.writeString(folder.resolve("table.csv"), TABLE);
        Run fromFile = FrontDoor.run("convert", file.toString());
        assertEquals(fromFile, FrontDoor.runWith(TABLE, "convert"));
        assertEquals(fromFile, FrontDoor.runWith(TABLE, "convert", "-"));
        assertEquals("name,x,y,u_prime,v_prime,cct_k,duv,problem", fromFile.out().lines().findFirst().orElseThrow());
        assertEquals("", fromFile.err());
        assertEquals(0, fromFile.code());
    }

    /** u' = 4x / (-2x + 12y + 3), v' = 9y / (-2x + 12y + 3) (CIE 15): 0.4585, 0.4104 gives 0.261... and 0.526... */
    @Test
    void writesAsManyDigitsAsAskedFor() {
        double below = -2 * 0.4585 + 12 * 0.4104 + 3;
        List<String> cells = cells(FrontDoor.runWith(TABLE, "convert", "--digits", "9"));
        assertEquals(4 * 0.4585 / below, Double.parseDouble(cells.get(3)), 0.5e-9);
        assertEquals(9 * 0.4104 / below, Double.parseDouble(cells.get(4)), 0.5e-9);
        assertEquals(11, cells.get(3).length());
        assertEquals(8, cells(FrontDoor.runWith(TABLE, "convert")).get(3).length());
    }

    private static List<String> cells(Run run) {
        return List.of(run.out().lines().skip(1).findFirst().orElseThrow().split(","));
    }

    @Test
    void countsProblemRowsOnTheErrorOutputAndStillExitsZero() {
        Run run = FrontDoor.runWith("x,y\n0.4585,0.4104\n0.9,0.9\n", "convert");
        assertEquals("1 of 2 rows have a problem; their column \"problem\" says which.\n", run.err());
        assertEquals(3, run.out().lines().count());
        assertEquals(0, run.code());
    }

    @Test
    void aTableWithoutColoursIsRefusedByName() throws IOException {
        Path file = Files.writeString(folder.resolve("notes.csv"), "a,b\n1,2\n");
        Run run = FrontDoor.run("convert", file.toString());
        assertTrue(run.err().startsWith("notes.csv: "), run.err());
        assertEquals("", run.out());
        assertEquals(2, run.code());
    }

    @Test
    void anEmptyInputIsRefused() {
        assertEquals(2, FrontDoor.runWith("", "convert").code());
    }

    @Test
    void aMissingFileIsToldByItsName() {
        Run run = FrontDoor.run("convert", folder.resolve("gone.csv").toString());
        assertEquals("gone.csv: there is no such file. Check the name and the folder you are in.\n", run.err());
        assertEquals(2, run.code());
    }

    @Test
    void aFolderIsNoTable() throws IOException {
        Run run = FrontDoor.run("convert", Files.createDirectory(folder.resolve("tables")).toString());
        assertEquals("tables is a folder. Give the name of a file in it.\n", run.err());
        assertEquals(2, run.code());
    }
}

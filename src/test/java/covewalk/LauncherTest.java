package covewalk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What starts the jar, beside a small jar of the same name that tells what it was given; on Windows, the one for Windows. */
class LauncherTest {

    private static final boolean WINDOWS = System.getProperty("os.name").startsWith("Windows");
    private static final Path HERE = Path.of("src", "main", "launcher", WINDOWS ? "covewalk.cmd" : "covewalk");

    @TempDir
    Path temp;

    private Path launcher;

    /** Ends with the exit code that its first word names, and prints the others and what Java was told, a line each. */
    public static final class Echo {

        private Echo() {
        }

        public static void main(String[] args) {
            for (int i = 1; i < args.length; i++) {
                System.out.println("[" + args[i] + "]");
            }
            System.out.println(java.lang.management.ManagementFactory.getRuntimeMXBean().getInputArguments());
            System.exit(Integer.parseInt(args[0]));
        }
    }

    private record Run(int code, List<String> lines) {
    }

    @BeforeEach
    void besideAJar() throws IOException {
        Path folder = Files.createDirectories(temp.resolve("on site (2) & more"));
        launcher = Files.copy(HERE, folder.resolve(HERE.getFileName()));
        assertTrue(WINDOWS || launcher.toFile().setExecutable(true));
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Echo.class.getName());
        String name = Echo.class.getName().replace('.', '/') + ".class";
        try (OutputStream out = Files.newOutputStream(folder.resolve("covewalk.jar"));
                JarOutputStream jar = new JarOutputStream(out, manifest);
                InputStream bytes = Echo.class.getResourceAsStream("/" + name)) {
            jar.putNextEntry(new ZipEntry(name));
            bytes.transferTo(jar);
        }
    }

    @Test
    void handsOnEveryArgumentAsItIs() throws Exception {
        List<String> given = List.of("report", "my survey", "--out", "", "*", "$HOME \\ 'x'");
        List<String> kept = WINDOWS ? given.subList(0, 3) : given; // cmd.exe has rules of its own for the others
        List<String> words = new ArrayList<>(List.of("0"));
        words.addAll(kept);
        Run run = run(Map.of(), words);
        assertEquals(kept.stream().map(word -> "[" + word + "]").toList(), run.lines().subList(0, kept.size()));
    }

    @Test
    void endsWithTheExitCodeOfTheProgram() throws Exception {
        for (int code : new int[] {0, 1, 2, 3}) {
            assertEquals(code, run(Map.of(), List.of(Integer.toString(code))).code());
        }
    }

    @Test
    void tellsJavaWhatSuitsAShortRun() throws Exception {
        assertEquals("[-XX:TieredStopAtLevel=1, -XX:+UseSerialGC, -Xmn64m, -XX:MaxTenuringThreshold=1, -XX:+IgnoreUnrecognizedVMOptions,"
                + " -XX:+UseTransparentHugePages]", run(Map.of(), List.of("0")).lines().get(0));
    }

    @Test
    void takesTheArchiveOfClassesBesideItAndPrintsNothingWhereJavaCannotUseIt() throws Exception {
        Path archive = Files.writeString(launcher.resolveSibling("covewalk.jsa"), "of another Java");
        List<String> lines = run(Map.of(), List.of("0")).lines();
        assertEquals(1, lines.size(), lines.toString());
        assertTrue(lines.get(0).contains("-XX:SharedArchiveFile=" + archive), lines.toString());
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "a link to a batch file takes rights that users do not have there")
    void worksThroughALinkFromElsewhere() throws Exception {
        Path link = Files.createSymbolicLink(temp.resolve("cw"), launcher);
        launcher = link;
        assertEquals(3, run(Map.of(), List.of("3")).code());
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "the batch file leaves the sentence to Windows")
    void saysSoWhereThereIsNoJava() throws Exception {
        Run run = run(Map.of("JAVA_HOME", temp.resolve("no java here").toString()), List.of("0"));
        assertEquals(2, run.code());
        assertTrue(run.lines().get(0).startsWith("Java is missing: install Java 17 or later"), run.lines().toString());
    }

    private Run run(Map<String, String> environment, List<String> words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(words);
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().keySet().removeAll(List.of("JDK_JAVA_OPTIONS", "JAVA_TOOL_OPTIONS")); // Java tells of them on its own
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().putAll(environment);
        Process process = builder.start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Run(process.waitFor(), out.lines().toList());
    }
}

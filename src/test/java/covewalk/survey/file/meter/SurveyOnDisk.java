package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Typed;
import covewalk.survey.TypedPair;
import covewalk.survey.file.disk.Holder;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.log.ReadingLog;
import covewalk.survey.file.SurveyFolder;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A survey's folder with one cove C1 of 12.5 m, or with C1 and C2, into which tests import files. */
final class SurveyOnDisk {

    static final Stations HALF_METRES = new Stations.Evenly(typed("0"), typed("0.5"));
    static final ImportOptions NOTHING_SAID = at(new Stations.Unsaid());
    static final ImportOptions IN_ROW_ORDER = at(HALF_METRES);

    private static final String COVE = "{\"id\":\"%s\",\"lengthM\":12.5,\"placements\":"
            + "[{\"reel\":\"R1\",\"fromM\":0.0,\"toM\":12.5,\"knownFrom\":\"seen\"}]}";

    private final Path folder;
    private final Path exports;

    private SurveyOnDisk(Path folder, Path exports) {
        this.folder = folder;
        this.exports = exports;
    }

    static ImportOptions at(Stations stations) {
        return new ImportOptions(Map.of(), Optional.empty(), Optional.empty(), stations);
    }

    /** With columns named as on the command line. */
    static ImportOptions naming(Map<String, String> columns, Stations stations) {
        return new ImportOptions(columns, Optional.empty(), Optional.empty(), stations);
    }

    /** In row order, all of them in one cove. */
    static ImportOptions inCove(String id) {
        return new ImportOptions(Map.of(), Optional.of(id), Optional.empty(), HALF_METRES);
    }

    static SurveyOnDisk in(Path temporary, String... coves) throws IOException {
        Path folder = Files.createDirectories(temporary.resolve("survey"));
        String list = Stream.of(coves.length == 0 ? new String[] {"C1"} : coves)
                .map(id -> String.format(Locale.ROOT, COVE, id)).collect(Collectors.joining(","));
        Files.writeString(folder.resolve("survey.json"), "{\"format\":\"covewalk-survey/1\",\"limits\":{\"neighbourSteps\":2.0},"
                + "\"reels\":[{\"id\":\"R1\"}],\"coves\":[" + list + "]}");
        return new SurveyOnDisk(folder, Files.createDirectories(temporary.resolve("exports")));
    }

    SurveyOnDisk visitedOn(String day) throws IOException {
        Path description = folder.resolve("survey.json");
        Files.writeString(description, Files.readString(description).replace("\"limits\"", "\"visit\":{\"date\":\"" + day + "\"},\"limits\""));
        return this;
    }

    ImportResult add(String text, ImportOptions options) throws IOException {
        return add("walk.csv", text.getBytes(StandardCharsets.UTF_8), options);
    }

    ImportResult add(String text, Charset charset, ImportOptions options) throws IOException {
        return add("walk.csv", text.getBytes(charset), options);
    }

    ImportResult add(String name, byte[] bytes, ImportOptions options) throws IOException {
        return add(Files.write(exports.resolve(name), bytes), options);
    }

    ImportResult add(Path file, ImportOptions options) throws IOException {
        ReadSurvey survey = SurveyFolder.at(folder).read();
        if (survey.refused()) {
            throw new IllegalStateException(said(survey.problems()).toString());
        }
        Outcome<ReadingLog> open = ReadingLog.open(folder, new Holder("test", "someone", "here", "today"), "A");
        try (ReadingLog log = open.value().orElseThrow()) {
            return new MeterImport(survey.survey().orElseThrow(), survey.log(), log, HeaderTable.ofTheTradeAnd(folder)).add(file, options);
        }
    }

    List<Reading> log() throws IOException {
        return SurveyFolder.at(folder).read().log();
    }

    /** The only reading of the log. */
    Reading reading() throws IOException {
        List<Reading> log = log();
        if (log.size() != 1) {
            throw new AssertionError(log.size() + " readings in the log");
        }
        return log.get(0);
    }

    Path file(String name) {
        return folder.resolve(name);
    }

    static Typed typed(String digits) {
        return Typed.of(digits).orElseThrow();
    }

    static String digits(Optional<TypedPair> pair) {
        return pair.map(both -> both.first().text() + " " + both.second().text()).orElse("");
    }

    /** All that the user sees, a line each. */
    static List<String> said(List<Problem> problems) {
        return problems.stream().map(problem -> problem.inFull(Locale.ROOT)).toList();
    }

    static String said(ImportResult result) {
        return Stream.of(result.refusals(), result.setAside(), result.warnings(), result.questions())
                .flatMap(list -> said(list).stream()).collect(Collectors.joining("\n"));
    }
}

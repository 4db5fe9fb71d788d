package covewalk.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.colour.StepRule;
import covewalk.survey.Limits.ErrorPer;
import covewalk.survey.Placement;
import covewalk.survey.Purpose;
import covewalk.survey.Reads;
import covewalk.survey.Role;
import covewalk.verdict.Budget;
import covewalk.verdict.FaultKind;
import covewalk.verdict.Hint;
import covewalk.verdict.Note;
import covewalk.verdict.Settle;
import covewalk.verdict.claim.ClaimVerdict;
import covewalk.verdict.claim.WhyOpen;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.plan.Access;
import covewalk.verdict.plan.CovePlan;
import covewalk.verdict.plan.Stop;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class SentencesTest {

    private static final Pattern LITERAL = Pattern.compile("\"([a-z][A-Za-z0-9-]*(?:\\.[A-Za-z0-9-]+)*\\.?)\"");
    private static final Pattern ASKED_FOR = Pattern.compile("(?:text|count)\\(\\s*\"([a-z][A-Za-z0-9.-]*[A-Za-z0-9-])\"\\s*[,)]");

    /** Sentences asked for by the code of a constant: what stands before the code, the codes, what stands after it. */
    private static final Map<String, Set<String>> BY_CODE = Map.ofEntries(
            Map.entry("verdict.", codes(Verdict.values())), Map.entry("kind.", codes(FaultKind.values())),
            Map.entry("table.kind.", codes(FaultKind.values())),
            Map.entry("hint.suspect.", codes(Hint.values())), Map.entry("hint.check.", codes(Hint.values())),
            Map.entry("note.", codes(Note.Kind.values())), Map.entry("settle.not.", codes(Settle.WhyNot.values())),
            Map.entry("settle.short.", codes(Settle.WhyNot.values())), Map.entry("rule.per.", codes(ErrorPer.values())),
            Map.entry("rule.steps.", codes(StepRule.values())), Map.entry("purpose.", codes(Purpose.values())),
            Map.entry("caution.", codes(Caution.values())), Map.entry("caution.group.", codes(Caution.Group.values())),
            Map.entry("item.place.", codes(FaultKind.values())), Map.entry("item.towards.", codes(FaultKind.values())),
            Map.entry("item.do.", codes(FaultKind.values())), Map.entry("item.short.", codes(FaultKind.values())),
            Map.entry("readings.role.", codes(Role.values(), Role.WALK)), Map.entry("profile.from.", Set.of("target", "mean")),
            Map.entry("uv.", Set.of("target", "mean")), Map.entry("uv.says.", Set.of("target", "mean")),
            Map.entry("uv.legend.", Set.of("target", "mean")),
            Map.entry("explain.difference.", codes(FaultKind.values())), Map.entry("explain.part.", codes(Budget.Part.values())),
            Map.entry("explain.of.", codes(Budget.Of.values())), Map.entry("explain.source.", codes(Budget.Source.values())),
            Map.entry("claim.verdict.", codes(ClaimVerdict.values())), Map.entry("claim.class.", codes(ClaimVerdict.values())),
            Map.entry("claim.why.", codes(WhyOpen.values(), WhyOpen.NONE)),
            Map.entry("plan.access.", codes(Access.values())), Map.entry("plan.what.", codes(Stop.Kind.values())),
            Map.entry("plan.per.", codes(ErrorPer.values())),
            Map.entry("plan.nothing.", codes(CovePlan.WhyNothing.values())),
            Map.entry("plan.outlook.", Set.of("too-coarse", "unlike-reels", "too-short")),
            Map.entry("priority.", Set.of("first", "next", "read-again", "agree")),
            Map.entry("towards.", Set.of("warmer", "cooler", "greener", "pinker")),
            Map.entry("reel.field.", Set.of("maker", "product", "nominalCct", "bin", "lot", "serial", "made", "gtin")),
            Map.entry("state.", Set.of("open", "done", "re-inspected", "accepted")),
            Map.entry("state.label.", Set.of("clause", "responsible", "due", "done", "reinspected", "accepted", "note")),
            Map.entry("warranty.claim.", Set.of("symptom", "first-noticed", "hours", "surroundings", "controls", "pieces")),
            Map.entry("warranty.known.", codes(Placement.KnownFrom.values())), Map.entry("warranty.reads.", codes(Reads.values())),
            Map.entry("missing.", Set.of("lot", "serial", "invoice", "claim", "symptom", "first-noticed", "hours", "surroundings", "controls",
                    "pieces", "installed", "seen", "meter-serial", "calibration", "minutes", "photo", "neighbour-photo", "seal",
                    "temperature", "purchase", "sisters", "dimming", "notice")),
            Map.entry("method.", Set.of("1", "2", "3", "4", "5", "6", "7")));
    private static final Map<String, List<String>> AFTER = Map.of("caution.", List.of("", ".source"),
            "priority.", List.of("", ".why"), "rule.per.", List.of("", ".short"));

    private final Properties bundle = bundle();
    private final String sources = sources();
    private final Set<String> literals = found(LITERAL);

    @Test
    void everySentenceAskedForIsThere() {
        Set<String> missing = found(ASKED_FOR);
        missing.removeIf(key -> bundle.containsKey(key) || bundle.containsKey(key + ".one") && bundle.containsKey(key + ".more"));
        assertEquals(Set.of(), missing);
    }

    @Test
    void everySentenceThereIsAskedFor() {
        Set<String> idle = new TreeSet<>(bundle.stringPropertyNames());
        idle.removeIf(this::isUsed);
        assertEquals(Set.of(), idle);
    }

    @TestFactory
    Stream<DynamicTest> everyConstantHasItsSentence() {
        return BY_CODE.entrySet().stream().flatMap(family -> family.getValue().stream().flatMap(code ->
                AFTER.getOrDefault(family.getKey(), List.of("")).stream().map(after -> family.getKey() + code + after)))
                .map(key -> DynamicTest.dynamicTest(key, () -> assertTrue(bundle.containsKey(key), key + " is missing")));
    }

    @Test
    void nobodyIsBlamedAndNoConfidenceIsAChanceOfBeingBeyond() {
        String all = bundle.values().stream().map(Object::toString).collect(Collectors.joining("\n")).toLowerCase(Locale.ROOT);
        for (String word : List.of("guilty", "negligent", "your fault", "'s fault", "careless", "wrongly installed", "probability",
                "chance that the joint", "chance of being beyond", "% likely", "invalid input")) {
            assertFalse(all.contains(word), word);
        }
    }

    @Test
    void detailsAreNeverReadAsPatterns() {
        assertEquals("{1}: {0}", new Sentences(Locale.ENGLISH).text("reel.label", List.of("{1}", "{0}")));
    }

    @Test
    void aLanguageWithoutABundleSpeaksEnglishOnEveryMachine() {
        assertEquals("beyond", new Words(Locale.forLanguageTag("fi")).verdict(Verdict.BEYOND));
    }

    private boolean isUsed(String key) {
        if (literals.contains(key) || literals.contains(key.replaceFirst("\\.(one|more)$", ""))) {
            return true;
        }
        return literals.stream().filter(start -> start.endsWith(".") && key.startsWith(start))
                .anyMatch(start -> isRest(start, key.substring(start.length())));
    }

    private boolean isRest(String start, String rest) {
        return literals.contains(rest) || AFTER.getOrDefault(start, List.of("")).stream().filter(rest::endsWith)
                .anyMatch(after -> BY_CODE.getOrDefault(start, Set.of()).contains(rest.substring(0, rest.length() - after.length())));
    }

    private Set<String> found(Pattern pattern) {
        Set<String> found = new TreeSet<>();
        Matcher matcher = pattern.matcher(sources);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    private static Set<String> codes(Enum<?>[] constants) {
        return Arrays.stream(constants).map(constant -> constant.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .collect(Collectors.toSet());
    }

    private static Set<String> codes(Enum<?>[] constants, Enum<?> silent) {
        return codes(Arrays.stream(constants).filter(constant -> constant != silent).toArray(Enum<?>[]::new));
    }

    private static Properties bundle() {
        try (InputStream in = Words.class.getResourceAsStream("sentences.properties");
                InputStreamReader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            Properties bundle = new Properties();
            bundle.load(reader);
            return bundle;
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static String sources() {
        StringBuilder all = new StringBuilder();
        for (String folder : List.of("words", "plot", "report", "../../jte")) {
            try (Stream<Path> files = Files.walk(Path.of("src/main/java/covewalk").resolve(folder).normalize())) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    all.append(Files.readString(file)).append('\n');
                }
            } catch (IOException unreadable) {
                throw new AssertionError(unreadable);
            }
        }
        return all.toString();
    }
}

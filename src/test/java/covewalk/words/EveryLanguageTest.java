package covewalk.words;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.Problem;
import covewalk.verdict.FaultKind;
import covewalk.verdict.Hint;
import covewalk.verdict.Note;
import covewalk.verdict.limit.Verdict;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every language says all that English says; a sentence added in English is wanted in each of them. */
class EveryLanguageTest {

    private static final List<String> BUNDLES = List.of("/covewalk/words/sentences", "/covewalk/survey/problems");
    private static final Pattern SLOT = Pattern.compile("\\{\\d}");

    /** Nothing but slots, names and symbols: the same in every language. */
    private static final Set<String> ALIKE = Set.of("limit.both", "reel.label", "reel.field.gtin", "strip.datum", "strip.metres", "strip.feet",
            "strip.fault", "strip.fault-label", "table.range", "settle.short.none", "page.head", "page.count", "cove.column.u",
            "cove.column.v", "cove.column.cct", "cove.column.duv", "claim.centre.nominal", "claim.open", "explain.temperature",
            "caution.two-sides.source", "cove.column.lx", "readings.column.lux", "seal.column.sha", "warning.at", "state.label");

    /** Shorter texts may end in the point of an abbreviation. */
    private static final int ABBREVIATION = 12;

    /** How German would address somebody, where an infinitive does; a sentence may still begin with "Sie" for what it speaks of. */
    private static final Pattern ADDRESS = Pattern.compile("\\b([Dd]u|[Dd]ein\\w*|Ihr|Ihre[nmrs]?|Bitte|bitte|[a-zäöü]+en Sie)\\b",
            Pattern.UNICODE_CHARACTER_CLASS);

    private final Words german = Language.GERMAN.words();

    static Stream<Arguments> translations() {
        return BUNDLES.stream().flatMap(bundle -> Arrays.stream(Language.values())
                .filter(language -> language != Language.ENGLISH).map(language -> Arguments.of(bundle, language)));
    }

    @ParameterizedTest
    @MethodSource("translations")
    void saysNeitherMoreNorLessThanEnglish(String bundle, Language language) {
        assertEquals(Set.of(), without(english(bundle), translated(bundle, language)), "missing");
        assertEquals(Set.of(), without(translated(bundle, language), english(bundle)), "idle");
    }

    @ParameterizedTest
    @MethodSource("translations")
    void putsTheSameDetailsIntoEachSentence(String bundle, Language language) {
        Map<String, String> translated = translated(bundle, language);
        english(bundle).forEach((key, sentence) -> assertEquals(slots(sentence), slots(translated.getOrDefault(key, sentence)), key));
    }

    @ParameterizedTest
    @MethodSource("translations")
    void leavesNothingInEnglish(String bundle, Language language) {
        Map<String, String> translated = translated(bundle, language);
        Set<String> alike = new TreeSet<>(english(bundle).keySet());
        alike.removeIf(key -> !english(bundle).get(key).equals(translated.get(key)) || ALIKE.contains(key));
        assertEquals(Set.of(), alike);
    }

    @Test
    void listsOnlyWhatReallyIsAlike() {
        Map<String, String> english = english(BUNDLES.get(0));
        Map<String, String> translated = translated(BUNDLES.get(0), Language.GERMAN);
        assertEquals(Set.of(), ALIKE.stream().filter(key -> !english.get(key).equals(translated.get(key))).collect(Collectors.toSet()));
    }

    @ParameterizedTest
    @MethodSource("translations")
    void endsEverySentenceAsEnglishDoes(String bundle, Language language) {
        Map<String, String> translated = translated(bundle, language);
        english(bundle).forEach((key, sentence) -> {
            String same = translated.getOrDefault(key, sentence);
            assertTrue(same.length() < ABBREVIATION || sentence.endsWith(".") == same.endsWith("."), key);
        });
    }

    @Test
    void germanAddressesNobody() {
        for (String bundle : BUNDLES) {
            translated(bundle, Language.GERMAN).forEach((key, sentence) ->
                    assertFalse(ADDRESS.matcher(sentence).find(), key + ": " + sentence));
        }
    }

    @Test
    void umlautsAreReadAsTheyAreWritten() {
        assertEquals("Stoß", german.kind(FaultKind.JOINT));
        assertEquals("Das fehlt. Ausfüllen.", Problem.refusal("json.missing").sentence(Locale.GERMANY));
    }

    @ParameterizedTest
    @EnumSource(value = Hint.class, mode = EnumSource.Mode.EXCLUDE, names = "NONE")
    void everyGermanSuspicionIsOnlyASuspicion(Hint hint) {
        assertTrue(german.suspicion(hint).toLowerCase(Locale.ROOT).contains("passt zu"), german.suspicion(hint));
    }

    @Test
    void germanCautionsDeferToSiteRulesCodesAndElectricians() {
        String head = new CautionWords(german).headLine();
        assertTrue(head.contains("Regeln der Baustelle") && head.contains("örtlichen Vorschriften") && head.contains("Elektrofachkraft"), head);
    }

    /** The parts of isolation that English names: off, secured, tagged, stored energy, proved dead with a proved tester, by whom. */
    @Test
    void germanIsolationLeavesOutNoStep() {
        String isolation = new CautionWords(german).sentence(Caution.ISOLATION);
        for (String step : List.of("freischalten", "gegen Wiedereinschalten sichern", "kennzeichnen", "gespeicherte Energie abbauen",
                "Spannungsfreiheit feststellen", "davor und danach prüfen", "Elektrofachkraft")) {
            assertTrue(isolation.contains(step), step);
        }
    }

    @Test
    void theDirectionInANoteIsTranslatedAndItsFiguresHaveACommaToo() {
        String note = new NoteWords(german).sentence(new Note(Note.Kind.REFERENCE_DRIFT,
                List.of("A", "C1", "2.00", "1.52", "45", "warmer, pinker")));
        assertTrue(note.contains("um 1,52 Schritte") && note.contains("Richtung wärmer, rosiger:"), note);
    }

    @Test
    void aLanguageIsFoundByItsCodeAndNoOtherIs() {
        assertEquals(Optional.of(Language.GERMAN), Language.of("de"));
        assertEquals(Optional.empty(), Language.of("fr"));
        assertEquals(Optional.empty(), Language.of(""));
    }

    @Test
    void aLanguageOfOneCountryIsTheLanguage() {
        assertEquals("offen", new Words(Locale.forLanguageTag("de-CH")).verdict(Verdict.UNSETTLED));
    }

    private static Set<String> without(Map<String, String> keys, Map<String, String> others) {
        Set<String> left = new TreeSet<>(keys.keySet());
        left.removeAll(others.keySet());
        return left;
    }

    private static Set<String> slots(String sentence) {
        return SLOT.matcher(sentence).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Map<String, String> english(String bundle) {
        return lines(bundle + ".properties");
    }

    private static Map<String, String> translated(String bundle, Language language) {
        return lines(bundle + "_" + language.code() + ".properties");
    }

    /** Read line by line, since a key that stands there twice would go unnoticed otherwise. */
    private static Map<String, String> lines(String resource) {
        Map<String, String> sentences = new HashMap<>();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(Words.class.getResourceAsStream(resource), UTF_8))) {
            in.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).forEach(line -> {
                int mark = line.indexOf('=');
                assertFalse(sentences.containsKey(line.substring(0, mark)), resource + " has this twice: " + line);
                sentences.put(line.substring(0, mark), line.substring(mark + 1));
            });
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
        return sentences;
    }
}

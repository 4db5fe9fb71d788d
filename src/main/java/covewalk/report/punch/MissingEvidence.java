package covewalk.report.punch;

import covewalk.survey.Claim;
import covewalk.survey.Placement;
import covewalk.survey.Reel;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import covewalk.survey.file.Photo;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a warranty desk usually asks for and a survey does not hold (common practice, no source; returns forms of the
 * trade ask for most of it).
 */
public final class MissingEvidence {

    private static final int LONGEST = 80;

    private final Words words;
    private final List<String> missing = new ArrayList<>();

    public MissingEvidence(Words words) {
        this.words = words;
    }

    /** A sentence for each; the last ones are of what no survey holds. */
    public List<String> of(Audit audit, Reel reel, Optional<Reel> neighbour, List<Photo> photos) {
        Survey survey = audit.judgement().survey();
        missing.clear();
        ifEmpty(reel.lot(), "lot");
        ifEmpty(reel.serial(), "serial");
        ofSameSerial(survey, reel);
        ifEmpty(reel.invoice(), "invoice");
        if (reel.claimedSteps().isEmpty()) {
            add("claim");
        }
        ofClaim(survey.claim());
        ofPlacements(survey, reel);
        ofMeter(survey);
        ifNot(photos.stream().anyMatch(photo -> isOf(photo, reel)), "photo");
        ifNot(neighbour.isEmpty() || photos.stream().anyMatch(photo -> isOf(photo, neighbour.get())), "neighbour-photo");
        ifNot(audit.seal().isPresent(), "seal");
        Stream.of("temperature", "purchase", "sisters", "dimming", "notice").forEach(this::add);
        return List.copyOf(missing);
    }

    /** Whose readings are these, if two reels are said to be one? */
    private void ofSameSerial(Survey survey, Reel reel) {
        String others = survey.reels().stream().filter(other -> !other.id().equals(reel.id()) && !reel.serial().isBlank()
                && other.serial().equals(reel.serial())).map(Reel::id).collect(Collectors.joining(", "));
        if (!others.isEmpty()) {
            missing.add(words.text("missing.serial-twice", Shortened.of(reel.serial(), LONGEST), Shortened.of(others, LONGEST)));
        }
    }

    private static boolean isOf(Photo photo, Reel reel) {
        String file = photo.name().substring(photo.name().lastIndexOf('/') + 1);
        return file.regionMatches(true, 0, reel.id(), 0, reel.id().length());
    }

    private void ofClaim(Optional<Claim> claim) {
        Function<Function<Claim, String>, String> said = field -> claim.map(field).orElse("");
        ifEmpty(said.apply(Claim::symptom), "symptom");
        ifEmpty(said.apply(Claim::firstNoticed), "first-noticed");
        ifEmpty(said.apply(Claim::hoursADay), "hours");
        ifEmpty(said.apply(Claim::surroundings), "surroundings");
        ifEmpty(said.apply(Claim::controls), "controls");
        ifEmpty(said.apply(Claim::piecesKept), "pieces");
    }

    private void ofPlacements(Survey survey, Reel reel) {
        List<Placement> placements = survey.coves().stream().flatMap(cove -> cove.placements().stream())
                .filter(placement -> placement.reel().equals(reel.id())).toList();
        ifNot(placements.stream().noneMatch(placement -> placement.installed().isBlank()), "installed");
        ifNot(placements.stream().allMatch(placement -> placement.knownFrom() == Placement.KnownFrom.SEEN), "seen");
    }

    private void ofMeter(Survey survey) {
        ifNot(survey.setUps().stream().map(SetUp::serial).noneMatch(String::isBlank), "meter-serial");
        ifNot(survey.setUps().stream().allMatch(setUp -> setUp.calibrationDue().isPresent()), "calibration");
        ifNot(survey.visit().minutesOn().isPresent(), "minutes");
    }

    private void ifEmpty(String text, String what) {
        ifNot(!text.isBlank(), what);
    }

    private void ifNot(boolean there, String what) {
        if (!there) {
            add(what);
        }
    }

    private void add(String what) {
        missing.add(words.text("missing." + what));
    }
}

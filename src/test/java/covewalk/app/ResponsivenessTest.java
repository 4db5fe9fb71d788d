package covewalk.app;

import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.desk.Place;
import covewalk.app.desk.Spot;
import covewalk.app.open.Opener;
import covewalk.app.open.Workers;
import covewalk.survey.Reel;
import covewalk.survey.Survey;
import covewalk.survey.file.disk.Holder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How long the screen is busy while a survey of 20 000 readings is opened, judged, looked at and added to: measured, so not in every run. */
@Tag("long")
class ResponsivenessTest {

    private static final double ALLOWED_MS = 50;

    @TempDir
    Path folder;

    /** Done some times before: the first ones load classes and styles, and warm up. */
    @Test
    void theScreenIsNeverBusyForMoreThanTheBlinkOfAnEye() throws IOException {
        Map<String, Gap> gaps = done(6);
        gaps.forEach((what, gap) -> assertTrue(gap.workedMs() < ALLOWED_MS, what + ", of " + gaps));
    }

    /**
     * The longest stretch in which the screen's thread answered nothing.
     *
     * @param workedMs as much of it as that thread worked itself
     */
    private record Gap(double waitedMs, double workedMs) {

        static Gap since(Heartbeat heartbeat) {
            return new Gap(heartbeat.longestMs(), heartbeat.mostWorkMs());
        }
    }

    /** @param times how often everything is done; the last time counts */
    private Map<String, Gap> done(int times) throws IOException {
        Path survey = folder.resolve("hotel");
        LargeSurvey hotel = LargeSurvey.made();
        Workers atOnce = new Workers(Runnable::run, Runnable::run, Runnable::run);
        new Opener(atOnce, () -> Holder.here("covewalk", Screens.EVENING)).create(survey, hotel.described(), hotel.readings(),
                made -> made.value().orElseThrow().close());
        Map<String, Gap> gaps = new LinkedHashMap<>();
        try (Screens screens = Screens.open(); Heartbeat heartbeat = new Heartbeat()) {
            for (int i = 0; i < times; i++) {
                once(screens, survey, heartbeat, gaps);
            }
        }
        return gaps;
    }

    private static void once(Screens screens, Path survey, Heartbeat heartbeat, Map<String, Gap> gaps) {
        screens.interact(() -> screens.desk().close());
        screens.interact(() -> screens.desk().go(Place.SURVEYS));
        screens.rest();
        Gap.since(heartbeat);
        screens.survey(survey);
        gaps.put("opening and judging", Gap.since(heartbeat));
        for (Place place : Place.values()) {
            screens.interact(() -> screens.desk().go(place));
            screens.rest();
            gaps.put("showing " + place.code(), Gap.since(heartbeat));
        }
        screens.interact(() -> screens.desk().go(Place.FAULTS));
        screens.interact(() -> screens.desk().spotProperty().set(new Spot("C50", 10)));
        screens.rest();
        gaps.put("choosing a fault", Gap.since(heartbeat));
        screens.interact(() -> DemoDesk.read(screens.desk(), "C50", 9.95, "0.4590", "0.4105"));
        screens.until(() -> !screens.desk().survey().judgingProperty().get());
        gaps.put("keeping a reading", Gap.since(heartbeat));
        for (Place place : new Place[] {Place.SITE, Place.REELS}) {
            screens.interact(() -> screens.desk().go(place));
            screens.rest();
            Gap.since(heartbeat);
            screens.interact(() -> screens.desk().survey().change(ResponsivenessTest::withAnotherReel));
            screens.until(() -> !screens.desk().survey().judgingProperty().get());
            gaps.put("changing the description in " + place.code(), Gap.since(heartbeat));
        }
    }

    private static Survey withAnotherReel(Survey before) {
        List<Reel> reels = new ArrayList<>(before.reels());
        Reel last = reels.get(reels.size() - 1);
        reels.add(new Reel("X" + reels.size(), last.maker(), last.product(), last.gtin(), last.nominalCct(), last.bin(), last.lot(), "", "", "",
                last.lengthM(), last.claimedSteps(), last.claimedCentre()));
        return before.withReels(reels);
    }
}

package covewalk.app;

import covewalk.survey.Cove;
import covewalk.survey.Placement;
import covewalk.survey.Placement.KnownFrom;
import covewalk.survey.Reading;
import covewalk.survey.Reel;
import covewalk.survey.Role;
import covewalk.survey.Survey;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.file.SurveyFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;

/** A hotel: 100 coves of 30 m, each lit by six reels and read twice at a hundred places; 20 000 readings in all. */
final class LargeSurvey {

    private static final int COVES = 100;
    private static final int REELS = 6;
    private static final int PLACES = 100;
    private static final double REEL_M = 5;
    private static final double SPREAD = 0.002;
    private static final double NOISE = 0.0004;

    private final Random random = new Random(20_000);
    private final List<Reel> reels = new ArrayList<>();
    private final List<Cove> coves = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();

    private LargeSurvey() {
        for (int cove = 1; cove <= COVES; cove++) {
            cove("C" + cove);
        }
    }

    static LargeSurvey made() {
        return new LargeSurvey();
    }

    List<Reading> readings() {
        return readings;
    }

    /** Its site, meter and limits are those of the demonstration. */
    Survey described() throws IOException {
        Survey demo = SurveyFolder.at(Path.of("survey-demo", "reading-rooms")).read().survey().orElseThrow();
        return new Survey(demo.site(), demo.visit(), demo.setUps(), demo.limits(), reels, coves, Optional.empty());
    }

    private void cove(String id) {
        List<Placement> placements = new ArrayList<>();
        double[] x = new double[REELS];
        for (int i = 0; i < REELS; i++) {
            String reel = "R" + (reels.size() + 1);
            reels.add(new Reel(reel, "Ottersedge (invented)", "OSW", "", OptionalInt.of(2700), "h" + i, "L" + i, "", "", "",
                    OptionalDouble.of(REEL_M), OptionalDouble.of(3), Optional.empty()));
            placements.add(new Placement(reel, i * REEL_M, (i + 1) * REEL_M, KnownFrom.SEEN, ""));
            x[i] = 0.459 + SPREAD * random.nextGaussian();
        }
        coves.add(new Cove(id, "floor " + id, REELS * REEL_M, false, "door", OptionalDouble.of(2.4), "", Optional.empty(), List.of(),
                placements));
        for (int place = 0; place < PLACES; place++) {
            double atM = 0.15 + place * (REELS * REEL_M / PLACES);
            for (int again = 0; again < 2; again++) {
                readings.add(reading(id, atM, x[(int) (atM / REEL_M)] + NOISE * random.nextGaussian()));
            }
        }
    }

    private Reading reading(String cove, double atM, double x) {
        double y = 0.4105 + NOISE * random.nextGaussian();
        return new Reading(Integer.toString(readings.size() + 1), cove, typed("%.2f", atM), Role.WALK, "A", 1,
                Optional.of(TypedColour.ofXy(typed("%.4f", x), typed("%.4f", y))), Optional.empty(), "", "", "", 0);
    }

    private static Typed typed(String format, double value) {
        String text = String.format(Locale.ROOT, format, value);
        return new Typed(text, Double.parseDouble(text));
    }
}

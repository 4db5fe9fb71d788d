package covewalk.app.walk;

import covewalk.app.open.OpenSurvey;
import covewalk.app.open.Opener;
import covewalk.app.open.Workers;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.file.disk.Holder;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import javafx.collections.ListChangeListener;

/** A process that keeps one reading after the other and says of each when it is kept, until it is killed. */
final class TypingChild {

    private TypingChild() {
    }

    public static void main(String[] folder) {
        ScheduledExecutorService screen = Executors.newSingleThreadScheduledExecutor();
        Workers workers = new Workers(Executors.newSingleThreadExecutor(), task -> { }, screen);
        new Opener(workers, () -> Holder.here("covewalk", Clock.systemDefaultZone())).open(Path.of(folder[0]), told -> {
            OpenSurvey survey = told.value().orElseThrow();
            survey.log().addListener((ListChangeListener<Reading>) change -> {
                while (change.next()) {
                    change.getAddedSubList().forEach(reading -> System.out.println(reading.id()));
                }
            });
            screen.scheduleAtFixedRate(() -> survey.keep(reading(survey.nextId())), 0, 1, TimeUnit.MILLISECONDS);
        });
    }

    private static Reading reading(String id) {
        return new Reading(id, "C1", new Typed("1.5", 1.5), Role.WALK, "A", 1,
                Optional.of(TypedColour.ofXy(new Typed("0.4580", 0.4580), new Typed("0.4103", 0.4103))), Optional.empty(), "", "", "", 0);
    }
}

package covewalk.app.desk;

import covewalk.app.Screens;
import covewalk.app.open.OpenSurvey;
import covewalk.app.open.Opener;
import covewalk.app.open.Workers;
import covewalk.survey.file.disk.Holder;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** A desk on which everything happens at once, for tests of models: no screen, no threads. */
public final class Desks {

    private Desks() {
    }

    public static Desk empty() {
        return with(new Settings(Theme.DARK, 100, Locale.ENGLISH, false, false), List.of());
    }

    public static Desk with(Settings settings, List<Path> recent) {
        Workers atOnce = new Workers(Runnable::run, Runnable::run, Runnable::run);
        return new Desk(new Opener(atOnce, () -> Holder.here("covewalk", Screens.EVENING)), atOnce, Screens.EVENING,
                new Memory(settings, recent, Place.SURVEYS));
    }

    /** With a copy of the demonstration open. */
    public static Desk withDemo(Path folder) {
        Desk desk = empty();
        open(desk, Screens.demo(folder));
        return desk;
    }

    public static OpenSurvey open(Desk desk, Path folder) {
        desk.open(folder, refused -> {
            throw new AssertionError(refused);
        });
        return desk.survey();
    }
}

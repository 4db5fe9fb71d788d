package covewalk.app;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Memory;
import covewalk.app.desk.Settings;
import covewalk.app.desk.Theme;
import covewalk.app.open.Opener;
import covewalk.app.open.Workers;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.file.disk.Holder;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** A desk on which everything is done at once, for tests of models: they need no screen. */
public final class DemoDesk {

    private DemoDesk() {
    }

    /** With nothing open, in English, in metres. */
    public static Desk empty() {
        Workers atOnce = new Workers(Runnable::run, Runnable::run, Runnable::run);
        return new Desk(new Opener(atOnce, () -> Holder.here("covewalk", Screens.EVENING)), atOnce, Screens.EVENING,
                Memory.blank().with(new Settings(Theme.DARK, 100, Locale.ENGLISH, false, false)));
    }

    /** With a copy of the demonstration survey open. */
    public static Desk open(Path copyInto) {
        Desk desk = empty();
        desk.open(Screens.demo(copyInto), refused -> {
            throw new AssertionError(refused);
        });
        return desk;
    }

    /** Keeps a reading in the open survey. */
    public static void read(Desk desk, String cove, double positionM, String x, String y) {
        desk.survey().keep(new Reading(desk.survey().nextId(), cove, new Typed(Double.toString(positionM), positionM), Role.WALK, "A", 1,
                Optional.of(TypedColour.ofXy(new Typed(x, Double.parseDouble(x)), new Typed(y, Double.parseDouble(y)))), Optional.empty(),
                "", "", "", 0));
    }
}

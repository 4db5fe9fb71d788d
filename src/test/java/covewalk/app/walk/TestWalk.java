package covewalk.app.walk;

import covewalk.app.Screens;
import covewalk.app.desk.Desk;
import covewalk.app.desk.Memory;
import covewalk.app.desk.Settings;
import covewalk.app.desk.Theme;
import covewalk.app.open.Opener;
import covewalk.app.open.Workers;
import covewalk.survey.Reading;
import covewalk.survey.file.disk.Holder;
import covewalk.survey.file.SurveyFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;

/** A walk without a screen: everything happens at once, and the clock goes when it is told to. */
final class TestWalk {

    private static final Workers AT_ONCE = new Workers(Runnable::run, Runnable::run, Runnable::run);

    private static final class Watch extends Clock {
        private Instant now = Screens.EVENING.instant();

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    private final Path folder;
    private final Watch watch = new Watch();
    private final Desk desk;
    private final WalkModel model;

    private TestWalk(Path folder, Settings settings, String meterShows) {
        this.folder = folder;
        desk = new Desk(new Opener(AT_ONCE, () -> Holder.here("covewalk", watch)), AT_ONCE, watch,
                Memory.blank().with(settings).withMeterShows(meterShows));
        desk.open(folder, refused -> {
            throw new AssertionError(refused);
        });
        model = new WalkModel(desk, desk.survey(), desk.texts(WalkScreen.class));
    }

    static TestWalk in(Path folder) {
        return in(folder, Locale.ENGLISH);
    }

    static TestWalk in(Path folder, Locale language) {
        return new TestWalk(folder, new Settings(Theme.DARK, 100, language, false, false), "");
    }

    static TestWalk inFeet(Path folder) {
        return new TestWalk(folder, new Settings(Theme.DARK, 100, Locale.ENGLISH, true, false), "");
    }

    static TestWalk with(Path folder, String meterShows) {
        return new TestWalk(folder, new Settings(Theme.DARK, 100, Locale.ENGLISH, false, false), meterShows);
    }

    WalkModel model() {
        return model;
    }

    Desk desk() {
        return desk;
    }

    void minutes(long later) {
        watch.now = watch.now.plus(Duration.ofMinutes(later));
    }

    TestWalk type(String first, String second) {
        model.entry().first().set(first);
        model.entry().second().set(second);
        return this;
    }

    /** Types x and y, and Enter; again where it is asked about. */
    TestWalk read(String x, String y) {
        type(x, y).model.enter();
        if (!question().isEmpty() && !model.entry().isHandedOver()) {
            model.enter();
        }
        return this;
    }

    /** So many readings that are no slip. */
    TestWalk readings(int count) {
        for (int i = 0; i < count; i++) {
            read("0.4580", "0.4103");
        }
        return this;
    }

    TestWalk at(double positionM) {
        model.goTo(Double.toString(positionM));
        return this;
    }

    String question() {
        return model.says().question().get() == null ? "" : model.says().question().get().says();
    }

    List<Reading> onDisk() {
        try {
            return SurveyFolder.at(folder).read().log();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    Reading lastOnDisk() {
        List<Reading> log = onDisk();
        return log.get(log.size() - 1);
    }

    void close() {
        desk.close();
    }
}

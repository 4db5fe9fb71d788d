package covewalk.app;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Memory;
import covewalk.app.desk.Settings;
import covewalk.app.desk.Theme;
import covewalk.app.open.Opener;
import covewalk.app.open.Workers;
import covewalk.app.parts.Fonts;
import covewalk.survey.file.disk.Holder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.geometry.Dimension2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** The real app on a screen in memory, for tests that drive it as a person does. */
public final class Screens extends FxRobot implements AutoCloseable {

    /** Every test walks on the same evening. */
    public static final Clock EVENING = Clock.fixed(Instant.parse("2026-10-05T18:30:00Z"), ZoneOffset.UTC);

    private static final Settings USUAL = new Settings(Theme.DARK, 100, Locale.ENGLISH, false, false);
    private static final Dimension2D SMALL = new Dimension2D(1024, 600);

    private final ExecutorService disk = Executors.newSingleThreadExecutor(Screens::quietThread);
    /** What is asked for while the window closes is dropped: nobody sees it any more. */
    private final ExecutorService sums = new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS, new LinkedBlockingQueue<>(),
            Screens::quietThread, new ThreadPoolExecutor.DiscardPolicy());
    private final Desk desk;
    private Shell shell;
    private Stage stage;

    private Screens(Settings settings, Supplier<Holder> holder) {
        Workers workers = new Workers(disk, sums, Platform::runLater);
        desk = new Desk(new Opener(workers, holder), workers, EVENING,
                Memory.blank().with(settings));
    }

    private static Thread quietThread(Runnable task) {
        Thread thread = new Thread(task);
        thread.setDaemon(true);
        return thread;
    }

    /** In English, dark, at the usual size. */
    public static Screens open() {
        return open(USUAL, SMALL);
    }

    public static Screens open(Settings settings, Dimension2D size) {
        return open(settings, size, Screens::holder);
    }

    /** @param beforeEachLock done on the thread that writes, when a survey was read and its lock is about to be taken */
    static Screens open(Runnable beforeEachLock) {
        return open(USUAL, SMALL, () -> {
            beforeEachLock.run();
            return holder();
        });
    }

    private static Holder holder() {
        return Holder.here("covewalk", EVENING);
    }

    private static Screens open(Settings settings, Dimension2D size, Supplier<Holder> holder) {
        try {
            Screens screens = new Screens(settings, holder);
            screens.stage = FxToolkit.registerPrimaryStage();
            FxToolkit.setupFixture(() -> {
                Fonts.load();
                screens.shell = new Shell(screens.desk);
                Scene scene = new Scene(screens.shell, size.getWidth(), size.getHeight());
                screens.shell.dress(scene);
                screens.stage.setScene(scene);
                screens.stage.sizeToScene(); // a test before may have given it another size
                screens.stage.show();
            });
            screens.rest();
            return screens;
        } catch (TimeoutException late) {
            throw new IllegalStateException(late);
        }
    }

    public Desk desk() {
        return desk;
    }

    /** Nothing is read or written meanwhile. */
    void whileTheDiskIsHeld(Runnable then) {
        hold(disk, then);
    }

    /** Nothing is judged or planned meanwhile. */
    void whileSumsAreHeld(Runnable then) {
        hold(sums, then);
    }

    /** A screen that waits for it hangs for half a minute, not for ever. */
    private static void hold(ExecutorService worker, Runnable then) {
        CountDownLatch held = new CountDownLatch(1);
        worker.execute(() -> {
            try {
                held.await(30, TimeUnit.SECONDS);
            } catch (InterruptedException closed) {
                Thread.currentThread().interrupt();
            }
        });
        try {
            then.run();
        } finally {
            held.countDown();
        }
    }

    /** Asks to close the window, as its frame does. */
    public boolean mayClose() {
        boolean[] may = new boolean[1];
        interact(() -> may[0] = shell.mayClose());
        rest();
        return may[0];
    }

    /** Opens a survey and waits until it is judged. */
    public Screens survey(Path folder) {
        interact(() -> desk.open(folder, refused -> {
            throw new AssertionError(refused);
        }));
        until(() -> desk.survey() != null && desk.survey().judgementProperty().get() != null && !desk.survey().judgingProperty().get());
        return this;
    }

    /** Waits until this holds on the screen's thread; a test that waits in vain fails. */
    public void until(java.util.concurrent.Callable<Boolean> holds) {
        try {
            WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, () -> WaitForAsyncUtils.asyncFx(holds).get());
        } catch (TimeoutException inVain) {
            throw new AssertionError("it did not come about", inVain);
        }
        rest();
    }

    /** Until nothing more is due on the screen. */
    public void rest() {
        WaitForAsyncUtils.waitForFxEvents();
    }

    public void size(double width, double height) {
        interact(() -> {
            stage.setWidth(width);
            stage.setHeight(height);
        });
        rest();
    }

    /** The whole window as a PNG file in {@code target/screens}. */
    public Path picture(String name) {
        WritableImage[] image = new WritableImage[1];
        rest();
        interact(() -> image[0] = shell.snapshot(new SnapshotParameters(), null));
        return Png.write(image[0], Path.of("target", "screens", name + ".png"));
    }

    public <N extends Node> N find(String query) {
        return lookup(query).query();
    }

    @Override
    public void close() {
        interact(desk::close);
        disk.shutdown();
        sums.shutdownNow();
        try {
            disk.awaitTermination(10, TimeUnit.SECONDS);
            FxToolkit.cleanupStages();
        } catch (InterruptedException | TimeoutException hasty) {
            Thread.currentThread().interrupt();
        }
    }

    /** A copy of the demonstration survey that a test may write in. */
    public static Path demo(Path into) {
        return copy(Path.of("survey-demo", "reading-rooms"), into.resolve("reading-rooms"));
    }

    private static Path copy(Path from, Path to) {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(from.relativize(file).toString()));
            }
            return to;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}

package covewalk.app;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Memory;
import covewalk.app.desk.MemoryFile;
import covewalk.app.desk.Place;
import covewalk.app.open.Opener;
import covewalk.app.open.Workers;
import covewalk.app.parts.Fonts;
import covewalk.survey.Problem;
import covewalk.survey.file.disk.Holder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;

/** The window. */
public final class FieldApp extends Application {

    private static final double WIDTH = 1180;
    private static final double HEIGHT = 760;

    private final ExecutorService disk = oneThread(task -> new Thread(task, "disk"));
    private final ExecutorService sums = oneThread(FieldApp::inTheBackground);
    private final MemoryFile memory;

    private Desk desk;

    /** With the memory of this computer's user. */
    public FieldApp() {
        this(MemoryFile.of(System.getenv(), System.getProperty("os.name"), Path.of(System.getProperty("user.home"))));
    }

    FieldApp(MemoryFile memory) {
        this.memory = memory;
    }

    /** One task after the other. What is asked for once the window has closed is dropped: nobody sees or types any more. */
    private static ExecutorService oneThread(ThreadFactory threads) {
        return new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), threads,
                new ThreadPoolExecutor.DiscardPolicy());
    }

    private static Thread inTheBackground(Runnable task) {
        Thread thread = new Thread(task, "sums");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    }

    @Override
    public void start(Stage stage) {
        Fonts.load();
        Clock clock = Clock.systemDefaultZone();
        Workers workers = new Workers(disk, sums, Platform::runLater);
        Memory remembered = memory.read();
        desk = new Desk(new Opener(workers, () -> Holder.here("covewalk", clock)), workers, clock, remembered);
        desk.memoryProperty().addListener((property, before, now) -> disk.execute(() -> memory.write(now)));
        desk.showFilesWith(file -> getHostServices().showDocument(file.toUri().toString()));
        Shell shell = new Shell(desk);
        Scene scene = new Scene(shell, WIDTH, HEIGHT);
        shell.dress(scene);
        stage.setScene(scene);
        stage.setMinWidth(480);
        stage.setMinHeight(400);
        stage.titleProperty().bind(shell.titleProperty());
        stage.setOnCloseRequest(event -> {
            if (!shell.mayClose()) {
                event.consume();
            }
        });
        stage.show();
        beginWith(remembered);
    }

    /** With the survey that was asked for, else where the person was when it was last closed, or torn off. */
    private void beginWith(Memory remembered) {
        Optional<Path> asked = getParameters().getUnnamed().stream().findFirst().map(Path::of).map(Path::toAbsolutePath);
        Optional<Path> last = remembered.recent().stream().findFirst().filter(folder -> remembered.place() != Place.SURVEYS)
                .filter(Files::isDirectory);
        Place place = asked.isPresent() ? Place.FAULTS : remembered.place();
        asked.or(() -> last).ifPresent(folder -> desk.open(folder, this::sayWhy));
        if (asked.or(() -> last).isPresent()) {
            desk.go(place);
        }
    }

    /** Where another one can be chosen. */
    private void sayWhy(List<Problem> refused) {
        desk.go(Place.SURVEYS);
        desk.refuse(refused);
    }

    @Override
    public void stop() throws InterruptedException {
        sums.shutdownNow();
        if (desk != null) {
            desk.close(); // gives the folder back: who looks at it later must not read that somebody writes in it
        }
        disk.shutdown();
        disk.awaitTermination(10, TimeUnit.SECONDS);
    }
}

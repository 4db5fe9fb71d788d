package covewalk.app;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;

/** Opens the field app. Loads nothing of JavaFX before it is clear that there is a screen. */
public final class Start {

    /** Held here: a logger nobody holds forgets its level. */
    private static final Logger JAVAFX = Logger.getLogger("javafx");

    private Start() {
    }

    /**
     * Whether a window can be opened on this machine.
     *
     * @param environment of the process
     * @param system name of the operating system
     */
    public static boolean hasScreen(Map<String, String> environment, String system) {
        boolean windowsOrMac = system.startsWith("Windows") || system.startsWith("Mac");
        return windowsOrMac || !environment.getOrDefault("DISPLAY", "").isEmpty()
                || "Monocle".equals(System.getProperty("glass.platform"));
    }

    /**
     * Opens the window, and returns when it was closed.
     *
     * @param survey the folder of a survey to open with
     * @return whether there was a window; without one the reason has gone to the system's log
     */
    public static boolean open(Optional<Path> survey) {
        JAVAFX.setLevel(Level.SEVERE); // it would warn that its classes lie in ordinary jars, where we want them
        try {
            Application.launch(FieldApp.class, survey.map(Path::toString).stream().toArray(String[]::new));
            return true;
        } catch (RuntimeException | UnsatisfiedLinkError noWindow) {
            Logger.getLogger("covewalk.app").log(Level.FINE, "no window", noWindow);
            return false;
        }
    }
}

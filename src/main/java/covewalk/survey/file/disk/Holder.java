package covewalk.survey.file.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Objects;

/**
 * Who writes in a survey's folder.
 *
 * @param program name of the program
 * @param user who is logged in
 * @param host name of the computer
 * @param since local date and time
 */
public record Holder(String program, String user, String host, String since) {

    private static final DateTimeFormatter MINUTES = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    public Holder {
        Objects.requireNonNull(program, "program");
        Objects.requireNonNull(user, "user");
        Objects.requireNonNull(host, "host");
        Objects.requireNonNull(since, "since");
    }

    /** This program, run by whoever is logged in, now. */
    public static Holder here(String program, Clock clock) {
        return new Holder(program, System.getProperty("user.name", "someone"), thisComputer(),
                MINUTES.format(LocalDateTime.now(clock)));
    }

    String inWords() {
        return program + ", run by " + user + " on " + host + " since " + since;
    }

    /** From what the system says of itself: asking for the address of the host could go out on the network. */
    private static String thisComputer() {
        String name = System.getenv().getOrDefault("COMPUTERNAME", System.getenv().getOrDefault("HOSTNAME", ""));
        if (!name.isBlank()) {
            return name.strip();
        }
        try {
            String first = Files.readString(Path.of("/etc/hostname")).strip();
            return first.isEmpty() ? "this computer" : first;
        } catch (IOException unnamed) {
            return "this computer";
        }
    }
}

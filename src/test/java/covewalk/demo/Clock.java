package covewalk.demo;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Random;

/** The watch of whoever walks: readings, stations and ladders take their time. */
final class Clock {

    private static final DateTimeFormatter ISO = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss", Locale.ROOT);

    private final Random haste;
    private LocalDateTime now = LocalDateTime.of(2026, 10, 12, 18, 40, 0);

    Clock(Random haste) {
        this.haste = haste;
    }

    void toTheNextLeg() {
        pass(70, 60);
    }

    void toTheNextStation() {
        pass(14, 12);
    }

    void forOneReading() {
        pass(9, 6);
    }

    private void pass(int leastSeconds, int spreadSeconds) {
        now = now.plusSeconds(leastSeconds + haste.nextInt(spreadSeconds));
    }

    @Override
    public String toString() {
        return ISO.format(now);
    }
}

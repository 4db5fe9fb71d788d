package covewalk.app.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class BounceTest {

    @Test
    void aStrokeRightAfterAnotherWasNotMeant() {
        AtomicLong clock = new AtomicLong(5);
        Bounce bounce = new Bounce(clock::get);
        assertEquals(false, bounce.again());
        clock.addAndGet(Bounce.MILLIS - 1);
        assertEquals(true, bounce.again());
        clock.addAndGet(Bounce.MILLIS);
        assertEquals(false, bounce.again());
    }
}

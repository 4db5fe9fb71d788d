package covewalk.survey.file.description;

import covewalk.survey.Purpose;
import covewalk.survey.Visit;
import java.time.LocalDate;

/** The visit in {@code survey.json}. */
final class VisitEntry {

    private static final Range MINUTES = Range.from(0, 10_000_000);

    private VisitEntry() {
    }

    static Visit read(Fields fields) {
        return new Visit(fields.date("date"), fields.text("inspector"),
                fields.word("purpose", Purpose::of, "commissioning, complaint, warranty, revisit"),
                fields.whole("minutesOn", MINUTES), fields.text("follows"));
    }

    static void write(Overlay to, Visit visit) {
        to.text("date", visit.date().map(LocalDate::toString).orElse(""))
                .text("inspector", visit.inspector())
                .text("purpose", visit.purpose().map(Purpose::code).orElse(""))
                .whole("minutesOn", visit.minutesOn())
                .text("follows", visit.follows());
    }
}

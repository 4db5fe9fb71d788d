package covewalk.app.site;

import covewalk.app.forms.Answers;
import covewalk.app.forms.Ask;
import covewalk.app.forms.Kind;
import covewalk.app.forms.Part;
import covewalk.app.forms.Writing;
import covewalk.survey.Purpose;
import covewalk.survey.Survey;
import covewalk.survey.Visit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** When, by whom and why. */
final class VisitKind implements Kind<Visit> {

    static final Part<Visit> PART = Part.always("visit", Survey::visit, Survey::with);

    /** The same as a survey file takes. */
    private static final int MOST_MINUTES = 10_000_000;

    @Override
    public List<Ask> asks() {
        return List.of(Ask.typed("date"), Ask.typed("inspector"), Ask.typed("minutesOn"), Ask.typed("follows"),
                Ask.oneOf("purpose", "commissioning", "complaint", "warranty", "revisit"));
    }

    @Override
    public Map<String, String> texts(Visit visit, Writing writing) {
        return Map.of("date", writing.date(visit.date()), "inspector", visit.inspector(),
                "purpose", visit.purpose().map(Purpose::code).orElse(""), "minutesOn", writing.number(visit.minutesOn()),
                "follows", visit.follows());
    }

    @Override
    public Visit read(Answers answers, Visit before) {
        return new Visit(answers.date("date", before.date()), answers.text("inspector", before.inspector()),
                answers.choice("purpose", before.purpose(), code -> Optional.of(Purpose.of(code))),
                answers.whole("minutesOn", before.minutesOn(), 0, MOST_MINUTES), answers.text("follows", before.follows()));
    }
}

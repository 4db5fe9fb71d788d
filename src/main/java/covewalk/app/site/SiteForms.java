package covewalk.app.site;

import covewalk.app.forms.Form;
import covewalk.survey.Claim;
import covewalk.survey.Limits;
import covewalk.survey.Reel;
import covewalk.survey.SetUp;
import covewalk.survey.Site;
import covewalk.survey.Visit;
import java.util.stream.Stream;

/** The forms of a survey's description; those of a cove are in {@link CoveModel}. */
record SiteForms(Form<Site> site, Form<Visit> visit, Form<Claim> claim, Form<Limits> limits, Form<SetUp> setUp, Form<Reel> reel) {

    /** Forgets what was typed and not taken. */
    void forget() {
        Stream.of(site, visit, claim, limits, setUp, reel).forEach(Form::forget);
    }
}

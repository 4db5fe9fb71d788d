package covewalk.app.site;

import covewalk.app.forms.Answers;
import covewalk.app.forms.Ask;
import covewalk.app.forms.Kind;
import covewalk.app.forms.Part;
import covewalk.app.forms.Writing;
import covewalk.survey.Site;
import covewalk.survey.Survey;
import java.util.List;
import java.util.Map;

/** Where. */
final class SiteKind implements Kind<Site> {

    static final Part<Site> PART = Part.always("site", Survey::site, Survey::with);

    @Override
    public List<Ask> asks() {
        return List.of(Ask.typed("name"), Ask.typed("address"));
    }

    @Override
    public Map<String, String> texts(Site site, Writing writing) {
        return Map.of("name", site.name(), "address", site.address());
    }

    @Override
    public Site read(Answers answers, Site before) {
        return new Site(answers.text("name", before.name()), answers.text("address", before.address()));
    }
}

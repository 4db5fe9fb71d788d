package covewalk.app.site;

import covewalk.app.forms.FormView;
import covewalk.app.text.Texts;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The site, the visit, and what is claimed, where somebody claims something. */
final class VisitPage extends VBox {

    private final FormView site;
    private final FormView claim;
    private final Label claimHeading = new Label();
    private final SiteModel model;

    VisitPage(SiteModel model) {
        this.model = model;
        Texts texts = model.texts();
        getStyleClass().add("site-page");
        site = new FormView(model.forms().site());
        FormView visit = new FormView(model.forms().visit());
        claim = new FormView(model.forms().claim());
        site.setAfterTheLast(visit::focusFirst);
        Label heading = new Label(texts.get("visit.heading"));
        heading.getStyleClass().add("site-heading");
        claimHeading.setText(texts.get("claim.heading"));
        claimHeading.getStyleClass().add("site-heading");
        getChildren().addAll(site, heading, visit, claimHeading, claim);
        model.description().surveyProperty().addListener((property, before, now) -> follow());
        follow();
    }

    private void follow() {
        boolean asked = model.asksForClaim();
        claim.setVisible(asked);
        claim.setManaged(asked);
        claimHeading.setVisible(asked);
        claimHeading.setManaged(asked);
    }

    void focusFirst() {
        site.focusFirst();
    }
}

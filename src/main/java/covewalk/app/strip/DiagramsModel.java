package covewalk.app.strip;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Spot;
import covewalk.app.open.OpenSurvey;
import covewalk.app.text.Texts;
import covewalk.plot.Picture;
import covewalk.plot.Profile;
import covewalk.plot.StripFrame;
import covewalk.plot.UvDiagram;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Judgement;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;

/** The pictures beside the strip, of the same cove. */
final class DiagramsModel {

    private static final double NARROW_MM = 110;

    private final Desk desk;
    private final Texts texts;
    private final ObservableValue<Judgement> judgement;
    private final ReadOnlyObjectWrapper<Picture> profile = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Picture> colours = new ReadOnlyObjectWrapper<>();
    private double widthMm = NARROW_MM;
    private boolean seen = true;
    private final ReadOnlyStringWrapper none = new ReadOnlyStringWrapper("");

    DiagramsModel(Desk desk) {
        this.desk = desk;
        this.texts = desk.texts(DiagramsModel.class);
        judgement = desk.surveyProperty().flatMap(OpenSurvey::judgementProperty);
        judgement.addListener((property, before, now) -> draw());
        desk.spotProperty().addListener((property, before, now) -> draw());
        draw();
    }

    /** Steps against position; null where there is nothing to draw. */
    ReadOnlyObjectProperty<Picture> profileProperty() {
        return profile.getReadOnlyProperty();
    }

    /** The u', v' diagram; null where there is nothing to draw. */
    ReadOnlyObjectProperty<Picture> coloursProperty() {
        return colours.getReadOnlyProperty();
    }

    /** Whether anybody sees them: they are not drawn for nobody. */
    void seen(boolean now) {
        seen = now;
        draw();
    }

    void widthMm(double width) {
        if (Math.abs(width - widthMm) > 0.01) {
            widthMm = width;
            draw();
        }
    }

    /** Why there is nothing to draw; else empty. */
    ReadOnlyStringProperty noneProperty() {
        return none.getReadOnlyProperty();
    }

    private void draw() {
        if (!seen) {
            return;
        }
        Judgement now = judgement.getValue();
        Spot spot = desk.spotProperty().get();
        List<CoveJudgement> coves = now == null ? List.of() : now.coves();
        CoveJudgement cove = coves.stream().filter(judged -> spot != null && judged.cove().id().equals(spot.cove())).findFirst()
                .orElse(coves.isEmpty() ? null : coves.get(0));
        profile.set(cove == null ? null : Profile.of(cove, now.planeOf(cove), texts.words(),
                StripFrame.screen(cove.cove(), widthMm, false)).orElse(null));
        colours.set(cove == null ? null : UvDiagram.of(cove, now.planeOf(cove), now.survey().limits(), texts.words()).orElse(null));
        none.set(cove != null && profile.get() == null ? texts.get("diagrams.none", cove.cove().id()) : "");
    }
}

package covewalk.app.reels;

import covewalk.app.forms.FormView;
import covewalk.app.forms.ReelLine;
import covewalk.app.parts.PicturePane;
import covewalk.app.parts.VerdictView;
import covewalk.app.parts.Wrapped;
import covewalk.app.text.Texts;
import covewalk.plot.Strip;
import covewalk.survey.Reel;
import covewalk.verdict.CoveJudgement;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One reel: where it lies, what was measured of it, the faults it takes part in, and its label. */
final class ReelDetail extends VBox {

    private static final double PIXELS_PER_MM = 6;

    private final ReelsModel model;
    private final Texts texts;
    private final VBox known = new VBox();
    private final VBox label = new VBox();

    ReelDetail(ReelsModel model) {
        this.model = model;
        this.texts = model.texts();
        getStyleClass().add("reel-detail");
        known.getStyleClass().add("reel-detail");
        label.getStyleClass().add("reel-detail");
        label.getChildren().setAll(heading("label"), new FormView(model.form()));
        getChildren().addAll(known, label);
        model.factsProperty().addListener((property, before, now) -> fill());
        fill();
    }

    private void fill() {
        Optional<Reel> reel = model.chosen();
        label.setVisible(reel.isPresent());
        label.setManaged(reel.isPresent());
        if (reel.isEmpty() || model.factsProperty().get() == null) {
            known.getChildren().setAll(new Wrapped(texts.get(model.found().isEmpty() ? "none" : "choose"), "reel-choose"));
            return;
        }
        ReelFacts facts = model.factsProperty().get();
        FactWords words = new FactWords(texts, model.writing());
        known.getChildren().setAll(new Wrapped(new ReelLine(texts.words()).of(reel.get()), "reel-name"));
        model.judged(facts).ifPresent(cove -> known.getChildren().add(strip(cove)));
        known.getChildren().addAll(heading("lies"), lies(facts, words), heading("claim"), claim(facts, words), heading("faults"),
                faults(facts, words));
    }

    private PicturePane strip(CoveJudgement cove) {
        PicturePane pane = new PicturePane(PIXELS_PER_MM);
        pane.setId("reel-strip");
        pane.show(Strip.of(cove, texts.words().lengthsIn(model.lengths()), model.frame(cove.cove())));
        return pane;
    }

    private VBox lies(ReelFacts facts, FactWords words) {
        VBox rows = rows(facts.lies().stream().map(where -> row(new Wrapped(words.lies(where), "lies"), where.cove().id(),
                (where.placement().fromM() + where.placement().toM()) / 2, "lies-" + facts.lies().indexOf(where))).toList(), "lies.none");
        facts.stretches().forEach(measured -> rows.getChildren().add(new Wrapped(words.measured(measured), "measured")));
        return rows;
    }

    private VBox claim(ReelFacts facts, FactWords words) {
        return rows(facts.claim().map(words::claim).orElse(List.of()).stream().map(line -> (Node) new Wrapped(line, "claim")).toList(), "claim.none");
    }

    private VBox faults(ReelFacts facts, FactWords words) {
        return rows(facts.faults().stream().map(part -> {
            VBox both = new VBox(2, new VerdictView(part.fault().verdict(), Optional.of(part.fault().difference()), texts.words()),
                    new Wrapped(words.fault(part), "fault"));
            return row(both, part.cove().cove().id(), part.fault().positionM(), "fault-" + facts.faults().indexOf(part));
        }).toList(), "faults.none");
    }

    private VBox rows(List<? extends Node> rows, String none) {
        VBox box = new VBox();
        box.getStyleClass().add("reel-rows");
        box.getChildren().setAll(rows);
        if (rows.isEmpty()) {
            box.getChildren().add(new Wrapped(texts.get(none), none.replace('.', '-')));
        }
        return box;
    }

    /** A fact with the way to its place on the strip. */
    private Node row(Region fact, String cove, double positionM, String id) {
        Button show = new Button(texts.get("show"));
        show.setId("reel-" + id);
        show.setAccessibleText(texts.get("show.at", cove, model.writing().length(positionM)));
        show.setOnAction(event -> model.show(cove, positionM));
        FlowPane row = new FlowPane(12, 4, fact, show);
        row.setMinWidth(0);
        fact.maxWidthProperty().bind(row.widthProperty()); // else a long one would be as wide as it is long
        row.getStyleClass().add("reel-row");
        return row;
    }

    private Label heading(String key) {
        Label heading = new Label(texts.get("heading." + key));
        heading.getStyleClass().add("reel-heading");
        return heading;
    }
}

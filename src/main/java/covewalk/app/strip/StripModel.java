package covewalk.app.strip;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Spot;
import covewalk.app.desk.Theme;
import covewalk.app.open.OpenSurvey;
import covewalk.app.text.Texts;
import covewalk.plot.Picture;
import covewalk.plot.Strip;
import covewalk.plot.StripFrame;
import covewalk.survey.Cove;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Judgement;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.value.ObservableValue;

/** The cove that is looked at, drawn along its length, and what is pointed at in words. */
final class StripModel {

    /** What a glove covers of the picture, mm each way (common practice, no source). */
    private static final double REACH_MM = 4;
    private static final double NARROW_MM = 150;

    private final Desk desk;
    private final Texts texts;
    private final ObservableValue<Judgement> judgement;
    private final ReadOnlyObjectWrapper<CoveJudgement> cove = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Picture> picture = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyStringWrapper name = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper("");
    private final ReadOnlyDoubleWrapper spotMm = new ReadOnlyDoubleWrapper(Double.NaN);
    private final ReadOnlyIntegerWrapper timesShown = new ReadOnlyIntegerWrapper(1);
    private final IntegerProperty times = new SimpleIntegerProperty();
    private List<Finding> findings = List.of();
    private FindingWords words;
    private StripFrame frame;
    private double widthMm = NARROW_MM;
    private boolean seen = true;

    StripModel(Desk desk) {
        this.desk = desk;
        this.texts = desk.texts(StripModel.class);
        this.words = new FindingWords(texts, desk.settings().feet());
        this.judgement = desk.surveyProperty().flatMap(OpenSurvey::judgementProperty);
        judgement.addListener((property, before, now) -> follow());
        desk.spotProperty().addListener((property, before, now) -> look(before, now));
        times.addListener((property, before, now) -> draw());
        desk.memoryProperty().addListener((property, before, now) -> {
            if (!before.settings().equals(now.settings())) {
                words = new FindingWords(texts, now.settings().feet());
                draw();
            }
        });
        follow();
    }

    /** The cove shown; null before the first judgement, and where none is described. */
    ReadOnlyObjectProperty<CoveJudgement> coveProperty() {
        return cove.getReadOnlyProperty();
    }

    ObservableValue<Judgement> judgement() {
        return judgement;
    }

    /** Null where there is nothing to draw. */
    ReadOnlyObjectProperty<Picture> pictureProperty() {
        return picture.getReadOnlyProperty();
    }

    /** As "C1, lobby · 0 = west end". */
    ReadOnlyStringProperty nameProperty() {
        return name.getReadOnlyProperty();
    }

    /** What is pointed at, else what is looked at, in words. */
    ReadOnlyStringProperty saysProperty() {
        return says.getReadOnlyProperty();
    }

    /** Where the place looked at lies in the picture, mm from its left edge; not a number where none is. */
    ReadOnlyDoubleProperty spotMmProperty() {
        return spotMm.getReadOnlyProperty();
    }

    /** How many times larger differences shall be shown; 0 for as the cove allows. */
    IntegerProperty timesProperty() {
        return times;
    }

    /** How many times larger they are shown. */
    ReadOnlyIntegerProperty timesShownProperty() {
        return timesShown.getReadOnlyProperty();
    }

    void widthMm(double width) {
        if (Math.abs(width - widthMm) > 0.01) {
            widthMm = width;
            draw();
        }
    }

    /** Whether anybody sees it: it is not drawn for nobody. */
    void seen(boolean now) {
        seen = now;
        if (now) {
            draw();
        }
    }

    private void look(Spot before, Spot now) {
        boolean otherCove = now != null && (cove.get() == null || !cove.get().cove().id().equals(now.cove()));
        if (otherCove) {
            follow();
        } else {
            mark();
        }
    }

    private void follow() {
        Judgement now = judgement.getValue();
        Spot spot = desk.spotProperty().get();
        List<CoveJudgement> coves = now == null ? List.of() : now.coves();
        String id = spot != null ? spot.cove() : cove.get() == null ? "" : cove.get().cove().id();
        cove.set(coves.stream().filter(judged -> judged.cove().id().equals(id)).findFirst()
                .orElse(coves.isEmpty() ? null : coves.get(0)));
        findings = cove.get() == null ? List.of() : Finding.in(cove.get(), now.survey().limits());
        String named = cove.get() == null ? "" : name(cove.get().cove());
        name.set(Drift.isTakenOff(now) ? texts.get("drift.named", named) : named);
        draw();
    }

    private String name(Cove described) {
        String datum = described.datum().isBlank() ? texts.words().text("place.no-datum") : described.datum();
        return described.place().isBlank() ? texts.get("cove", described.id(), datum)
                : texts.get("cove.named", described.id(), described.place(), datum);
    }

    private void draw() {
        if (!seen) {
            return;
        }
        if (cove.get() == null) {
            picture.set(null);
        } else {
            frame = StripFrame.screen(cove.get().cove(), widthMm, desk.settings().theme() == Theme.DARK).amplified(times.get());
            timesShown.set(times.get() > 0 ? times.get() : Strip.timesLarger(cove.get()));
            picture.set(Strip.of(cove.get(), texts.words().lengthsIn(desk.settings().lengths()), frame));
        }
        mark();
    }

    private void mark() {
        Optional<Double> at = spotHere();
        spotMm.set(at.map(frame == null ? m -> Double.NaN : frame::xMm).orElse(Double.NaN));
        leave();
    }

    private Optional<Double> spotHere() {
        Spot spot = desk.spotProperty().get();
        return spot == null || cove.get() == null || !spot.cove().equals(cove.get().cove().id()) ? Optional.empty()
                : Optional.of(spot.positionM());
    }

    /** Nobody points any more. */
    void leave() {
        says.set(spotHere().map(at -> inWords(at, 1e-6)).orElse(cove.get() == null ? "" : texts.get("keys")));
    }

    /** Somebody points there, mm from the picture's left edge. */
    void point(double xMm) {
        if (cove.get() != null) {
            says.set(inWords(frame.positionM(xMm), reachM(xMm)));
        }
    }

    /** Somebody taps there: what lies there is looked at from now on. */
    void tap(double xMm) {
        if (cove.get() != null) {
            double at = frame.positionM(xMm);
            go(nearest(at, reachM(xMm)).map(Finding::positionM).orElse(at));
        }
    }

    private double reachM(double xMm) {
        return (frame.positionM(xMm + REACH_MM) - frame.positionM(xMm - REACH_MM)) / 2;
    }

    private String inWords(double atM, double reachM) {
        Stream<String> here = nearest(atM, reachM).map(finding -> Stream.of(words.inOneLine(finding)))
                .orElseGet(() -> Stream.of(new StretchWords(texts, words.lengths()).at(cove.get(), atM)));
        Stream<String> over = findings.stream().filter(Finding::spreads)
                .filter(finding -> finding.fromM() <= atM && atM <= finding.toM()).map(words::inOneLine);
        return Stream.concat(here, over).distinct().collect(Collectors.joining(" "));
    }

    /** The closing joint of a closed cove lies at both of its ends. */
    private Optional<Finding> nearest(double atM, double reachM) {
        double length = cove.get().cove().lengthM();
        boolean closed = cove.get().cove().closed();
        return findings.stream().min(Comparator.comparingDouble(finding -> away(finding, atM, closed ? length : Double.MAX_VALUE)))
                .filter(finding -> away(finding, atM, closed ? length : Double.MAX_VALUE) <= reachM);
    }

    private static double away(Finding finding, double atM, double aroundM) {
        double straight = Math.abs(finding.positionM() - atM);
        return Math.min(straight, Math.abs(aroundM - straight));
    }

    /** The next joint or fault along the cove, or the one before. */
    void step(boolean onwards) {
        double from = spotHere().orElse(onwards ? -1.0 : Double.MAX_VALUE);
        Stream<Double> places = findings.stream().map(Finding::positionM);
        (onwards ? places.filter(at -> at > from + 1e-6).min(Comparator.naturalOrder())
                : places.filter(at -> at < from - 1e-6).max(Comparator.naturalOrder())).ifPresent(this::go);
    }

    private void go(double positionM) {
        desk.spotProperty().set(new Spot(cove.get().cove().id(), positionM));
    }

    /** The next cove, or the one before; from the last on to the first. */
    void otherCove(boolean onwards) {
        List<CoveJudgement> coves = judgement.getValue() == null ? List.of() : judgement.getValue().coves();
        if (!coves.isEmpty()) {
            UnaryOperator<Integer> around = i -> Math.floorMod(i, coves.size());
            CoveJudgement there = coves.get(around.apply(coves.indexOf(cove.get()) + (onwards ? 1 : -1)));
            desk.spotProperty().set(new Spot(there.cove().id(), 0));
        }
    }
}

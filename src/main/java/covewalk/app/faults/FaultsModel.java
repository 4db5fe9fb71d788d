package covewalk.app.faults;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Spot;
import covewalk.app.open.OpenSurvey;
import covewalk.app.strip.Finding;
import covewalk.verdict.Judgement;
import covewalk.verdict.limit.Verdict;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;

/** Which findings are listed, in which order, and which one is looked at. It stays the same one while readings come in. */
final class FaultsModel {

    private static final double SAME_PLACE_M = 1e-6;

    private final Desk desk;
    private final ObservableValue<Judgement> judgement;
    private final ReadOnlyObjectWrapper<List<Finding>> shown = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Finding> chosen = new ReadOnlyObjectWrapper<>();
    private final ObjectProperty<Order> order = new SimpleObjectProperty<>(Order.WORST);
    private final Map<Verdict, BooleanProperty> listed = new EnumMap<>(Verdict.class);
    private List<Finding> all = List.of();

    FaultsModel(Desk desk) {
        this.desk = desk;
        for (Verdict verdict : Verdict.values()) {
            listed.put(verdict, new SimpleBooleanProperty(verdict == Verdict.BEYOND || verdict == Verdict.UNSETTLED));
            listed.get(verdict).addListener((property, before, now) -> list());
        }
        order.addListener((property, before, now) -> list());
        judgement = desk.surveyProperty().flatMap(OpenSurvey::judgementProperty);
        judgement.addListener((property, before, now) -> judged(now));
        desk.spotProperty().addListener((property, before, now) -> look(now));
        judged(judgement.getValue());
    }

    /** All verdicts; null before the first. */
    ObservableValue<Judgement> judgement() {
        return judgement;
    }

    /** What is listed, in its order. */
    ReadOnlyObjectProperty<List<Finding>> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** What is looked at; null where nothing is. */
    ReadOnlyObjectProperty<Finding> chosenProperty() {
        return chosen.getReadOnlyProperty();
    }

    ObjectProperty<Order> orderProperty() {
        return order;
    }

    /** Whether findings with this verdict are listed. */
    BooleanProperty listed(Verdict verdict) {
        return listed.get(verdict);
    }

    long count(Verdict verdict) {
        return all.stream().filter(finding -> finding.verdict() == verdict).count();
    }

    /** Whether there is nothing to act on, so that nothing but the rest could be listed. */
    boolean nothingToActOn() {
        return all.stream().allMatch(finding -> finding.fault().isEmpty());
    }

    /** @param finding one of those listed; all places look at it from now on */
    void choose(Finding finding) {
        if (finding != null) {
            chosen.set(finding);
            desk.spotProperty().set(new Spot(finding.cove().cove().id(), finding.positionM()));
        }
    }

    /** Somebody comes here: the worst is looked at where nothing is yet. */
    void arrive() {
        if (chosen.get() == null && desk.spotProperty().get() == null) {
            shown.get().stream().findFirst().ifPresent(this::choose);
        }
    }

    /** To where it can be read again. */
    void walkThere() {
        choose(chosen.get());
        desk.go(Place.WALK);
    }

    private void judged(Judgement now) {
        all = now == null ? List.of()
                : now.coves().stream().flatMap(cove -> Finding.in(cove, now.survey().limits()).stream()).toList();
        Finding before = chosen.get();
        chosen.set(before == null ? null : all.stream().filter(before::sameAs)
                .min(Comparator.comparingDouble(finding -> Math.abs(finding.positionM() - before.positionM()))).orElse(null));
        if (chosen.get() == null) {
            look(desk.spotProperty().get());
        }
        list();
    }

    private void look(Spot spot) {
        at(spot).filter(found -> chosen.get() == null || at(spot, chosen.get()) > SAME_PLACE_M).ifPresent(found -> {
            chosen.set(found);
            list();
        });
    }

    private Optional<Finding> at(Spot spot) {
        return spot == null ? Optional.empty() : all.stream().filter(finding -> at(spot, finding) <= SAME_PLACE_M)
                .min(Order.WORST.comparator());
    }

    private static double at(Spot spot, Finding finding) {
        return spot.cove().equals(finding.cove().cove().id()) ? Math.abs(spot.positionM() - finding.positionM()) : Double.MAX_VALUE;
    }

    /** What is looked at stays listed, whatever it has become. */
    private void list() {
        shown.set(all.stream().filter(finding -> listed.get(finding.verdict()).get() || finding == chosen.get())
                .sorted(order.get().comparator()).toList());
    }
}

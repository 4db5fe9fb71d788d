package covewalk.app.walk;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.text.Texts;
import covewalk.survey.Cove;
import covewalk.survey.SetUp;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.verdict.Judgement;
import covewalk.verdict.plan.CovePlan;
import covewalk.verdict.plan.Stop;
import covewalk.verdict.plan.WalkPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** What to do where there is no next station: describe a cove, read on to settle, go on to the next cove, see the faults. */
final class Ending {

    private final WalkModel model;
    private final Desk desk;
    private final Texts texts;
    private final ObservableList<Offer> offers = FXCollections.observableArrayList();
    private Optional<CovePlan> more = Optional.empty();

    Ending(WalkModel model, Desk desk, Texts texts) {
        this.model = model;
        this.desk = desk;
        this.texts = texts;
    }

    /** The first is what one mostly wants. */
    ObservableList<Offer> offers() {
        return offers;
    }

    void tell() {
        if (model.way().aim() != null) {
            offers.clear();
            more = Optional.empty();
        } else if (model.survey().survey().coves().isEmpty()) {
            model.says().noWhere(texts.get("end.no-coves"));
            offers.setAll(new Offer("walk-describe", texts.get("end.describe"), () -> desk.go(Place.SITE)));
        } else {
            tellOfCove(cove());
        }
    }

    private Cove cove() {
        Optional<Reading> last = model.way().walked().last(reading -> reading.role() == Role.WALK);
        return last.flatMap(reading -> model.survey().survey().cove(reading.cove())).orElse(model.survey().survey().coves().get(0));
    }

    private void tellOfCove(Cove cove) {
        int skipped = model.way().guide().skipped(cove);
        model.says().noWhere(texts.get("end.read", cove.id(), texts.count("end.stations", model.way().walked().stations(cove.id())))
                + (skipped == 0 ? "" : " " + texts.count("end.skipped", skipped)));
        List<Offer> next = new ArrayList<>();
        Optional<Cove> open = model.way().guide().nextOpenCove(cove.id());
        open.ifPresent(other -> next.add(new Offer("walk-next-cove", nextCove(other), () -> model.begin(other))));
        more.ifPresent(plan -> next.add(new Offer("walk-settle", texts.get("end.settle", plan.cove().id(), texts.count("end.readings", readings(plan))), () -> settle(plan))));
        next.add(new Offer("walk-faults", texts.get("end.faults"), () -> desk.go(Place.FAULTS)));
        offers.setAll(next);
    }

    private String nextCove(Cove other) {
        return other.datum().isBlank() ? texts.get("end.next", other.id()) : texts.get("end.next.from", other.id(), other.datum());
    }

    private static int readings(CovePlan plan) {
        return plan.stops().stream().filter(stop -> stop.kind() == Stop.Kind.WALK)
                .mapToInt(Stop::readings).sum();
    }

    private boolean isRead(Cove cove) {
        return model.way().guide().first(cove).isEmpty();
    }

    private void settle(CovePlan plan) {
        model.way().guide().readOn(plan);
        model.begin(plan.cove());
    }

    /** There are new verdicts: asks what is left to settle, in this cove first, then in others that were read. */
    void judged() {
        Judgement judged = model.survey().judgementProperty().get();
        if (judged == null || model.survey().survey().coves().isEmpty()) {
            return;
        }
        String here = cove().id();
        SetUp setUp = judged.survey().setUp(model.way().guide().setUp()).orElseGet(judged.survey()::firstSetUp);
        desk.workers().sums().execute(() -> {
            List<CovePlan> open = WalkPlan.of(judged, setUp).coves().stream().filter(plan -> readings(plan) > 0).toList();
            desk.workers().screen().execute(() -> {
                more = open.stream().filter(plan -> plan.cove().id().equals(here)).findFirst()
                        .or(() -> open.stream().filter(plan -> isRead(plan.cove())).findFirst());
                tell();
            });
        });
    }
}

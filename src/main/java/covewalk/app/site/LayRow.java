package covewalk.app.site;

import covewalk.app.forms.Description;
import covewalk.app.forms.Refusals;
import covewalk.app.forms.Writing;
import covewalk.app.text.Texts;
import covewalk.survey.Cove;
import covewalk.survey.Placement;
import covewalk.survey.Placement.KnownFrom;
import covewalk.survey.Problem;
import covewalk.survey.Reel;
import covewalk.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * Lays the reels of a pasted table end to end, from the datum on and in the table's order, in a cove where nothing lies yet.
 * Offered where every row says a length; what lies there is assumed until somebody has seen it.
 */
final class LayRow {

    private static final double MILLIMETRES = 1000;

    private final Description description;
    private final Supplier<Writing> writing;
    private final Texts texts;
    private final ObservableList<Cove> coves = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper("");
    private List<Reel> row = List.of();

    LayRow(Description description, Supplier<Writing> writing, Texts texts) {
        this.description = description;
        this.writing = writing;
        this.texts = texts;
        description.surveyProperty().addListener((property, before, now) -> follow());
    }

    /** Coves in which the reels may be laid; none where there is nothing to offer. */
    ObservableList<Cove> coves() {
        return coves;
    }

    /** How long the reels are together, then what was laid, or why not. */
    ReadOnlyStringProperty saysProperty() {
        return says.getReadOnlyProperty();
    }

    /** @param reels of a table, in its order; none takes an offer back */
    void offer(List<Reel> reels) {
        boolean measured = reels.stream().allMatch(reel -> reel.lengthM().isPresent());
        row = measured ? List.copyOf(reels) : List.of();
        says.set("");
        follow();
    }

    private void follow() {
        Survey survey = description.survey();
        Set<String> laid = survey == null ? Set.of() : survey.coves().stream().flatMap(cove -> cove.placements().stream())
                .map(Placement::reel).collect(Collectors.toSet());
        boolean free = survey != null && !row.isEmpty() && survey.reels().containsAll(row)
                && row.stream().noneMatch(reel -> laid.contains(reel.id()));
        if (!coves.isEmpty()) {
            says.set(""); // what was offered may not hold any more
        }
        coves.setAll(free ? survey.coves().stream().filter(cove -> cove.placements().isEmpty()).toList() : List.of());
        if (!coves.isEmpty()) {
            double together = row.stream().mapToDouble(reel -> reel.lengthM().orElseThrow()).sum();
            says.set(texts.get("row.offer", Integer.toString(row.size()), writing.get().length(together)));
        }
    }

    /** A cove as it is offered: its name and length. */
    String line(Cove cove) {
        return texts.get(cove.place().isBlank() ? "row.cove" : "row.cove.named", cove.id(), writing.get().length(cove.lengthM()), cove.place());
    }

    /** Lays them as far as there is room; the one at the cove's end may be cut off there. */
    void layIn(Cove cove) {
        List<Placement> placements = new ArrayList<>();
        double from = 0;
        for (Reel reel : row) {
            double to = Math.min(cove.lengthM(), Math.rint((from + reel.lengthM().orElseThrow()) * MILLIMETRES) / MILLIMETRES);
            if (to > from) {
                placements.add(new Placement(reel.id(), from, to, KnownFrom.ASSUMED, ""));
            }
            from = to;
        }
        String left = row.stream().skip(placements.size()).map(Reel::id).collect(Collectors.joining(", "));
        List<Problem> problems = description.change(survey -> survey.withCoves(survey.coves().stream()
                .map(one -> one.id().equals(cove.id()) ? one.withPlacements(placements) : one).toList()));
        says.set(!problems.isEmpty() ? new Refusals(texts).sentences(problems)
                : texts.get(left.isEmpty() ? "row.laid" : "row.laid.not-all", Integer.toString(placements.size()), cove.id(),
                        writing.get().length(from), left));
    }
}

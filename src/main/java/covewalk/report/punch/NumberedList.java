package covewalk.report.punch;

import covewalk.survey.Problem;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.punch.PunchChange;
import covewalk.survey.file.punch.PunchLog;
import covewalk.survey.file.punch.PunchOrder;
import covewalk.survey.file.punch.PunchStates;
import covewalk.verdict.Judgement;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The punch list of a survey with the numbers of its items, as the survey's log and the visit before have them.
 *
 * @param ofOldVisit what to know of the visit before
 */
public record NumberedList(PunchList list, List<Problem> ofOldVisit) {

    public NumberedList {
        Objects.requireNonNull(list, "list");
        ofOldVisit = List.copyOf(ofOldVisit);
    }

    /**
     * Looks up the numbers, and writes nothing.
     *
     * @param folder of the survey
     * @param correctDrift whether a drift of meter or light was taken off, which then holds for the visit before too
     * @return refused where the log of items is damaged: a number given then might be one that was given before
     */
    public static Outcome<NumberedList> of(Path folder, Judgement judgement, boolean correctDrift) throws IOException {
        List<Problem> toKnow = new ArrayList<>();
        Optional<EarlierVisit> before = EarlierVisit.of(folder, judgement.survey(), correctDrift, toKnow);
        return of(folder, judgement, before, toKnow);
    }

    /**
     * The same where the visit before was judged already.
     *
     * @param toKnow of that visit
     */
    public static Outcome<NumberedList> of(Path folder, Judgement judgement, Optional<EarlierVisit> before, List<Problem> toKnow)
            throws IOException {
        Outcome<PunchStates> recorded = PunchLog.read(folder);
        return new Outcome<>(recorded.value().map(states -> new NumberedList(PunchList.of(judgement, states, before), toKnow)),
                recorded.problems());
    }

    /**
     * Fixes the numbers in the survey's log, and records what is new of items behind them.
     *
     * @param changes may be none
     * @return the list with its numbers fixed, and what to know of the log; refused where the log is damaged, or where a day that
     *     is to be recorded cannot follow another
     * @throws covewalk.survey.file.disk.NotKept where nothing could be kept
     */
    public Outcome<NumberedList> recorded(FolderLock lock, List<PunchChange> changes) throws IOException {
        Outcome<PunchLog> opened = PunchLog.open(lock);
        if (opened.refused()) {
            return new Outcome<>(Optional.empty(), opened.problems());
        }
        try (PunchLog log = opened.value().orElseThrow()) {
            List<Problem> wrong = PunchOrder.problems(log.states().after(list.registrations()), changes);
            if (!wrong.isEmpty()) {
                return new Outcome<>(Optional.empty(), Stream.concat(opened.problems().stream(), wrong.stream()).toList());
            }
            PunchStates now = log.append(Stream.concat(list.registrations().stream(), changes.stream()).toList());
            return new Outcome<>(Optional.of(new NumberedList(list.registered(now), ofOldVisit)), opened.problems());
        }
    }

    /** What to know of the visit before and of numbers that hold for this time only. */
    public List<Problem> toKnow() {
        return Stream.concat(ofOldVisit.stream(), list.notFixed().stream()).toList();
    }
}

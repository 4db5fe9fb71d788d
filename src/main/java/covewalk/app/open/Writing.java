package covewalk.app.open;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Survey;
import java.util.List;
import java.util.Optional;

/**
 * One write: what is to be put on disk, as it was held when the write was asked for.
 *
 * @param readings that are not on disk yet
 * @param described the survey as it is described here
 * @param known the description that was on disk when this program looked last; the same where nothing was changed here
 */
record Writing(List<Reading> readings, Survey described, Survey known) {

    /**
     * What came of it.
     *
     * @param kept the readings that are on disk now
     * @param theirs a description that another program saved meanwhile; then ours was not saved. Else empty
     * @param fits whether all the readings can stand in it
     * @param opened what the user should know although the folder could be opened
     */
    record Done(Writing writing, Kept kept, Optional<Survey> theirs, boolean fits, List<Problem> opened) {
    }

    /** The description comes first: a reading may lie in a cove that is new. Readings do not wait for a choice between two descriptions. */
    Done to(FolderOnDisk disk) throws NotWritten {
        List<Problem> opened = disk.open();
        boolean unread = disk.isUnread();
        boolean changed = described != known;
        Optional<Survey> theirs = changed || unread ? disk.otherThan(known, described) : Optional.empty();
        if (changed && theirs.isEmpty()) {
            if (unread) {
                disk.requireFit(readings, described);
            }
            disk.save(described);
        }
        boolean fits = theirs.isEmpty() || disk.refusals(readings, theirs.get()).isEmpty();
        boolean append = fits && (unread || !readings.isEmpty());
        Kept kept = append ? disk.append(readings) : Kept.NOTHING;
        if (theirs.isEmpty()) {
            disk.known();
        }
        return new Done(this, kept, theirs, fits, opened);
    }
}

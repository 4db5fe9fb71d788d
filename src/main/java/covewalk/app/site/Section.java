package covewalk.app.site;

/**
 * What is described at a time.
 *
 * @param cove the cove's place in the survey, from 0; -1 where it is no cove
 */
record Section(Topic topic, int cove) {

    enum Topic { VISIT, METER, LIMITS, REELS, COVE }

    static Section of(Topic topic) {
        return new Section(topic, -1);
    }

    static Section cove(int index) {
        return new Section(Topic.COVE, index);
    }
}

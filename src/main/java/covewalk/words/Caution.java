package covewalk.words;

import java.util.Locale;

/** A general reminder where the work can hurt someone; its sentence and source stand in the bundle. */
public enum Caution {
    ACCESS(Group.HEIGHT), TIME(Group.HEIGHT), ANGLE(Group.HEIGHT), LANDING(Group.HEIGHT), TOP_STEP(Group.HEIGHT),
    CONDITION(Group.HEIGHT), HOLD_ON(Group.HEIGHT), REACH(Group.HEIGHT), LOAD(Group.HEIGHT), BELOW(Group.HEIGHT),
    ALONE(Group.HEIGHT),
    TWO_SIDES(Group.ELECTRICAL), ISOLATION(Group.ELECTRICAL), OFF_IS_NOT(Group.ELECTRICAL), RAILS(Group.ELECTRICAL),
    HEAT(Group.LIGHT), EYES(Group.LIGHT), DARK(Group.LIGHT);

    private final Group group;

    Caution(Group group) {
        this.group = group;
    }

    public Group group() {
        return group;
    }

    /** The word in the bundle of sentences. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Where the danger lies. */
    public enum Group {
        HEIGHT, ELECTRICAL, LIGHT;

        /** The word in the bundle of sentences. */
        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}

package covewalk.survey.file.disk;

/** The names of the files in a survey's folder. */
public final class FileNames {

    /** The description. */
    public static final String DESCRIPTION = "survey.json";
    /** The reading log. */
    public static final String LOG = "readings.csv";
    /** Rows that could not be read. */
    public static final String SET_ASIDE = "set-aside.csv";
    /** The log of what was put right. */
    public static final String PUNCH = "punch.csv";
    /** The folder of imported files, and of descriptions that another took the place of. */
    public static final String ORIGINALS = "originals";
    /** The folder of pictures. */
    public static final String PHOTOS = "photos";
    /** The seals of the reports issued. */
    public static final String SEAL = "seal.json";
    /** What the one program that writes holds locked. */
    public static final String LOCK = "lock";
    /** Who holds it, in words. */
    public static final String LOCK_HOLDER = "lock-holder";

    private FileNames() {
    }
}

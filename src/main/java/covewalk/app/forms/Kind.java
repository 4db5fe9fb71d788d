package covewalk.app.forms;

import java.util.List;
import java.util.Map;

/** How one kind of thing in a survey is typed. */
public interface Kind<T> {

    /** What is asked for, in the order of the form. */
    List<Ask> asks();

    /** What stands in the lines, by their names; a line that is not named is empty. */
    Map<String, String> texts(T thing, Writing writing);

    /** The thing with one answer changed. */
    T read(Answers answers, T before);
}

package covewalk.survey;

/** Where the survey was made; both texts may be empty. */
public record Site(String name, String address) {
}

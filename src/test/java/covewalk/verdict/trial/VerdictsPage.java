package covewalk.verdict.trial;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;

/**
 * Renews the tables and pictures of docs/verdicts.md from new trials; its words stay as they are. DEVELOPERS.md has the
 * command. Arguments: the folder of the page and, optionally, the number of trials a row.
 */
public final class VerdictsPage {

    private static final int TRIALS = 2000;
    private static final int ANGLE_EVERY = 15;

    private final int trials;

    private VerdictsPage(int trials) {
        this.trials = trials;
    }

    public static void main(String[] args) throws IOException {
        Path docs = Path.of(args[0]);
        VerdictsPage page = new VerdictsPage(args.length > 1 ? Integer.parseInt(args[1]) : TRIALS);
        Path file = docs.resolve("verdicts.md");
        Files.writeString(file, page.renewed(Files.readString(file)));
        Files.createDirectories(docs.resolve("verdicts"));
        Files.writeString(docs.resolve("verdicts/power.svg"), page.power());
        Files.writeString(docs.resolve("verdicts/angle.svg"), page.angle());
        Files.writeString(docs.resolve("verdicts/changes.svg"), page.changes());
    }

    /** Each table stands between a line that names it and a line that ends it. */
    private String renewed(String page) {
        String text = page;
        for (Map.Entry<String, Supplier<String>> table : tables().entrySet()) {
            String start = "<!-- table " + table.getKey() + " -->\n";
            int from = text.indexOf(start) + start.length();
            int to = text.indexOf("<!-- end -->", from);
            text = text.substring(0, from) + table.getValue().get() + text.substring(to);
        }
        return text;
    }

    private Map<String, Supplier<String>> tables() {
        VerdictTables made = new VerdictTables(trials);
        Map<String, Supplier<String>> tables = new LinkedHashMap<>();
        tables.put("limit", () -> made.joints(JointTrials.atTheLimit()));
        tables.put("not-kept", () -> made.joints(JointTrials.notKeptYet()));
        tables.put("last-station", made::lastStation);
        tables.put("targets", made::targets);
        tables.put("rounds", made::rounds);
        tables.put("survey", made::survey);
        tables.put("power", made::power);
        tables.put("settling", made::settling);
        tables.put("false-changes", made::falseChanges);
        tables.put("changes", made::changes);
        tables.put("courses", made::courses);
        return tables;
    }

    private String power() {
        List<PowerTrials.Point> points = PowerTrials.curve(0.5, 0.2, trials);
        double[] truths = of(points, PowerTrials.Point::truth);
        return new Chart("Limit 2 steps, noise of the difference 0.5: joints called rightly", "true difference, steps", 4, 1)
                .line("best possible", truths, of(points, PowerTrials.Point::best))
                .line("here", truths, of(points, PowerTrials.Point::found)).svg();
    }

    private String angle() {
        int count = 90 / ANGLE_EVERY + 1;
        double[] degrees = new double[count];
        double[] beyond = new double[count];
        double[] within = new double[count];
        for (int i = 0; i < count; i++) {
            degrees[i] = ANGLE_EVERY * i;
            Shares shares = JointTrials.longerAlongU(ANGLE_EVERY * i).shares(trials);
            beyond[i] = shares.beyondShare();
            within[i] = shares.withinShare();
        }
        return new Chart("Joints at the limit, scatter three times longer along u': called anything",
                "angle between the difference and u', degrees", 90, 0.05)
                .line("called beyond", degrees, beyond).line("called within", degrees, within).svg();
    }

    private String changes() {
        double[] steps = new double[10];
        double[] found = new double[steps.length];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = 0.5 * (i + 1);
            found[i] = ReelTrials.change(steps[i], trials / 4).found();
        }
        return new Chart("One change in a reel of 10 m, 20 stations, scatter 0.4 step", "the change, steps", 5, 1)
                .line("found", steps, found).svg();
    }

    private static double[] of(List<PowerTrials.Point> points, ToDoubleFunction<PowerTrials.Point> part) {
        return points.stream().mapToDouble(part).toArray();
    }
}

package covewalk.app.forms;

import covewalk.survey.Reel;
import covewalk.survey.label.Scanned;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntSupplier;

/** A reel and its label; bin, lot and serial are kept as printed. */
public final class ReelKind implements Kind<Reel> {

    private static final Bounds LENGTH = Bounds.above(0, 100_000);
    private static final Bounds STEPS = Bounds.above(0, 100);
    private static final int LEAST_K = 1000;
    private static final int MOST_K = 20_000;

    private final IntSupplier year;

    /** @param year this one: dates on labels have two digits of theirs */
    public ReelKind(IntSupplier year) {
        this.year = year;
    }

    @Override
    public List<Ask> asks() {
        return List.of("id", "maker", "product", "nominalCct", "bin", "lot", "serial", "made", "gtin", "invoice", "lengthM",
                "claimedSteps", "claimedCentre").stream().map(Ask::typed).toList();
    }

    @Override
    public Map<String, String> texts(Reel reel, Writing writing) {
        Map<String, String> texts = new HashMap<>(Map.of("id", reel.id(), "maker", reel.maker(), "product", reel.product(),
                "nominalCct", writing.number(reel.nominalCct()), "bin", reel.bin(), "lot", reel.lot(), "serial", reel.serial(),
                "made", reel.made(), "gtin", reel.gtin(), "invoice", reel.invoice()));
        texts.put("lengthM", writing.length(reel.lengthM()));
        texts.put("claimedSteps", writing.number(reel.claimedSteps()));
        texts.put("claimedCentre", writing.colour(reel.claimedCentre()));
        return texts;
    }

    /** A label scanned into any of the lines fills in all that it says. */
    @Override
    public Reel read(Answers answers, Reel before) {
        return Scanned.of(answers.text()).code().map(label -> label.on(before, year.getAsInt())).orElseGet(() -> typed(answers, before));
    }

    private static Reel typed(Answers answers, Reel before) {
        return new Reel(answers.needed("id", before.id()), answers.text("maker", before.maker()),
                answers.text("product", before.product()), answers.text("gtin", before.gtin()),
                answers.whole("nominalCct", before.nominalCct(), LEAST_K, MOST_K), answers.text("bin", before.bin()),
                answers.text("lot", before.lot()), answers.text("serial", before.serial()), answers.text("made", before.made()),
                answers.text("invoice", before.invoice()), answers.length("lengthM", before.lengthM(), LENGTH),
                answers.number("claimedSteps", before.claimedSteps(), STEPS),
                answers.colour("claimedCentre", before.claimedCentre()));
    }
}

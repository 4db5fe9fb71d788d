package covewalk.survey.label;

import covewalk.survey.Reel;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What the code on a label says.
 *
 * @param elements in the order of the code, at least one
 */
public record LabelCode(List<Element> elements) {

    private static final String GTIN = "01";
    private static final String LOT = "10";
    private static final String MADE = "11";
    private static final String SERIAL = "21";
    /** The maker's own number beside the GTIN, and the customer's. */
    private static final List<String> PRODUCT = List.of("240", "241");
    /** Net length in m; the last digit says how many decimals. */
    private static final String LENGTH = "311";
    /** A lot of twelve and more characters with what could be the next identifier in it (common practice, no source). */
    private static final Pattern RUN_TOGETHER = Pattern.compile(".{3,}(21|240|241|11\\d{6}).{2,}");
    private static final int LONG = 12;

    public LabelCode {
        elements = List.copyOf(elements);
    }

    /** The data of the first element with this identifier. */
    public Optional<String> text(String ai) {
        return elements.stream().filter(element -> element.ai().equals(ai)).map(Element::data).findFirst();
    }

    /** In 14 digits. */
    public Optional<String> gtin() {
        return text(GTIN);
    }

    public Optional<String> lot() {
        return text(LOT);
    }

    public Optional<String> serial() {
        return text(SERIAL);
    }

    /** The date made as a survey keeps it, such as {@code 2026-07-15} or, without a day, {@code 2026-07}. */
    public Optional<String> made(int thisYear) {
        return text(MADE).flatMap(digits -> CodeDate.of(digits, thisYear)).map(CodeDate::text);
    }

    /** The maker's or the customer's own number of the product. */
    public Optional<String> product() {
        return PRODUCT.stream().flatMap(ai -> text(ai).stream()).findFirst();
    }

    /** Net length, m. */
    public OptionalDouble lengthM() {
        return elements.stream().filter(element -> element.ai().startsWith(LENGTH))
                .mapToDouble(element -> Long.parseLong(element.data()) / Math.pow(10, element.ai().charAt(3) - '0'))
                .filter(m -> m > 0).findFirst();
    }

    /** The reel with what the code says; what it does not say stays. */
    public Reel on(Reel reel, int thisYear) {
        return new Reel(reel.id(), reel.maker(), product().orElse(reel.product()), gtin().orElse(reel.gtin()), reel.nominalCct(),
                reel.bin(), lot().orElse(reel.lot()), serial().orElse(reel.serial()), made(thisYear).orElse(reel.made()),
                reel.invoice(), lengthM().isPresent() ? lengthM() : reel.lengthM(), reel.claimedSteps(), reel.claimedCentre());
    }

    /** What is odd about it. */
    public Set<Doubt> doubts(int thisYear) {
        Set<Doubt> doubts = EnumSet.noneOf(Doubt.class);
        add(doubts, Doubt.CHECK_DIGIT, gtin().filter(gtin -> !Gtin.checks(gtin)).isPresent());
        add(doubts, Doubt.NO_GTIN, gtin().isEmpty() && (lot().isPresent() || serial().isPresent()));
        add(doubts, Doubt.DATE, text(MADE).isPresent() && made(thisYear).isEmpty());
        add(doubts, Doubt.TWICE, elements.stream().anyMatch(element -> !text(element.ai()).orElseThrow().equals(element.data())));
        add(doubts, Doubt.RUN_TOGETHER, elements.get(elements.size() - 1).ai().equals(LOT)
                && lot().filter(lot -> lot.length() >= LONG && RUN_TOGETHER.matcher(lot).matches()).isPresent());
        return doubts;
    }

    private static void add(Set<Doubt> doubts, Doubt doubt, boolean holds) {
        if (holds) {
            doubts.add(doubt);
        }
    }
}

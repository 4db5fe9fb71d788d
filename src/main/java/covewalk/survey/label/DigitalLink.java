package covewalk.survey.label;

import java.net.URI;
import java.net.URISyntaxException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The same elements as the path of a web address: {@code https://id.example/01/GTIN/10/LOT/21/SERIAL?11=DATE} (GS1 Digital
 * Link). It is read and never opened. The short form, which packs the elements together, is not read.
 */
final class DigitalLink {

    /** Words that earlier editions allowed in place of the digits (from memory). */
    private static final Map<String, String> WORDS = Map.of("gtin", "01", "cpv", "22", "lot", "10", "ser", "21");
    private static final String GTIN = "01";

    private DigitalLink() {
    }

    static Optional<LabelCode> read(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        if (!lower.startsWith("https://") && !lower.startsWith("http://")) {
            return Optional.empty();
        }
        try {
            URI uri = new URI(text);
            return uri.getRawPath() == null ? Optional.empty() : read(uri.getRawPath().split("/"), uri.getRawQuery());
        } catch (URISyntaxException | IllegalArgumentException noAddress) {
            return Optional.empty();
        }
    }

    private static Optional<LabelCode> read(String[] path, String query) {
        List<Element> elements = new ArrayList<>();
        int at = 0;
        while (at < path.length && !identifier(path[at]).equals(GTIN)) {
            at++;
        }
        for (; at + 1 < path.length; at += 2) {
            if (!add(elements, path[at], path[at + 1])) {
                return Optional.empty();
            }
        }
        if (elements.isEmpty()) {
            return Optional.empty();
        }
        queried(elements, query);
        return Optional.of(new LabelCode(elements));
    }

    /** What follows the question mark may also be anything else. */
    private static void queried(List<Element> elements, String query) {
        for (String pair : query == null ? new String[0] : query.split("[&;]")) {
            int equals = pair.indexOf('=');
            if (equals > 0) {
                add(elements, pair.substring(0, equals), pair.substring(equals + 1));
            }
        }
    }

    private static boolean add(List<Element> elements, String key, String value) {
        String ai = identifier(key);
        String plain = URLDecoder.decode(value.replace("+", "%2B"), StandardCharsets.UTF_8);
        String data = ai.equals(GTIN) ? Gtin.of(plain).orElse(plain) : plain;
        Optional<Identifier> identifier = Identifier.at(ai).filter(known -> known.ai().equals(ai) && known.takes(data));
        identifier.ifPresent(known -> elements.add(new Element(ai, data)));
        return identifier.isPresent();
    }

    private static String identifier(String key) {
        return WORDS.getOrDefault(key.toLowerCase(Locale.ROOT), key);
    }
}

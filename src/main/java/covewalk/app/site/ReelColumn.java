package covewalk.app.site;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a column of a pasted table says of a reel, and how people call it (common practice, no source). */
enum ReelColumn {
    ID("id", "reel", "reel id", "reel no", "rolle", "rollen-nr", "rollennr", "name"),
    MAKER("maker", "manufacturer", "brand", "hersteller", "marke"),
    PRODUCT("product", "product code", "type", "article", "item", "sku", "produkt", "artikel", "artikelnummer", "typ"),
    NOMINAL_CCT("nominalCct", "nominal cct", "cct", "colour temperature", "color temperature", "nenn-cct", "farbtemperatur", "lichtfarbe"),
    BIN("bin", "colour bin", "color bin", "bin code", "klasse", "farbklasse"),
    LOT("lot", "lot no", "batch", "batch no", "lot number", "charge", "chargennummer", "los"),
    SERIAL("serial", "serial no", "serial number", "s/n", "sn", "seriennummer", "seriennr"),
    MADE("made", "date made", "production date", "manufactured", "date code", "hergestellt", "herstelldatum", "produktionsdatum"),
    GTIN("gtin", "ean", "upc", "barcode"),
    INVOICE("invoice", "invoice no", "delivery note", "rechnung", "lieferschein"),
    LENGTH("lengthM", "length", "length m", "m", "länge", "länge m"),
    CLAIMED_STEPS("claimedSteps", "steps", "sdcm", "claimed steps", "macadam", "schritte"),
    /** What a scanner read off the label. */
    CODE("code", "scan", "label", "gs1", "qr", "data matrix", "datamatrix", "etikett"),
    NOTHING("nothing");

    private final String field;
    private final List<String> names;

    ReelColumn(String field, String... names) {
        this.field = field;
        this.names = List.of(names);
    }

    /** The field in a survey file, and the word in texts. */
    String field() {
        return field;
    }

    /** What a column of this title holds; empty where the title says nothing known. Units in brackets do not matter. */
    static Optional<ReelColumn> of(String title) {
        String plain = title.toLowerCase(Locale.ROOT).replaceAll("[(\\[].*", "").replaceAll("[._:#\\s]+", " ").strip();
        return plain.isEmpty() ? Optional.empty() : Arrays.stream(values()).filter(column -> column != NOTHING)
                .filter(column -> column.field.toLowerCase(Locale.ROOT).equals(plain) || column.names.contains(plain)).findFirst();
    }
}

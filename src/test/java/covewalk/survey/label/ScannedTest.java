package covewalk.survey.label;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** GTINs are those of the GS1 examples (prefix 950 is GS1's own, for examples); codes are made up around them. */
class ScannedTest {

    private static List<String> read(String typed) {
        return Scanned.of(typed.replace('~', '\u001d')).code().map(code -> code.elements().stream()
                .map(element -> element.ai() + "=" + element.data()).toList()).orElse(List.of());
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(delimiter = '|', textBlock = """
        ]C1010950110153000362ABC                 |                                      | 62 begins no identifier
        ]C101095011015300031726123110AB-1~21S77  | 01=09501101530003 17=261231 10=AB-1 21=S77 | GS1-128, a separator behind the lot
        ]d2~010950110153000321S77~10AB-1         | 01=09501101530003 21=S77 10=AB-1     | DataMatrix, FNC1 sent at the beginning too
        ]Q3010950110153000310AB-1~               | 01=09501101530003 10=AB-1            | QR, a separator too many at the end
        010950110153000321S77                    | 01=09501101530003 21=S77             | no prefix: led by a GTIN that checks
        (01)09501101530003(10)AB-1(21)S77        | 01=09501101530003 10=AB-1 21=S77     | as printed below the bars
        (01) 09501101530003 (21) S77             | 01=09501101530003 21=S77             | with the spaces that people type
        (01)09501101530003(10)A(B)C              | 01=09501101530003 10=A(B)C           | brackets are characters of a lot
        ]d20109501101530003310000500010AB        | 01=09501101530003 3100=005000 10=AB  | a measure in the middle ends by itself
        ]d20109501101530003240LINEA-24~21S77     | 01=09501101530003 240=LINEA-24 21=S77 | an identifier of three digits
        ]d201095011015300038200https://x.example~21S7 | 01=09501101530003 8200=https://x.example 21=S7 | one of four, with an address
        ]E09501101530003                         | 01=09501101530003                    | EAN-13 says a GTIN and nothing else
        """)
    void elementStringsAreRead(String typed, String elements, String why) {
        assertEquals(elements == null ? List.of() : List.of(elements.split(" ")), read(typed), why);
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(delimiter = '|', textBlock = """
        https://id.gs1.org/01/09501101530003/10/AB-1/21/S77        | 01=09501101530003 10=AB-1 21=S77 | GS1's own resolver
        https://brand.example/p/01/9501101530003/21/S77            | 01=09501101530003 21=S77         | a path before it, 13 digits
        HTTPS://BRAND.EXAMPLE/01/09501101530003                    | 01=09501101530003                | capitals, as QR codes like them
        https://brand.example/01/09501101530003/10/A%2FB?11=260715&linkType=x | 01=09501101530003 10=A/B 11=260715 | a slash in the lot, a date behind
        https://brand.example/gtin/09501101530003/lot/AB/ser/S7    | 01=09501101530003 10=AB 21=S7    | words of earlier editions
        ]Q1https://id.gs1.org/01/09501101530003                    | 01=09501101530003                | a QR code with no mark of GS1
        """)
    void digitalLinksAreRead(String typed, String elements, String why) {
        assertEquals(List.of(elements.split(" ")), read(typed), why);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "R7", "2623-W-0117", "10", "21S77", "0109501101530004", "01095011015300", "(01)", "(01)123(21)S77",
            "(9999999)x", "()", "(((((", "]", "]C1", "]C1xyz", "]d2019501101530003\u00e4", "https://", "https://x", "https:///01", "http://[::1",
            "https://x/01/%ZZ", "https://x/01/abc", "https://x/10/AB/21/S7", "=HYPERLINK(\"x\")", "01095011015300031\u0000", "\u001d\u001d\u001d",
            "01095011015300032\u0661", "mailto:x", "urn:epc:id:sgtin:9501101.053000.1"})
    void anythingElseStaysText(String typed) {
        assertEquals(Optional.empty(), Scanned.of(typed).code(), typed);
    }

    @Test
    void aTextComesWithoutPrefixAndSeparators() {
        assertEquals("2623-W-0117", Scanned.of("]d12623-W-0117\u001d").text());
    }

    @Test
    void theSignThatATextFieldShowsIsASeparatorToo() {
        assertEquals(List.of("01=09501101530003", "10=AB", "21=S7"), read("010950110153000310AB\u241d21S7"));
        assertEquals(List.of("01=09501101530003", "10=AB", "21=S7"), read("010950110153000310AB<GS>21S7"));
    }

    @Test
    void whatIsEndlessIsTextAndReadAtOnce() {
        assertEquals(Optional.empty(), Scanned.of("]C1" + "(01)".repeat(500_000)).code());
        assertEquals(Optional.empty(), Scanned.of("https://x/" + "01/".repeat(500_000)).code());
    }
}

package covewalk.app.walk;

import covewalk.app.text.Texts;
import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.UvPrime;
import covewalk.survey.Reading;
import covewalk.survey.Typed;

/** The colour numbers of a reading in one line, small: u', v', CCT, Duv, lux, round and repeat. */
final class ReadingNumbers {

    private final Texts texts;

    ReadingNumbers(Texts texts) {
        this.texts = texts;
    }

    /** @param repeat the how-manieth reading of its station it is */
    String of(Reading reading, int repeat) {
        UvPrime colour = reading.colour().orElseThrow().toUvPrime();
        StringBuilder line = new StringBuilder(texts.get("numbers.uv", four(colour.u()), four(colour.v())));
        if (ColourTemperature.of(colour) instanceof CctDuv white) {
            line.append(texts.get("numbers.cct", texts.numbers().fixed(white.cctK(), 0), signed(white.duv())));
        }
        reading.lux().map(Typed::value).ifPresent(lux -> line.append(texts.get("numbers.lux", texts.numbers().plain(lux, 1))));
        return line.append(texts.get("numbers.round", Integer.toString(reading.round()), Integer.toString(repeat))).toString();
    }

    private String four(double value) {
        return texts.numbers().fixed(value, 4);
    }

    private String signed(double duv) {
        String digits = four(duv);
        boolean plus = duv > 0 && digits.chars().anyMatch(c -> c >= '1' && c <= '9');
        return plus ? "+" + digits : digits;
    }
}

package covewalk.app.strip;

import covewalk.app.text.LengthWords;
import covewalk.app.text.Texts;
import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.survey.Placement;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.stretch.Stretch;
import covewalk.words.Numbers;
import covewalk.words.Words;
import java.util.Optional;
import java.util.stream.Collectors;

/** What lies at a place where there is no joint: the reel, and the stretch that was found there. */
final class StretchWords {

    private final Texts texts;
    private final Words words;
    private final Numbers numbers;
    private final LengthWords lengths;

    StretchWords(Texts texts, LengthWords lengths) {
        this.texts = texts;
        this.words = texts.words();
        this.numbers = texts.numbers();
        this.lengths = lengths;
    }

    String at(CoveJudgement cove, double positionM) {
        String read = cove.stretches().stream().filter(stretch -> stretch.fromM() <= positionM && positionM <= stretch.toM())
                .map(this::stretch).collect(Collectors.joining(" "));
        return read.isEmpty() ? notRead(cove.cove().placementAt(positionM), positionM) : read;
    }

    private String stretch(Stretch stretch) {
        String temperature = ColourTemperature.of(stretch.line().centre()) instanceof CctDuv white
                ? words.text("explain.temperature", numbers.fixed(white.cctK(), 0), numbers.fixed(white.duv(), 4)) : "";
        return words.text(stretch.line().drifts() ? "explain.side.drift" : "explain.side.level", stretch.placement().reel(),
                lengths.of(stretch.fromM()), lengths.of(stretch.toM()), numbers.fixed(stretch.stations().size(), 0),
                numbers.fixed(stretch.readings(), 0), numbers.fixed(stretch.line().centre().u(), 4),
                numbers.fixed(stretch.line().centre().v(), 4), temperature);
    }

    private String notRead(Optional<Placement> placement, double positionM) {
        return placement.map(there -> texts.get("stretch.not-read", there.reel(), lengths.of(there.fromM()), lengths.of(there.toM())))
                .orElseGet(() -> texts.get("stretch.no-reel", lengths.of(positionM)));
    }
}

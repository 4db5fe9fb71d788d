package covewalk.survey.file.meter;

import covewalk.survey.Typed;
import java.math.BigDecimal;
import java.util.List;

/** Where the rows of a file were taken, in their order, for a file that does not say so itself. */
public sealed interface Stations {

    /** Nobody said. */
    record Unsaid() implements Stations {
    }

    /**
     * At even distances; a row that is set aside keeps its place in the count.
     *
     * @param startM the first row's position, m
     * @param everyM from one row to the next, m; negative when walking back to the datum
     */
    record Evenly(Typed startM, Typed everyM) implements Stations {

        /** The position of a row counted from 0: sums of the digits typed, so that 0.1 thrice is 0.3. */
        Typed at(int row) {
            BigDecimal at = new BigDecimal(startM.text()).add(new BigDecimal(everyM.text()).multiply(BigDecimal.valueOf(row)));
            return new Typed(at.toPlainString(), at.doubleValue());
        }
    }

    /**
     * One by one, a position for each row.
     *
     * @param file the name of the file that lists them, for what is said about it
     * @param positionsM in metres
     */
    record Listed(String file, List<Typed> positionsM) implements Stations {

        public Listed {
            positionsM = List.copyOf(positionsM);
        }
    }
}

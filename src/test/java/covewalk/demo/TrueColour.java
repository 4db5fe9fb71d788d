package covewalk.demo;

import java.util.List;

/** The true colour of a part of a reel, along its length (a row of {@code colours.csv}). */
record TrueColour(String cove, String reel, double fromM, double toM, Offset start, Offset perM, double lux,
                  double luxPerM) {

    static List<TrueColour> all() {
        return Table.read("colours.csv", TrueColour::of);
    }

    private static TrueColour of(Table.Row row) {
        return new TrueColour(row.text("cove"), row.text("reel"), row.number("from_m"), row.number("to_m"),
                new Offset(row.number("along"), row.number("across")),
                new Offset(row.number("along_per_m"), row.number("across_per_m")), row.number("lux"), row.number("lux_per_m"));
    }

    boolean lights(String otherCove, double positionM) {
        return cove.equals(otherCove) && positionM > fromM && positionM < toM;
    }

    Offset at(double positionM) {
        return start.plus(perM.times(positionM - fromM));
    }

    double luxAt(double positionM) {
        return lux + luxPerM * (positionM - fromM);
    }
}

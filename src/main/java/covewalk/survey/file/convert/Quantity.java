package covewalk.survey.file.convert;

import covewalk.survey.file.meter.MeterField;

/** What every row of a converted table has, in the order in which missing columns are appended. */
enum Quantity {
    X(MeterField.X),
    Y(MeterField.Y),
    U_PRIME(MeterField.U_PRIME),
    V_PRIME(MeterField.V_PRIME),
    CCT_K(MeterField.CCT_K),
    DUV(MeterField.DUV);

    /** Which two make a colour, those that count first. */
    static final Quantity[][] PAIRS = {{X, Y}, {U_PRIME, V_PRIME}, {CCT_K, DUV}};

    private final MeterField field;

    Quantity(MeterField field) {
        this.field = field;
    }

    MeterField field() {
        return field;
    }

    /** The title of its column where one is appended. */
    String title() {
        return field.code();
    }
}

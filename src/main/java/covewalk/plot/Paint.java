package covewalk.plot;

/** What a shape is filled or drawn with. */
public sealed interface Paint {

    /** A paint by its role; page and screen choose the shade, so that a dark screen can turn it round. */
    enum Ink implements Paint {
        /** The strongest: what is beyond, and text. */
        STRONG,
        /** The rest. */
        WEAK,
        /** Grounds and outlines that nobody has to see first. */
        FAINT,
        /** The one hue. */
        ACCENT,
        /** None. */
        NONE
    }

    /** A colour of light as a screen shows it: sRGB, each 0 to 255. */
    record Rgb(int red, int green, int blue) implements Paint {
        public Rgb {
            if (((red | green | blue) & ~0xFF) != 0) {
                throw new IllegalArgumentException("sRGB " + red + ", " + green + ", " + blue + ": each lies in 0 to 255");
            }
        }
    }
}

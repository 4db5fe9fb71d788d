package covewalk.report.page;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;

/** Leaves out what HTML and XML do not allow, and what would turn the reading direction of the sentences around it. */
final class LegibleWriter extends FilterWriter {

    private char high;

    LegibleWriter(Writer out) {
        super(out);
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
        int plain = from;
        while (plain < from + length && high == 0 && !Character.isSurrogate(text.charAt(plain)) && isLegible(text.charAt(plain))) {
            plain++;
        }
        out.write(text, from, plain - from);
        for (int i = plain; i < from + length; i++) {
            write(text.charAt(i));
        }
    }

    @Override
    public void write(char[] text, int from, int length) throws IOException {
        write(new String(text, from, length), 0, length);
    }

    @Override
    public void write(int unit) throws IOException {
        char c = (char) unit;
        if (Character.isHighSurrogate(c)) {
            high = c;
        } else if (Character.isLowSurrogate(c)) {
            if (high != 0 && (Character.toCodePoint(high, c) & 0xFFFE) != 0xFFFE) {
                out.write(new char[] {high, c});
            }
            high = 0;
        } else {
            high = 0;
            if (isLegible(c)) {
                out.write(c);
            }
        }
    }

    private static boolean isLegible(char c) {
        boolean control = c < ' ' && c != '\n' && c != '\t' || c >= 0x7F && c < 0xA0;
        boolean turns = c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069 || c == 0x200E || c == 0x200F || c == 0x061C;
        return !control && !turns && (c & 0xFFFE) != 0xFFFE;
    }
}

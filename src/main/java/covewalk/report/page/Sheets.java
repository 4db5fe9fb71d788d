package covewalk.report.page;

import java.util.ArrayList;
import java.util.List;

/**
 * A run of a report's pages: all of it for a browser and for a usual PDF, a part of it for a long PDF.
 *
 * @param begins whether the first page, the cautions and the head of the items are in it
 * @param coves those whose evidence is in it
 * @param brief whether the evidence is the short one
 * @param ends whether what bears on all of it, the readings and the seal are in it
 * @param remark on the first page, about the paper itself; mostly empty
 */
public record Sheets(boolean begins, List<StopPage> stops, List<CovePage> coves, boolean brief, boolean ends, String remark) {

    private Sheets(boolean begins, List<StopPage> stops, List<CovePage> coves, boolean brief, boolean ends) {
        this(begins, stops, coves, brief, ends, "");
    }

    public Sheets remarking(String said) {
        return new Sheets(begins, stops, coves, brief, ends, said);
    }

    /** What is laid out at once takes memory; these many stops and coves make some thirty pages. */
    private static final int STOPS = 60;
    /** With more than this the evidence of all coves is no longer what one leafs through. */
    private static final int MOST_COVES = 40;
    private static final int COVES = 60;

    /** All of a page at once. */
    static Sheets all(Page page) {
        return new Sheets(true, page.stops(), page.coves(), false, true);
    }

    /** One run where the report is of usual length, else as many as it takes, in order. */
    public static List<Sheets> parts(Page page) {
        if (page.stops().size() <= STOPS && page.coves().size() <= MOST_COVES) {
            return List.of(all(page));
        }
        List<Sheets> parts = new ArrayList<>();
        parts.add(new Sheets(true, first(page.stops(), STOPS), List.of(), true, false));
        for (int from = STOPS; from < page.stops().size(); from += STOPS) {
            parts.add(new Sheets(false, page.stops().subList(from, Math.min(from + STOPS, page.stops().size())), List.of(), true, false));
        }
        for (int from = 0; from < page.coves().size(); from += COVES) {
            parts.add(new Sheets(false, List.of(), page.briefCoves().subList(from, Math.min(from + COVES, page.coves().size())), true, false));
        }
        parts.add(new Sheets(false, List.of(), List.of(), true, true));
        return parts;
    }

    private static <T> List<T> first(List<T> list, int most) {
        return list.subList(0, Math.min(most, list.size()));
    }
}

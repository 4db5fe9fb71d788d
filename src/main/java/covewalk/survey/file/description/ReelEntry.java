package covewalk.survey.file.description;

import covewalk.survey.Reel;

/** A reel in {@code survey.json}. */
final class ReelEntry {

    private static final Range CCT = Range.from(1000, 20_000);
    private static final Range LENGTH = Range.above(0, 100_000);
    private static final Range STEPS = Range.above(0, 100);

    private ReelEntry() {
    }

    static Reel read(Fields fields) {
        return new Reel(fields.neededText("id"), fields.text("maker"), fields.text("product"), fields.text("gtin"),
                fields.whole("nominalCct", CCT), fields.text("bin"), fields.text("lot"), fields.text("serial"),
                fields.text("made"), fields.text("invoice"), fields.number("lengthM", LENGTH),
                fields.number("claimedSteps", STEPS), ColourEntry.read(fields, "claimedCentre"));
    }

    static void write(Overlay to, Reel reel) {
        to.text("id", reel.id()).text("maker", reel.maker()).text("product", reel.product()).text("gtin", reel.gtin())
                .whole("nominalCct", reel.nominalCct()).text("bin", reel.bin()).text("lot", reel.lot())
                .text("serial", reel.serial()).text("made", reel.made()).text("invoice", reel.invoice())
                .number("lengthM", reel.lengthM()).number("claimedSteps", reel.claimedSteps());
        ColourEntry.write(to, "claimedCentre", reel.claimedCentre());
    }
}

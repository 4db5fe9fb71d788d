package covewalk.report;

import covewalk.colour.CctDuv;
import covewalk.colour.UvPrime;
import covewalk.colour.Xy;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/**
 * Writes a survey to time reports on: coves of three reels of 5 m, six stations a reel, in which three joints of every
 * two coves are 3.5 steps off, so that there are half as many items again as coves.
 */
public final class LongPunchList {

    private static final int REELS = 3;
    private static final int STATIONS = 6;
    private static final double OFF = 3.5 * UvPrime.STEP;

    private LongPunchList() {
    }

    /** Arguments: the folder, and the number of coves. */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        int coves = Integer.parseInt(args[1]);
        describe(folder, coves);
        Random random = new Random(1);
        try (BufferedWriter log = Files.newBufferedWriter(folder.resolve("readings.csv"))) {
            log.write("reading,cove,position_m,role,setup,round,cct_k,duv,x,y,u_prime,v_prime,lux,taken_at,replaces,note\n");
            for (int i = 0; i < coves * REELS * STATIONS; i++) {
                int cove = i / (REELS * STATIONS);
                int reel = i / STATIONS % REELS;
                double off = reel == 1 || reel == 2 && cove % 2 == 1 ? OFF : 0;
                Xy xy = new CctDuv(2725, 0).toUvPrime().plus(off + 0.0002 * random.nextGaussian(), 0.0002 * random.nextGaussian()).toXy();
                log.write(String.format(Locale.ROOT, "%d,C%d,%.2f,walk,A,1,,,%.4f,%.4f,,,%d,,,%n", i + 1, cove + 1,
                        5 * reel + 0.5 + 0.8 * (i % STATIONS), xy.x(), xy.y(), 1500));
            }
        }
    }

    private static void describe(Path folder, int coves) throws IOException {
        try (BufferedWriter json = Files.newBufferedWriter(folder.resolve("survey.json"))) {
            json.write("{ \"format\": \"covewalk-survey/1\", \"site\": {\"name\": \"Long\"}, \"limits\": {\"neighbourSteps\": 2.0},\n");
            json.write("  \"setups\": [{\"id\": \"A\", \"repeatabilityUv\": 0.0003, \"absoluteUv\": 0.0015, \"unlikeUv\": 0.0005}],\n  \"reels\": [\n");
            for (int i = 1; i <= coves * REELS; i++) {
                json.write("    {\"id\": \"R" + i + "\", \"maker\": \"Maker\", \"product\": \"Product 24\", \"nominalCct\": 2700, \"bin\": \"B" + i % 7
                        + "\", \"lot\": \"L" + i / 50 + "\", \"serial\": \"S" + i + "\", \"lengthM\": 5, \"claimedSteps\": 3}"
                        + (i < coves * REELS ? ",\n" : "\n"));
            }
            json.write("  ],\n  \"coves\": [\n");
            for (int cove = 0; cove < coves; cove++) {
                json.write("    {\"id\": \"C" + (cove + 1) + "\", \"place\": \"Room " + (cove + 1) + "\", \"datum\": \"door\", \"heightM\": 3.2,"
                        + " \"lengthM\": 15, \"feeds\": [{\"atM\": 0, \"driver\": \"D" + cove + "\", \"circuit\": \"L1\"}], \"placements\": [");
                for (int reel = 0; reel < REELS; reel++) {
                    json.write((reel > 0 ? ", " : "") + "{\"reel\": \"R" + (cove * REELS + reel + 1) + "\", \"fromM\": " + 5 * reel
                            + ", \"toM\": " + (5 * reel + 5) + "}");
                }
                json.write("]}" + (cove < coves - 1 ? ",\n" : "\n"));
            }
            json.write("  ] }\n");
        }
    }
}

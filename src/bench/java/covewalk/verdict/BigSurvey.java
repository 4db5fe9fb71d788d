package covewalk.verdict;

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
 * Writes a survey of any size to time the commands on: coves of ten reels of 5 m, fifty readings a reel (25 stations
 * read twice), with scatter from reel to reel, one splice in twenty reels and one drift in twenty.
 */
public final class BigSurvey {

    private static final int REELS_A_COVE = 10;
    private static final int STATIONS_A_REEL = 25;

    private BigSurvey() {
    }

    /** Arguments: the folder, and the number of coves (500 readings each). */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        int coves = Integer.parseInt(args[1]);
        describe(folder, coves);
        Random random = new Random(1);
        try (BufferedWriter log = Files.newBufferedWriter(folder.resolve("readings.csv"))) {
            log.write("reading,cove,position_m,role,setup,round,cct_k,duv,x,y,u_prime,v_prime,lux,taken_at,replaces,note\n");
            int reading = 0;
            for (int cove = 1; cove <= coves; cove++) {
                for (int reel = 0; reel < REELS_A_COVE; reel++) {
                    reading = walk(log, cove, reel, reading, random);
                }
            }
        }
    }

    private static void describe(Path folder, int coves) throws IOException {
        try (BufferedWriter json = Files.newBufferedWriter(folder.resolve("survey.json"))) {
            json.write("{ \"format\": \"covewalk-survey/1\", \"site\": {\"name\": \"Big\"}, \"limits\": {\"neighbourSteps\": 2.0},\n");
            json.write("  \"setups\": [{\"id\": \"A\", \"repeatabilityUv\": 0.0003, \"absoluteUv\": 0.0015, \"unlikeUv\": 0.0005, \"smearM\": 0.02}],\n  \"reels\": [\n");
            for (int i = 1; i <= coves * REELS_A_COVE; i++) {
                json.write("    {\"id\": \"R" + i + "\", \"maker\": \"M\", \"product\": \"P\", \"lengthM\": 5}"
                        + (i < coves * REELS_A_COVE ? ",\n" : "\n"));
            }
            json.write("  ],\n  \"coves\": [\n");
            for (int cove = 1; cove <= coves; cove++) {
                json.write("    {\"id\": \"C" + cove + "\", \"lengthM\": 50, \"placements\": [");
                for (int reel = 0; reel < REELS_A_COVE; reel++) {
                    json.write((reel > 0 ? ", " : "") + "{\"reel\": \"R" + ((cove - 1) * REELS_A_COVE + reel + 1)
                            + "\", \"fromM\": " + 5 * reel + ", \"toM\": " + (5 * reel + 5) + "}");
                }
                json.write("]}" + (cove < coves ? ",\n" : "\n"));
            }
            json.write("  ] }\n");
        }
    }

    private static int walk(BufferedWriter log, int cove, int reel, int last, Random random) throws IOException {
        UvPrime white = new CctDuv(2700, 0).toUvPrime();
        double u = 0.8 * random.nextGaussian();
        double v = 0.8 * random.nextGaussian();
        int kind = random.nextInt(20);
        int reading = last;
        for (int i = 0; i < STATIONS_A_REEL; i++) {
            double more = kind == 0 && i > 11 ? 4 : kind == 1 ? 0.15 * i : 0;
            for (int k = 0; k < 2; k++) {
                Xy xy = white.plus((u + more + 0.4 * random.nextGaussian()) * UvPrime.STEP,
                        (v + 0.4 * random.nextGaussian()) * UvPrime.STEP).toXy();
                log.write(String.format(Locale.ROOT, "%d,C%d,%.2f,walk,A,1,,,%.4f,%.4f,,,420,,,%n", ++reading, cove,
                        5 * reel + 0.1 + 0.2 * i, xy.x(), xy.y()));
            }
        }
        return reading;
    }
}

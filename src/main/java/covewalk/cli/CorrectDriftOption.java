package covewalk.cli;

import picocli.CommandLine.Option;

/** {@code --correct-drift}, for every command that judges. */
final class CorrectDriftOption {

    @Option(names = "--correct-drift", description = "take off, linearly in time, a drift that the reference spot shows; the"
            + " readings stay as typed")
    private boolean correctDrift;

    boolean asked() {
        return correctDrift;
    }
}

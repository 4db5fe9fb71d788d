package covewalk.cli;

import java.util.Locale;
import java.util.ResourceBundle;
import picocli.CommandLine.IVersionProvider;

/** The version, as the build wrote it. */
final class VersionOfBuild implements IVersionProvider {

    @Override
    public String[] getVersion() {
        String version = ResourceBundle.getBundle("covewalk.cli.version", Locale.ROOT).getString("version");
        return new String[] {"covewalk " + version};
    }
}

package covewalk.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the name of a file or folder. */
final class PathOption implements ITypeConverter<Path> {

    @Override
    public Path convert(String text) {
        if (text.isBlank()) {
            throw new TypeConversionException(Sentences.of("no-name"));
        }
        try {
            return Path.of(text);
        } catch (InvalidPathException impossible) {
            throw new TypeConversionException(Sentences.of("no-such-name"));
        }
    }
}

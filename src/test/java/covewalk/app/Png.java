package covewalk.app;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javax.imageio.ImageIO;

/** Writes what a screen shows as a PNG file. */
final class Png {

    private Png() {
    }

    static Path write(Image image, Path file) {
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        int[] pixels = new int[width * height];
        image.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        picture.setRGB(0, 0, width, height, pixels, 0, width);
        try {
            Files.createDirectories(file.getParent());
            ImageIO.write(picture, "png", file.toFile());
            return file;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}

package umbercard.cli;

import java.io.IOException;
import java.nio.file.Path;
import umbercard.photo.PhotoReader;
import umbercard.photo.Progress;
import umbercard.picture.Picture;

/**
 * A photograph that a call names places in.
 *
 * @param scale what places in the file's pixels are multiplied by to be places in the picture's
 */
record PhotoFile(Picture picture, double scale) {
    static PhotoFile read(Path file) throws IOException {
        byte[] bytes = PhotoReader.bytes(file);
        Picture picture = PhotoReader.read(file.toString(), bytes, Progress.NONE);
        return new PhotoFile(
                picture,
                picture.width() / PhotoReader.size(file.toString(), bytes).width());
    }
}

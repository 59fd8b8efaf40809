package umbercard.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import umbercard.door.Reads;
import umbercard.model.Study;

/** The study that comes with the program. It opens as an untitled copy: saving it never touches the packed one. */
public final class Samples {
    private static final String FOLDER = "/umbercard/samples/";

    private Samples() {}

    /**
     * A packed study and its photograph.
     *
     * @param photographName the photograph's file name
     */
    @SuppressWarnings("ArrayRecordComponent") // handed over once, to be decoded or saved
    public record Sample(Study study, byte[] photograph, String photographName) {}

    /**
     * Kiln Hill, first snow.
     *
     * @throws IllegalStateException if it is not packed with the program: a defect of the build
     */
    public static Sample kilnHill() {
        try {
            String text = new String(resource("kiln-hill.json"), StandardCharsets.UTF_8);
            Study study = StudyFile.parse(text, "kiln-hill.json");
            String photograph = study.reference().orElseThrow().file();
            return new Sample(study, resource(photograph), photograph);
        } catch (IOException broken) {
            throw new IllegalStateException("the packed sample cannot be read", broken);
        }
    }

    /**
     * The box Kiln Yard 36.
     *
     * @throws IllegalStateException if it is not packed with the program: a defect of the build
     */
    public static Reads kilnYard() {
        String name = "kiln-yard-36.json";
        try {
            return BoxFile.parse(new String(resource(name), StandardCharsets.UTF_8), name);
        } catch (IOException broken) {
            throw new IllegalStateException("the packed box cannot be read", broken);
        }
    }

    private static byte[] resource(String name) throws IOException {
        try (InputStream in = Samples.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IOException("not packed: " + name);
            }
            return in.readAllBytes();
        }
    }
}

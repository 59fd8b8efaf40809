package umbercard.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import umbercard.door.BoxReader;
import umbercard.door.Reads;
import umbercard.kernel.EventThread;

/** Reads the program's own boxes; see {@link BoxFile}. */
public final class JsonBoxReader implements BoxReader {
    private static final Pattern FORMAT = Pattern.compile("\"format\"\\s*:\\s*\"umbercard-box\"");

    @Override
    public String id() {
        return "json";
    }

    @Override
    public int rank() {
        return 100;
    }

    /** Told by the format that the file names near its beginning, whatever the file is called. */
    @Override
    public boolean reads(String fileName, byte[] head) {
        return FORMAT.matcher(new String(head, StandardCharsets.UTF_8)).find();
    }

    @Override
    public Reads read(String fileName, InputStream in) throws IOException {
        EventThread.refuse("reading a box");
        return BoxFile.parse(Json.text(in.readAllBytes(), fileName), fileName);
    }
}

package umbercard.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import umbercard.words.Message;
import umbercard.words.Trouble;

/**
 * The first two fields of a file: its format and the format's version, major and minor. A file of the same major version
 * is read, whatever its minor one; the fields that this program does not know are kept.
 *
 * @param kind the name of the format as bundles have it
 */
record Head(String format, int major, int minor, String kind) {
    static final Head STUDY = new Head("umbercard-study", 1, 0, "study");
    static final Head BOX = new Head("umbercard-box", 1, 0, "box");

    private static final Pattern VERSION = Pattern.compile("(\\d{1,9})\\.(\\d{1,9})");

    /** An object that begins with this head. */
    Tree begin() {
        return new Tree().put("format", format).put("version", major + "." + minor);
    }

    /**
     * The fields after the head.
     *
     * @throws Trouble if the file is of another format, or of a newer major version
     */
    Fields open(JsonNode root, String fileName) throws Trouble {
        if (!root.path("format").asText("").equals(format)) {
            throw new Trouble(Message.of("store.not-a-" + kind, fileName));
        }
        Matcher version = VERSION.matcher(root.path("version").asText(""));
        if (!version.matches()) {
            throw new Trouble(Message.of("store.no-version", fileName, major + "." + minor));
        }
        BigInteger found = new BigInteger(version.group(1));
        if (found.compareTo(BigInteger.valueOf(major)) > 0) {
            throw new Trouble(Message.of("store.newer", fileName, version.group(), Integer.toString(major)));
        }
        if (found.intValue() < major) {
            throw new Trouble(Message.of("store.no-version", fileName, major + "." + minor));
        }
        Fields fields = new Fields(root, "");
        fields.find("format");
        fields.find("version");
        return fields;
    }

    /** What to tell the painter about a field that is wrong. */
    Trouble trouble(String fileName, Wrong wrong) {
        return new Trouble(Message.of("store.field", fileName, wrong.reason()), wrong);
    }
}

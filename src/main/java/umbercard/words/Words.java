package umbercard.words;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * The program's words. They live in bundles beside this class, one for each part of the program; the part of a key before
 * its first dot names the bundle, so {@code readings.dark-share.even} stands in {@code readings.properties}.
 */
public final class Words {
    private Words() {}

    /** The sentence for a message, in the words of its bundle. Arguments that are messages are said first. */
    public static String say(Message message) {
        return say(message.key(), message.arguments().toArray());
    }

    /**
     * The words for a key, with the arguments put in by {@link MessageFormat}.
     *
     * @throws java.util.MissingResourceException if no bundle has the key: a defect, not an input error
     */
    public static String say(String key, Object... arguments) {
        Object[] said = new Object[arguments.length];
        for (int i = 0; i < arguments.length; i++) {
            said[i] = arguments[i] instanceof Message inner ? say(inner) : arguments[i];
        }
        return new MessageFormat(pattern(key), Locale.ENGLISH).format(said);
    }

    private static String pattern(String key) {
        int dot = key.indexOf('.');
        String bundle = dot < 0 ? key : key.substring(0, dot);
        return ResourceBundle.getBundle("umbercard.words." + bundle, Locale.ROOT, Words.class.getClassLoader())
                .getString(key);
    }
}

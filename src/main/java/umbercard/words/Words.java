package umbercard.words;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import umbercard.color.MunsellValue;
import umbercard.color.ValueScale;

/**
 * The program's words. They live in bundles beside this class, one for each part of the program; the part of a key before
 * its first dot names the bundle, so {@code readings.dark-share.even} stands in {@code readings.properties}.
 *
 * <p>A Munsell value among the arguments is said in the numbering that the painter prefers, which is set here once for the
 * whole program, as a language would be. So no other place puts a value into words.
 */
public final class Words {
    private static volatile ValueScale scale = ValueScale.MUNSELL;

    private Words() {}

    /** Says all values in this numbering from now on. */
    public static void useValues(ValueScale preferred) {
        scale = preferred;
    }

    /** The numbering that values are said in. */
    public static ValueScale values() {
        return scale;
    }

    /** A value by itself. */
    public static String say(MunsellValue value) {
        return say(value, scale);
    }

    /** A value where there is little room: a name is shortened as Ross shortens it. */
    public static String brief(MunsellValue value) {
        return scale.name(value.number())
                .map(name -> say("trade.value-brief." + name.key()))
                .orElseGet(() -> say(value));
    }

    private static String say(MunsellValue value, ValueScale numbering) {
        return numbering
                .name(value.number())
                .map(name -> say("trade.value." + name.key()))
                .orElseGet(() -> say("trade.value", numbering.number(value.number())));
    }

    /** The sentence for a message, in the words of its bundle. Arguments that are messages are said first. */
    public static String say(Message message) {
        return say(message, scale);
    }

    /** The same with values in a numbering that is not the painter's: for scripts, {@link ValueScale#MUNSELL}. */
    public static String say(Message message, ValueScale numbering) {
        return say(numbering, message.key(), message.arguments());
    }

    /**
     * The words for a key, with the arguments put in by {@link MessageFormat}.
     *
     * @throws java.util.MissingResourceException if no bundle has the key: a defect, not an input error
     */
    public static String say(String key, Object... arguments) {
        return say(scale, key, List.of(arguments));
    }

    /** Whether there are words for a key: for those of plug-ins that somebody else made. */
    public static boolean has(String key) {
        try {
            return !pattern(key).isEmpty();
        } catch (MissingResourceException none) {
            return false;
        }
    }

    private static String say(ValueScale numbering, String key, List<Object> arguments) {
        Object[] said = arguments.stream().map(each -> said(each, numbering)).toArray();
        return new MessageFormat(pattern(key), Locale.ENGLISH).format(said);
    }

    private static Object said(Object argument, ValueScale numbering) {
        if (argument instanceof Message inner) {
            return say(inner, numbering);
        }
        return argument instanceof MunsellValue value ? say(value, numbering) : argument;
    }

    private static String pattern(String key) {
        int dot = key.indexOf('.');
        String bundle = dot < 0 ? key : key.substring(0, dot);
        return ResourceBundle.getBundle("umbercard.words." + bundle, Locale.ROOT, Words.class.getClassLoader())
                .getString(key);
    }
}

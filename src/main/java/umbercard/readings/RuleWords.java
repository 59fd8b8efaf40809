package umbercard.readings;

import java.util.MissingResourceException;
import java.util.TreeMap;
import java.util.function.Supplier;
import umbercard.color.ValueScale;
import umbercard.door.Limits;
import umbercard.door.Rule;
import umbercard.words.Message;
import umbercard.words.Words;

/** A rule in words; where a reading that somebody else made brings none, its id stands in. */
public final class RuleWords {
    private RuleWords() {}

    /** What its reading is called. */
    public static String name(Rule rule) {
        return or(rule, () -> Words.say("readings." + rule.id() + ".name"));
    }

    /** The rule as a sentence, {@code readings.<id>.rule}; its arguments are the limits in the order of their names. */
    public static String sentence(Rule rule, Limits limits, ValueScale numbering) {
        Object[] values = new TreeMap<>(limits.values()).values().toArray();
        return or(rule, () -> Words.say(Message.of("readings." + rule.id() + ".rule", values), numbering));
    }

    private static String or(Rule rule, Supplier<String> words) {
        try {
            return words.get();
        } catch (MissingResourceException notOurs) {
            return rule.id();
        }
    }
}

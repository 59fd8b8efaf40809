package umbercard.color;

import java.util.Locale;

/**
 * The nine values that Denman Ross names, from black to white (D. W. Ross, A Theory of Pure Design, 1907, section 128). He
 * finds them by halving again and again, so they are taken as equal steps; see {@link ValueScale}.
 */
public enum RossValue {
    BLACK,
    LOW_DARK,
    DARK,
    HIGH_DARK,
    MIDDLE,
    LOW_LIGHT,
    LIGHT,
    HIGH_LIGHT,
    WHITE;

    /** The key of its words, for example {@code low-dark}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

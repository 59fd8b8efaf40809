package umbercard.notes;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import umbercard.color.Ciede2000;
import umbercard.color.HueFamily;
import umbercard.color.Lab;
import umbercard.color.Warmth;
import umbercard.words.Message;

/**
 * How a stick differs from a color that is wanted, in figures and in words.
 *
 * <p>A difference of value is told from a quarter of a Munsell step, "a little" up to three quarters, "much" from one and a
 * half. Chroma and hue go by their terms of CIEDE2000, where about 1 is just seen side by side: told from 2, as sticks are
 * laid by hand; "a little" up to 6, "much" from 12. A turn of hue that lies mostly along the axis of {@link Warmth} is
 * "warmer" or "cooler", another leads "toward" the next family of hues. Where either color is nearly gray, a chroma under
 * {@link Warmth#NEUTRAL}, its hue means little, and the difference of warmth is told in its place. The limits are common
 * practice, no source.
 *
 * @param difference CIEDE2000, 0 or more
 * @param value the stick's Munsell value less the one wanted, positive where the stick is lighter
 * @param chroma the stick's C*ab less the one wanted, positive where the stick is stronger
 * @param hue degrees from the hue wanted to the stick's, h*ab, over -180 up to 180; 0 where either is an exact gray
 * @param words the differences that are told
 */
public record Likeness(double difference, double value, double chroma, double hue, Message words) {
    private static final double[] OF_VALUE = {0.25, 0.75, 1.5};
    private static final double[] OF_COLOR = {2, 6, 12};

    /** The families of hue round the circle. */
    private static final List<HueFamily> HUES = List.copyOf(EnumSet.range(HueFamily.RED, HueFamily.RED_VIOLET));

    /** The cosine of the widest angle to the axis of warmth that is still mostly along it. */
    private static final double MOSTLY = 0.5;

    /** How a stick's color differs from the one wanted. */
    public static Likeness of(Lab wanted, Lab stick) {
        return of(wanted, wanted.value(), stick, stick.value());
    }

    static Likeness of(Lab wanted, double wantedValue, Lab stick, double stickValue) {
        Ciede2000.Parts parts = Ciede2000.parts(wanted, stick);
        double value = stickValue - wantedValue;
        return new Likeness(
                parts.total(),
                value,
                stick.chroma() - wanted.chroma(),
                turn(wanted, stick),
                words(wanted, stick, value, parts));
    }

    private static double turn(Lab wanted, Lab stick) {
        if (wanted.chroma() == 0 || stick.chroma() == 0) {
            return 0;
        }
        double turn = stick.hue() - wanted.hue();
        return turn > 180 ? turn - 360 : turn <= -180 ? turn + 360 : turn;
    }

    private static Message words(Lab wanted, Lab stick, double value, Ciede2000.Parts parts) {
        List<Message> told = new ArrayList<>();
        tell("match.value.", "lighter", "darker", value, OF_VALUE, told);
        tell("match.chroma.", "stronger", "duller", parts.chroma(), OF_COLOR, told);
        tellHue(wanted, stick, parts.hue(), told);
        if (told.isEmpty()) {
            return Message.of("match.same");
        }
        if (Math.abs(value) < OF_VALUE[0]) {
            told.add(0, Message.of("match.value.same"));
        }
        return Sayings.joined(told);
    }

    private static void tellHue(Lab wanted, Lab stick, double part, List<Message> told) {
        if (Math.min(wanted.chroma(), stick.chroma()) < Warmth.NEUTRAL) {
            tell("match.hue.", "warmer", "cooler", Warmth.of(stick) - Warmth.of(wanted), OF_COLOR, told);
            return;
        }
        double along = alongWarmth(wanted, stick);
        if (Math.abs(along) >= MOSTLY) {
            tell("match.hue.", "warmer", "cooler", Math.copySign(part, along), OF_COLOR, told);
        } else if (Math.abs(part) >= OF_COLOR[0]) {
            String family = "trade.hue-family." + toward(wanted, stick, part).key();
            told.add(Message.of("match.hue.toward", degree(part, OF_COLOR), Message.of(family)));
        }
    }

    /** The cosine of the angle between the turn of hue, chroma left out, and the axis from cool to warm. */
    private static double alongWarmth(Lab wanted, Lab stick) {
        double a = stick.a() / stick.chroma() - wanted.a() / wanted.chroma();
        double b = stick.b() / stick.chroma() - wanted.b() / wanted.chroma();
        double length = Math.hypot(a, b);
        return length == 0 ? 0 : Warmth.of(new Lab(0, a, b)) / length;
    }

    /** The stick's family of hues; where that is the one wanted, the next one on the way. */
    private static HueFamily toward(Lab wanted, Lab stick, double part) {
        HueFamily from = HueFamily.ofHue(wanted.hue());
        HueFamily to = HueFamily.ofHue(stick.hue());
        if (to != from) {
            return to;
        }
        return HUES.get(Math.floorMod(HUES.indexOf(from) + (part > 0 ? 1 : -1), HUES.size()));
    }

    private static void tell(
            String key, String more, String less, double difference, double[] limits, List<Message> told) {
        if (Math.abs(difference) >= limits[0]) {
            told.add(Message.of(key + (difference > 0 ? more : less), degree(difference, limits)));
        }
    }

    /** 0 a little, 1 plainly, 2 much. */
    private static int degree(double difference, double[] limits) {
        double size = Math.abs(difference);
        return size < limits[1] ? 0 : size < limits[2] ? 1 : 2;
    }
}

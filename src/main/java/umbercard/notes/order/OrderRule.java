package umbercard.notes.order;

import java.util.List;
import java.util.Set;
import umbercard.model.Keyed;
import umbercard.notes.Purposes;
import umbercard.words.Message;

/**
 * What goes before what: the rules of the order of application, the strongest first. All are common practice, no source.
 * Each can be switched off, by its id, in {@link umbercard.model.Study#rulesOff()}.
 *
 * <p>Rules of purposes know the trade's purposes only (see {@link Purposes}); notes that are for something in the painter's
 * own words are compared within their zone alone. Within one zone and purpose the first of layers, hardness, value and
 * brightness that differs decides, so that these four never contradict one another. In sky and water only layers do: there
 * the order of the notes is the order from overhead to the horizon, turned over in the water, and no other holds.
 */
public enum OrderRule implements Keyed {
    LAYERS {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return one.isInZoneOf(other) && one.note().layer() < other.note().layer();
        }
    },
    BLOCK_IN_FIRST {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return one.is(Purposes.BLOCK_IN) && other.isOfTrade() && !other.is(Purposes.BLOCK_IN);
        }
    },
    DARKS_EARLY {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return one.is(Purposes.DARKS)
                    && other.isOfTrade()
                    && !other.isOf(List.of(Purposes.BLOCK_IN, Purposes.DARKS));
        }
    },
    ACCENTS_LAST {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return one.isOfTrade() && !one.is(Purposes.ACCENTS) && other.is(Purposes.ACCENTS);
        }
    },
    LIGHTS_LATE {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return one.isOfTrade()
                    && !one.isOf(List.of(Purposes.LIGHTS, Purposes.ACCENTS))
                    && other.is(Purposes.LIGHTS);
        }
    },
    LAND_EDGE_BEFORE_SKY {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return one.is(Purposes.LAND_EDGE) && other.is(Purposes.SKY);
        }
    },
    SKY_BEFORE_LAND {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return one.is(Purposes.SKY)
                    && other.isOf(List.of(Purposes.GROUND, Purposes.GROWTH, Purposes.REFLECTIONS, Purposes.WATER));
        }
    },
    GROUND_BEFORE_GROWTH {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return one.is(Purposes.GROUND) && other.isOf(List.of(Purposes.GROWTH, Purposes.RESTATED_GROWTH));
        }
    },
    LAND_BEFORE_WATER {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return one.isOf(List.of(Purposes.GROUND, Purposes.GROWTH))
                    && other.isOf(List.of(Purposes.REFLECTIONS, Purposes.WATER));
        }
    },
    REFLECTIONS_BEFORE_WATER {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return one.is(Purposes.REFLECTIONS) && other.is(Purposes.WATER);
        }
    },
    RESTATED_AFTER_WATER {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return one.isOf(List.of(Purposes.GROWTH, Purposes.REFLECTIONS, Purposes.WATER))
                    && other.is(Purposes.RESTATED_GROWTH);
        }
    },
    HOLES_AFTER_GROWTH {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return one.isOf(List.of(Purposes.GROWTH, Purposes.RESTATED_GROWTH))
                    && other.is(Purposes.SKY_HOLES)
                    && one.isPiercedBy(other);
        }
    },
    SKY_DOWNWARD {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return one.is(Purposes.SKY) && other.is(Purposes.SKY) && one.isOver(other);
        }
    },
    FAR_BEFORE_NEAR {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return one.isOf(List.of(Purposes.GROUND, Purposes.GROWTH))
                    && other.is(one.note().purpose())
                    && one.isBeyond(other);
        }
    },
    HARD_BEFORE_SOFT {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return sameUse(one, other, off) && one.hardness().compareTo(other.hardness()) < 0;
        }
    },
    DARK_BEFORE_LIGHT {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return sameUse(one, other, off)
                    && (isOff(HARD_BEFORE_SOFT, off) || one.hardness() == other.hardness())
                    && one.halfSteps() < other.halfSteps();
        }
    },
    DULL_BEFORE_BRIGHT {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return sameUse(one, other, off)
                    && (isOff(HARD_BEFORE_SOFT, off) || one.hardness() == other.hardness())
                    && (isOff(DARK_BEFORE_LIGHT, off) || one.halfSteps() == other.halfSteps())
                    && one.fives() < other.fives();
        }
    },
    /** Dust falls. Speaks only where no other does, directly or by way of other notes. */
    UPPER_BEFORE_LOWER {
        @Override
        boolean before(Laid one, Laid other, Set<String> off) {
            return one.isOver(other);
        }
    };

    /** All, the strongest first. */
    public static final List<OrderRule> ALL = List.of(values());

    /**
     * Whether by this rule one goes before the other.
     *
     * @param off ids of the rules that are switched off; whether this is one of them is not asked
     */
    abstract boolean before(Laid one, Laid other, Set<String> off);

    /** What names it in a study and on the command line. */
    public String id() {
        return key();
    }

    /** The rule in words, to follow a colon. */
    public Message words() {
        return Message.of("order.rule." + key());
    }

    /** In one zone, for one purpose, and not told apart by layers. */
    private static boolean sameUse(Laid one, Laid other, Set<String> off) {
        return one.isInZoneOf(other)
                && one.is(other.note().purpose())
                && !one.isOf(List.of(Purposes.SKY, Purposes.WATER))
                && (isOff(LAYERS, off) || one.note().layer() == other.note().layer());
    }

    private static boolean isOff(OrderRule rule, Set<String> off) {
        return off.contains(rule.id());
    }
}

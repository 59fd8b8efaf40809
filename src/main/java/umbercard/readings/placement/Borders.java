package umbercard.readings.placement;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoublePredicate;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limits;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.geometry.FrameContact;
import umbercard.geometry.FrameSide;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * How often the value changes on a walk round the frame and along each of its sides between the corners, and how much of each
 * side is dark. Where all four sides are of one
 * value, nothing leads into the picture. Sources: {@code readings.borders.source}.
 */
public final class Borders implements Reading {
    private static final double HAIR = 1e-6;

    private static final Rule RULE = new Rule("borders", 250, Map.of(), Words.say("readings.borders.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        if (plan.isBlank()) {
            return Finding.notSet(Message.of("readings.nothing-laid"));
        }
        FrameContact contact =
                FrameContact.of(plan.design().dark(), plan.design().ratio());
        List<Figure> figures = new ArrayList<>();
        int changes = contact.changes().size();
        figures.add(new Figure("changes", changes, "count"));
        for (FrameSide side : FrameSide.values()) {
            String name = side.name().toLowerCase(Locale.ROOT);
            figures.add(new Figure("dark-" + name, contact.share(side), "share"));
            figures.add(new Figure("changes-" + name, contact.changes(side).size(), "count"));
        }
        boolean light = all(contact, share -> share < HAIR);
        boolean dark = all(contact, share -> share > 1 - HAIR);
        String key = light ? "light" : dark ? "dark" : "holds";
        return new Finding(
                light || dark ? LOOK_AGAIN : HOLDS, figures, Message.of("readings.borders." + key, changes), List.of());
    }

    private static boolean all(FrameContact contact, DoublePredicate holds) {
        return Arrays.stream(FrameSide.values()).allMatch(side -> holds.test(contact.share(side)));
    }
}

package umbercard.readings.placement;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.List;
import java.util.Map;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.geometry.FrameContact;
import umbercard.geometry.Point;
import umbercard.readings.Corner;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * Where an edge between dark and light meets the frame near one of its corners: the eye runs out there. Sources: {@code
 * readings.corners.source}.
 */
public final class Corners implements Reading {
    private static final double HAIR = 1e-9;

    private static final Rule RULE = new Rule(
            "corners",
            240,
            Map.of("within", new Limit(0.04, "of the diagonal", 0, 0.25)),
            Words.say("readings.corners.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        if (plan.isBlank()) {
            return Finding.notSet(Message.of("readings.nothing-laid"));
        }
        double ratio = plan.design().ratio();
        List<Point> ends = FrameContact.of(plan.design().dark(), ratio).changes();
        double within = limits.get("within") * plan.diagonal() + HAIR;
        List<Point> near =
                ends.stream().filter(end -> distance(end, ratio) <= within).toList();
        double nearest = ends.stream()
                .mapToDouble(end -> distance(end, ratio) / plan.diagonal())
                .min()
                .orElse(1);
        return new Finding(
                near.isEmpty() ? HOLDS : LOOK_AGAIN,
                List.of(new Figure("edges", near.size(), "count"), new Figure("nearest", nearest, "of the diagonal")),
                near.isEmpty()
                        ? Message.of("readings.corners.holds")
                        : Message.of(
                                "readings.corners.again",
                                near.size(),
                                Corner.nearest(near.get(0), ratio).words()),
                near.stream().<Place>map(Place.At::new).toList());
    }

    private static double distance(Point end, double ratio) {
        return Corner.nearest(end, ratio).at(ratio).distance(end);
    }
}

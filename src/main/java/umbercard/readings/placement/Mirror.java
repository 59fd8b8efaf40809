package umbercard.readings.placement;

import static umbercard.door.Finding.Verdict.DOES_NOT_APPLY;
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
import umbercard.geometry.MirrorOverlap;
import umbercard.geometry.Node;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * How far the dark agrees with its mirror image about the frame's upright middle: what both share, as a share of what one or the
 * other covers. A plain band across the frame agrees with itself and is none the worse. Sources: {@code
 * readings.mirror.source}.
 */
public final class Mirror implements Reading {
    /**
     * A figure that fills so much of the box round it, from side to side but not from top to foot, is a plain band. With a straight edge, h high and
     * rising by r, it fills h / (h + r/2) of its box and agrees with its mirror image by (h - r/4) / (h + r/4): where that passes
     * the default of 0.85 it fills over 0.86, and so every straight-edged band that could be told to be alike is let pass.
     */
    private static final double BAND = 0.86;

    private static final double HAIR = 1e-6;

    private static final Rule RULE = new Rule(
            "mirror", 230, Map.of("most", new Limit(0.85, "share", 0.3, 1)), Words.say("readings.mirror.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        Region dark = plan.design().dark();
        double ratio = plan.design().ratio();
        if (plan.isBlank() || dark.isEmpty() || plan.design().darkShare() > 1 - HAIR) {
            String key = plan.isBlank() ? "readings.nothing-laid" : "readings.one-value";
            return Finding.notSet(Message.of(key));
        }
        double share = MirrorOverlap.of(dark, ratio).share();
        List<Figure> figures = List.of(new Figure("agreement", share, "share"));
        if (isBand(dark, ratio) || isBand(plan.design().light(), ratio)) {
            return new Finding(DOES_NOT_APPLY, figures, Message.of("readings.mirror.band"), List.of());
        }
        boolean again = share > limits.get("most") + HAIR;
        return new Finding(
                again ? LOOK_AGAIN : HOLDS,
                figures,
                Message.of("readings.mirror." + (again ? "again" : "holds"), 100 * share),
                again ? List.of(new Place.Between(new Point(ratio / 2, 0), new Point(ratio / 2, 1))) : List.of());
    }

    private static boolean isBand(Region figure, double ratio) {
        if (figure.pieces().size() != 1) {
            return false;
        }
        List<Point> corners = figure.outlines().stream()
                .flatMap(ring -> ring.nodes().stream())
                .map(Node::at)
                .toList();
        double left = corners.stream().mapToDouble(Point::x).min().orElseThrow();
        double right = corners.stream().mapToDouble(Point::x).max().orElseThrow();
        double top = corners.stream().mapToDouble(Point::y).min().orElseThrow();
        double foot = corners.stream().mapToDouble(Point::y).max().orElseThrow();
        boolean across = right - left > ratio - HAIR && foot - top < 1 - HAIR;
        return across && figure.area() >= BAND * ratio * (foot - top);
    }
}

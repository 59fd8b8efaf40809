package umbercard.readings.placement;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.model.Level;
import umbercard.model.Thumbnail;
import umbercard.readings.Fraction;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * How high the horizon runs, or the land edge where no horizon is set: its height over the bottom edge at the frame's middle, as a
 * share of the frame's height (under 0 or over 1 when it lies outside), the share of dark above and below it, and its tilt in
 * degrees. A line near the middle halves the picture. A tilt counts against it only for a horizon over water or plain, which
 * cannot slope; land may. The share of a side that the line leaves no room is left out. Sources: {@code readings.horizon-height.source}.
 */
public final class HorizonHeight implements Reading {
    /** What a height or a tilt may miss a limit by and still be on it. */
    private static final double HAIR = 1e-9;

    private static final Rule RULE = new Rule(
            "horizon-height",
            200,
            Map.of("middle", new Limit(0.05, "share", 0, 0.5), "tilt", new Limit(0.5, "degrees", 0, 89)),
            Words.say("readings.horizon-height.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        Thumbnail thumbnail = plan.thumbnail();
        Optional<Level> set = thumbnail.horizonOrLandEdge();
        if (set.isEmpty()) {
            return Finding.notSet(Message.of("readings.horizon-height.not-set"));
        }
        Level level = set.get();
        double height = 1 - level.y();
        boolean inTheMiddle = Math.abs(height - 0.5) <= limits.get("middle") + HAIR;
        boolean tilted = Math.abs(level.tilt()) > limits.get("tilt") + HAIR
                && thumbnail.horizon().isPresent()
                && LevelGround.under(level, plan);
        Message line = Message.of("readings.line." + (thumbnail.horizon().isPresent() ? "horizon" : "land-edge"));
        return new Finding(
                inTheMiddle || tilted ? LOOK_AGAIN : HOLDS,
                figures(level, plan),
                sentence(line, level, inTheMiddle, tilted),
                List.of(place(level, plan.design().ratio())));
    }

    private static List<Figure> figures(Level level, Plan plan) {
        double ratio = plan.design().ratio();
        Region above = plan.design().frame().intersect(Sides.above(level, ratio));
        Region below = plan.design().frame().minus(above);
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure("height", 1 - level.y(), "share"));
        darkOf(above, plan).ifPresent(dark -> figures.add(new Figure("dark-above", dark, "share")));
        darkOf(below, plan).ifPresent(dark -> figures.add(new Figure("dark-below", dark, "share")));
        figures.add(new Figure("tilt", level.tilt(), "degrees"));
        return figures;
    }

    private static Optional<Double> darkOf(Region side, Plan plan) {
        double whole = side.area();
        if (whole < HAIR) {
            return Optional.empty();
        }
        double dark = plan.design().dark().intersect(side).area();
        return Optional.of(Math.min(1, dark / whole));
    }

    private static Message sentence(Message line, Level level, boolean inTheMiddle, boolean tilted) {
        double height = 1 - level.y();
        double degrees = Math.abs(level.tilt());
        String key = "readings.horizon-height.";
        if (inTheMiddle) {
            return Message.of(key + (tilted ? "middle-tilted" : "middle"), line, 100 * height, degrees);
        }
        if (tilted) {
            return Message.of(key + "tilted", line, 100 * height, degrees);
        }
        if (height < 0 || height > 1) {
            return Message.of(key + (height < 0 ? "beneath" : "beyond"), line);
        }
        Fraction nearest = Fraction.nearest(height, List.of(Fraction.THIRD, Fraction.TWO_THIRDS));
        long points = Math.round(100 * (height - nearest.share()));
        String side = points == 0 ? "on" : points > 0 ? "over" : "under";
        return Message.of(key + side, line, 100 * height, nearest.words(), Math.abs(points));
    }

    private static Place place(Level level, double ratio) {
        return new Place.Between(new Point(0, level.yAt(0, ratio)), new Point(ratio, level.yAt(ratio, ratio)));
    }
}

package umbercard.desk.canvas;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import umbercard.desk.theme.Theme;
import umbercard.door.Place;
import umbercard.geometry.Outline;
import umbercard.geometry.Region;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;

/** Shows the zones of a thumbnail as thin outlines with their names. */
final class ZonesPainter {
    private static final float LINE = 1.2f;
    private static final float HALO = 3f;

    private ZonesPainter() {}

    static void paint(Graphics2D g, CardPlace place, Study study, Thumbnail thumbnail) {
        Graphics2D inside = (Graphics2D) g.create();
        inside.clip(place.frame());
        for (Zone zone : study.zones()) {
            area(zone, thumbnail)
                    .ifPresent(area -> outline(inside, place.toScreen().createTransformedShape(area)));
        }
        List<Rectangle2D> named = new ArrayList<>();
        for (Zone zone : study.zones()) {
            thumbnail.zoneAreas().getOrDefault(zone.id(), List.of()).stream()
                    .map(outline -> place.toScreen()
                            .createTransformedShape(Shapes.of(outline))
                            .getBounds2D()
                            .createIntersection(place.frame()))
                    .filter(shown -> !shown.isEmpty())
                    .max(Comparator.comparingDouble(shown -> shown.getWidth() * shown.getHeight()))
                    .ifPresent(shown -> name(inside, place, zone.name(), shown, named));
        }
        inside.dispose();
    }

    private static Optional<Shape> area(Zone zone, Thumbnail thumbnail) {
        List<Outline> outlines = thumbnail.zoneAreas().getOrDefault(zone.id(), List.of());
        Path2D all = new Path2D.Double(Path2D.WIND_NON_ZERO);
        outlines.forEach(outline -> all.append(Shapes.of(outline), false));
        return outlines.isEmpty() ? Optional.empty() : Optional.of(all);
    }

    private static void outline(Graphics2D g, Shape area) {
        Color paper = Theme.color("Umbercard.paper");
        g.setColor(new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), 200));
        g.setStroke(new BasicStroke(HALO, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(area);
        g.setColor(Theme.color("Umbercard.ink"));
        g.setStroke(new BasicStroke(LINE, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, new float[] {1, 3}, 0));
        g.draw(area);
    }

    /** In the middle of its largest part, within the frame, and below other names where it would lie on them. */
    private static void name(Graphics2D g, CardPlace place, String name, Rectangle2D shown, List<Rectangle2D> named) {
        FontMetrics metrics = CardWords.labels(g);
        double width = metrics.stringWidth(name);
        double x = Math.max(
                place.frame().getX() + 6,
                Math.min(place.frame().getMaxX() - width - 6, shown.getCenterX() - width / 2));
        double y = shown.getCenterY() + metrics.getAscent() / 2.0 - 1;
        Rectangle2D label = new Rectangle2D.Double(x - 4, y - metrics.getAscent(), width + 8, metrics.getHeight());
        while (named.stream().anyMatch(label::intersects)) {
            y += metrics.getHeight() + 2;
            label = new Rectangle2D.Double(x - 4, y - metrics.getAscent(), width + 8, metrics.getHeight());
        }
        named.add(label);
        CardWords.label(g, name, x, y);
    }

    /** A place of zones and notes as the part of the frame that those zones take up; any other as it is. */
    static Place onCard(Place place, Study study, Thumbnail thumbnail) {
        if (!(place instanceof Place.Of of)) {
            return place;
        }
        Stream<String> noted = study.notes().stream()
                .filter(note -> of.notes().contains(note.id()))
                .map(ColorNote::zone)
                .flatMap(Optional::stream);
        Region all = Stream.concat(of.zones().stream(), noted)
                .distinct()
                .map(zone -> Region.of(thumbnail.zoneAreas().getOrDefault(zone, List.of())))
                .reduce(Region.empty(), Region::union);
        return new Place.Over(all.intersect(Region.rectangle(0, 0, study.ratio(), 1)));
    }
}

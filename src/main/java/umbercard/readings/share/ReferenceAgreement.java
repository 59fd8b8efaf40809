package umbercard.readings.share;

import static umbercard.door.Finding.Verdict.FIGURE_ONLY;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import umbercard.color.Srgb;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limits;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.geometry.Node;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.picture.Picture;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * How far the thumbnail and the photograph in its frame agree, once that is parted so that as nearly as much of it is dark as equal pixels let: the share of
 * the frame where both are dark or both are light. A measurement, which no rule is tied to. The photograph is taken pixel by
 * pixel, each as dark or light as its middle lies in the thumbnail.
 */
public final class ReferenceAgreement implements Reading {
    private static final Rule RULE =
            new Rule("reference-agreement", 130, Map.of(), Words.say("readings.reference-agreement.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        if (plan.reference().isEmpty() || plan.isBlank()) {
            String key = plan.isBlank() ? "readings.nothing-laid" : "readings.reference-agreement.not-set";
            return Finding.notSet(Message.of(key));
        }
        Picture picture = plan.reference().get();
        double[] light = Arrays.stream(picture.pixels())
                .mapToDouble(rgb -> Srgb.luminance(rgb & 0xffffff))
                .toArray();
        double[] rising = light.clone();
        Arrays.sort(rising);
        int darks = (int) Math.round(plan.design().darkShare() * rising.length);
        double split = split(rising, darks);
        double agree = agreeing(plan.design().dark(), picture, light, split) / light.length;
        return new Finding(
                FIGURE_ONLY,
                List.of(new Figure("agreement", agree, "share")),
                Message.of("readings.reference-agreement.figure", 100 * agree),
                List.of());
    }

    /** The luminance up to which a pixel is dark; equally light ones go to one side, so that the count comes nearest. */
    private static double split(double[] rising, int darks) {
        if (darks == 0) {
            return -1;
        }
        double last = rising[darks - 1];
        int before = (int) Arrays.stream(rising).filter(light -> light < last).count();
        int with = (int) Arrays.stream(rising).filter(light -> light <= last).count();
        boolean without = darks - before < with - darks;
        return !without ? last : before == 0 ? -1 : rising[before - 1];
    }

    private static double agreeing(Region dark, Picture picture, double[] light, double split) {
        int count = 0;
        for (int y = 0; y < picture.height(); y++) {
            double[] borders = borders(dark, (y + 0.5) / picture.height());
            int passed = 0;
            for (int x = 0; x < picture.width(); x++) {
                double at = (x + 0.5) / picture.height();
                while (passed < borders.length && borders[passed] <= at) {
                    passed++;
                }
                count += passed % 2 == 1 == light[y * picture.width() + x] <= split ? 1 : 0;
            }
        }
        return count;
    }

    /** Where a level line crosses the region's border, from the left. */
    private static double[] borders(Region dark, double y) {
        return dark.outlines().stream()
                .flatMapToDouble(ring -> crossings(ring.nodes(), y))
                .sorted()
                .toArray();
    }

    private static DoubleStream crossings(List<Node> nodes, double y) {
        return IntStream.range(0, nodes.size())
                .filter(i -> below(nodes, i, y) != below(nodes, i + 1, y))
                .mapToDouble(i -> {
                    Point from = nodes.get(i).at();
                    Point to = nodes.get((i + 1) % nodes.size()).at();
                    return from.x() + (y - from.y()) / (to.y() - from.y()) * (to.x() - from.x());
                });
    }

    private static boolean below(List<Node> nodes, int i, double y) {
        return nodes.get(i % nodes.size()).at().y() > y;
    }
}

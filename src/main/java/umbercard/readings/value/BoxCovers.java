package umbercard.readings.value;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import umbercard.color.Ciede2000;
import umbercard.color.HueFamily;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.model.Box;
import umbercard.model.Stick;
import umbercard.model.Zone;
import umbercard.notes.AtHand;
import umbercard.picture.MainColor;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * How near the sticks at hand come to the reference's colors in the zones, by CIEDE2000. Pastel on paper does not reach a
 * photograph's black and white; so lightnesses beyond the darkest and the lightest stick are taken for theirs. Colors that
 * take up little of their zone are left out. Sources: {@code readings.box-covers.source}.
 */
public final class BoxCovers implements Reading {
    private static final Rule RULE = new Rule(
            "box-covers",
            700,
            Map.of("most", new Limit(10, "CIEDE2000", 1, 50), "least-share", new Limit(0.2, "share", 0, 1)),
            Words.say("readings.box-covers.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    private record Missed(Zone zone, Lab color, Stick nearest, double difference) {}

    @Override
    public Finding read(Plan plan, Limits limits) {
        List<Stick> sticks = sticks(plan);
        Map<String, List<MainColor>> colors = plan.zoneColors();
        if (sticks.isEmpty() || colors.isEmpty()) {
            return Finding.notSet(Message.of("readings.box-covers." + (sticks.isEmpty() ? "no-sticks" : "no-colors")));
        }
        Optional<Missed> worst = plan.study().zones().stream()
                .flatMap(zone -> colors.getOrDefault(zone.id(), List.of()).stream()
                        .filter(color -> color.share() >= limits.get("least-share"))
                        .map(color -> nearest(zone, color.color(), sticks)))
                .max(Comparator.comparingDouble(Missed::difference));
        if (worst.isEmpty()) {
            return Finding.notSet(Message.of("readings.box-covers.no-colors"));
        }
        Missed missed = worst.get();
        boolean again = missed.difference() > limits.get("most");
        return new Finding(
                again ? LOOK_AGAIN : HOLDS,
                List.of(new Figure("farthest", missed.difference(), "CIEDE2000")),
                Message.of(
                        "readings.box-covers." + (again ? "again" : "holds"),
                        Message.of("trade.hue-family."
                                + HueFamily.of(missed.color()).key()),
                        MunsellValue.of(missed.color()),
                        missed.zone().name(),
                        missed.nearest().title()),
                again ? List.of(new Place.Of(List.of(missed.zone().id()), List.of())) : List.of());
    }

    /** Those of the box that are at hand, and those set out. */
    private static List<Stick> sticks(Plan plan) {
        return AtHand.of(Stream.concat(
                                plan.study().box().map(Box::sticks).orElse(List.of()).stream(),
                                plan.study().setOut().stream())
                        .distinct()
                        .toList())
                .sticks();
    }

    private static Missed nearest(Zone zone, Lab color, List<Stick> sticks) {
        double darkest =
                sticks.stream().mapToDouble(stick -> stick.color().l()).min().orElseThrow();
        double lightest =
                sticks.stream().mapToDouble(stick -> stick.color().l()).max().orElseThrow();
        Lab reached = new Lab(Math.max(darkest, Math.min(lightest, color.l())), color.a(), color.b());
        return sticks.stream()
                .map(stick -> new Missed(zone, color, stick, Ciede2000.difference(reached, stick.color())))
                .min(Comparator.comparingDouble(Missed::difference))
                .orElseThrow();
    }
}

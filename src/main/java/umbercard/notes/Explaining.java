package umbercard.notes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import umbercard.color.MunsellValue;
import umbercard.model.Stick;
import umbercard.notes.Suggestion.Missed;
import umbercard.notes.Suggestion.Pick;
import umbercard.words.Message;

/** Says what each stick of a suggestion is for, and what is missing. */
record Explaining(AtHand atHand, List<Goal> goals, List<List<Integer>> serving, Trust trust) {

    /** What a stick covers of one zone: darks, middles or lights. */
    private record Covered(ColoredZone zone, Band band) {}

    /**
     * @param chosen places of sticks at hand
     * @param complete whether all that the sticks at hand can cover is covered
     */
    Suggestion of(List<Integer> chosen, boolean complete, boolean proven) {
        List<Pick> picks = chosen.stream()
                .sorted()
                .flatMap(stick -> reason(stick, chosen).stream()
                        .map(reason -> new Pick(atHand.sticks().get(stick), reason)))
                .toList();
        List<Goal> open = IntStream.range(0, goals.size())
                .filter(row -> server(row, chosen).isEmpty())
                .mapToObj(goals::get)
                .toList();
        List<Missed> missed = open.stream().map(this::missed).toList();
        List<Message> lacks = Stream.of(Part.values())
                .filter(part -> serving.get(row(part)).isEmpty())
                .map(part -> Message.of("match.set-out.no-" + part.key()))
                .toList();
        return new Suggestion(picks, missed, lacks, proven, summary(picks.size(), open, complete, proven));
    }

    private Message summary(int count, List<Goal> open, boolean complete, boolean proven) {
        double all = goals.stream().mapToDouble(Goal::share).sum();
        double missed = open.stream().mapToDouble(Goal::share).sum();
        String key = !complete ? "most" : open.isEmpty() ? "all" : "reachable";
        return Message.of("match.set-out." + key, count, all == 0 ? 100 : 100 * (all - missed) / all, proven ? 1 : 0);
    }

    private int row(Part part) {
        return goals.size() + List.of(Part.values()).indexOf(part);
    }

    /** The chosen stick that serves a row best. */
    private Optional<Integer> server(int row, List<Integer> chosen) {
        return serving.get(row).stream().filter(chosen::contains).findFirst();
    }

    /** Empty for a stick that others make needless. */
    private Optional<Message> reason(int stick, List<Integer> chosen) {
        List<Message> reasons = new ArrayList<>();
        for (Part part : Part.values()) {
            if (server(row(part), chosen).filter(best -> best == stick).isPresent()) {
                reasons.add(Message.of("match.part." + part.key()));
            }
        }
        List<Message> covers = covers(stick, chosen);
        if (!covers.isEmpty()) {
            reasons.add(Message.of("match.covers", Sayings.joined(covers)));
        }
        return reasons.isEmpty() ? Optional.empty() : Optional.of(Sayings.joined(reasons));
    }

    private List<Message> covers(int stick, List<Integer> chosen) {
        Map<Covered, Integer> counts = new LinkedHashMap<>();
        for (int row = 0; row < goals.size(); row++) {
            Goal goal = goals.get(row);
            if (server(row, chosen).filter(best -> best == stick).isPresent()) {
                counts.merge(new Covered(goal.zone(), Band.of(goal.value())), 1, Integer::sum);
            }
        }
        return counts.entrySet().stream()
                .map(entry -> Message.of(
                        "match.covers." + entry.getKey().band.key(),
                        entry.getValue(),
                        entry.getKey().zone.zone().name()))
                .toList();
    }

    private Missed missed(Goal goal) {
        ColoredZone zone = goal.zone();
        ColorMatches nearest = new Matching(atHand, trust)
                .of(List.of(new ColoredZone(zone.zone(), zone.share(), List.of(goal.color()))), 1)
                .get(0);
        StickMatch match = nearest.sticks().get(0);
        Stick stick = match.stick();
        return new Missed(
                zone.zone().id(),
                goal.color(),
                match,
                Message.of(
                        "match.missed",
                        zone.zone().name(),
                        MunsellValue.of(goal.color().color()),
                        stick.title(),
                        match.likeness().words()));
    }
}

package umbercard.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import umbercard.color.MunsellValue;
import umbercard.color.ValueScale;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.notan.Design;
import umbercard.picture.MainColor;
import umbercard.words.Message;
import umbercard.words.Words;
import umbercard.zones.Proposal;
import umbercard.zones.ZoneMap;
import umbercard.zones.ZonePair;
import umbercard.zones.ZonePlace;

/**
 * The zones of a thumbnail, to be printed.
 *
 * @param colors the reference's main colors by the zone's id
 * @param proposals what was added to the study
 */
record ZonesReport(
        Study study,
        Thumbnail thumbnail,
        Design design,
        Map<String, List<MainColor>> colors,
        List<Proposal> proposals) {

    private ZoneMap map() {
        return ZoneMap.of(study, thumbnail);
    }

    String inWords() {
        ZoneMap map = map();
        List<List<String>> rows = new ArrayList<>();
        for (ZonePlace place : map.places()) {
            Zone zone = place.zone();
            rows.add(List.of(
                    zone.name(),
                    Words.say("trade.plane." + zone.plane().key()),
                    Words.say("trade.distance." + zone.distance().key()),
                    Words.say("cli.zones.share", 100 * place.share()),
                    Words.say("zones." + (place.isDark(design) ? "dark" : "light")),
                    value("cli.zones.target", zone.targetValue()),
                    value("cli.zones.mean", mean(zone))));
        }
        List<String> lines = new ArrayList<>();
        lines.add(Words.say("cli.match.of", study.title(), thumbnail.name()));
        lines.addAll(Columns.of(rows));
        for (ZonePair pair : map.touching()) {
            boolean lost = study.lostEdges().contains(pair.edge());
            lines.add(Words.say(
                    "cli.zones." + (lost ? "lost" : "touch"),
                    pair.farther().zone().name(),
                    pair.nearer().zone().name()));
        }
        for (ZonePair pair : map.overlapping()) {
            lines.add(Words.say(
                    "cli.zones.overlap",
                    pair.farther().zone().name(),
                    pair.nearer().zone().name()));
        }
        lines.add(Words.say("cli.zones.gaps", 100 * map.gaps().area() / map.ratio()));
        proposals.forEach(proposal ->
                lines.add(Words.say("cli.zones.proposed", proposal.zone().name(), proposal.reason())));
        return String.join(System.lineSeparator(), lines);
    }

    private static String value(String key, OptionalDouble value) {
        return value.isPresent() ? Words.say(key, new MunsellValue(value.getAsDouble())) : "";
    }

    private OptionalDouble mean(Zone zone) {
        return MainColor.meanValue(colors.getOrDefault(zone.id(), List.of()));
    }

    /** One object with stable keys, for scripts; shares are of the frame, values Munsell's. */
    String json() {
        ZoneMap map = map();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("study", study.title());
        json.put("thumbnail", thumbnail.name());
        json.put("zones", map.places().stream().map(this::zone).toList());
        json.put("touching", map.touching().stream().map(this::pair).toList());
        json.put("overlapping", map.overlapping().stream().map(this::pair).toList());
        json.put("gaps", map.gaps().area() / map.ratio());
        json.put("proposed", proposals.stream().map(ZonesReport::proposal).toList());
        return JsonText.of(json);
    }

    private Map<String, Object> zone(ZonePlace place) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", place.zone().id());
        json.put("name", place.zone().name());
        json.put("plane", place.zone().plane().key());
        json.put("distance", place.zone().distance().key());
        json.put("share", place.share());
        json.put("darkShare", place.darkShare(design));
        place.zone().targetValue().ifPresent(value -> json.put("target", value));
        mean(place.zone()).ifPresent(value -> json.put("mean", value));
        return json;
    }

    private Map<String, Object> pair(ZonePair pair) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("farther", pair.farther().zone().id());
        json.put("nearer", pair.nearer().zone().id());
        json.put("lost", study.lostEdges().contains(pair.edge()));
        return json;
    }

    private static Map<String, Object> proposal(Proposal proposal) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", proposal.zone().id());
        Message reason = proposal.reason();
        json.put("reason", Words.say(reason, ValueScale.MUNSELL));
        return json;
    }
}

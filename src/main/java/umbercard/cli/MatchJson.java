package umbercard.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import umbercard.color.Lab;
import umbercard.color.ValueScale;
import umbercard.model.Stick;
import umbercard.notes.ColorMatches;
import umbercard.notes.ColoredZone;
import umbercard.notes.Gap;
import umbercard.notes.Likeness;
import umbercard.notes.StickMatch;
import umbercard.notes.Suggestion;
import umbercard.picture.MainColor;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * Matches as one JSON object with stable keys, for scripts. {@code lab} is L*a*b* under D65, {@code value} Munsell's, 0 black
 * to 10 white, however the painter numbers values; differences are the stick's figure less the wanted one, {@code hue} in
 * degrees. {@code suggestion} is there if it was asked for, {@code name} and {@code slot} if the stick has them; {@code gaps}
 * are those of the sticks set out, and none otherwise.
 */
final class MatchJson {
    private MatchJson() {}

    static String of(MatchReport report) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("study", report.study().title());
        json.put("thumbnail", report.thumbnail().name());
        json.put("trust", report.trust().of());
        json.put(
                "zones", report.zones().stream().map(zone -> zone(zone, report)).toList());
        json.put("gaps", report.gaps().stream().map(MatchJson::gap).toList());
        report.suggestion().ifPresent(suggestion -> json.put("suggestion", suggestion(suggestion)));
        return JsonText.of(json);
    }

    private static Map<String, Object> zone(ColoredZone zone, MatchReport report) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", zone.zone().id());
        json.put("name", zone.zone().name());
        json.put("share", zone.share());
        json.put("colors", report.of(zone).stream().map(MatchJson::color).toList());
        return json;
    }

    private static Map<String, Object> color(ColorMatches match) {
        Map<String, Object> json = wanted(match.color());
        json.put("withinValue", match.withinValue());
        json.put("sticks", match.sticks().stream().map(MatchJson::match).toList());
        return json;
    }

    private static Map<String, Object> wanted(MainColor color) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("share", color.share());
        putColor(color.color(), json);
        return json;
    }

    private static void putColor(Lab color, Map<String, Object> json) {
        json.put("lab", List.of(color.l(), color.a(), color.b()));
        json.put("value", color.value());
    }

    static Map<String, Object> stick(Stick stick) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", stick.id());
        stick.name().ifPresent(name -> json.put("name", name));
        stick.slot().ifPresent(slot -> json.put("slot", List.of(slot.row(), slot.column())));
        putColor(stick.color(), json);
        return json;
    }

    private static Map<String, Object> match(StickMatch match) {
        Likeness likeness = match.likeness();
        Map<String, Object> difference = new LinkedHashMap<>();
        difference.put("ciede2000", likeness.difference());
        difference.put("value", likeness.value());
        difference.put("chroma", likeness.chroma());
        difference.put("hue", likeness.hue());
        Map<String, Object> json = stick(match.stick());
        json.put("rank", match.rank());
        json.put("difference", difference);
        json.put("words", said(likeness.words()));
        return json;
    }

    private static Map<String, Object> suggestion(Suggestion suggestion) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("summary", said(suggestion.summary()));
        json.put("proven", suggestion.proven());
        json.put("sticks", suggestion.picks().stream().map(MatchJson::pick).toList());
        json.put("missed", suggestion.missed().stream().map(MatchJson::missed).toList());
        json.put("lacks", suggestion.lacks().stream().map(MatchJson::said).toList());
        return json;
    }

    private static Map<String, Object> pick(Suggestion.Pick pick) {
        Map<String, Object> json = stick(pick.stick());
        json.put("reason", said(pick.reason()));
        return json;
    }

    private static Map<String, Object> missed(Suggestion.Missed missed) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("zone", missed.zone());
        json.putAll(wanted(missed.color()));
        json.put("nearest", match(missed.nearest()));
        json.put("sentence", said(missed.said()));
        return json;
    }

    private static Map<String, Object> gap(Gap gap) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("sentence", said(gap.said()));
        if (gap instanceof Gap.OfValue value) {
            json.put("values", List.of(value.from(), value.to()));
        } else if (gap instanceof Gap.OfWarmth warmth) {
            json.put("values", List.of(warmth.band().from(), warmth.band().to()));
            json.put("hue", warmth.hue());
        }
        return json;
    }

    static String said(Message message) {
        return Words.say(message, ValueScale.MUNSELL);
    }
}

package umbercard.cli;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import umbercard.color.MunsellValue;
import umbercard.door.Reads;
import umbercard.model.Box;
import umbercard.model.Stick;
import umbercard.words.Words;

/** What is in a box that has at least one stick. */
final class BoxReport {
    private static final Comparator<Stick> BY_VALUE =
            Comparator.comparingDouble(stick -> stick.color().value());

    private final String file;
    private final Reads reads;

    BoxReport(String file, Reads reads) {
        this.file = file;
        this.reads = reads;
    }

    private Box box() {
        return reads.box();
    }

    private long count(Stick.State state) {
        return box().sticks().stream().filter(stick -> stick.state() == state).count();
    }

    private Stick darkest() {
        return box().sticks().stream().min(BY_VALUE).orElseThrow();
    }

    private Stick lightest() {
        return box().sticks().stream().max(BY_VALUE).orElseThrow();
    }

    /** In lines for the painter: what is in the box, and what is to be remarked. */
    String text() {
        Stream<String> head = Stream.of(
                Words.say(
                        "cli.box.sticks",
                        box().name(),
                        box().sticks().size(),
                        count(Stick.State.OWNED),
                        count(Stick.State.WORN_OUT),
                        count(Stick.State.NOT_OWNED)),
                Words.say(
                        "cli.box.values",
                        MunsellValue.of(darkest().color()),
                        darkest().title(),
                        MunsellValue.of(lightest().color()),
                        lightest().title()));
        Stream<String> faults = reads.faults().isEmpty()
                ? Stream.empty()
                : Stream.of(Words.say("cli.box.faults", reads.faults().size()));
        Stream<String> remarks = reads.remarks().stream().map(Words::say);
        return Stream.of(head, faults, remarks)
                .flatMap(lines -> lines)
                .collect(Collectors.joining(System.lineSeparator()));
    }

    /** With stable keys, for scripts. Lines are counted from 1, and 0 where the kind of file has none. */
    Map<String, Object> json() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", file);
        json.put("name", box().name());
        json.put("sticks", box().sticks().size());
        json.put(
                "states",
                Arrays.stream(Stick.State.values())
                        .collect(Collectors.toMap(Stick.State::key, this::count, (a, b) -> a, LinkedHashMap::new)));
        json.put("darkest", stick(darkest()));
        json.put("lightest", stick(lightest()));
        json.put("faults", reads.faults().stream().map(BoxReport::fault).toList());
        json.put("remarks", reads.remarks().stream().map(Words::say).toList());
        return json;
    }

    private static Map<String, Object> stick(Stick stick) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", stick.id());
        json.put("value", stick.color().value());
        return json;
    }

    private static Map<String, Object> fault(Reads.Fault fault) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("line", fault.line());
        json.put("reason", Words.say(fault.reason()));
        return json;
    }
}

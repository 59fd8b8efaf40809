package umbercard.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import umbercard.color.MunsellValue;
import umbercard.color.ValueScale;
import umbercard.model.Study;
import umbercard.store.Preferred;
import umbercard.words.Words;

class NumberingIT extends AtDesk {
    @BeforeEach
    @AfterEach
    void numberValuesAsBefore() {
        Preferred.keepValues(ValueScale.MUNSELL);
        Words.useValues(ValueScale.MUNSELL);
    }

    private void kilnHill() {
        act(desk().files()::showKilnHill);
        until("Kiln Hill is there", () -> desk().session().study().thumbnails().size() > 1);
        until("the photograph is seen", () -> card().valueCurve().isPresent());
        settled();
    }

    private SplitCurve curve() {
        return robot().finder().findByName(desk(), "split", SplitCurve.class);
    }

    private String line() {
        return window().label("pointer-line").text();
    }

    private String underPointer() {
        robot().moveMouse(card(), at(0.71, 0.4));
        robot().moveMouse(card(), at(0.7, 0.4));
        robot().waitForIdle();
        Matcher value = Pattern.compile(", of value ([^,]+),").matcher(line());
        assertThat(value.find()).as(line()).isTrue();
        return value.group(1);
    }

    private String tip() {
        return ask(() -> SplitCurve.tip(curve().curve().orElseThrow(), 10));
    }

    private void number(ValueScale scale) {
        choose("View", Words.say("desk.menu.values." + scale.key()));
        settled();
    }

    @Test
    void anotherNumberingChangesWhatIsShownAndNoData() {
        kilnHill();
        Study before = study();
        double munsell = Double.parseDouble(underPointer());
        assertThat(tip()).endsWith("value 10.0.");
        robot().moveMouse(curve());
        String dark = ask(curve()::words);

        number(ValueScale.NINE_TO_ONE);
        assertThat(line()).as("said anew at once").isNotEqualTo(dark).isEqualTo(ask(curve()::words));
        assertThat(Double.parseDouble(underPointer())).isCloseTo(9 - 0.8 * munsell, within(0.1));
        assertThat(tip()).endsWith("value 1.0.");
        assertThat(ask(() -> curve().getAccessibleContext().getAccessibleDescription()))
                .isEqualTo(ask(curve()::words));

        number(ValueScale.NAMES);
        assertThat(underPointer()).isEqualTo(Words.say(new MunsellValue(munsell)));
        assertThat(tip()).endsWith("value White.");
        shots("numbering-names");

        assertThat(study()).isEqualTo(before);
        assertThat(ask(() -> desk().session().isChanged())).isFalse();
        assertThat(Preferred.values()).isEqualTo(ValueScale.NAMES);
        assertThat(ask(() -> window().menuItem("values.names").target().isSelected()))
                .isTrue();
    }

    @Test
    void theStripsAndTheBoxSayTheirValuesAnew() {
        kilnHill();
        double munsell = study().notes().get(0).stick().color().value();
        assertThat(strip()).contains("value " + tenths(munsell));
        number(ValueScale.ONE_TO_TEN);
        assertThat(strip()).contains("value " + tenths(1 + 0.9 * munsell));
    }

    private String strip() {
        var list = window().list("notes.strips").target();
        return ask(() -> list.getAccessibleContext()
                .getAccessibleChild(0)
                .getAccessibleContext()
                .getAccessibleName());
    }

    private static String tenths(double number) {
        return String.format(Locale.ROOT, "%.1f", number);
    }
}

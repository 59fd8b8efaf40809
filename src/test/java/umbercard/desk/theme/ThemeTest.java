package umbercard.desk.theme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.util.List;
import java.util.Locale;
import javax.swing.UIManager;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;

class ThemeTest {
    /** Least contrast of text, WCAG 2.2, success criterion 1.4.3. */
    private static final double TEXT = 4.5;

    private static final List<List<String>> WORDS_ON_GROUNDS = List.of(
            List.of("Umbercard.onSurround", "Umbercard.surround"),
            List.of("Umbercard.onSurround", "Umbercard.surroundHover"),
            List.of("Umbercard.onSurround", "Umbercard.surroundPressed"),
            List.of("Umbercard.onSurroundSoft", "Umbercard.surround"),
            List.of("Umbercard.ink", "Umbercard.paper"),
            List.of("Umbercard.ink", "Umbercard.paperSelected"),
            List.of("Umbercard.ink", "Umbercard.light"),
            List.of("Umbercard.inkSoft", "Umbercard.paper"),
            List.of("Umbercard.inkSoft", "Umbercard.paperSelected"),
            List.of("Umbercard.paper", "Umbercard.ink"),
            List.of("Umbercard.umberOnPaper", "Umbercard.paper"),
            List.of("Umbercard.onSheet", "Umbercard.sheet"),
            List.of("Umbercard.onSheetSoft", "Umbercard.sheet"),
            List.of("Umbercard.umberOnSheet", "Umbercard.sheet"),
            List.of("Label.foreground", "Panel.background"),
            List.of("Button.foreground", "Button.background"),
            List.of("TextField.foreground", "TextField.background"),
            List.of("Menu.foreground", "MenuBar.background"),
            List.of("MenuItem.foreground", "MenuItem.background"),
            List.of("MenuItem.selectionForeground", "MenuItem.selectionBackground"),
            List.of("MenuItem.acceleratorForeground", "MenuItem.background"),
            List.of("List.selectionForeground", "List.selectionBackground"),
            List.of("ComboBox.selectionForeground", "ComboBox.selectionBackground"),
            List.of("ToolTip.foreground", "ToolTip.background"));

    /** W3C WCAG 2.2, definition of contrast ratio; relative luminance by its definition there, threshold 0.04045. */
    private static double contrast(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(int component) {
        double c = component / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    /** Source: reference table wcag_contrast.csv, from the W3C's definitions. */
    @ParameterizedTest
    @CsvFileSource(resources = "wcag_contrast.csv", numLinesToSkip = 3)
    void theFormulaGivesThePublishedContrasts(
            int r1, int g1, int b1, int r2, int g2, int b2, double l1, double l2, double ratio) {
        assertThat(luminance(new Color(r1, g1, b1))).isCloseTo(l1, within(1e-7));
        assertThat(luminance(new Color(r2, g2, b2))).isCloseTo(l2, within(1e-7));
        assertThat(contrast(new Color(r1, g1, b1), new Color(r2, g2, b2))).isCloseTo(ratio, within(1e-5));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void wordsStandOut(boolean dark) {
        Theme.install(dark);
        assertThat(WORDS_ON_GROUNDS)
                .allSatisfy(pair -> assertThat(contrast(Theme.color(pair.get(0)), Theme.color(pair.get(1))))
                        .isGreaterThanOrEqualTo(TEXT));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void nothingRoundTheCardsHasAHue(boolean dark) {
        Theme.install(dark);
        List<String> tinted = List.of(
                "internalframe", "error", "warning", "success", "custom", "actions.", "objects.", "umberon", "paper");
        long checked = 0;
        for (Object key : UIManager.getLookAndFeelDefaults().keySet()) {
            String name = key.toString().toLowerCase(Locale.ROOT);
            Color color = UIManager.getColor(key);
            boolean may = tinted.stream().anyMatch(name::contains) || name.contains("caption");
            if (color != null && !may) {
                checked++;
                assertThat(Lab.ofSrgb(color.getRGB()).chroma())
                        .as("chroma of %s %s", key, color)
                        .isLessThan(1.5);
            }
        }
        assertThat(checked).isGreaterThan(300);
    }

    @Test
    void paperIsTheSameInBothThemes() {
        Theme.install(false);
        Color paper = Theme.color("Umbercard.paper");
        assertThat(paper).isEqualTo(new Color(0xfdfcf8));
        Theme.install(true);
        assertThat(Theme.color("Umbercard.paper")).isEqualTo(paper);
    }

    /** Source: ASTM D1535, as in {@link MunsellValue}. */
    @Test
    void theGrayOfThePatchHasTheValueFive() {
        Theme.install(false);
        assertThat(Lab.ofSrgb(Theme.color("Umbercard.valueFive").getRGB()).value())
                .isCloseTo(5, within(0.05));
    }

    @Test
    void typeIsInterAtThirteen() {
        Theme.install(false);
        assertThat(Theme.font("defaultFont").getFamily()).isEqualTo("Inter");
        assertThat(Theme.font("defaultFont").getSize()).isEqualTo(13);
        assertThat(Theme.font("semibold.font").getFamily()).isEqualTo("Inter SemiBold");
    }

    @Test
    void aNameTheThemeDoesNotHaveIsADefect() {
        Theme.install(false);
        assertThatIllegalArgumentException().isThrownBy(() -> Theme.color("Umbercard.nothing"));
        assertThatIllegalArgumentException().isThrownBy(() -> Theme.font("nothing.font"));
    }
}

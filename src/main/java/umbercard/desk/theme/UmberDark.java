package umbercard.desk.theme;

import com.formdev.flatlaf.FlatDarkLaf;

/** The dark desk. Its colors stand in {@code UmberDark.properties} and {@code FlatLaf.properties}. */
public final class UmberDark extends FlatDarkLaf {
    @Override
    public String getName() {
        return "Umbercard, dark";
    }
}

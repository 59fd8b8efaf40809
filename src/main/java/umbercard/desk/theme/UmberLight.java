package umbercard.desk.theme;

import com.formdev.flatlaf.FlatLightLaf;

/** The light desk. Its colors stand in {@code UmberLight.properties} and {@code FlatLaf.properties}. */
public final class UmberLight extends FlatLightLaf {
    @Override
    public String getName() {
        return "Umbercard, light";
    }
}

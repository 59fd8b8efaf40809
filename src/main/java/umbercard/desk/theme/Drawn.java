package umbercard.desk.theme;

import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** A part of a panel that draws itself: a label to screen readers, by what it says of itself. */
public abstract class Drawn extends JComponent {
    /** What a screen reader calls it, when it is first asked. */
    protected abstract String spoken();

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.LABEL;
                }
            };
            accessibleContext.setAccessibleName(spoken());
        }
        return accessibleContext;
    }
}

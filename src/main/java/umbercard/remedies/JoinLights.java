package umbercard.remedies;

/** Joins lights over narrow gaps by more marks that lift. */
public final class JoinLights extends JoinMasses {
    public JoinLights() {
        super(Value.LIGHT);
    }

    @Override
    public String id() {
        return "join-lights";
    }

    @Override
    public int rank() {
        return 210;
    }
}

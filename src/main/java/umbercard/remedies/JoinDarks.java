package umbercard.remedies;

/** Joins darks over narrow gaps by more marks that lay. */
public final class JoinDarks extends JoinMasses {
    public JoinDarks() {
        super(Value.DARK);
    }

    @Override
    public String id() {
        return "join-darks";
    }

    @Override
    public int rank() {
        return 200;
    }
}

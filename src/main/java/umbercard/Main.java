package umbercard;

/** Chooses the desk or the command line. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        System.out.println("umbercard");
    }
}

package umbercard;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.Logger;
import umbercard.cli.Cli;

/** Starts the program: hands the call to the command line, and the command line a way to the desk. */
public final class Main {
    /** What the runtime falls back to where no locale is set; too little for degrees and painters' names. */
    private static final Charset ASCII = StandardCharsets.US_ASCII;

    private static final String HEADLESS = "java.awt.headless";

    private Main() {}

    /** Runs the call. Ends the virtual machine only when it went wrong: a desk lives on after this returns. */
    public static void main(String[] arguments) {
        List<String> call = List.of(arguments);
        boolean forTheDesk = call.isEmpty() || call.get(0).equals("desk");
        if (!forTheDesk && System.getProperty(HEADLESS) == null) {
            // No screen is needed then, and one that is broken must not disturb.
            System.setProperty(HEADLESS, "true");
        }
        Screen screen = new Screen();
        if (!forTheDesk || !screen.canOpen()) {
            quiet();
        }
        int code = Cli.run(call, screen, writer(System.out, "stdout"), writer(System.err, "stderr"));
        if (code != 0) {
            System.exit(code);
        }
    }

    /** Keeps the log off the console, where sentences for the painter are; whoever sets logging up gets what they set up. */
    private static void quiet() {
        if (System.getProperty("java.util.logging.config.file") == null
                && System.getProperty("java.util.logging.config.class") == null) {
            for (Handler handler : Logger.getLogger("").getHandlers()) {
                handler.setLevel(Level.OFF);
            }
        }
    }

    /** In the terminal's own character set where the runtime tells it, otherwise in UTF-8. */
    private static PrintWriter writer(PrintStream stream, String name) {
        String told = System.getProperty(name + ".encoding", System.getProperty("sun." + name + ".encoding", ""));
        boolean terminal = !told.isEmpty() && Charset.isSupported(told) && !ASCII.equals(Charset.forName(told));
        Charset charset = terminal ? Charset.forName(told) : StandardCharsets.UTF_8;
        return new PrintWriter(new OutputStreamWriter(stream, charset), true);
    }
}

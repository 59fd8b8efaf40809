package umbercard.kernel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * The plug-ins of one door: found with {@link ServiceLoader}, in order. One that cannot be made, throws, or misses a class
 * is reported once, switched off for the session, and the others do not notice. Safe for use by several threads.
 *
 * @param <P> the door's interface
 */
public final class Plugins<P> {
    private static final Logger LOG = Logger.getLogger(Plugins.class.getName());

    /** A plug-in that is switched off, and why. */
    public record SwitchedOff(String name, Throwable cause) {}

    private final List<P> found;
    private final Set<P> off = ConcurrentHashMap.newKeySet();
    private final List<SwitchedOff> reports = new CopyOnWriteArrayList<>();

    private Plugins(List<P> found) {
        this.found = found;
    }

    /** Looks for the door's plug-ins on the class path of the door itself. */
    public static <P> Plugins<P> find(Class<P> door, Comparator<? super P> order) {
        Plugins<P> plugins = new Plugins<>(new ArrayList<>());
        var providers = ServiceLoader.load(door, door.getClassLoader()).stream().iterator();
        while (true) {
            try {
                if (!providers.hasNext()) {
                    break;
                }
                P plugin = providers.next().get();
                order.compare(plugin, plugin); // one that cannot say its place is found out here, not while sorting
                plugins.found.add(plugin);
            } catch (ServiceConfigurationError | LinkageError | RuntimeException failure) {
                plugins.report(door.getSimpleName(), failure);
            }
        }
        plugins.found.sort(order);
        return plugins;
    }

    /** Those given, in that order: for tests and for the painter's own. */
    public static <P> Plugins<P> of(List<P> plugins) {
        return new Plugins<>(new ArrayList<>(plugins));
    }

    /** Those that are on, in order. */
    public List<P> on() {
        return found.stream().filter(plugin -> !off.contains(plugin)).toList();
    }

    /** Those that were switched off, in the order it happened. */
    public List<SwitchedOff> switchedOff() {
        return List.copyOf(reports);
    }

    /** What the plug-in gives when asked; empty if it fails, which switches it off. */
    public <T> Optional<T> ask(P plugin, Function<P, T> question) {
        if (off.contains(plugin)) {
            return Optional.empty();
        }
        try {
            return Optional.of(question.apply(plugin));
        } catch (RuntimeException | LinkageError failure) {
            if (off.add(plugin)) {
                report(plugin.getClass().getName(), failure);
            }
            return Optional.empty();
        }
    }

    private void report(String name, Throwable failure) {
        reports.add(new SwitchedOff(name, failure));
        LOG.log(Level.WARNING, "switched off: " + name, failure);
    }
}

package umbercard.screen;

import com.github.caciocavallosilano.cacio.ctc.CTCGraphicsEnvironment;
import com.github.caciocavallosilano.cacio.ctc.MemToolkit;
import com.github.caciocavallosilano.cacio.peer.managed.MemFocusManager;
import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;

/**
 * Puts a toolkit that draws in memory in the place of the machine's own. To be called once, before anything else touches
 * the toolkit, in a JVM started with {@code java.awt.headless=false}.
 */
final class InMemoryScreen {
    /** The release whose insides are known; later ones lack a class that is swapped here. */
    static final int JAVA_RELEASE = 17;

    private InMemoryScreen() {}

    /**
     * Installs it. Everything is looked up before anything is changed, so that a failure to find something leaves the
     * machine's own display usable.
     *
     * @throws ReflectiveOperationException if this Java runtime is built differently
     */
    static void install() throws ReflectiveOperationException {
        Statics headless = Statics.of(GraphicsEnvironment.class, "headless");
        Statics defaultHeadless = Statics.of(GraphicsEnvironment.class, "defaultHeadless");
        Statics surfaces = Statics.of(found("sun.java2d.SurfaceManagerFactory"), "instance");
        Statics environment = Statics.of(found("java.awt.GraphicsEnvironment$LocalGE"), "INSTANCE");
        Statics toolkit = Statics.of(Toolkit.class, "toolkit");
        // Initialising this class loads the native library for windows, which it would not once headless is set.
        Class.forName(Toolkit.class.getName());
        System.setProperty("cacio.focusmgr", MemFocusManager.class.getName());

        // As if there were no display for a moment: the environment then initialises without looking for one.
        headless.put(Boolean.TRUE);
        GraphicsEnvironment.getLocalGraphicsEnvironment();
        headless.put(Boolean.FALSE);
        defaultHeadless.put(Boolean.FALSE);
        surfaces.put(null);
        environment.put(CTCGraphicsEnvironment.getInstance());
        toolkit.put(new MemToolkit());
        if (Toolkit.getDefaultToolkit().getScreenSize().width <= 0 || GraphicsEnvironment.isHeadless()) {
            throw new IllegalStateException("the toolkit did not take the screen in memory");
        }
    }

    /** A class of the runtime, not yet initialised: that would open the machine's own display. */
    private static Class<?> found(String name) throws ClassNotFoundException {
        return Class.forName(name, false, InMemoryScreen.class.getClassLoader());
    }

    /**
     * A static field that may be final. It is written through {@code sun.misc.Unsafe}, reached by reflection because the
     * compiler warns of its bare name and lets no one silence that.
     */
    private record Statics(Object unsafe, Method put, Object base, long offset) {

        static Statics of(Class<?> type, String name) throws ReflectiveOperationException {
            Class<?> unsafeType = Class.forName("sun.misc.Unsafe");
            Field only = unsafeType.getDeclaredField("theUnsafe");
            only.setAccessible(true);
            Object unsafe = only.get(null);
            Field field = type.getDeclaredField(name);
            return new Statics(
                    unsafe,
                    unsafeType.getMethod("putObjectVolatile", Object.class, long.class, Object.class),
                    unsafeType.getMethod("staticFieldBase", Field.class).invoke(unsafe, field),
                    (long) unsafeType
                            .getMethod("staticFieldOffset", Field.class)
                            .invoke(unsafe, field));
        }

        void put(Object value) throws IllegalAccessException, InvocationTargetException {
            put.invoke(unsafe, base, offset, value);
        }
    }
}

package depot.optimizer.cli;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Proxy;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Ctrl-C while a fleet is planned: the first one asks for the best plan so far, the second one ends the program at once. Java has no public way to
 * listen to it; where the usual one is missing, the first ends the program.
 */
final class Interruption implements AutoCloseable {

    /** What shells expect of a program that Ctrl-C has ended: 128 and the number of the signal. */
    private static final int ENDED = 130;

    private final AtomicBoolean asked = new AtomicBoolean();
    private final Terminal terminal;
    private Object previous;

    private Interruption(Terminal terminal) {
        this.terminal = terminal;
    }

    /** Listens until it is closed. */
    static Interruption listen(Terminal terminal) {
        Interruption interruption = new Interruption(terminal);
        interruption.previous = handle(interruption.handler());
        return interruption;
    }

    /** Whether the run was asked to end. */
    boolean asked() {
        return asked.get();
    }

    private Object handler() {
        InvocationHandler handler = (proxy, method, arguments) -> switch (method.getName()) {
            case "handle" -> {
                pressed();
                yield null;
            }
            case "hashCode" -> System.identityHashCode(proxy);
            case "equals" -> proxy == arguments[0];
            default -> "interruption";
        };
        try {
            Class<?> type = Class.forName("sun.misc.SignalHandler");
            return Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, handler);
        } catch (ReflectiveOperationException e) {
            return this;
        }
    }

    private void pressed() {
        if (asked.getAndSet(true)) {
            System.exit(ENDED);
        }
        terminal.problem(
                "Asked to end: the best plan so far is written when the depots at work are done. Once more ends at once.");
    }

    private static Object handle(Object handler) {
        try {
            Class<?> signal = Class.forName("sun.misc.Signal");
            Class<?> type = Class.forName("sun.misc.SignalHandler");
            Object interrupt = signal.getConstructor(String.class).newInstance("INT");
            return signal.getMethod("handle", signal, type).invoke(null, interrupt, handler);
        } catch (ReflectiveOperationException | IllegalArgumentException e) {
            return null;
        }
    }

    @Override
    public void close() {
        if (previous != null) {
            handle(previous);
        }
    }
}

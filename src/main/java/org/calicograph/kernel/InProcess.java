package org.calicograph.kernel;

import java.io.File;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import jdk.jshell.execution.DirectExecutionControl;
import jdk.jshell.execution.LoaderDelegate;
import jdk.jshell.spi.ExecutionControl;

/**
 * Runs what JShell has compiled, in this process and on the calling thread, and keeps results as the
 * objects that they are.
 *
 * <p>The lock on the compiler is let go while a cell's own code runs, so that scans and completion
 * are answered meanwhile.
 */
final class InProcess extends DirectExecutionControl {

    /** How one run ended. */
    record Outcome(Method method, Object value, Optional<Throwable> thrown) { }

    private final Running running;
    private final ReentrantLock compiler;
    private final Classes classes;
    private final List<Outcome> outcomes = new ArrayList<>();
    private boolean dry;

    InProcess(Running running, ReentrantLock compiler, Classes classes) {
        super(classes);
        this.running = running;
        this.compiler = compiler;
        this.classes = classes;
    }

    /** What has been run since the last call. */
    List<Outcome> outcomes() {
        List<Outcome> all = List.copyOf(outcomes);
        outcomes.clear();
        return all;
    }

    /** While dry, things are compiled and loaded, but not run. */
    void dry(boolean on) {
        dry = on;
    }

    @Override
    public String invoke(String className, String methodName) {
        if (dry) {
            return "";
        }
        try {
            Method method = classes.findClass(className).getDeclaredMethod(methodName);
            method.setAccessible(true);
            compiler.unlock();
            Outcome outcome;
            try {
                outcome = run(method);
            } finally {
                compiler.lock();
            }
            outcomes.add(outcome);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
        return "";
    }

    /** Runs a compiled piece, for the first time or again. */
    Outcome run(Method method) {
        try {
            return new Outcome(method, running.run(() -> method.invoke(null)), Optional.empty());
        } catch (InvocationTargetException e) {
            return new Outcome(method, null, Optional.of(e.getCause()));
        } catch (Throwable e) {
            return new Outcome(method, null, Optional.of(e));
        }
    }

    @Override
    public String varValue(String className, String varName) {
        return "";
    }

    @Override
    public void close() {
        // The process ends as a whole.
    }

    /** The loader of compiled cells; below it the stdlib, below that the product. */
    static final class Classes extends ClassLoader implements LoaderDelegate {

        private final Map<String, byte[]> bytes = new HashMap<>();

        Classes(Optional<Path> stdlib) {
            super(stdlib.<ClassLoader>map(Classes::of).orElse(Classes.class.getClassLoader()));
        }

        private static ClassLoader of(Path folder) {
            try {
                return new URLClassLoader("stdlib", new URL[] {new File(folder.toString() + File.separator).toURI().toURL()},
                        Classes.class.getClassLoader());
            } catch (MalformedURLException e) {
                throw new IllegalStateException(e);
            }
        }

        @Override
        public void load(ExecutionControl.ClassBytecodes[] compiled) throws ExecutionControl.ClassInstallException {
            boolean[] loaded = new boolean[compiled.length];
            try {
                synchronized (bytes) {
                    for (ExecutionControl.ClassBytecodes each : compiled) {
                        bytes.put(each.name(), each.bytecodes());
                    }
                }
                for (int i = 0; i < compiled.length; i++) {
                    Class.forName(compiled[i].name(), false, this);
                    loaded[i] = true;
                }
            } catch (Throwable e) {
                throw new ExecutionControl.ClassInstallException("load: " + e, loaded);
            }
        }

        @Override
        public Class<?> findClass(String name) throws ClassNotFoundException {
            Class<?> known = findLoadedClass(name);
            if (known != null) {
                return known;
            }
            byte[] code;
            synchronized (bytes) {
                code = bytes.remove(name);
            }
            if (code == null) {
                throw new ClassNotFoundException(name);
            }
            return defineClass(name, code, 0, code.length);
        }

        @Override
        public void classesRedefined(ExecutionControl.ClassBytecodes[] compiled) {
            // JShell gives changed classes new names instead.
        }

        @Override
        public void addToClasspath(String path) {
            // The stdlib is there from the start.
        }
    }
}

package org.calicograph.stdlib;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** The routines in the folder stdlib, compiled once for the tests as a quilter's own would be. */
public final class CompiledStdlib {

    static final Path FOLDER = Path.of("stdlib");
    private static final ClassLoader LOADER = compiled();

    private CompiledStdlib() { }

    /** The names of the classes, in alphabetical order. */
    public static List<String> names() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(".java"))
                    .map(f -> f.substring(0, f.length() - 5)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Class<?> named(String name) {
        try {
            return Class.forName("org.calicograph.stdlib." + name, true, LOADER);
        } catch (ClassNotFoundException e) {
            throw new AssertionError(e);
        }
    }

    /** Calls a public method by name, on an object or on a class; the arguments pick the overload by their number. */
    public static Object call(Object on, String method, Object... arguments) {
        Class<?> type = on instanceof Class<?> c ? c : on.getClass();
        for (Method m : type.getMethods()) {
            if (m.getName().equals(method) && m.getParameterCount() == arguments.length) {
                try {
                    return m.invoke(on instanceof Class<?> ? null : on, arguments);
                } catch (InvocationTargetException e) {
                    if (e.getCause() instanceof RuntimeException cause) {
                        throw cause;
                    }
                    throw new AssertionError(e.getCause());
                } catch (IllegalAccessException e) {
                    throw new AssertionError(e);
                }
            }
        }
        throw new AssertionError(type + " has no method " + method + " with " + arguments.length + " arguments");
    }

    private static ClassLoader compiled() {
        JavaCompiler javac = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = javac.getStandardFileManager(null, null, null)) {
            Path out = Files.createTempDirectory("calicograph-stdlib");
            List<Path> sources = names().stream().map(n -> FOLDER.resolve(n + ".java")).toList();
            StringWriter errors = new StringWriter();
            boolean good = javac.getTask(errors, files, null,
                    List.of("-d", out.toString(), "--release", "17", "-Xlint:all", "-Werror"), null,
                    files.getJavaFileObjectsFromPaths(sources)).call();
            if (!good) {
                throw new AssertionError(errors.toString());
            }
            return new URLClassLoader(new URL[] {out.toUri().toURL()}, CompiledStdlib.class.getClassLoader());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

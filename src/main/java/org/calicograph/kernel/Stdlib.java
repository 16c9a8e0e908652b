package org.calicograph.kernel;

import java.io.IOException;
import java.net.URI;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.Diagnostic;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.calicograph.wire.Catalogue;
import org.calicograph.wire.Place;
import org.calicograph.wire.Problem;

/**
 * The stdlib: Java that a quilter can read and edit, compiled into a folder that is named by its
 * content and kept. A file that does not compile is left out, with those that need it.
 *
 * <p>All classes are of {@link #PACKAGE}; a file may leave out the package line.
 */
final class Stdlib {

    static final String PACKAGE = "org.calicograph.stdlib";

    private static final Pattern PACKAGE_LINE = Pattern.compile("(?m)^\\s*package\\s+[\\w.]+\\s*;");
    private static final int KEPT = 8;
    /** What could not be compiled, and the sizes of all files, in a folder of classes. */
    private static final String BROKEN = "broken.txt";
    private static final String WHOLE = "whole.txt";

    private final Map<String, Path> files;
    private final Optional<Path> classes;
    private final List<Catalogue.Broken> broken;

    private Stdlib(Map<String, Path> files, Optional<Path> classes, List<Catalogue.Broken> broken) {
        this.files = files;
        this.classes = classes;
        this.broken = broken;
    }

    /** A source with the package line that it may have left out, on its first line so that lines stay as they are. */
    static final class Source extends SimpleJavaFileObject {
        final Path file;
        final String text;
        /** How far the first line is moved to the right. */
        final int shift;

        Source(Path file, String content) {
            super(URI.create("string:///" + PACKAGE.replace('.', '/') + "/" + file.getFileName()), Kind.SOURCE);
            this.file = file;
            String head = PACKAGE_LINE.matcher(content).find() ? "" : "package " + PACKAGE + "; ";
            this.shift = head.length();
            this.text = head + content;
        }

        @Override
        public CharSequence getCharContent(boolean ignore) {
            return text;
        }
    }

    /**
     * @param folders later ones are laid over earlier ones: of two files with one name, the later counts
     * @param cache   compiled classes go into a folder below it; where it can't be written they are compiled for this
     *                process alone
     */
    static Stdlib of(List<Path> folders, Path cache) throws IOException {
        Map<String, Path> files = new TreeMap<>();
        Map<Path, String> texts = new LinkedHashMap<>();
        List<Catalogue.Broken> unread = new ArrayList<>();
        for (Path folder : folders) {
            if (Files.isDirectory(folder)) {
                sources(folder, unread).forEach(f -> files.put(f.getFileName().toString(), f));
            }
        }
        for (Path file : files.values()) {
            try {
                texts.put(file, read(file));
            } catch (IOException e) {
                unread.add(broken(file, e instanceof CharacterCodingException ? "the file isn't text in UTF-8; save it as UTF-8"
                        : "the file can't be read: " + e.getMessage() + "; check its permissions"));
            } catch (IllegalArgumentException e) {
                unread.add(broken(file, e.getMessage()));
            }
        }
        if (texts.isEmpty()) {
            return new Stdlib(files, Optional.empty(), unread);
        }
        Path kept = kept(texts, cache);
        List<Catalogue.Broken> broken = new ArrayList<>(unread);
        broken.addAll(readBroken(kept.resolve(BROKEN)));
        return new Stdlib(files, Optional.of(kept), broken);
    }

    /** The folder with the compiled classes, compiled now if there is none or it is damaged. */
    private static Path kept(Map<Path, String> texts, Path cache) throws IOException {
        Path kept = cache.resolve("stdlib").resolve(key(texts));
        try {
            if (isWhole(kept)) {
                Files.setLastModifiedTime(kept, FileTime.fromMillis(System.currentTimeMillis()));
                return kept;
            }
            if (Files.exists(kept)) {
                delete(kept);
            }
            compile(texts, kept);
            dropOld(kept);
            return kept;
        } catch (FileSystemException e) {
            if (isWhole(kept)) {
                return kept;
            }
            // The cache is full, or somebody else's: this process does without it.
            Path alone = Files.createTempDirectory("calicograph-stdlib");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> {
                try {
                    delete(alone);
                } catch (IOException left) {
                    // The system clears its temporary folder itself.
                }
            }));
            compile(texts, alone.resolve("classes"));
            return alone.resolve("classes");
        }
    }

    /** Sources in a folder and below it; what an editor or a system leaves there, and folders, are none. */
    private static List<Path> sources(Path folder, List<Catalogue.Broken> unread) throws IOException {
        List<Path> found = new ArrayList<>();
        Files.walkFileTree(folder, Set.of(FileVisitOption.FOLLOW_LINKS), 8, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes is) {
                String name = file.getFileName().toString();
                if (is.isRegularFile() && name.endsWith(".java") && !name.startsWith(".") && !name.equals("package-info.java")) {
                    found.add(file);
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) {
                String name = file.getFileName().toString();
                if (!name.startsWith(".")) {
                    unread.add(broken(file, "it can't be read: " + e.getMessage() + "; check its permissions"));
                }
                return FileVisitResult.CONTINUE;
            }
        });
        found.sort(Comparator.naturalOrder());
        return found;
    }

    /**
     * @throws IllegalArgumentException if the text can't be a file of the stdlib, with the repair
     * @throws IOException              if it can't be read, or isn't UTF-8
     */
    private static String read(Path file) throws IOException {
        String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(Files.readAllBytes(file))).toString();
        // A byte-order mark is an editor's, not Java's.
        String whole = text.startsWith("\uFEFF") ? text.substring(1) : text;
        Matcher line = PACKAGE_LINE.matcher(whole);
        if (line.find() && !line.group().strip().matches("package\\s+" + Pattern.quote(PACKAGE) + "\\s*;")) {
            throw new IllegalArgumentException("its line '" + line.group().strip() + "' puts it where no cell looks; take the line out");
        }
        String name = file.getFileName().toString().replaceFirst("\\.java$", "");
        if (!Pattern.compile("\\b(?:class|interface|record|enum)\\s+" + Pattern.quote(name) + "\\b").matcher(whole).find()) {
            throw new IllegalArgumentException("there is no class '" + name + "' in it; name the class and the file alike");
        }
        return whole;
    }

    private static Catalogue.Broken broken(Path file, String why) {
        return new Catalogue.Broken(file.toString(), new Problem(new Place(1, 1), new Place(1, 1), why));
    }

    /** True if every class that was written there is there, as long as it was: not so after a power cut. */
    private static boolean isWhole(Path kept) {
        try {
            for (String line : Files.readAllLines(kept.resolve(WHOLE))) {
                String[] parts = line.split("\t");
                if (Files.size(kept.resolve(parts[1])) != Long.parseLong(parts[0])) {
                    return false;
                }
            }
            readBroken(kept.resolve(BROKEN));
            return true;
        } catch (IOException | RuntimeException e) {
            return false;
        }
    }

    /** Where the classes are; nowhere if there is no stdlib. */
    Optional<Path> classes() {
        return classes;
    }

    boolean isEmpty() {
        return classes.isEmpty() || broken.size() == files.size();
    }

    List<Catalogue.Broken> broken() {
        return broken;
    }

    List<Path> files() {
        return List.copyOf(files.values());
    }

    private static String key(Map<Path, String> texts) throws IOException {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(product().getBytes(StandardCharsets.UTF_8));
            texts.forEach((file, text) -> {
                digest.update((file + "\0").getBytes(StandardCharsets.UTF_8));
                digest.update(text.getBytes(StandardCharsets.UTF_8));
            });
            return HexFormat.of().formatHex(digest.digest()).substring(0, 32);
        } catch (NoSuchAlgorithmException e) {
            throw new IOException(e);
        }
    }

    /** What changes whenever the product is built anew: the stdlib is compiled against it. */
    private static String product() throws IOException {
        String own = Stdlib.class.getName().replace('.', '/') + ".class";
        String place = String.valueOf(Stdlib.class.getClassLoader().getResource(own));
        if (place.startsWith("jar:file:")) {
            Path jar = Path.of(URI.create(place.substring(4, place.indexOf('!'))));
            return jar + " " + Files.size(jar) + " " + Files.getLastModifiedTime(jar).toMillis();
        }
        if (place.startsWith("file:")) {
            Path root = Path.of(URI.create(place)).getParent().getParent();
            try (Stream<Path> all = Files.walk(root)) {
                return root + " " + all.filter(f -> f.toString().endsWith(".class")).mapToLong(f -> f.toFile().lastModified()).max().orElse(0);
            }
        }
        return place;
    }

    private static void compile(Map<Path, String> texts, Path kept) throws IOException {
        Files.createDirectories(kept.getParent());
        Path work = Files.createTempDirectory(kept.getParent(), "new");
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<Source> sources = new ArrayList<>();
        texts.forEach((file, text) -> sources.add(new Source(file, text)));
        Map<Source, Catalogue.Broken> broken = new LinkedHashMap<>();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, Locale.ENGLISH, StandardCharsets.UTF_8)) {
            boolean again = true;
            while (again) {
                int before = broken.size();
                List<Source> left = sources.stream().filter(s -> !broken.containsKey(s)).toList();
                if (left.isEmpty()) {
                    break;
                }
                boolean good = compiler.getTask(null, manager, diagnostic -> note(diagnostic, broken),
                        List.of("-d", work.toString(), "-g", "-parameters", "-proc:none", "-Xlint:none", "-encoding", "UTF-8"), null, left).call();
                again = !good && broken.size() > before;
                if (!good && !again) {
                    throw new IOException("the stdlib does not compile, and the compiler names no file");
                }
            }
        }
        List<String> lines = new ArrayList<>();
        broken.values().forEach(b -> lines.add(String.join("\t", b.file(), "" + b.problem().from().line(), "" + b.problem().from().column(),
                "" + b.problem().to().line(), "" + b.problem().to().column(), b.problem().message().replaceAll("\\s+", " "))));
        Files.write(work.resolve(BROKEN), lines);
        List<String> sizes = new ArrayList<>();
        try (Stream<Path> all = Files.walk(work)) {
            for (Path each : all.filter(Files::isRegularFile).toList()) {
                sizes.add(Files.size(each) + "\t" + work.relativize(each));
            }
        }
        Files.write(work.resolve(WHOLE), sizes);
        try {
            Files.move(work, kept, StandardCopyOption.ATOMIC_MOVE);
        } catch (FileAlreadyExistsException | java.nio.file.DirectoryNotEmptyException e) {
            delete(work); // Another kernel was quicker, with the same result.
        } catch (java.nio.file.FileSystemException e) {
            if (!isWhole(kept)) {
                throw e;
            }
            delete(work);
        }
    }

    private static void note(Diagnostic<? extends JavaFileObject> diagnostic, Map<Source, Catalogue.Broken> broken) {
        if (diagnostic.getKind() == Diagnostic.Kind.ERROR && diagnostic.getSource() != null) {
            String name = diagnostic.getSource().getName();
            Source source = diagnostic.getSource() instanceof Source s ? s : null;
            if (source == null) {
                throw new IllegalStateException("an error in " + name + ", which is no file of the stdlib");
            }
            int from = (int) Math.max(0, diagnostic.getStartPosition());
            int to = (int) Math.max(from, diagnostic.getEndPosition());
            broken.putIfAbsent(source, new Catalogue.Broken(source.file.toString(), new Problem(place(source, from), place(source, to),
                    diagnostic.getMessage(Locale.ENGLISH))));
        }
    }

    private static Place place(Source source, int offset) {
        return Place.of(source.text.substring(source.shift), Math.max(0, offset - source.shift));
    }

    private static List<Catalogue.Broken> readBroken(Path list) throws IOException {
        List<Catalogue.Broken> broken = new ArrayList<>();
        for (String line : Files.readAllLines(list)) {
            String[] f = line.split("\t", 6);
            broken.add(new Catalogue.Broken(f[0], new Problem(new Place(Integer.parseInt(f[1]), Integer.parseInt(f[2])),
                    new Place(Integer.parseInt(f[3]), Integer.parseInt(f[4])), f[5])));
        }
        return broken;
    }

    private static void dropOld(Path kept) throws IOException {
        List<Path> folders;
        try (Stream<Path> all = Files.list(kept.getParent())) {
            folders = all.filter(Files::isDirectory).sorted(Comparator.comparing((Path f) -> f.toFile().lastModified()).reversed()).toList();
        }
        for (Path old : folders.subList(Math.min(KEPT, folders.size()), folders.size())) {
            delete(old);
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(each);
            }
        }
    }
}

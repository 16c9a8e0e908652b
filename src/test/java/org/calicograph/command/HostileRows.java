package org.calicograph.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Hostile notebooks and homes, as data: what is done, by the words under which it is told. */
final class HostileRows {

    private HostileRows() { }

    /** Files that are no good notebooks, by their names among those that the reader is tested with. */
    static final List<String> FILES = List.of("an empty file", "prose", "a page of HTML", "a comment", "a comma at the end", "a newer format", "format 1.5",
            "two cells with one id", "the id '../a1'", "the id '-a1'", "a field twice", "a number with a leading zero", "a line feed within a text",
            "two notebooks in one file", "a merge conflict", "latin-1", "UTF-16", "NULs alone", "the start of a PNG", "a hundred thousand brackets",
            "deep within a field that isn't known", "an id of a megabyte");

    /** Cells of one notebook; none of them ends the process. */
    static Map<String, String> cells() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("a literal of 60,000 letters", "\"" + "x".repeat(60_000) + "\".length()");
        all.put("closes System.out and prints", "System.out.close();\nSystem.out.println(\"low\");\n1");
        all.put("prints after another has closed System.out", "System.out.println(\"low\");\n\"heard\"");
        all.put("sets System.out, System.err and System.in to null", "System.setOut(null);\nSystem.setErr(null);\nSystem.setIn(null);\n1");
        all.put("reads standard input", "System.in.read()");
        all.put("deletes the cache", "new ProcessBuilder(\"rm\", \"-rf\", \"CACHE\").start().waitFor()");
        all.put("throws in toString", "new Object() { public String toString() { throw new IllegalStateException(\"no words\"); } }");
        all.put("gives null in toString", "new Object() { public String toString() { return null; } }");
        all.put("gives null", "(String) null");
        all.put("gives 5 MB in toString", "new Object() { public String toString() { return \"x\".repeat(5 << 20); } }.toString().length()");
        all.put("calls itself without end", "int deep(int n) { return 1 + deep(n + 1); }\ndeep(0)");
        all.put("a list that holds itself", "List<Object> ring = new ArrayList<>();\nring.add(ring);\nring");
        all.put("throws without a message", "throw new IllegalStateException();");
        all.put("throws an error of its own", "throw new Error(\"made here\");");
        all.put("throws what throws when it is asked why", "throw new RuntimeException() { public String getMessage() { throw new IllegalStateException(\"no words\"); } };");
        all.put("throws control letters", "throw new RuntimeException(\"a\\u001b[31mred\\u0007\");");
        all.put("throws letters that turn the line round", "throw new RuntimeException(\"a\\u202edesrever\\u2028b\");");
        all.put("throws 5 MB of words", "throw new RuntimeException(\"x\".repeat(5 << 20));");
        all.put("interrupts its own thread", "Thread.currentThread().interrupt();\n1");
        all.put("leaves a thread behind", "new Thread(() -> { try { Thread.sleep(1_000_000); } catch (InterruptedException e) { } }).start();\n1");
        all.put("makes Turkish the language", "Locale.setDefault(new Locale(\"tr\"));\n1");
        all.put("prints in what may be Turkish", "inches(1, 2)");
        all.put("a length of 1e300", "inches(1e300)");
        all.put("a length that is no number", "inches(Double.NaN)");
        all.put("a length past all bounds", "inches(1_000_000_000).times(1_000_000_000)");
        all.put("a dial from high to low", "int low = dial(\"low\", 9, 2, 5);");
        all.put("a dial that begins outside its range", "int off = dial(\"off\", 2, 9, 50);");
        all.put("a dial without a name", "int unnamed = dial(\"\", 2, 9, 5);");
        all.put("a dial in a loop", "for (int i = 0; i < 3; i++) { int loop = dial(\"loop\", 2, 9, 5); }");
        all.put("needs a cell that needs it", "int hen = egg + 1;");
        all.put("needs the cell that needs it", "int egg = hen + 1;");
        all.put("a name that nothing declares", "moonraker + 1");
        all.put("half a line", "int half = ");
        all.put("a bracket that nothing closes", "List.of(1, (2");
        all.put("a text that nothing closes", "\"open");
        all.put("a package line", "package mine;\n1");
        all.put("an import of nothing", "import no.such.thing.*;\n1");
        all.put("a control letter within a name", "int a\u0001b = 1;");
        all.put("letters that look alike", "int w\u0456dth = 1;\nwidth");
        all.put("comments alone", "// nothing");
        all.put("a link to data:text/html", "\"<a href='data:text/html,x'>x</a>\"");
        return all;
    }

    /** Cells that end or hold up their process. */
    static Map<String, String> deadly() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("ends the process", "System.exit(3);");
        all.put("stands below one that ended the process", "6 * 7");
        return all;
    }

    /** The same, which take long. */
    static Map<String, String> slow() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("5 MB of letters", "// " + "x".repeat(5 << 20) + "\n1");
        all.put("halts the process with 0", "Runtime.getRuntime().halt(0);");
        all.put("kills the process", "new ProcessBuilder(\"kill\", \"-9\", \"\" + ProcessHandle.current().pid()).start().waitFor();\nThread.sleep(100_000);");
        all.put("fills the memory", "var hoard = new ArrayList<long[]>();\nwhile (true) hoard.add(new long[1_000_000]);");
        all.put("spins", "while (true) { }");
        all.put("spins and catches all that is thrown", "while (true) { try { while (true) { } } catch (Throwable t) { } }");
        all.put("sleeps", "Thread.sleep(1_000_000);");
        all.put("prints without end", "while (true) System.out.println(\"tide\");");
        all.put("a stream without end", "IntStream.iterate(0, i -> i).filter(i -> i > 0).findFirst()");
        all.put("stands below all of these", "6 * 7");
        return all;
    }

    /** Files in the folder of own routines; the cell asks for {@code NAME.value()}. */
    static Map<String, String> routines() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("Sound", "public final class Sound { public static int value() { return 7; } }");
        all.put("Torn", "public final class Torn { public static int value() { return ; } }");
        all.put("Needy", "public final class Needy { public static int value() { return Torn.value(); } }");
        all.put("Hen", "public class Hen extends Egg { public static int value() { return 1; } }");
        all.put("Egg", "public class Egg extends Hen { public static int value() { return 1; } }");
        all.put("Packed", "package rings;\npublic final class Packed { public static int value() { return 1; } }");
        all.put("Marked", "\uFEFFpublic final class Marked { public static int value() { return 8; } }");
        all.put("Bend", "public final class Hitch { public static int value() { return 1; } }");
        all.put("Empty", "");
        all.put("Thrower", "public final class Thrower { static { if (true) throw new IllegalStateException(\"not today\"); } public static int value() { return 1; } }");
        all.put("Latin", "// f\u00fcnf\npublic final class Latin { public static int value() { return 5; } }");
        all.put("Nul", "\0\0\0\0");
        return all;
    }

    /** Those of the command lines that start a process for the cells. */
    static final List<String> DRAWING = List.of("a page over a link to itself", "a page below a file", "a page where no folder can be", "a page with a name of 300 letters",
            "draw into a file", "draw into a device", "draw into a folder that has a folder for a picture", "a sheet over no such dial", "no such dial", "a dial past its range",
            "a dial that is no number", "more memory than there is", "no such quilt", "a class in an empty folder", "compared with nothing", "routines beside no notebook");

    /** Command lines over a small sound notebook {@code N}; what begins with {@code +} is made ready in the folder. */
    static Map<String, String> commands() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("no such notebook", "check +none.json");
        all.put("the notebook is a folder", "check +folder");
        all.put("the notebook is a device", "check /dev/null");
        all.put("the notebook is a named pipe", "check +pipe");
        all.put("the notebook is a link to itself", "check +loop");
        all.put("the notebook has no name", "check ''");
        all.put("the notebook's name has 300 letters", "check +" + "n".repeat(300));
        all.put("a page over the notebook", "page N --out N");
        all.put("a booklet over the notebook", "book N --out N");
        all.put("a page over another notebook", "page N --out +other.json");
        all.put("a page over a link to a notebook", "page N --out +linked.html");
        all.put("a page over a letter", "page N --out +letter.txt");
        all.put("a page over a folder", "page N --out +folder");
        all.put("a page over a device", "page N --out /dev/full");
        all.put("a page over a named pipe", "page N --out +pipe");
        all.put("a page over a link to itself", "page N --out +loop");
        all.put("a page without a name", "page N --out ''");
        all.put("a page below a file", "page N --out +letter.txt/page.html");
        all.put("a page where no folder can be", "page N --out /proc/nowhere/page.html");
        all.put("a page with a name of 300 letters", "page N --out +" + "n".repeat(300));
        all.put("draw into a file", "draw N --out +letter.txt");
        all.put("draw into a device", "draw N --out /dev/null");
        all.put("draw into a folder whose report is a notebook", "draw N --out +reported");
        all.put("draw into a folder whose report is a folder", "draw N --out +foldered");
        all.put("draw into a folder that has a folder for a picture", "draw N --out +pictured");
        all.put("a sheet that is no picture", "sheet N --over beds --out +sheet.gif");
        all.put("a sheet over no such dial", "sheet N --over bedz --out +sheet.svg");
        all.put("no such dial", "check N --set bedz=9");
        all.put("a dial past its range", "check N --set beds=40");
        all.put("a dial that is no number", "check N --set beds=many");
        all.put("a dial without a value", "check N --set beds");
        all.put("a dial set twice", "check N --set beds=3 --set beds=4");
        all.put("memory that is no number", "check N --heap much");
        all.put("too little memory", "check N --heap 3");
        all.put("more memory than there is", "check N --heap 2000000000");
        all.put("no time", "check N --time-limit 0");
        all.put("less than no time", "check N --time-limit -5");
        all.put("time that is no number", "check N --time-limit NaN");
        all.put("no such paper", "book N --out +b.pdf --paper B7");
        all.put("no such part", "book N --out +b.pdf --parts crust");
        all.put("no such quilt", "book N --out +b.pdf --quilt nothing");
        all.put("no such command", "drwa N");
        all.put("a new notebook over another", "new +other.json");
        all.put("a new notebook in no folder", "new +nowhere/new.json");
        all.put("a new notebook below a file", "new +letter.txt/new.json");
        all.put("routines beside no notebook", "routines +none.json");
        all.put("a class in no folder", "class +none --out +c.html");
        all.put("a class in an empty folder", "class +folder --out +c.html");
        all.put("compared with nothing", "compare N +none.json --out +c.html");
        return all;
    }
}

package org.calicograph.command;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;

/** The command line's way in: {@code calicograph COMMAND …}. */
@Command(
    name = "calicograph",
    description = "A notebook for parametric quilt design.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class)
public final class Main implements Runnable {

  /**
   * Runs one command and ends the process with its exit code.
   *
   * @param arguments the command and its arguments; none prints the help
   */
  public static void main(String[] arguments) {
    System.exit(new CommandLine(new Main()).execute(arguments));
  }

  @Override
  public void run() {
    CommandLine.usage(this, System.out);
  }

  /** The version written into the jar; {@code development} when run from loose classes. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Main.class.getPackage().getImplementationVersion();
      return new String[] {"Calicograph " + (version == null ? "development" : version)};
    }
  }
}

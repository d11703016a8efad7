package org.griplore.ui.command;

import java.time.Clock;
import org.griplore.query.question.Question;
import org.griplore.query.question.Questions;
import org.griplore.store.vocabulary.Refusal;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The whole command line: reads the words, runs the command, turns failures into one sentence. */
public final class Commands {
  private final Terminal terminal;
  private final CommandLine line;

  /** All commands, writing to a terminal. */
  public Commands(Terminal terminal, Clock clock) {
    this.terminal = terminal;
    CommandSpec root = CommandSpec.create().name("griplore");
    root.usageMessage()
        .description(
            "An archive of comparative car-tyre tests that answers questions with evidence.")
        .footer(
            "",
            "Start with `griplore demo`, or `griplore add FOLDER` for files of your own.",
            "Exit codes: 0 answered, 1 no evidence, 2 error.");
    root.addOption(CommonWords.help());
    root.addOption(
        CommandLine.Model.OptionSpec.builder("--version")
            .versionHelp(true)
            .description("Say which version this is")
            .build());
    root.version("griplore " + version());
    for (Question question : Questions.all()) {
      add(root, question.kind(), new QuestionCommand(question).spec());
    }
    add(root, "add", AddCommand.spec(clock));
    add(root, "check", CheckCommand.spec());
    add(root, "serve", ServeCommand.spec());
    add(root, "demo", DemoCommand.spec(clock));
    this.line = new CommandLine(root);
    line.setUsageHelpWidth(Math.min(100, Math.max(80, terminal.style().width())));
    line.setColorScheme(
        CommandLine.Help.defaultColorScheme(
            terminal.style().colour() ? CommandLine.Help.Ansi.ON : CommandLine.Help.Ansi.OFF));
  }

  private static void add(CommandSpec root, String name, CommandSpec spec) {
    spec.addOption(CommonWords.help());
    root.addSubcommand(name, spec);
  }

  static String version() {
    String version = Commands.class.getPackage().getImplementationVersion();
    return version == null ? "development build" : version;
  }

  /** The specification of all commands, for documents and tests. */
  public CommandSpec spec() {
    return line.getCommandSpec();
  }

  /** Runs one command line and returns the exit code. */
  public int run(String... words) {
    try {
      ParseResult parsed = line.parseArgs(words);
      ParseResult innermost = parsed;
      while (innermost.hasSubcommand()) {
        innermost = innermost.subcommand();
      }
      if (innermost.isVersionHelpRequested()) {
        terminal.out().println("griplore " + version());
        return ExitCode.ANSWERED;
      }
      if (innermost.isUsageHelpRequested() || innermost == parsed) {
        innermost.commandSpec().commandLine().usage(terminal.out());
        return ExitCode.ANSWERED;
      }
      return ((Action) innermost.commandSpec().userObject()).run(innermost, terminal);
    } catch (ParameterException e) {
      return refused(firstLine(e.getMessage()) + " See `griplore --help`.");
    } catch (Refusal e) {
      return refused(e.sentence());
    } catch (RuntimeException e) {
      if (System.getenv("GRIPLORE_TRACE") != null) {
        e.printStackTrace(terminal.err());
      }
      return refused(
          "This is a defect of Griplore, not of your data ("
              + e.getClass().getSimpleName()
              + (e.getMessage() == null ? "" : ": " + firstLine(e.getMessage()))
              + "); set GRIPLORE_TRACE=1 to see where.");
    } finally {
      terminal.out().flush();
      terminal.err().flush();
    }
  }

  private int refused(String sentence) {
    terminal.err().println("griplore: " + sentence);
    return ExitCode.ERROR;
  }

  private static String firstLine(String text) {
    String line = text.lines().findFirst().orElse(text).strip();
    return line.endsWith(".") ? line : line + ".";
  }
}

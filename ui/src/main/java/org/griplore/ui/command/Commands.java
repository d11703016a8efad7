package org.griplore.ui.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.function.Supplier;
import org.griplore.query.FormerWord;
import org.griplore.query.Questions;
import org.griplore.query.question.Question;
import org.griplore.store.vocabulary.Refusal;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The whole command line: reads the words, runs the command, turns failures into one sentence. */
public final class Commands {
  private final Terminal terminal;
  private final Map<String, Supplier<CommandSpec>> commands = new LinkedHashMap<>();

  /** All commands, writing to a terminal. */
  public Commands(Terminal terminal, Clock clock) {
    this.terminal = terminal;
    for (Question<?> question : Questions.all()) {
      commands.put(question.kind(), () -> new QuestionCommand(question).spec());
    }
    for (FormerWord former : FormerWord.ALL) {
      Question<?> question = Questions.of(former.kind()).orElseThrow();
      commands.put(former.word(), () -> new QuestionCommand(question, former.options()).hidden());
    }
    commands.put("add", () -> AddCommand.spec(clock));
    commands.put("undo", UndoCommand::spec);
    commands.put("export", ExportCommand::spec);
    commands.put("settle", () -> SettleCommand.spec(clock));
    commands.put("lineage", () -> LineageCommand.spec(clock));
    commands.put("drafts", () -> DraftsCommand.spec(clock));
    commands.put("columns", () -> ColumnsCommand.spec(clock));
    commands.put("check", () -> CheckCommand.spec(clock));
    commands.put("serve", () -> ServeCommand.spec(clock));
    commands.put("demo", () -> DemoCommand.spec(clock));
  }

  /** The command line with these commands only: making them all takes a tenth of a second. */
  private CommandLine line(Collection<String> names) {
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
    for (String name : names) {
      CommandSpec spec = commands.get(name).get();
      spec.addOption(CommonWords.help());
      root.addSubcommand(name, spec);
    }
    CommandLine line = new CommandLine(root);
    line.setUsageHelpWidth(Math.min(100, Math.max(80, terminal.style().width())));
    line.setColorScheme(
        CommandLine.Help.defaultColorScheme(
            terminal.style().colour() ? CommandLine.Help.Ansi.ON : CommandLine.Help.Ansi.OFF));
    return line;
  }

  static String version() {
    Properties told = new Properties();
    try (InputStream in = Commands.class.getResourceAsStream("version.properties")) {
      told.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return told.getProperty("version");
  }

  /** The specification of all commands, for documents and tests. */
  public CommandSpec spec() {
    return line(commands.keySet()).getCommandSpec();
  }

  /** Runs one command line and returns the exit code. */
  public int run(String... words) {
    try {
      boolean one = words.length > 0 && commands.containsKey(words[0]);
      ParseResult parsed = line(one ? List.of(words[0]) : commands.keySet()).parseArgs(words);
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

package org.griplore.ui.command;

import java.io.IOException;
import java.net.ServerSocket;
import java.time.Clock;
import java.util.concurrent.CountDownLatch;
import org.griplore.query.option.Choices;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.ui.web.Explorer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Opens the web explorer until it is interrupted. */
final class ServeCommand implements Action {
  /** No meaning: above the usual ports of development servers. */
  private static final String PORT = "7460";

  private final Clock clock;

  private ServeCommand(Clock clock) {
    this.clock = clock;
  }

  static CommandSpec spec(Clock clock) {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(new ServeCommand(clock));
    spec.usageMessage()
        .description("Open the web explorer on this machine, until Ctrl-C.")
        .footer("", "Example: griplore serve --archive my-archive --port 8080");
    spec.addOption(CommonWords.archive());
    spec.addOption(portOption());
    spec.addOption(
        OptionSpec.builder("--read-only")
            .type(boolean.class)
            .description("Show what the archive holds, and let no page change it")
            .build());
    return spec;
  }

  static OptionSpec portOption() {
    return OptionSpec.builder("--port")
        .type(String.class)
        .paramLabel("N")
        .description("The port; 0 takes any that is free (" + PORT + " when not given)")
        .build();
  }

  static int port(ParseResult words) {
    String text = words.matchedOptionValue("--port", PORT);
    if (text.matches("\\d{1,5}") && Integer.parseInt(text) <= 65535) {
      return Integer.parseInt(text);
    }
    throw Choices.refusal("port", text, "a number from 0 to 65535");
  }

  @Override
  public int run(ParseResult words, Terminal terminal) {
    int port = port(words);
    try (Archive archive = Archive.open(CommonWords.archive(words));
        QueryContext queryContext = new QueryContext(archive, CommonWords.catalogue(archive))) {
      Explorer explorer =
          words.hasMatchedOption("--read-only")
              ? new Explorer(queryContext)
              : new Explorer(queryContext, clock);
      return serve(explorer, port, terminal);
    }
  }

  /** Serves until the process is told to end, and closes the explorer. */
  static int serve(Explorer opening, int port, Terminal terminal) {
    refuseTakenPort(port);
    CountDownLatch ended = new CountDownLatch(1);
    try (Explorer explorer = opening) {
      int opened = explorer.start(port);
      Runtime.getRuntime()
          .addShutdownHook(
              new Thread(
                  () -> {
                    opening.close();
                    ended.countDown();
                  }));
      terminal
          .out()
          .println("The explorer is at http://localhost:" + opened + "/ (Ctrl-C ends it)");
      terminal.out().flush();
      ended.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return ExitCode.ANSWERED;
  }

  private static void refuseTakenPort(int port) {
    if (port == 0) {
      return;
    }
    try (ServerSocket probe =
        new ServerSocket(port, 1, java.net.InetAddress.getLoopbackAddress())) {
      probe.setReuseAddress(true);
    } catch (IOException e) {
      throw new Refusal(
          "Port " + port + " is taken or not allowed: choose another with --port, or 0 for any.",
          e);
    }
  }
}

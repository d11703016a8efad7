package org.griplore.ui.command;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.griplore.query.option.Choices;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.TestDecision;
import org.griplore.store.vocabulary.TestDecision.Verdict;
import picocli.CommandLine.ParseResult;

/** Decides whether two tests that look like one are one. */
final class TestVerdict {
  private static final Map<String, Verdict> ACTS =
      Map.of(
          "--same-test", Verdict.SAME, "--two-tests", Verdict.APART, "--open-test", Verdict.OPEN);

  private TestVerdict() {}

  /** The verdict asked for; empty when the command is about names. */
  static Optional<Verdict> of(ParseResult words) {
    List<String> given = ACTS.keySet().stream().filter(words::hasMatchedOption).sorted().toList();
    if (given.size() > 1) {
      throw Choices.refusal(given.get(1).substring(2), String.join(" ", given), "one of them");
    }
    return given.stream().findFirst().map(ACTS::get);
  }

  /** Writes it down and says so. */
  static int decide(
      Archive archive,
      List<String> keys,
      Verdict verdict,
      ParseResult words,
      Clock clock,
      Terminal terminal) {
    if (keys.size() != 2 || keys.get(0).equals(keys.get(1))) {
      throw Choices.refusal("NAME", String.join(" ", keys), "the keys of two tests");
    }
    List<String> known = archive.snapshot().tests().stream().map(test -> test.key()).toList();
    for (String key : keys) {
      if (!known.contains(key)) {
        throw Choices.refusal("NAME", key, "the key of a test, as `griplore tests` lists them");
      }
    }
    archive.decideTests(
        List.of(
            new TestDecision(
                keys.get(0),
                keys.get(1),
                verdict,
                clock.instant(),
                words.matchedOptionValue("--because", ""))));
    terminal
        .out()
        .println(
            keys.get(0)
                + " and "
                + keys.get(1)
                + switch (verdict) {
                  case SAME -> " are one test, which counts once.";
                  case APART -> " are two tests, and both count.";
                  case OPEN -> " are not decided on any more.";
                });
    return ExitCode.ANSWERED;
  }
}

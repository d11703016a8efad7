package org.griplore.query.evidence;

import java.util.List;
import org.griplore.store.archive.TestRecord;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/** Finds a test by the key it is known by. */
public final class TestKeys {
  private TestKeys() {}

  /**
   * The position of a test in {@link Evidence#tests}.
   *
   * @throws Refusal naming keys near it when no test has the key
   */
  public static int position(Evidence evidence, String key) {
    for (int i = 0; i < evidence.tests().size(); i++) {
      if (evidence.tests().get(i).key().equals(key)) {
        return i;
      }
    }
    List<String> near =
        evidence.tests().stream()
            .map(TestRecord::key)
            .filter(known -> known.equalsIgnoreCase(key) || known.contains(key))
            .limit(5)
            .toList();
    throw new Refusal(
        "No test has the key \""
            + key
            + "\""
            + (near.isEmpty()
                ? ": `griplore tests` lists them."
                : "; near: " + String.join(", ", near) + "."),
        new Problem("test", key, near.isEmpty() ? "a test's key" : String.join(" | ", near)));
  }
}

package org.griplore.ingest.messy;

import java.util.Collection;
import java.util.List;
import org.griplore.store.vocabulary.Finding;

/** What is amiss with each file that is not read whole, for a person to work through. */
final class FaultList {
  private FaultList() {}

  static String of(List<Verdict> verdicts) {
    StringBuilder text = new StringBuilder();
    verdicts.stream().filter(verdict -> !verdict.whole()).forEach(verdict -> add(text, verdict));
    return text.toString();
  }

  private static void add(StringBuilder text, Verdict verdict) {
    text.append("## ").append(verdict.file()).append(" (").append(verdict.file().truth().about());
    text.append("; ").append(verdict.right().size()).append(" right)\n");
    ReadBack read = verdict.read();
    if (read.refusal() != null) {
      text.append("  refused: ").append(read.refusal()).append('\n');
    }
    if (read.failure() != null) {
      text.append("  failed: ").append(read.failure()).append('\n');
    }
    if (read.draft()) {
      text.append("  a draft\n");
    }
    lines(text, "wrong", verdict.wrong());
    lines(text, "false tyre", verdict.falseTyres());
    if (read.refusal() == null) {
      lines(text, "lost", verdict.lost());
      lines(text, "silent", verdict.silent());
      lines(text, "detail", verdict.detailFaults());
      lines(text, "finding", read.findings().stream().map(FaultList::words).toList());
    }
    text.append('\n');
  }

  private static void lines(StringBuilder text, String what, Collection<String> lines) {
    lines.stream()
        .limit(12)
        .forEach(line -> text.append("  ").append(what).append(": ").append(line).append('\n'));
    if (lines.size() > 12) {
      text.append("  ").append(what).append(": and ").append(lines.size() - 12).append(" more\n");
    }
  }

  private static String words(Finding finding) {
    return finding.kind().key()
        + ", "
        + (finding.cell() == null ? "-" : finding.cell().place())
        + ": "
        + finding.found()
        + "; "
        + finding.expected();
  }
}

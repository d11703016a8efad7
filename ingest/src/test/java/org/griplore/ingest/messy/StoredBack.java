package org.griplore.ingest.messy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.griplore.ingest.AddedSource;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.FindingRecord;
import org.griplore.store.archive.Snapshot;
import org.griplore.store.archive.TestRecord;
import org.griplore.store.vocabulary.Circumstance;
import org.griplore.store.vocabulary.Unit;

/** What an archive holds after files were added to it, as what was read of them. */
final class StoredBack {
  private StoredBack() {}

  static ReadBack of(Archive archive, List<AddedSource> added, double seconds) {
    Snapshot all = archive.snapshot();
    List<ReadBack.Read> figures = new ArrayList<>();
    for (int i = 0; i < all.results().count(); i++) {
      add(figures, all, i);
    }
    String refusal =
        added.stream()
            .map(AddedSource::refusal)
            .filter(Objects::nonNull)
            .map(refused -> refused.sentence())
            .collect(Collectors.joining(" "));
    return new ReadBack(
        figures,
        all.tests().stream().map(TestRecord::details).toList(),
        archive.findings().stream().map(FindingRecord::finding).toList(),
        refusal.isEmpty() ? null : refusal,
        null,
        false,
        seconds);
  }

  private static void add(List<ReadBack.Read> figures, Snapshot all, int i) {
    int entry = all.results().entry()[i];
    String model = all.models().get(all.entries().model()[entry]).name();
    boolean ev = all.entries().variant()[entry].ev() && !model.endsWith(" EV");
    TestRecord test = all.tests().get(all.entries().test()[entry]);
    Circumstance circumstance = all.circumstances().get(all.results().circumstance()[i]);
    Map<String, String> marks = new HashMap<>();
    marks.put("state", all.entries().state()[entry].wear().key());
    marks.put("kind", circumstance.kind().key());
    if (circumstance.fromKmh() != null && circumstance.toKmh() != null) {
      marks.put(
          "window", Math.round(circumstance.fromKmh()) + "-" + Math.round(circumstance.toKmh()));
    }
    double value = all.results().value()[i];
    int place = all.results().place()[i];
    for (boolean asPlace : new boolean[] {false, true}) {
      if (asPlace ? place > 0 : !Double.isNaN(value)) {
        figures.add(
            new ReadBack.Read(
                ev ? model + " EV" : model,
                all.disciplines().get(all.results().discipline()[i]),
                asPlace,
                asPlace ? place : value,
                asPlace
                    ? null
                    : Unit.ofSymbol(all.units().get(all.results().unit()[i])).orElseThrow(),
                marks,
                all.entries().size()[entry],
                test.details()));
      }
    }
  }
}

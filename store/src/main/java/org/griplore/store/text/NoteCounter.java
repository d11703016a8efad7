package org.griplore.store.text;

import java.io.IOException;
import java.util.Collection;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.SortedDocValues;
import org.apache.lucene.index.SortedNumericDocValues;
import org.apache.lucene.search.CollectorManager;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.SimpleCollector;

/** Counts matching notes by model, discipline and year. */
final class NoteCounter extends SimpleCollector {
  private final SortedMap<String, Integer> models = new TreeMap<>();
  private final SortedMap<String, Integer> disciplines = new TreeMap<>();
  private final SortedMap<Integer, Integer> years = new TreeMap<>();
  private long total;
  private SortedDocValues model;
  private SortedDocValues discipline;
  private SortedNumericDocValues year;
  private int[] ofModel;
  private int[] ofDiscipline;

  @Override
  protected void doSetNextReader(LeafReaderContext context) throws IOException {
    model = DocValues.getSorted(context.reader(), IndexField.MODEL);
    discipline = DocValues.getSorted(context.reader(), IndexField.DISCIPLINE);
    year = DocValues.getSortedNumeric(context.reader(), IndexField.YEAR);
    ofModel = new int[model.getValueCount()];
    ofDiscipline = new int[discipline.getValueCount()];
  }

  @Override
  public void collect(int doc) throws IOException {
    total++;
    if (model.advanceExact(doc)) {
      ofModel[model.ordValue()]++;
    }
    if (discipline.advanceExact(doc)) {
      ofDiscipline[discipline.ordValue()]++;
    }
    if (year.advanceExact(doc)) {
      years.merge((int) year.nextValue(), 1, Integer::sum);
    }
  }

  /** Ordinals are a segment's own: they become words before the next segment. */
  @Override
  public void finish() throws IOException {
    add(models, model, ofModel);
    add(disciplines, discipline, ofDiscipline);
  }

  private static void add(SortedMap<String, Integer> sum, SortedDocValues words, int[] counts)
      throws IOException {
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        sum.merge(words.lookupOrd(i).utf8ToString(), counts[i], Integer::sum);
      }
    }
  }

  @Override
  public ScoreMode scoreMode() {
    return ScoreMode.COMPLETE_NO_SCORES;
  }

  private NoteCounter plus(NoteCounter other) {
    total += other.total;
    other.models.forEach((name, count) -> models.merge(name, count, Integer::sum));
    other.disciplines.forEach((key, count) -> disciplines.merge(key, count, Integer::sum));
    other.years.forEach((number, count) -> years.merge(number, count, Integer::sum));
    return this;
  }

  /** Counts parts of an index apart and adds them up. */
  static final class Manager implements CollectorManager<NoteCounter, NoteCounts> {
    @Override
    public NoteCounter newCollector() {
      return new NoteCounter();
    }

    @Override
    public NoteCounts reduce(Collection<NoteCounter> counters) {
      NoteCounter all = counters.stream().reduce(new NoteCounter(), NoteCounter::plus);
      return new NoteCounts(all.total, all.models, all.disciplines, all.years);
    }
  }
}

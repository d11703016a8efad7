package org.griplore.store.text;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.FieldType;
import org.apache.lucene.document.IntField;
import org.apache.lucene.document.NumericDocValuesField;
import org.apache.lucene.document.SortedDocValuesField;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.document.TextField;
import org.apache.lucene.index.IndexOptions;
import org.apache.lucene.util.BytesRef;
import org.griplore.store.archive.NoteRecord;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;

/** Writes a note as a document of the index and reads it back. */
final class NoteDocument {
  private static final FieldType WITH_OFFSETS = new FieldType(TextField.TYPE_NOT_STORED);
  private static final FieldType VOCABULARY = new FieldType(TextField.TYPE_NOT_STORED);

  static {
    WITH_OFFSETS.setIndexOptions(IndexOptions.DOCS_AND_FREQS_AND_POSITIONS_AND_OFFSETS);
    WITH_OFFSETS.freeze();
    VOCABULARY.setIndexOptions(IndexOptions.DOCS);
    VOCABULARY.setOmitNorms(true);
    VOCABULARY.freeze();
  }

  /** The index takes no keyword beyond 32 KiB; longer ones are told apart by their beginning. */
  private static final int LONGEST_KEYWORD = 8_000;

  private NoteDocument() {}

  static String keyword(String text) {
    return text.length() <= LONGEST_KEYWORD ? text : text.substring(0, LONGEST_KEYWORD);
  }

  static Document of(NoteRecord note, List<String> names) {
    Document document = new Document();
    String about = about(note, names);
    document.add(new StoredField(IndexField.WORDS, note.text()));
    document.add(new Field(IndexField.WORDS, NoteAnalysis.wordsOf(note.text()), WITH_OFFSETS));
    document.add(new TextField(IndexField.ABOUT, about, Field.Store.NO));
    document.add(new Field(IndexField.SPELT, note.text() + "\n" + about, VOCABULARY));
    document.add(new StringField(IndexField.NOTE, Long.toString(note.id()), Field.Store.YES));
    document.add(new StoredField(IndexField.REPORT, note.report()));
    document.add(new StoredField(IndexField.FILE, note.file()));
    document.add(new StoredField(IndexField.TEST, note.test()));
    document.add(new StringField(IndexField.TEST, keyword(note.test()), Field.Store.NO));
    if (note.title() != null) {
      document.add(new StoredField(IndexField.TITLE, note.title()));
    }
    counted(document, IndexField.MODEL, note.model());
    counted(document, IndexField.DISCIPLINE, note.discipline());
    if (note.source() != null) {
      document.add(new StringField(IndexField.SOURCE, note.source().name(), Field.Store.YES));
    }
    size(document, note.size());
    date(document, note.date());
    Cell cell = note.cell();
    document.add(
        new StoredField(IndexField.PLACE, cell.row() + ":" + cell.column() + ":" + cell.sheet()));
    if (!cell.found().equals(note.text())) {
      document.add(new StoredField(IndexField.FOUND, cell.found()));
    }
    return document;
  }

  private static String about(NoteRecord note, List<String> names) {
    StringBuilder about = new StringBuilder(note.test());
    if (note.title() != null) {
      about.append('\n').append(note.title());
    }
    if (note.discipline() != null) {
      about.append('\n').append(note.discipline());
    }
    names.forEach(name -> about.append('\n').append(name));
    return about.toString();
  }

  private static void counted(Document document, String field, String value) {
    if (value != null) {
      document.add(new StoredField(field, value));
      document.add(new StringField(field, keyword(value), Field.Store.NO));
      document.add(new SortedDocValuesField(field, new BytesRef(keyword(value))));
    }
  }

  private static void size(Document document, String size) {
    if (size == null) {
      return;
    }
    document.add(new StoredField(IndexField.SIZE, size));
    Optional<SizeParts> read = SizeParts.of(size);
    Set<String> spellings =
        read.map(SizeParts::spellings).orElseGet(() -> Set.of(SizeParts.unread(size)));
    spellings.forEach(
        spelling ->
            document.add(new StringField(IndexField.SIZE_KEY, keyword(spelling), Field.Store.NO)));
    read.ifPresent(
        parts -> {
          document.add(new StringField(IndexField.RIM, parts.rim(), Field.Store.NO));
          document.add(new StringField(IndexField.WIDTH, parts.width(), Field.Store.NO));
        });
  }

  /** The day's number orders notes by date; what is known to the year only stands at its first. */
  private static void date(Document document, TestDate date) {
    if (date != null) {
      document.add(new StoredField(IndexField.DATE, date.text()));
      document.add(new NumericDocValuesField(IndexField.DATE, date.firstDay().toEpochDay()));
      document.add(new IntField(IndexField.YEAR, date.year(), Field.Store.NO));
    }
  }

  static NoteHit hit(Document document, float score, Snippet snippet) {
    String words = document.get(IndexField.WORDS);
    String found = document.get(IndexField.FOUND);
    String date = document.get(IndexField.DATE);
    String source = document.get(IndexField.SOURCE);
    return new NoteHit(
        Long.parseLong(document.get(IndexField.NOTE)),
        document.get(IndexField.TEST),
        document.get(IndexField.TITLE),
        date == null ? null : new TestDate(date),
        document.get(IndexField.MODEL),
        document.get(IndexField.DISCIPLINE),
        document.get(IndexField.SIZE),
        source == null ? null : SourceKind.valueOf(source),
        document.get(IndexField.FILE),
        document.getField(IndexField.REPORT).numericValue().intValue(),
        words,
        cell(document.get(IndexField.PLACE), found == null ? words : found),
        score,
        snippet);
  }

  private static Cell cell(String place, String found) {
    String[] parts = place.split(":", 3);
    return new Cell(parts[2], Integer.parseInt(parts[0]), Integer.parseInt(parts[1]), found);
  }
}

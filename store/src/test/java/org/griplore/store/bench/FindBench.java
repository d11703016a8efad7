package org.griplore.store.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;
import org.apache.lucene.analysis.en.EnglishAnalyzer;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.FieldType;
import org.apache.lucene.document.StringField;
import org.apache.lucene.document.TextField;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexOptions;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.queryparser.classic.ParseException;
import org.apache.lucene.queryparser.classic.QueryParser;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.MultiTermQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.TopDocs;
import org.apache.lucene.search.uhighlight.UnifiedHighlighter;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.griplore.store.archive.Addition;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.NoteFeed;
import org.griplore.store.archive.Original;
import org.griplore.store.text.NoteIndex;
import org.griplore.store.text.NoteQuery;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.Details;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;
import org.griplore.store.vocabulary.TestReport;

/**
 * Finding among many notes, beside plain Lucene that does the same: the same words, the twenty best
 * with their stored fields and a snippet each. Notes are made with a fixed seed; their words follow
 * Zipf's law. Arguments: number of notes (500000), folder (a temporary one).
 */
public final class FindBench {
  private static final long SEED = 20240501;
  private static final int NOTES_A_TEST = 50;
  private static final int WORDS = 40_000;
  private static final int ROUNDS = 60;

  /** A beginning is looked for as its words, ranked, as many as the index takes. */
  private static final int MOST_BEGINNINGS = 48;

  private final Random random = new Random(SEED);
  private final String[] words = words();
  private final double[] shares = zipf();

  private FindBench() {}

  /** Builds the archive and both indexes, then measures. */
  public static void main(String[] arguments) throws IOException, ParseException {
    int notes = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 500_000;
    Path folder =
        arguments.length > 1 ? Path.of(arguments[1]) : Files.createTempDirectory("find-bench");
    try {
      new FindBench().run(notes, folder);
    } finally {
      if (arguments.length < 2) {
        remove(folder);
      }
    }
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }

  private void run(int notes, Path folder) throws IOException, ParseException {
    try (Archive archive = Archive.openOrCreate(folder.resolve("archive"))) {
      long start = System.nanoTime();
      add(archive, notes);
      rate("notes added to the archive", notes, start);
      start = System.nanoTime();
      try (NoteIndex index = NoteIndex.open(archive);
          Directory plain = FSDirectory.open(folder.resolve("plain"))) {
        rate("index built by NoteIndex", notes, start);
        start = System.nanoTime();
        buildPlain(archive, plain);
        rate("index built by plain Lucene (words only)", notes, start);
        start = System.nanoTime();
        NoteIndex.open(archive).close();
        System.out.printf(
            Locale.ROOT, "opened again in %.0f ms%n", (System.nanoTime() - start) / 1e6);
        try (DirectoryReader reader = DirectoryReader.open(plain)) {
          compare(index, new IndexSearcher(reader));
        }
      }
    }
  }

  private static void rate(String what, int notes, long start) {
    double seconds = (System.nanoTime() - start) / 1e9;
    System.out.printf(Locale.ROOT, "%s: %.1f s, %.0f notes/s%n", what, seconds, notes / seconds);
  }

  private void add(Archive archive, int notes) {
    byte[] content = "made".getBytes(StandardCharsets.UTF_8);
    try (Addition addition =
        archive.begin(Original.of("made", content), "notes", Clock.systemUTC())) {
      for (int test = 0; test < notes / NOTES_A_TEST; test++) {
        List<Note> some = new ArrayList<>();
        for (int i = 0; i < NOTES_A_TEST; i++) {
          String text = text(8 + random.nextInt(20));
          String model = "Maker" + random.nextInt(9) + " Model " + random.nextInt(300);
          some.add(new Note(model, "wet-braking", text, new Cell("", i + 1, 1, text)));
        }
        addition.put(new TestReport("T" + test, details(test), List.of(), some, List.of()));
      }
      addition.commit();
    }
  }

  private static Details details(int test) {
    return new Details(
        "Test number " + test,
        new TestDate(Integer.toString(2000 + test % 25)),
        SourceKind.OWN,
        null,
        "205/55 R16 91V",
        null,
        null,
        null,
        null,
        null,
        null,
        Map.of());
  }

  private static String[] words() {
    Random random = new Random(SEED);
    String[] syllables = "ka lo mi ren tus var bel dor fin gas hul jor nep pil quo sar".split(" ");
    String[] words = new String[WORDS];
    for (int i = 0; i < WORDS; i++) {
      StringBuilder word = new StringBuilder();
      for (int left = 1 + random.nextInt(2) + (i > 200 ? 2 : 0); left >= 0; left--) {
        word.append(syllables[random.nextInt(syllables.length)]);
      }
      words[i] = word.toString();
    }
    return words;
  }

  private static double[] zipf() {
    double[] shares = new double[WORDS];
    double sum = 0;
    for (int i = 0; i < WORDS; i++) {
      sum += 1.0 / (i + 1);
      shares[i] = sum;
    }
    return shares;
  }

  private String text(int length) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < length; i++) {
      int at = Arrays.binarySearch(shares, random.nextDouble() * shares[WORDS - 1]);
      text.append(i == 0 ? "" : i % 9 == 0 ? ". " : " ").append(words[at < 0 ? -at - 1 : at]);
    }
    return text.append('.').toString();
  }

  private static void buildPlain(Archive archive, Directory directory) throws IOException {
    FieldType type = new FieldType(TextField.TYPE_STORED);
    type.setIndexOptions(IndexOptions.DOCS_AND_FREQS_AND_POSITIONS_AND_OFFSETS);
    IndexWriterConfig config = new IndexWriterConfig(new EnglishAnalyzer());
    try (IndexWriter writer = new IndexWriter(directory, config.setRAMBufferSizeMB(64));
        NoteFeed feed = archive.noteFeed()) {
      feed.forEachSince(
          NoteFeed.Moment.BEGINNING,
          (note, names) -> {
            Document document = new Document();
            document.add(new Field("words", note.text(), type));
            document.add(new StringField("note", Long.toString(note.id()), Field.Store.YES));
            document.add(new StringField("test", note.test(), Field.Store.YES));
            document.add(new StringField("model", note.model(), Field.Store.YES));
            try {
              writer.addDocument(document);
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
          });
    }
  }

  private void compare(NoteIndex index, IndexSearcher plain) throws IOException, ParseException {
    UnifiedHighlighter highlighter =
        UnifiedHighlighter.builder(plain, new EnglishAnalyzer()).build();
    QueryParser parser = new QueryParser("words", new EnglishAnalyzer());
    parser.setDefaultOperator(QueryParser.Operator.AND);
    parser.setMultiTermRewriteMethod(
        new MultiTermQuery.TopTermsScoringBooleanQueryRewrite(MOST_BEGINNINGS));
    ToLongFunction<String> bare = text -> bare(plain, highlighter, parser, text);
    ToLongFunction<String> ours = text -> index.search(NoteQuery.of(text)).hits().size();
    System.out.printf("%-28s %10s %10s %7s%n", "query", "plain ms", "find ms", "ratio");
    double worst = 0;
    for (String text : queries()) {
      for (int i = 0; i < ROUNDS * 2; i++) {
        bare.applyAsLong(text);
        ours.applyAsLong(text);
      }
      double[] plainMs = new double[ROUNDS];
      double[] findMs = new double[ROUNDS];
      for (int i = 0; i < ROUNDS; i++) {
        plainMs[i] = time(bare, text);
        findMs[i] = time(ours, text);
      }
      double a = median(plainMs);
      double b = median(findMs);
      worst = Math.max(worst, b / a);
      System.out.printf(
          Locale.ROOT,
          "%-28s %10.3f %10.3f %7.2f%n",
          text.length() > 28 ? text.substring(0, 27) + "~" : text,
          a,
          b,
          b / a);
    }
    System.out.printf(Locale.ROOT, "highest ratio %.2f%n", worst);
  }

  /** From frequent to rare: one word, two, three, a phrase, a beginning. */
  private List<String> queries() {
    return List.of(
        words[0],
        words[30],
        words[2000],
        words[20] + " " + words[90],
        words[300] + " " + words[1500],
        words[5] + " " + words[60] + " " + words[400],
        "\"" + words[3] + " " + words[8] + "\"",
        words[40].substring(0, 4) + "*");
  }

  private static double time(ToLongFunction<String> search, String text) {
    long start = System.nanoTime();
    if (search.applyAsLong(text) < 0) {
      throw new IllegalStateException("no answer");
    }
    return (System.nanoTime() - start) / 1e6;
  }

  private static double median(double[] values) {
    Arrays.sort(values);
    return values[values.length / 2];
  }

  private static long bare(
      IndexSearcher searcher, UnifiedHighlighter highlighter, QueryParser parser, String text) {
    try {
      Query query = parser.parse(text);
      TopDocs top = searcher.search(query, 20);
      long fields = 0;
      for (ScoreDoc hit : top.scoreDocs) {
        fields += searcher.storedFields().document(hit.doc).getFields().size();
      }
      String[] snippets = highlighter.highlight("words", query, top);
      return fields + snippets.length;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ParseException e) {
      throw new IllegalArgumentException(e);
    }
  }
}

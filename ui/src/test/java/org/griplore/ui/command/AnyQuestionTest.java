package org.griplore.ui.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import org.griplore.ingest.Intake;
import org.griplore.ingest.ReadOptions;
import org.griplore.query.Questions;
import org.griplore.query.answer.Answer;
import org.griplore.query.option.Option;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.archive.Archive;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.ui.render.OutputFormat;
import org.griplore.ui.render.TerminalStyle;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Small odd archives (fields of one, ties, places alone, spreads of zero, no dates, parts that
 * nothing connects), asked everything with sensible and senseless options: each is answered or
 * refused in a sentence, and no answer holds a number that is none.
 */
class AnyQuestionTest {
  private static final List<String> MODELS = List.of("A 1", "A 2", "A 3", "B 1", "B 2", "C", "D");
  private static final List<String> DISCIPLINES =
      List.of("wet-braking", "rolling-resistance", "comfort", "exterior-noise", "overall");
  private static final Pattern NO_NUMBER = Pattern.compile("\\b(NaN|Infinity)\\b");

  @TempDir Path folder;

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void isAnsweredOrRefusedInASentence(long seed) throws IOException {
    Random random = new Random(seed);
    Path file = Files.writeString(folder.resolve("results.csv"), results(random));
    Path lineage = Files.writeString(folder.resolve("lineage.csv"), lineage(random));
    Clock clock = Clock.fixed(Instant.parse("2024-12-01T00:00:00Z"), ZoneOffset.UTC);
    DisciplineCatalogue catalogue = DisciplineCatalogue.standard();
    try (Archive archive = Archive.openOrCreate(folder.resolve("archive"));
        QueryContext queryContext = new QueryContext(archive, catalogue)) {
      new Intake(archive, catalogue, clock)
          .add(List.of(file, lineage), ReadOptions.NONE, (name, done, total) -> {});
      for (Question<?> question : Questions.all()) {
        for (int i = 0; i < 12; i++) {
          ask(queryContext, question, options(question, random, i < 6), seed);
        }
      }
    }
  }

  private static void ask(
      QueryContext queryContext,
      Question<?> question,
      Map<String, List<String>> options,
      long seed) {
    String asked = "seed " + seed + ": " + question.kind() + " " + options;
    try {
      Answer<?> answer = Questions.ask(question, queryContext, options);
      assertThat(answer.summary()).as(asked).isNotBlank().doesNotContainPattern(NO_NUMBER);
      for (OutputFormat format : OutputFormat.values()) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        format.write(answer, bytes, TerminalStyle.PLAIN);
        if (format.isText()) {
          assertThat(bytes.toString(StandardCharsets.UTF_8))
              .as(asked)
              .doesNotContainPattern(NO_NUMBER);
        }
      }
    } catch (Refusal refusal) {
      assertThat(refusal.sentence()).as(asked).isNotBlank().doesNotContainPattern(NO_NUMBER);
    } catch (RuntimeException defect) {
      throw new AssertionError(asked, defect);
    }
  }

  private static Map<String, List<String>> options(
      Question<?> question, Random random, boolean sensible) {
    Map<String, List<String>> given = new LinkedHashMap<>();
    for (Option option : question.options()) {
      boolean required = option.isNeeded();
      if (!required && random.nextInt(sensible ? 6 : 3) > 0) {
        continue;
      }
      boolean many = option.given() != Option.Given.ONCE;
      List<String> words = new ArrayList<>();
      for (int i = many ? 1 + random.nextInt(3) : 1; i > 0; i--) {
        words.add(sensible ? word(option, random) : oneOf(ODD, random));
      }
      given.put(option.name(), words);
    }
    return given;
  }

  private static final List<String> ODD =
      List.of("0", "-1", "1e308", "nan", "x", "A 1", "wet-braking", "comfort=0", "2020", "'", "%");

  private static String word(Option option, Random random) {
    if (!option.words().isEmpty()) {
      return oneOf(option.words(), random);
    }
    String name = option.value() + " " + option.name();
    if (name.contains("DISCIPLINE")) {
      return oneOf(DISCIPLINES, random);
    }
    if (name.contains("SIZE")) {
      return oneOf(List.of("205/55 R16", "225/45 R17"), random);
    }
    if (name.contains("DATE")) {
      return oneOf(List.of("2019", "2021-06", "2023"), random);
    }
    if (name.contains("KG")) {
      return "1400";
    }
    if (name.matches(".*(MODEL|LINE|TYRE|SIDE|model).*")) {
      return oneOf(MODELS, random);
    }
    return oneOf(List.of("1", "2", "5", "16", "wet-braking=2", "t1"), random);
  }

  private static String results(Random random) {
    StringBuilder rows =
        new StringBuilder(
            "test,date,source_kind,size,vehicle_mass_kg,model,discipline,value,unit,spread,runs,place,note\n");
    int tests = 1 + random.nextInt(7);
    for (int test = 1; test <= tests; test++) {
      String date = random.nextInt(4) == 0 ? "" : "20" + (17 + random.nextInt(7)) + "-05-01";
      String kind = oneOf(List.of("own", "independent", "maker", ""), random);
      String size = oneOf(List.of("205/55 R16", "225/45 R17", ""), random);
      String mass = oneOf(List.of("1300", "1700", ""), random);
      int field = 1 + random.nextInt(MODELS.size());
      int from = random.nextInt(MODELS.size());
      for (String discipline : DISCIPLINES) {
        if (random.nextInt(3) == 0) {
          continue;
        }
        boolean placesAlone = random.nextInt(4) == 0;
        double step = random.nextInt(3) == 0 ? 0 : 1;
        for (int i = 0; i < field; i++) {
          String model = MODELS.get((from + i) % MODELS.size());
          double value =
              Math.round(10 * level(discipline) * (1 + 0.03 * step * random.nextGaussian())) / 10.0;
          String spread = oneOf(List.of("", "0", "0.4"), random);
          rows.append(
              "t%d,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s\n"
                  .formatted(
                      test,
                      date,
                      kind,
                      size,
                      mass,
                      model,
                      discipline,
                      placesAlone ? "" : value,
                      placesAlone ? "" : unit(discipline),
                      placesAlone ? "" : spread,
                      placesAlone ? "" : oneOf(List.of("", "1", "5"), random),
                      placesAlone ? 1 + random.nextInt(3) : "",
                      random.nextInt(5) == 0 ? "steers well" : ""));
        }
      }
    }
    return rows.toString();
  }

  private static double level(String discipline) {
    return switch (discipline) {
      case "wet-braking" -> 32;
      case "rolling-resistance" -> 8;
      case "exterior-noise" -> 71;
      default -> 6;
    };
  }

  private static String unit(String discipline) {
    return switch (discipline) {
      case "wet-braking" -> "m";
      case "rolling-resistance" -> "N/kN";
      case "exterior-noise" -> "dB(A)";
      default -> "points";
    };
  }

  private static String lineage(Random random) {
    String launched = random.nextBoolean() ? "2018" : "";
    return """
        maker,line,model,generation,launched,season,segment,follows,aliases
        A,A,A 1,1,2014,summer,,,
        A,A,A 2,2,%s,summer,,A 1,
        A,A,A 3,3,2021,summer,,A 2,
        B,B,B 1,1,2015,winter,,,
        B,B,B 2,2,2015,winter,,B 1,
        """
        .formatted(launched);
  }

  private static <T> T oneOf(List<T> of, Random random) {
    return of.get(random.nextInt(of.size()));
  }
}

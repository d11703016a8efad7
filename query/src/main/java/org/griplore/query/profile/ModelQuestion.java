package org.griplore.query.profile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Column;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.answer.WholeFigure;
import org.griplore.query.answer.Wording;
import org.griplore.query.compare.CompareOptions;
import org.griplore.query.evidence.Evidence;
import org.griplore.query.evidence.Filter;
import org.griplore.query.evidence.Names;
import org.griplore.query.option.Choices;
import org.griplore.query.option.Option;
import org.griplore.query.question.CommonOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.archive.ModelRecord;

/** A model's whole record: its descent, and what every discipline says of it. */
public final class ModelQuestion implements Question<ProfileRow> {
  /** What is known of the model. */
  public static final WholeFigure<Known> KNOWN =
      new WholeFigure<>("known", "What is known of the model besides its results.");

  /**
   * What is known of a model beside its results.
   *
   * @param follows its predecessor; null when none is known
   * @param followedBy its successors
   * @param family forebears, itself and all that came of it, the oldest first
   * @param aliases other spellings
   */
  public record Known(
      String model,
      String maker,
      String line,
      String generation,
      String launched,
      String season,
      String segment,
      String follows,
      List<String> followedBy,
      List<String> family,
      List<String> aliases) {}

  @Override
  public String kind() {
    return "model";
  }

  @Override
  public String purpose() {
    return "A model's whole record: descent, disciplines, places, notes";
  }

  @Override
  public String example() {
    return "model \"Velmora Aurelis 4\"";
  }

  @Override
  public List<Option> options() {
    List<Option> options = new ArrayList<>();
    options.add(Option.arguments("model", "MODEL", "the model to look at", true));
    options.add(CommonOptions.discipline(null));
    options.addAll(Filter.OPTIONS);
    options.add(CompareOptions.VARIANCE);
    return options;
  }

  @Override
  public List<Column<ProfileRow>> columns() {
    return ProfileColumns.of(false);
  }

  @Override
  public List<WholeFigure<?>> wholes() {
    return List.of(KNOWN);
  }

  @Override
  public Answer<ProfileRow> answer(QueryContext context, Choices choices) {
    Evidence evidence = context.evidence();
    if (choices.all("model").size() != 1) {
      throw Choices.refusal("model", String.join(", ", choices.all("model")), "one model");
    }
    int model = context.names().model("model", choices.text("model"));
    Filter filter = new Filter(choices, evidence);
    List<String> disciplines =
        choices.has("discipline")
            ? List.of(CommonOptions.discipline(choices, context.catalogue()))
            : Profiler.disciplines(context, evidence);
    Profiler profiler = new Profiler(context, evidence, filter, CompareOptions.variance(choices));
    List<ProfileRow> rows = new ArrayList<>();
    for (String discipline : disciplines) {
      rows.addAll(profiler.rows(discipline, List.of(model)));
    }
    Known known = known(evidence, model);
    String name = known.model();
    String in = choices.has("discipline") ? " in " + disciplines.get(0) : "";
    return Answer.to(
            new Inquiry(
                kind(),
                "What is on record of " + name + in + filter.words() + "?",
                choices.given()))
        .summary(summary(known, rows))
        .columns(ProfileColumns.of(false))
        .rows(rows)
        .excluded(profiler.excluded().list())
        .caveats(caveats(profiler, rows))
        .sources(profiler.citations().list())
        .whole(KNOWN, known)
        .build();
  }

  static Known known(Evidence evidence, int position) {
    List<ModelRecord> models = evidence.models();
    Forebears descent = new Forebears(models);
    ModelRecord model = models.get(position);
    Integer before = descent.before(position);
    return new Known(
        model.name(),
        model.maker(),
        Names.lineName(model),
        model.generation(),
        model.launched() == null ? null : model.launched().text(),
        model.season() == null ? null : model.season().key(),
        model.segment(),
        before == null ? null : models.get(before).name(),
        descent.after(position).stream().map(i -> models.get(i).name()).toList(),
        descent.family(position).stream().map(i -> models.get(i).name()).toList(),
        model.aliases());
  }

  private static String summary(Known known, List<ProfileRow> rows) {
    String who = known.model() + who(known);
    if (rows.isEmpty()) {
      return who + ": no test that counts.";
    }
    Set<String> tests = new HashSet<>();
    rows.forEach(row -> row.results().forEach(result -> tests.add(result.test())));
    int first =
        rows.stream()
            .filter(r -> r.firstYear() != null)
            .mapToInt(ProfileRow::firstYear)
            .min()
            .orElse(0);
    int last =
        rows.stream()
            .filter(r -> r.lastYear() != null)
            .mapToInt(ProfileRow::lastYear)
            .max()
            .orElse(0);
    String when =
        first == 0 ? "" : first == last ? " in " + first : " from " + first + " to " + last;
    List<ProfileRow> compared = rows.stream().filter(row -> row.effect() != null).toList();
    long better = compared.stream().filter(row -> row.side() > 0).count();
    long worse = compared.stream().filter(row -> row.side() < 0).count();
    String stands =
        compared.size() < 2
            ? compared.stream()
                .map(
                    row ->
                        " Against the mean of the models tests connect it with: "
                            + row.told()
                            + ".")
                .findFirst()
                .orElse("")
            : String.format(
                Locale.ROOT,
                " Against the mean of the models tests connect it with it is better in %d, worse in"
                    + " %d and not to be told apart in %d of %d disciplines.",
                better,
                worse,
                compared.size() - better - worse,
                compared.size());
    return who + ": " + Wording.counted(tests.size(), "test") + when + "." + stands;
  }

  private static String who(Known known) {
    List<String> words = new ArrayList<>();
    if (known.season() != null) {
      words.add(known.season());
    }
    if (known.launched() != null) {
      words.add("launched " + known.launched());
    }
    if (known.follows() != null) {
      words.add("follows " + known.follows());
    }
    return words.isEmpty() ? "" : " (" + String.join(", ", words) + ")";
  }

  static List<String> caveats(Profiler profiler, List<ProfileRow> rows) {
    List<String> caveats = new ArrayList<>();
    if (rows.stream().anyMatch(row -> "%".equals(row.unit()))) {
      caveats.add(CompareOptions.PER_CENT);
    }
    if (rows.stream().anyMatch(row -> row.effect() != null)) {
      caveats.add(
          "The mean is of all models that tests connect, old and new: an old model stands below it"
              + " without having been bad in its day.");
    }
    CommonOptions.makerCaveat(profiler.citations()).ifPresent(caveats::add);
    caveats.add(CommonOptions.RESULTS_HOLD);
    return caveats;
  }
}

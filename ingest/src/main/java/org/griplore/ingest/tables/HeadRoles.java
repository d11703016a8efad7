package org.griplore.ingest.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.griplore.ingest.grid.GridCell;
import org.griplore.ingest.recognise.ColumnRole;
import org.griplore.ingest.recognise.ColumnWords;
import org.griplore.ingest.recognise.FoundThing;
import org.griplore.ingest.recognise.PlausibleRange;
import org.griplore.ingest.recognise.Setting;
import org.griplore.ingest.recognise.TableArea;
import org.griplore.store.vocabulary.Circumstance;
import org.griplore.store.vocabulary.Dimension;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.DisciplineCatalogue;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.HeaderParts;
import org.griplore.store.vocabulary.ResultKind;
import org.griplore.store.vocabulary.TyreState;
import org.griplore.store.vocabulary.Unit;
import org.griplore.store.vocabulary.UnitWords;

/** What single columns hold by their headers, by the title and by what their figures look like. */
final class HeadRoles {
  private static final String HEAD_IT =
      "head the column with the discipline and its unit, or say it in a map: `griplore add FILE"
          + " --map MAP`";

  private final KnownHeads heads;
  private final TitleWords title;
  private final List<FoundThing> findings = new ArrayList<>();

  HeadRoles(KnownHeads heads, TitleWords title) {
    this.heads = heads;
    this.title = title;
  }

  /** What was assumed or not taken. */
  List<FoundThing> findings() {
    return findings;
  }

  /**
   * What a column holds.
   *
   * @param said what its header says beside the discipline
   * @param typical a middle figure of the column; NaN where it has none
   * @param format the unit that the number formats of its cells show; empty where they show none
   */
  ColumnRole role(TableArea.Head head, HeadText said, double typical, String format) {
    ColumnRole found = heads.role(head.text(), head.unitText());
    if (found instanceof ColumnRole.Unknown) {
      found = named(head, said, typical, format);
    }
    if (!(found instanceof ColumnRole.Value value)) {
      return found;
    }
    if (value.discipline().key().equals("overall") && TitleWords.surface(said.core()) != null) {
      return new ColumnRole.Unknown();
    }
    return modified(head, said, value);
  }

  private static Unit ofText(String text) {
    return UnitWords.ofText(text).map(UnitWords.Recognised::unit).orElse(null);
  }

  private ColumnRole named(TableArea.Head head, HeadText said, double typical, String format) {
    Optional<ColumnRole> topic = topic(said.core());
    if (topic.isPresent()) {
      return topic.get();
    }
    Unit stated = unit(head);
    Unit unit = stated != null || format.isEmpty() ? stated : ofText(format);
    Discipline discipline = discipline(head, said, unit, typical);
    if (discipline == null) {
      return new ColumnRole.Unknown();
    }
    String part = head.unitText() == null ? "" : ColumnWords.topic(head.unitText()).orElse("");
    return switch (part) {
      case "place" -> new ColumnRole.Place(discipline);
      case "spread" -> new ColumnRole.Spread(discipline);
      case "runs" -> new ColumnRole.Runs(discipline);
      default -> new ColumnRole.Value(discipline, unit);
    };
  }

  private static Optional<ColumnRole> topic(String core) {
    return ColumnWords.topic(core)
        .map(
            topic ->
                switch (topic) {
                  case "line" -> new ColumnRole.Line();
                  case "generation" -> new ColumnRole.Generation();
                  case "state" -> new ColumnRole.State();
                  case "year", "variant" -> new ColumnRole.Ignored("told with the tyre");
                  default -> null;
                });
  }

  /** The unit that the header states; else null. */
  private static Unit unit(TableArea.Head head) {
    String below = head.unitText();
    Optional<UnitWords.Recognised> unit =
        below == null
            ? Optional.empty()
            : UnitWords.ofText(below).or(() -> UnitWords.inHeader(below));
    return unit.or(() -> UnitWords.inHeader(head.text()))
        .map(UnitWords.Recognised::unit)
        .orElse(null);
  }

  private Discipline discipline(TableArea.Head head, HeadText said, Unit unit, double typical) {
    DisciplineCatalogue catalogue = heads.catalogue();
    String core = said.core();
    Optional<DisciplineCatalogue.Match> match = catalogue.byHeader(core);
    if (match.isPresent()) {
      return match.get().discipline();
    }
    boolean braked = said.window() != null || unit != null && unit.dimension() == Dimension.LENGTH;
    String surface = TitleWords.surface(core) != null ? TitleWords.surface(core) : surface(core);
    if (surface != null && braked && catalogue.candidates(core).isEmpty()) {
      return catalogue.find(surface + "-braking").orElse(null);
    }
    if (core.isBlank() || ColumnWords.topic(core).filter("value"::equals).isPresent()) {
      return title.discipline() != null
          ? title.discipline()
          : title.surface() != null && said.window() != null
              ? catalogue.find(title.surface() + "-braking").orElse(null)
              : null;
    }
    return among(head, catalogue.candidates(core), core, unit, typical);
  }

  /** One letter for a surface counts where speeds stand beside it. */
  private static String surface(String core) {
    for (String surface : List.of("wet", "dry", "snow", "ice")) {
      if (HeaderParts.in(core, surface)) {
        return surface;
      }
    }
    return null;
  }

  /** Words that several disciplines share, told apart by the title, the unit or the figures. */
  private Discipline among(
      TableArea.Head head,
      List<DisciplineCatalogue.Match> candidates,
      String core,
      Unit unit,
      double typical) {
    if (candidates.isEmpty()) {
      return null;
    }
    if (title.surface() != null) {
      Optional<DisciplineCatalogue.Match> there =
          heads.catalogue().byHeader(title.surface() + " " + core);
      if (there.isPresent()) {
        return there.get().discipline();
      }
    }
    if (title.discipline() != null
        && candidates.stream().anyMatch(m -> m.discipline().equals(title.discipline()))) {
      return title.discipline();
    }
    List<Discipline> fitting = new ArrayList<>();
    for (DisciplineCatalogue.Match candidate : candidates) {
      Discipline each = candidate.discipline();
      boolean likely =
          Double.isNaN(typical) || unit != null || PlausibleRange.of(each.key()).holds(typical);
      if ((unit == null || each.accepts(unit)) && likely) {
        fitting.add(each);
      }
    }
    if (fitting.size() == 1) {
      return fitting.get(0);
    }
    List<String> keys = fitting.stream().map(Discipline::key).toList();
    if (keys.equals(List.of("exterior-noise", "interior-noise"))) {
      findings.add(
          new FoundThing(
              Finding.Kind.ASSUMED,
              head.cell(),
              head.text(),
              "noise outside the car, as nothing says inside",
              HEAD_IT));
      return fitting.get(0);
    }
    return null;
  }

  private ColumnRole modified(TableArea.Head head, HeadText said, ColumnRole.Value value) {
    HeadText.Base base = said.base() == HeadText.Base.NONE ? title.base() : said.base();
    int better = said.better() == 0 ? title.better() : said.better();
    boolean rating = value.unit() == null || isRating(value.unit());
    if (said.base() == HeadText.Base.DELTA
        || title.base() == HeadText.Base.DELTA && said.base() == HeadText.Base.NONE && rating) {
      return notTaken(head, "a difference; what it is a difference to has to be put in");
    }
    if (base == HeadText.Base.LOST && rating) {
      return notTaken(head, "points that are lost, where 0 is best: no scale of points holds them");
    }
    Unit unit = value.unit();
    if (unit == null || unit.dimension() == Dimension.RELATIVE) {
      unit =
          switch (base) {
            case INDEX_OF_REFERENCE -> Unit.PERCENT_OF_REFERENCE;
            case INDEX_OF_BEST -> Unit.PERCENT_OF_BEST;
            case MARK -> Unit.SCHOOL_MARK;
            default -> unit;
          };
    }
    boolean ofTitle = title.discipline() == null || title.discipline().equals(value.discipline());
    if (unit == null
        && title.unit() != null
        && ofTitle
        && value.discipline().accepts(title.unit())) {
      unit = title.unit();
    }
    if (said.statistic() == HeadText.Statistic.RUN) {
      return new ColumnRole.Run(value.discipline(), unit, setting(said, value.discipline()));
    }
    Direction direction = better == 0 ? null : better > 0 ? Direction.HIGH : Direction.LOW;
    return new ColumnRole.Value(
        value.discipline(), unit, direction, setting(said, value.discipline()));
  }

  /** Speeds are those of the header, else of a title that names the same discipline. */
  private Setting setting(HeadText said, Discipline discipline) {
    SpeedWindow window = said.window();
    if (window == null && discipline.equals(title.discipline())) {
      window = title.window();
    }
    boolean braked = discipline.key().endsWith("-braking");
    ResultKind kind =
        switch (said.kind()) {
          case MEASURED -> ResultKind.MEASURED;
          case DECLARED -> ResultKind.DECLARED;
          case CLAIMED -> ResultKind.CLAIMED;
        };
    Circumstance circumstance = Circumstance.of(kind);
    if (window != null && braked) {
      circumstance = circumstance.within(window.fromKmh(), window.toKmh());
    }
    TyreState state =
        switch (said.state()) {
          case UNSAID -> null;
          case NEW -> TyreState.NEW;
          case WORN ->
              TyreState.worn(
                  said.tread().isEmpty() ? null : Double.valueOf(said.tread().replace(',', '.')));
        };
    return new Setting(circumstance, state);
  }

  private static boolean isRating(Unit unit) {
    return switch (unit.dimension()) {
      case POINTS, MARK, RELATIVE, NUMBER -> true;
      default -> false;
    };
  }

  private ColumnRole notTaken(TableArea.Head head, String why) {
    GridCell cell = head.cell();
    findings.add(
        new FoundThing(
            Finding.Kind.NOT_READ, cell, head.text(), why + "; the column was not taken", HEAD_IT));
    return new ColumnRole.Ignored(why);
  }
}

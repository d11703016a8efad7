package org.griplore.store.scenario;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;

/** Plans six comparisons a year for ten years and has each of them run. */
final class ArchiveSimulator {
  private static final int FIRST_YEAR = 2015;
  private static final int YEARS = 10;
  private static final List<Theme> SLOTS =
      List.of(
          Theme.WINTER, Theme.WINTER, Theme.SUMMER, Theme.SUMMER, Theme.SUMMER, Theme.ALL_SEASON);

  private final Scenario scenario;
  private final long seed;

  ArchiveSimulator(Scenario scenario, long seed) {
    this.scenario = scenario;
    this.seed = seed;
  }

  List<SimulatedReport> reports() {
    List<SimulatedReport> reports = new ArrayList<>();
    for (int y = 0; y < YEARS; y++) {
      for (int slot = 0; slot < SLOTS.size(); slot++) {
        reports.add(report(FIRST_YEAR + y, slot));
      }
    }
    reports.sort(Comparator.comparing(SimulatedReport::date).thenComparing(SimulatedReport::key));
    Map<String, Integer> counts = new HashMap<>();
    return reports.stream().map(r -> numbered(r, counts)).toList();
  }

  /** Keys count on within a year and publication, in order of date. */
  private static SimulatedReport numbered(SimulatedReport r, Map<String, Integer> counts) {
    String key = r.key() + "-" + counts.merge(r.key(), 1, Integer::sum);
    return new SimulatedReport(
        key,
        r.date(),
        r.kind(),
        r.publication(),
        r.language(),
        r.title(),
        r.maker(),
        r.season(),
        r.size(),
        r.vehicle(),
        r.venue(),
        r.airC(),
        r.surfaceC(),
        r.snowC(),
        r.disciplines(),
        r.entries());
  }

  /**
   * Neighbouring seeds of {@link Random} give correlated first draws; this spreads them. Finalizer
   * of Steele, Lea, Flood 2014, "Fast splittable pseudorandom number generators", OOPSLA, figure
   * 17.
   */
  private static long mixed(long z) {
    z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
  }

  private static SourceKind kind(int year, int slot) {
    return switch (slot) {
      case 0, 2 -> SourceKind.OWN;
      case 1 -> year % 2 == 0 ? SourceKind.MAKER : SourceKind.INDEPENDENT;
      case 3 -> SourceKind.INDEPENDENT;
      case 4 -> year % 2 == 0 ? SourceKind.INDEPENDENT : SourceKind.MAKER;
      default -> SourceKind.values()[year % 3];
    };
  }

  private SimulatedReport report(int year, int slot) {
    Random random = new Random(mixed(seed * 1_000_003L + year * 31L + slot));
    Theme theme = SLOTS.get(slot);
    SourceKind kind = kind(year, slot);
    LocalDate day = LocalDate.of(year, pick(random, theme.months()), 1 + random.nextInt(28));
    ScenarioVehicle vehicle = pick(random, ScenarioVehicle.ALL);
    String size = pick(random, vehicle.sizes());
    FieldDraw draw = new FieldDraw(scenario.models(), theme, kind, day.getYear(), random);
    Optional<String> maker = draw.maker();
    Publication publication = Publication.draw(kind, maker, random);
    double air =
        theme.meanAirC() + Math.max(-6, Math.min(7, theme.airSd() * random.nextGaussian()));
    double surface = air + (theme == Theme.WINTER ? 1 : 4) + 2 * random.nextGaussian();
    OptionalDouble snow =
        theme.onSnow()
            ? OptionalDouble.of(half(-6 + 2.5 * random.nextGaussian()))
            : OptionalDouble.empty();
    boolean ofThree = slot == 2 && year == 2017 || slot == 1 && year == 2021;
    List<ScenarioModel> field = draw.field(ofThree);
    List<String> disciplines = disciplines(theme, kind, vehicle, random);
    List<SimulatedEntry> entries =
        new ResultDraw(scenario, theme, vehicle, size, half(surface), maker, random)
            .entries(field, disciplines);
    return new SimulatedReport(
        publication.code() + "-" + year,
        new TestDate(day.toString()),
        kind,
        publication.name(),
        publication.language(),
        publication.title(theme, size, vehicle, year),
        maker,
        theme.season(),
        size,
        vehicle,
        Publication.venue(theme, random),
        half(air),
        half(surface),
        snow,
        disciplines,
        entries);
  }

  private List<String> disciplines(
      Theme theme, SourceKind kind, ScenarioVehicle vehicle, Random random) {
    List<String> run = new ArrayList<>();
    for (DisciplineTruth d : scenario.disciplines()) {
      double share = theme.share(d.key());
      if (d.key().equals("energy-use") && vehicle.electric()) {
        share = 0.8;
      }
      // Makers publish fewer disciplines, and no prices.
      if (kind == SourceKind.MAKER) {
        share *= d.key().equals("price") ? 0 : 0.7;
      }
      if (random.nextDouble() < share) {
        run.add(d.key());
      }
    }
    String core = theme == Theme.WINTER ? "snow-braking" : "wet-braking";
    if (!run.contains(core)) {
      run.add(0, core);
    }
    if (run.size() < 3 && !run.contains("dry-braking")) {
      run.add("dry-braking");
    }
    return List.copyOf(run);
  }

  static <T> T pick(Random random, List<T> from) {
    return from.get(random.nextInt(from.size()));
  }

  private static double half(double celsius) {
    return Math.round(celsius * 2) / 2.0;
  }
}

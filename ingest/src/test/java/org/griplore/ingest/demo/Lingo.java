package org.griplore.ingest.demo;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.SourceKind;

/** The four languages of the files: words above tables, decimal marks, dates. */
enum Lingo {
  EN(
      "Test",
      "Date",
      "Size",
      "Season",
      "Vehicle",
      "Venue",
      "Air temperature",
      "Surface temperature",
      "Source",
      "Source kind",
      "d MMMM yyyy",
      Locale.ENGLISH),
  DE(
      "Test",
      "Datum",
      "Reifengr\u00f6\u00dfe",
      "Saison",
      "Fahrzeug",
      "Pr\u00fcfgel\u00e4nde",
      "Lufttemperatur",
      "Fahrbahntemperatur",
      "Quelle",
      "Quellenart",
      "dd.MM.yyyy",
      Locale.GERMAN),
  FR(
      "Test",
      "Date",
      "Dimension",
      "Saison",
      "V\u00e9hicule",
      "Piste d'essai",
      "Temp\u00e9rature de l'air",
      "Temp\u00e9rature du sol",
      "Source",
      "Type de source",
      "dd/MM/yyyy",
      Locale.FRENCH),
  SV(
      "Test",
      "Datum",
      "D\u00e4ckdimension",
      "S\u00e4song",
      "Bil",
      "Provbana",
      "Lufttemperatur",
      "V\u00e4gbanetemperatur",
      "K\u00e4lla",
      "K\u00e4lltyp",
      "yyyy-MM-dd",
      Locale.forLanguageTag("sv"));

  final String test;
  final String date;
  final String size;
  final String season;
  final String vehicle;
  final String venue;
  final String air;
  final String surface;
  final String source;
  final String sourceKind;
  private final DateTimeFormatter dates;

  Lingo(
      String test,
      String date,
      String size,
      String season,
      String vehicle,
      String venue,
      String air,
      String surface,
      String source,
      String sourceKind,
      String dates,
      Locale locale) {
    this.test = test;
    this.date = date;
    this.size = size;
    this.season = season;
    this.vehicle = vehicle;
    this.venue = venue;
    this.air = air;
    this.surface = surface;
    this.source = source;
    this.sourceKind = sourceKind;
    this.dates = DateTimeFormatter.ofPattern(dates, locale);
  }

  static Lingo of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT));
  }

  /** The figure with the language's decimal mark, without grouping. */
  String decimal(BigDecimal value) {
    String plain = value.toPlainString();
    return this == EN ? plain : plain.replace('.', ',');
  }

  /** A mass with the language's grouping of thousands. */
  String kilograms(int mass) {
    String group =
        switch (this) {
          case EN -> ",";
          case DE -> ".";
          case FR, SV -> "\u00a0";
        };
    return mass / 1000 + group + String.format(Locale.ROOT, "%03d", mass % 1000) + " kg";
  }

  String date(LocalDate day) {
    return dates.format(day);
  }

  /** The word for a season class. */
  String word(SeasonClass of) {
    return switch (this) {
      case EN -> of.key();
      case DE ->
          switch (of) {
            case SUMMER -> "Sommer";
            case WINTER -> "Winter";
            case ALL_SEASON -> "Ganzjahr";
          };
      case FR ->
          switch (of) {
            case SUMMER -> "\u00e9t\u00e9";
            case WINTER -> "hiver";
            case ALL_SEASON -> "toutes saisons";
          };
      case SV ->
          switch (of) {
            case SUMMER -> "sommar";
            case WINTER -> "vinter";
            case ALL_SEASON -> "\u00e5ret runt";
          };
    };
  }

  /** The word for a source kind. */
  String word(SourceKind of) {
    return switch (this) {
      case EN -> of.key();
      case DE ->
          switch (of) {
            case OWN -> "eigen";
            case INDEPENDENT -> "unabh\u00e4ngig";
            case MAKER -> "Hersteller";
          };
      case FR ->
          switch (of) {
            case OWN -> "propre";
            case INDEPENDENT -> "ind\u00e9pendant";
            case MAKER -> "fabricant";
          };
      case SV ->
          switch (of) {
            case OWN -> "egen";
            case INDEPENDENT -> "oberoende";
            case MAKER -> "tillverkare";
          };
    };
  }
}

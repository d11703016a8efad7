package org.griplore.query.log;

import java.util.List;

/** A set of a log in the making, by names; what is not given is absent: null, zero or no items. */
final class LogRowBuilder {
  private String discipline;
  private int sequence;
  private String tyre;
  private String role;
  private int counted;
  private Double mean;
  private String unit;
  private Double variation;
  private Double deviation;
  private Double reference;
  private String referenceWords;
  private Double difference;
  private String differenceUnit;
  private Double error;
  private Double logDifference;
  private Double logSe;
  private String standing;
  private List<String> reasons = List.of();
  private String file;
  private List<LogRun> runs = List.of();

  LogRowBuilder discipline(String told) {
    discipline = told;
    return this;
  }

  LogRowBuilder sequence(int told) {
    sequence = told;
    return this;
  }

  LogRowBuilder tyre(String told) {
    tyre = told;
    return this;
  }

  LogRowBuilder role(String told) {
    role = told;
    return this;
  }

  LogRowBuilder counted(int told) {
    counted = told;
    return this;
  }

  LogRowBuilder mean(Double told) {
    mean = told;
    return this;
  }

  LogRowBuilder unit(String told) {
    unit = told;
    return this;
  }

  LogRowBuilder variation(Double told) {
    variation = told;
    return this;
  }

  LogRowBuilder deviation(Double told) {
    deviation = told;
    return this;
  }

  LogRowBuilder reference(Double told) {
    reference = told;
    return this;
  }

  LogRowBuilder referenceWords(String told) {
    referenceWords = told;
    return this;
  }

  LogRowBuilder difference(Double told) {
    difference = told;
    return this;
  }

  LogRowBuilder differenceUnit(String told) {
    differenceUnit = told;
    return this;
  }

  LogRowBuilder error(Double told) {
    error = told;
    return this;
  }

  LogRowBuilder logDifference(Double told) {
    logDifference = told;
    return this;
  }

  LogRowBuilder logSe(Double told) {
    logSe = told;
    return this;
  }

  LogRowBuilder standing(String told) {
    standing = told;
    return this;
  }

  LogRowBuilder reasons(List<String> told) {
    reasons = told;
    return this;
  }

  LogRowBuilder file(String told) {
    file = told;
    return this;
  }

  LogRowBuilder runs(List<LogRun> told) {
    runs = told;
    return this;
  }

  LogRow build() {
    return new LogRow(
        discipline,
        sequence,
        tyre,
        role,
        counted,
        mean,
        unit,
        variation,
        deviation,
        reference,
        referenceWords,
        difference,
        differenceUnit,
        error,
        logDifference,
        logSe,
        standing,
        reasons,
        file,
        runs);
  }
}

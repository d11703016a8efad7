package org.griplore.query.dependence;

import java.util.List;

/**
 * What a contrast says of one moderator in the making, by names; what is not given is absent: null,
 * zero or no items.
 */
final class DependsRowBuilder {
  private String moderator;
  private String measuredAs;
  private String in;
  private Double slope;
  private Double se;
  private Double low;
  private Double high;
  private Double p;
  private Double df;
  private String unit;
  private int tests;
  private Double lowest;
  private Double highest;
  private Double at;
  private Double contrast;
  private Double contrastLow;
  private Double contrastHigh;
  private Double sameModels;
  private Double sameModelsLow;
  private Double sameModelsHigh;
  private String verdict;
  private Double logSlope;
  private Double logSe;
  private List<ContrastPoint> points = List.of();
  private List<FittedPoint> line = List.of();

  DependsRowBuilder moderator(String told) {
    moderator = told;
    return this;
  }

  DependsRowBuilder measuredAs(String told) {
    measuredAs = told;
    return this;
  }

  DependsRowBuilder in(String told) {
    in = told;
    return this;
  }

  DependsRowBuilder slope(Double told) {
    slope = told;
    return this;
  }

  DependsRowBuilder se(Double told) {
    se = told;
    return this;
  }

  DependsRowBuilder low(Double told) {
    low = told;
    return this;
  }

  DependsRowBuilder high(Double told) {
    high = told;
    return this;
  }

  DependsRowBuilder p(Double told) {
    p = told;
    return this;
  }

  DependsRowBuilder df(Double told) {
    df = told;
    return this;
  }

  DependsRowBuilder unit(String told) {
    unit = told;
    return this;
  }

  DependsRowBuilder tests(int told) {
    tests = told;
    return this;
  }

  DependsRowBuilder lowest(Double told) {
    lowest = told;
    return this;
  }

  DependsRowBuilder highest(Double told) {
    highest = told;
    return this;
  }

  DependsRowBuilder at(Double told) {
    at = told;
    return this;
  }

  DependsRowBuilder contrast(Double told) {
    contrast = told;
    return this;
  }

  DependsRowBuilder contrastLow(Double told) {
    contrastLow = told;
    return this;
  }

  DependsRowBuilder contrastHigh(Double told) {
    contrastHigh = told;
    return this;
  }

  DependsRowBuilder sameModels(Double told) {
    sameModels = told;
    return this;
  }

  DependsRowBuilder sameModelsLow(Double told) {
    sameModelsLow = told;
    return this;
  }

  DependsRowBuilder sameModelsHigh(Double told) {
    sameModelsHigh = told;
    return this;
  }

  DependsRowBuilder verdict(String told) {
    verdict = told;
    return this;
  }

  DependsRowBuilder logSlope(Double told) {
    logSlope = told;
    return this;
  }

  DependsRowBuilder logSe(Double told) {
    logSe = told;
    return this;
  }

  DependsRowBuilder points(List<ContrastPoint> told) {
    points = told;
    return this;
  }

  DependsRowBuilder line(List<FittedPoint> told) {
    line = told;
    return this;
  }

  DependsRow build() {
    return new DependsRow(
        moderator,
        measuredAs,
        in,
        slope,
        se,
        low,
        high,
        p,
        df,
        unit,
        tests,
        lowest,
        highest,
        at,
        contrast,
        contrastLow,
        contrastHigh,
        sameModels,
        sameModelsLow,
        sameModelsHigh,
        verdict,
        logSlope,
        logSe,
        points,
        line);
  }
}

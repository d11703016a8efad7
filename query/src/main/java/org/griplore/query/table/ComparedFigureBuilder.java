package org.griplore.query.table;

import java.util.List;

/**
 * A cell of a comparison table in the making, by names; what is not given is absent: null, zero or
 * no items.
 */
final class ComparedFigureBuilder {
  private String discipline;
  private Double value;
  private String unit;
  private Double measured;
  private Double delta;
  private String deltaUnit;
  private Double low;
  private Double high;
  private Double predictionLow;
  private Double predictionHigh;
  private Integer place;
  private Integer placeLow;
  private Integer placeHigh;
  private int tests;
  private String basis;
  private String to;
  private Double logDelta;
  private Double logSe;
  private Long result;
  private List<Integer> footnotes = List.of();

  ComparedFigureBuilder discipline(String told) {
    discipline = told;
    return this;
  }

  ComparedFigureBuilder value(Double told) {
    value = told;
    return this;
  }

  ComparedFigureBuilder unit(String told) {
    unit = told;
    return this;
  }

  ComparedFigureBuilder measured(Double told) {
    measured = told;
    return this;
  }

  ComparedFigureBuilder delta(Double told) {
    delta = told;
    return this;
  }

  ComparedFigureBuilder deltaUnit(String told) {
    deltaUnit = told;
    return this;
  }

  ComparedFigureBuilder low(Double told) {
    low = told;
    return this;
  }

  ComparedFigureBuilder high(Double told) {
    high = told;
    return this;
  }

  ComparedFigureBuilder predictionLow(Double told) {
    predictionLow = told;
    return this;
  }

  ComparedFigureBuilder predictionHigh(Double told) {
    predictionHigh = told;
    return this;
  }

  ComparedFigureBuilder place(Integer told) {
    place = told;
    return this;
  }

  ComparedFigureBuilder placeLow(Integer told) {
    placeLow = told;
    return this;
  }

  ComparedFigureBuilder placeHigh(Integer told) {
    placeHigh = told;
    return this;
  }

  ComparedFigureBuilder tests(int told) {
    tests = told;
    return this;
  }

  ComparedFigureBuilder basis(String told) {
    basis = told;
    return this;
  }

  ComparedFigureBuilder to(String told) {
    to = told;
    return this;
  }

  ComparedFigureBuilder logDelta(Double told) {
    logDelta = told;
    return this;
  }

  ComparedFigureBuilder logSe(Double told) {
    logSe = told;
    return this;
  }

  ComparedFigureBuilder result(Long told) {
    result = told;
    return this;
  }

  ComparedFigureBuilder footnotes(List<Integer> told) {
    footnotes = told;
    return this;
  }

  ComparedFigure build() {
    return new ComparedFigure(
        discipline,
        value,
        unit,
        measured,
        delta,
        deltaUnit,
        low,
        high,
        predictionLow,
        predictionHigh,
        place,
        placeLow,
        placeHigh,
        tests,
        basis,
        to,
        logDelta,
        logSe,
        result,
        footnotes);
  }
}

package org.griplore.query.outlook;

/** What an expectation rests on. */
public enum ExpectationBasis {
  /** Tests of the model itself. */
  TESTS("tests"),
  /** Tests of its nearest tested predecessor, and the usual step. */
  PREDECESSOR("predecessor"),
  /** Tests of a successor alone, and the usual step. */
  SUCCESSOR("successor"),
  /** Nothing: neither it nor its line was tested. */
  NONE("none");

  private final String key;

  ExpectationBasis(String key) {
    this.key = key;
  }

  /** The word used in answers. */
  public String key() {
    return key;
  }
}

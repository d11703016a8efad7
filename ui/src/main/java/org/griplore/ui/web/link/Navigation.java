package org.griplore.ui.web.link;

import java.util.List;

/** The links at the top of every page. */
public final class Navigation {
  /** A link, with the word of the question it leads to. */
  public record Link(String kind, String label) {
    /** Where it leads. */
    public String address() {
      return "/" + kind;
    }
  }

  /** The links in their order. */
  public static final List<Link> LINKS =
      List.of(
          new Link("placings", "Placings"),
          new Link("standings", "Standings"),
          new Link("table", "Table"),
          new Link("tests", "Tests"),
          new Link("models", "Models"),
          new Link("coverage", "Coverage"),
          new Link("find", "Notes"),
          new Link("settle", "Names"),
          new Link("sources", "Sources"),
          new Link("findings", "Findings"),
          new Link("add", "Add"));

  private Navigation() {}
}

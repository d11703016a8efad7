package org.griplore.ui.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.answer.Answer;
import org.griplore.query.notes.TallyQuestion.TallyRow;
import org.griplore.store.text.NoteHit;
import org.griplore.store.text.Snippet;

/**
 * Notes found, each with what it is about, and how all that match are spread.
 *
 * @param hits the notes on this page
 * @param facets ways to narrow the question
 * @param earlier the page before; null on the first
 * @param later the page behind; null on the last
 */
public record FindView(List<Hit> hits, List<Facet> facets, String earlier, String later) {
  private static final int SHOWN = 8;
  private static final int PAGE = 20;

  /** One note; null what it does not name. */
  public record Hit(
      List<Snippet.Piece> pieces,
      Link model,
      Link test,
      Link discipline,
      String date,
      String where) {}

  /** A text that leads somewhere. */
  public record Link(String text, String address) {}

  /** Notes that share a model, a discipline or a year. */
  public record Facet(String heading, List<Share> shares, List<Share> further) {}

  /** How many notes share one thing; chosen when the question is narrowed to it already. */
  public record Share(String label, int notes, String address, boolean chosen) {}

  static FindView of(Answer<?> found, Answer<?> tally) {
    List<Hit> hits = hits(found);
    Paging pages = Paging.of(found, PAGE);
    return new FindView(hits, facets(tally, found), pages.earlier(), pages.later());
  }

  static List<Hit> hits(Answer<?> found) {
    return found.rows().stream().map(NoteHit.class::cast).map(FindView::hit).toList();
  }

  private static Hit hit(NoteHit hit) {
    return new Hit(
        hit.snippet().pieces(),
        hit.model() == null ? null : new Link(hit.model(), Addresses.model(hit.model())),
        new Link(hit.title() == null ? hit.test() : hit.title(), Addresses.test(hit.test())),
        hit.discipline() == null
            ? null
            : new Link(hit.discipline(), Addresses.discipline(hit.discipline())),
        hit.date() == null ? null : hit.date().text(),
        hit.file() + ", " + hit.cell().place());
  }

  private static List<Facet> facets(Answer<?> tally, Answer<?> found) {
    Map<String, List<Share>> by = new LinkedHashMap<>();
    Map<String, List<String>> options = new LinkedHashMap<>(found.inquiry().options());
    options.remove("skip");
    for (Object row : tally.rows()) {
      TallyRow told = (TallyRow) row;
      by.computeIfAbsent(told.by(), key -> new ArrayList<>()).add(share(told, options));
    }
    List<Facet> facets = new ArrayList<>();
    by.forEach(
        (heading, shares) -> {
          int shown = heading.equals("year") || shares.size() <= SHOWN + 1 ? shares.size() : SHOWN;
          facets.add(
              new Facet(heading, shares.subList(0, shown), shares.subList(shown, shares.size())));
        });
    return facets;
  }

  private static Share share(TallyRow row, Map<String, List<String>> options) {
    Map<String, List<String>> narrowed = new LinkedHashMap<>(options);
    List<String> names = row.by().equals("year") ? List.of("from", "to") : List.of(row.by());
    boolean chosen =
        names.stream()
            .allMatch(name -> options.getOrDefault(name, List.of()).contains(row.value()));
    for (String name : names) {
      if (chosen) {
        narrowed.remove(name);
      } else {
        narrowed.put(name, List.of(row.value()));
      }
    }
    return new Share(row.value(), row.notes(), Addresses.of("find", narrowed), chosen);
  }
}

package org.griplore.ui.web.notes;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.query.answer.Answer;
import org.griplore.query.answer.Inquiry;
import org.griplore.query.notes.FindQuestion;
import org.griplore.query.notes.NoteCount;
import org.griplore.query.notes.NoteRow;
import org.griplore.query.option.Option;
import org.griplore.store.text.NoteHit;
import org.griplore.store.text.Snippet;
import org.griplore.ui.web.link.Addresses;
import org.griplore.ui.web.page.AnswerView;
import org.griplore.ui.web.page.Pages;

/**
 * Notes found, each with what it is about, and how all that match are spread.
 *
 * @param hits the notes on this page
 * @param facets ways to narrow the question
 */
public record FindView(AnswerView<NoteRow> view, List<Hit> hits, List<Facet> facets) {
  private static final int SHOWN = 8;

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

  public static String page(AnswerView<NoteRow> view, Pages pages) {
    if (view.answer().inquiry().options().containsKey("count")) {
      return pages.render("answer.jte", view);
    }
    return pages.render(
        "find.jte",
        new FindView(view, hits(view.answer()), facets(view.answer().inquiry(), pages)));
  }

  public static List<Hit> hits(Answer<NoteRow> found) {
    return found.rows().stream().map(NoteRow::hit).map(FindView::hit).toList();
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

  /** The same words and filters, counted; the page's own options do not narrow the counts. */
  private static List<Facet> facets(Inquiry asked, Pages pages) {
    Map<String, List<String>> options = new LinkedHashMap<>(asked.options());
    options.keySet().removeAll(List.of("limit", "skip"));
    options.put("count", List.of(Option.YES));
    Map<NoteCount.By, List<Share>> by = new EnumMap<>(NoteCount.By.class);
    for (NoteRow row : pages.ask(new FindQuestion(), options).rows()) {
      NoteCount count = row.count();
      by.computeIfAbsent(count.by(), key -> new ArrayList<>())
          .add(
              new Share(
                  count.value(),
                  count.notes(),
                  Addresses.of(count.narrowed(asked)),
                  count.isAsked(asked)));
    }
    List<Facet> facets = new ArrayList<>();
    by.forEach(
        (heading, shares) -> {
          boolean all = heading == NoteCount.By.YEAR || shares.size() <= SHOWN + 1;
          int shown = all ? shares.size() : SHOWN;
          facets.add(
              new Facet(
                  heading.word(), shares.subList(0, shown), shares.subList(shown, shares.size())));
        });
    return facets;
  }
}

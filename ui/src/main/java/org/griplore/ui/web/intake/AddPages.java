package org.griplore.ui.web.intake;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.griplore.ingest.AddedSource;
import org.griplore.ingest.Intake;
import org.griplore.ingest.Preview;
import org.griplore.ingest.ReadOptions;
import org.griplore.query.question.QueryContext;
import org.griplore.store.archive.AdditionOutcome;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.ui.web.gate.WriteGate;
import org.griplore.ui.web.page.Form;
import org.griplore.ui.web.page.Pages;

/**
 * The way of a table into the archive by the page: given, looked at, corrected, added. Until it is
 * added it is a draft in memory.
 */
public final class AddPages {
  /**
   * The page to paste into.
   *
   * @param closed why nothing can be added; null when it can
   * @param text what was pasted before
   * @param problem what is wrong with it; null when nothing is
   */
  public record AddView(String token, String closed, String text, String problem) {}

  /** A draft with the disciplines its columns may hold. */
  public record DraftForm(DraftView view, List<Form.Choice> disciplines) {}

  private final QueryContext queryContext;
  private final Pages pages;
  private final WriteGate writing;
  private final Clock clock;
  private final Intake intake;
  private final Drafts drafts;

  public AddPages(QueryContext queryContext, Pages pages, WriteGate writing, Clock clock) {
    this.queryContext = queryContext;
    this.pages = pages;
    this.writing = writing;
    this.clock = clock;
    this.intake = new Intake(queryContext.archive(), queryContext.catalogue(), clock);
    this.drafts = new Drafts(clock);
  }

  /** The page to paste into, or to choose a file on. */
  public String empty() {
    return given("", null);
  }

  private String given(String text, String problem) {
    return pages.render(
        "add.jte", new AddView(writing.token(), writing.whyClosed(), text, problem));
  }

  /**
   * Takes what was pasted or chosen as a draft.
   *
   * @return the page again, with what is wrong; null when the browser was led on
   */
  public String take(Context context) {
    String text = context.formParam("table") == null ? "" : context.formParam("table");
    UploadedFile file = context.uploadedFile("file");
    boolean chosen = file != null && file.size() > 0;
    if (chosen && !text.isBlank()) {
      return given(text, "There is a table and a file: give one of them.");
    }
    if (!chosen && text.isBlank()) {
      return given("", "There is nothing yet: paste a table, or choose a file that is not empty.");
    }
    byte[] content = chosen ? bytes(file) : text.getBytes(StandardCharsets.UTF_8);
    Draft draft =
        drafts.add(chosen ? name(file.filename()) : pastedName(content), content, !chosen);
    drafts.put(draft.with(remembered(draft)));
    WriteGate.lead(context, page(draft));
    return null;
  }

  private ReadOptions remembered(Draft draft) {
    try {
      return intake.withRemembered(Original.of(draft.name(), draft.content()), draft.options());
    } catch (Refusal refused) {
      return draft.options(); // its page says why
    }
  }

  private static byte[] bytes(UploadedFile file) {
    try (InputStream in = file.content()) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The last part of a file's name, as a browser may send it, without what no name should hold. */
  private static String name(String sent) {
    String last = sent.replaceAll("^.*[/\\\\]", "").replaceAll("\\p{Cntrl}", "").strip();
    String name = last.length() > 120 ? last.substring(last.length() - 120) : last;
    return name.isEmpty() ? "uploaded" : name;
  }

  /** The same table pasted twice in a day is the same source. */
  private String pastedName(byte[] content) {
    String hash = Original.of("pasted", content).sha256();
    return "pasted-" + LocalDate.now(clock) + "-" + hash.substring(0, 8) + ".tsv";
  }

  private static String page(Draft draft) {
    return "/draft?draft=" + draft.id();
  }

  /** How a draft is understood. */
  public String draft(Context context) {
    Draft draft = drafts.of(context.queryParam("draft"));
    return view(draft, DraftEntries.of(draft.options()));
  }

  private String view(Draft draft, DraftEntries said) {
    Preview preview = null;
    String refusal = null;
    try {
      preview = preview(draft);
    } catch (Refusal refused) {
      refusal = refused.sentence();
    }
    return pages.render(
        "draft.jte",
        new DraftForm(
            DraftView.of(draft, writing.token(), preview, refusal, said),
            pages.offers().disciplines()));
  }

  private Preview preview(Draft draft) {
    return intake.preview(Original.of(draft.name(), draft.content()), draft.options());
  }

  /**
   * Takes what is said of a draft.
   *
   * @return the page again, with what is wrong; null when the browser was led on
   */
  public String correct(Context context) {
    Draft draft = drafts.of(context.formParam("draft"));
    DraftEntries said = said(context, draft);
    if (!said.problems().isEmpty()) {
      return view(draft, new DraftEntries(draft.options(), said.typed(), said.problems()));
    }
    show(context, draft.with(said.options()));
    return null;
  }

  private void show(Context context, Draft draft) {
    drafts.put(draft);
    WriteGate.lead(context, page(draft));
  }

  private DraftEntries said(Context context, Draft draft) {
    Preview shown = null;
    try {
      shown = preview(draft);
    } catch (Refusal refused) {
      // its page showed no columns, so none were said anything of
    }
    Map<String, String> typed = new HashMap<>();
    context.formParamMap().forEach((name, values) -> typed.put(name, values.get(0)));
    return DraftFields.read(
        typed, shown != null && DraftView.isTable(shown) ? shown : null, queryContext.catalogue());
  }

  /**
   * Adds a draft to the archive, as it was last shown. What was said since is shown first.
   *
   * @return the page again, with what is wrong; null when the browser was led on
   */
  public String add(Context context) {
    Draft draft = drafts.of(context.formParam("draft"));
    DraftEntries said = said(context, draft);
    if (!said.options().kept().equals(draft.options().kept()) || !said.problems().isEmpty()) {
      return correct(context);
    }
    AddedSource added = intake.add(Original.of(draft.name(), draft.content()), draft.options());
    if (added.refusal() != null) {
      throw added.refusal();
    }
    drafts.remove(draft.id());
    boolean same = added.outcome().status() == AdditionOutcome.Status.UNCHANGED;
    WriteGate.lead(
        context, "/added?revision=" + added.outcome().revision() + (same ? "&same=1" : ""));
    return null;
  }

  /** What a reading added. */
  public String added(Context context) {
    String number = context.queryParam("revision");
    AddedView view =
        AddedView.of(queryContext, number == null ? "" : number, context.queryParam("same") != null)
            .orElseThrow(
                () -> new Refusal("There is no revision of this number in the archive any more."));
    return pages.render("added.jte", view);
  }
}

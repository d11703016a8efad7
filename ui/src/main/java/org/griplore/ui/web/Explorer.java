package org.griplore.ui.web;

import io.javalin.Javalin;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.staticfiles.Location;
import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.griplore.query.FormerWord;
import org.griplore.query.Questions;
import org.griplore.query.question.QueryContext;
import org.griplore.query.question.Question;
import org.griplore.store.vocabulary.Busy;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.ui.render.JsonAnswer;
import org.griplore.ui.render.OutputFormat;
import org.griplore.ui.render.TerminalStyle;
import org.griplore.ui.web.gate.Gate;
import org.griplore.ui.web.gate.WriteGate;
import org.griplore.ui.web.intake.AddPages;
import org.griplore.ui.web.intake.ColumnsPage;
import org.griplore.ui.web.link.Addresses;
import org.griplore.ui.web.notes.NotePages;
import org.griplore.ui.web.page.KeptPages;
import org.griplore.ui.web.page.Pages;
import org.griplore.ui.web.page.QuestionPage;
import org.griplore.ui.web.page.RefusalView;
import org.griplore.ui.web.page.StartView;
import org.griplore.ui.web.settle.SettlePages;

/** The web explorer: every route is in {@link #routes}. */
public final class Explorer implements AutoCloseable {
  private final QueryContext queryContext;
  private final Javalin server;
  private final Pages pages;
  private final KeptPages kept;
  private final WriteGate writing;
  private final AddPages adding;
  private final NotePages noting;
  private final SettlePages settling;
  private final ColumnsPage columns;

  /**
   * An explorer that only reads; {@link #start} opens it. Closing leaves the query context open.
   */
  public Explorer(QueryContext queryContext) {
    this(
        queryContext,
        WriteGate.closed("This explorer was opened for reading only: it adds nothing."),
        Clock.systemUTC());
  }

  /** An explorer that may also change the archive, where its folder can be written. */
  public Explorer(QueryContext queryContext, Clock clock) {
    this(queryContext, WriteGate.of(queryContext.archive()), clock);
  }

  private Explorer(QueryContext queryContext, WriteGate writing, Clock clock) {
    this.queryContext = queryContext;
    this.writing = writing;
    this.pages = new Pages(queryContext, writing);
    this.adding = new AddPages(queryContext, pages, writing, clock);
    this.kept = new KeptPages(queryContext.archive()::stamp);
    this.noting = new NotePages(queryContext, pages, writing, clock);
    this.settling = new SettlePages(queryContext, clock);
    this.columns = new ColumnsPage(queryContext, pages, writing, clock);
    this.server =
        Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              config.startup.showOldJavalinVersionWarning = false;
              config.staticFiles.add(
                  files -> {
                    files.hostedPath = "/static";
                    files.directory = "/static";
                    files.location = Location.CLASSPATH;
                    // a newer Griplore must not meet an older style sheet: the ETag says what is
                    // the same
                    files.headers = Map.of("Cache-Control", "no-cache");
                  });
              WriteGate.limit(config);
              routes(config.routes);
            });
  }

  private void routes(RoutesConfig routes) {
    routes.before(context -> Gate.pass(context, writing));
    read(
        routes,
        "/",
        context -> {
          refuseGone();
          html(context, kept.at("/", () -> StartView.page(QuestionPages.HOLDINGS, pages)));
        });
    read(routes, "/favicon.ico", context -> context.redirect("/static/icon.svg"));
    for (QuestionPage page : QuestionPages.all()) {
      Question<?> question = page.question();
      read(routes, "/" + question.kind(), context -> page(context, page));
      for (OutputFormat format : OutputFormat.values()) {
        read(
            routes,
            "/" + question.kind() + "." + format.ending(),
            context -> answer(context, question, format));
      }
    }
    FormerWord.ALL.forEach(former -> former(routes, former));
    read(routes, "/add", context -> html(context, adding.empty()));
    writing.form(routes, "/add", context -> again(context, adding.take(context)));
    read(routes, "/draft", context -> html(context, adding.draft(context)));
    writing.form(routes, "/draft", context -> again(context, adding.correct(context)));
    writing.write(routes, "/draft/add", context -> again(context, adding.add(context)));
    read(routes, "/added", context -> html(context, adding.added(context)));
    read(routes, "/note", context -> html(context, noting.empty(context)));
    writing.write(routes, "/note", context -> again(context, noting.add(context)));
    read(routes, Addresses.COLUMNS, context -> html(context, columns.list()));
    writing.write(routes, Addresses.COLUMNS, columns::forget);
    writing.write(routes, "/settle", settling::settle);
    writing.write(routes, "/lineage", settling::descent);
    routes.exception(Gate.TurnedAway.class, this::turnAway);
    routes.exception(Busy.class, (busy, context) -> show(context, 409, RefusalView.of(busy)));
    routes.exception(Refusal.class, (refusal, context) -> refuse(context, refusal));
    routes.exception(Exception.class, this::fail);
    routes.error(
        404,
        context -> {
          if (context.attribute("refused") == null) {
            String sentence = "There is no page " + context.path() + ".";
            show(context, 404, RefusalView.of(new Refusal(sentence)));
          }
        });
  }

  /** An address of the version before leads to that of now. */
  private static void former(RoutesConfig routes, FormerWord former) {
    Stream<String> endings = Stream.of(OutputFormat.values()).map(format -> "." + format.ending());
    Stream.concat(Stream.of(""), endings)
        .forEach(
            ending ->
                read(
                    routes,
                    "/" + former.word() + ending,
                    context -> {
                      Map<String, List<String>> given = given(context);
                      given.putAll(former.options());
                      context.redirect(Addresses.of(former.kind(), ending, given));
                    }));
  }

  /** HEAD is answered as GET is, without the body. */
  private static void read(RoutesConfig routes, String path, Handler handler) {
    routes.get(path, handler);
    routes.head(path, handler);
  }

  /** A form that was not taken is shown again with what is wrong; else the browser was led on. */
  private static void again(Context context, String page) {
    if (page != null) {
      context.status(400);
      html(context, page);
    }
  }

  private void page(Context context, QuestionPage page) {
    Question<?> question = page.question();
    refuseGone();
    Map<String, List<String>> given = given(context);
    given.remove(Addresses.ROWS);
    if (context.queryParamMap().values().stream().flatMap(List::stream).anyMatch(String::isBlank)) {
      context.redirect(Addresses.of(question.kind(), given));
    } else {
      boolean whole = context.queryParams(Addresses.ROWS).contains(Addresses.ALL);
      String address = (whole ? "whole " : "") + Addresses.of(question.kind(), given);
      html(context, kept.at(address, () -> page.of(pages, given, whole)));
    }
  }

  private void answer(Context context, Question<?> question, OutputFormat format) {
    refuseGone();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    format.write(Questions.ask(question, queryContext, given(context)), bytes, TerminalStyle.PLAIN);
    context.contentType(format.contentType());
    if (!format.isText()) {
      String name = "griplore-" + question.kind() + "." + format.ending();
      context.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
    }
    context.result(bytes.toByteArray());
  }

  /** The options of an address, without those left empty in a form. */
  private static Map<String, List<String>> given(Context context) {
    Map<String, List<String>> given = new LinkedHashMap<>();
    context
        .queryParamMap()
        .forEach(
            (name, values) -> {
              List<String> filled = values.stream().filter(value -> !value.isBlank()).toList();
              if (!filled.isEmpty()) {
                given.put(name, filled);
              }
            });
    return given;
  }

  private void turnAway(Gate.TurnedAway turned, Context context) {
    show(context, turned.status(), RefusalView.of(turned.refusal()));
  }

  private void refuse(Context context, Refusal refusal) {
    String kind = context.path().replaceAll("^/|\\.\\w+$", "");
    show(context, 400, RefusalView.of(refusal, kind, given(context), pages.offers()));
  }

  private void fail(Exception failure, Context context) {
    String sentence =
        "This is a defect of Griplore, not of your data: "
            + failure.getClass().getSimpleName()
            + ".";
    show(context, 500, RefusalView.of(new Refusal(sentence)));
  }

  /** Files that are open can be read after they were removed; an archive's answers may not. */
  private void refuseGone() {
    Path folder = queryContext.archive().folder();
    if (!Files.isDirectory(folder)) {
      throw new Gate.TurnedAway(503, "The archive " + folder + " is not there any more.");
    }
  }

  private void show(Context context, int status, RefusalView view) {
    context.status(status);
    context.attribute("refused", true);
    if (context.path().matches(".*\\.[a-z]{1,5}")) {
      StringWriter text = new StringWriter();
      JsonAnswer.write(view.refusal(), new PrintWriter(text));
      context.contentType(OutputFormat.JSON.contentType());
      context.result(text.toString());
    } else {
      html(context, pages.render("refusal.jte", view));
    }
  }

  private static void html(Context context, String page) {
    context.header("Cache-Control", "no-cache");
    context.html(page);
    context.contentType("text/html;charset=utf-8");
  }

  /**
   * Opens it on a port of the loopback interface; 0 takes any that is free.
   *
   * @return the port
   */
  public int start(int port) {
    server.start("127.0.0.1", port);
    return server.port();
  }

  @Override
  public void close() {
    server.stop();
  }
}

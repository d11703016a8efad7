package org.griplore.ui.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.staticfiles.Location;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.griplore.query.Questions;
import org.griplore.query.answer.Answer;
import org.griplore.query.question.Desk;
import org.griplore.query.question.Question;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.ui.render.JsonAnswer;
import org.griplore.ui.render.OutputFormat;
import org.griplore.ui.render.TerminalStyle;

/** The web explorer: every route is in {@link #routes}. */
public final class Explorer implements AutoCloseable {
  /** Nothing but our own files; no inline script, no eval; images drawn by the charts. */
  private static final String CONTENT_POLICY =
      "default-src 'self'; img-src 'self' data: blob:; object-src 'none'; base-uri 'none';"
          + " frame-ancestors 'none'; form-action 'self'";

  /** The longest address that is looked at. */
  private static final int LONGEST_QUERY = 8_000;

  private final Desk desk;
  private final Javalin server;
  private final TemplateEngine pages;

  /** Prepares the explorer of a desk; {@link #start} opens it. Closing leaves the desk open. */
  public Explorer(Desk desk) {
    this.desk = desk;
    this.pages =
        TemplateEngine.createPrecompiled(
            null, ContentType.Html, Explorer.class.getClassLoader(), "org.griplore.ui.pages");
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
                    files.headers = Map.of("Cache-Control", "max-age=86400");
                  });
              routes(config.routes);
            });
  }

  private void routes(io.javalin.config.RoutesConfig routes) {
    routes.before(this::guard);
    routes.get("/", context -> page(context, question("holdings"), "start.jte"));
    for (Question question : Questions.all()) {
      routes.get("/" + question.kind(), context -> page(context, question, "answer.jte"));
      for (OutputFormat format : OutputFormat.values()) {
        routes.get(
            "/" + question.kind() + "." + format.ending(),
            context -> answer(context, question, format));
      }
    }
    routes.exception(Refusal.class, (refusal, context) -> refuse(context, 400, refusal));
    routes.exception(
        Exception.class,
        (failure, context) ->
            refuse(
                context,
                500,
                new Refusal(
                    "This is a defect of Griplore, not of your data: "
                        + failure.getClass().getSimpleName()
                        + ".")));
    routes.error(
        404,
        context -> {
          if (context.result() == null || context.result().isEmpty() || isStock(context)) {
            refuse(context, 404, new Refusal("There is no page " + context.path() + "."));
          }
        });
  }

  private static boolean isStock(Context context) {
    String body = context.result();
    return body != null && body.startsWith("Endpoint ");
  }

  private static Question question(String kind) {
    return Questions.of(kind).orElseThrow();
  }

  /** Only asked by a name of this machine (against DNS rebinding), and with an address we read. */
  private void guard(Context context) {
    context.header("Content-Security-Policy", CONTENT_POLICY);
    context.header("X-Content-Type-Options", "nosniff");
    context.header("Referrer-Policy", "no-referrer");
    String host = context.host() == null ? "" : context.host();
    String name = host.replaceAll(":\\d+$", "");
    if (!Set.of("localhost", "127.0.0.1", "[::1]").contains(name)) {
      throw new Refusal("This explorer answers on localhost only, not as \"" + name + "\".");
    }
    String query = context.queryString();
    if (query != null && query.length() > LONGEST_QUERY) {
      throw new Refusal(
          "The address is "
              + query.length()
              + " characters long; at most "
              + LONGEST_QUERY
              + " are read.");
    }
  }

  private void page(Context context, Question question, String template) {
    AnswerView view = AnswerView.of(question, ask(context, question));
    context.html(render(template, Map.of("view", view)));
  }

  private void answer(Context context, Question question, OutputFormat format) {
    StringWriter text = new StringWriter();
    format.write(ask(context, question), new PrintWriter(text), TerminalStyle.PLAIN);
    context.contentType(format.contentType());
    context.result(text.toString());
  }

  private Answer<?> ask(Context context, Question question) {
    Map<String, List<String>> given = new LinkedHashMap<>(context.queryParamMap());
    return Questions.ask(question, desk, given);
  }

  private void refuse(Context context, int status, Refusal refusal) {
    context.status(status);
    if (context.path().endsWith(".html") || !context.path().contains(".")) {
      context.html(render("refusal.jte", Map.of("refusal", refusal)));
    } else {
      StringWriter text = new StringWriter();
      JsonAnswer.write(refusal, new PrintWriter(text));
      context.contentType(OutputFormat.JSON.contentType());
      context.result(text.toString());
    }
  }

  private String render(String template, Map<String, Object> model) {
    StringOutput out = new StringOutput();
    pages.render(template, model, out);
    return out.toString();
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

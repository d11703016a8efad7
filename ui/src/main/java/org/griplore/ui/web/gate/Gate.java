package org.griplore.ui.web.gate;

import io.javalin.http.Context;
import java.util.Set;
import org.griplore.store.vocabulary.Refusal;

/** What is turned away before any question is looked at, and the headers of every response. */
public final class Gate {
  /** Nothing but our own files; no inline script or style, no eval; no frames. */
  private static final String CONTENT_POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:;"
          + " connect-src 'self'; base-uri 'none'; frame-ancestors 'none'; form-action 'self'";

  /** The longest address that is looked at, in characters. */
  private static final int LONGEST_QUERY = 6_000;

  private static final Set<String> READING = Set.of("GET", "HEAD");
  private static final Set<String> THIS_MACHINE = Set.of("localhost", "127.0.0.1", "[::1]");

  /** A request that is turned away with a status of its own. */
  public static final class TurnedAway extends RuntimeException {
    private final transient Refusal refusal;
    private final int status;

    public TurnedAway(int status, String sentence) {
      super(sentence);
      this.refusal = new Refusal(sentence);
      this.status = status;
    }

    public Refusal refusal() {
      return refusal;
    }

    public int status() {
      return status;
    }
  }

  private Gate() {}

  /**
   * Only asked by a name of this machine (against DNS rebinding), only to read or where forms are
   * taken, not too long.
   */
  public static void pass(Context context, WriteGate writing) {
    context.header("Content-Security-Policy", CONTENT_POLICY);
    context.header("X-Content-Type-Options", "nosniff");
    context.header("Referrer-Policy", "same-origin");
    context.header("Cross-Origin-Resource-Policy", "same-origin");
    String host = context.host() == null ? "" : context.host();
    String name = host.replaceAll(":\\d+$", "");
    if (!THIS_MACHINE.contains(name)) {
      throw new TurnedAway(
          403, "This explorer answers on localhost only, not as \"" + name + "\".");
    }
    String method = context.method().name();
    boolean form = writing.takes(context.path());
    if (!READING.contains(method) && !(form && method.equals("POST"))) {
      context.header("Allow", form ? "GET, HEAD, POST" : "GET, HEAD");
      throw new TurnedAway(405, "This page is for reading: " + method + " is not allowed.");
    }
    String query = context.queryString();
    if (query != null && query.length() > LONGEST_QUERY) {
      throw new TurnedAway(
          414,
          "The address is %d characters long; at most %d are read."
              .formatted(query.length(), LONGEST_QUERY));
    }
  }
}

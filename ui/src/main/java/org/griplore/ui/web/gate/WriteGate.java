package org.griplore.ui.web.gate;

import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Set;
import java.util.concurrent.Semaphore;
import org.griplore.store.archive.Archive;

/**
 * What a form must pass before it may change the archive: it was sent by a page of this explorer
 * (by its origin and by a token that only such a page holds), is not too long, and no other change
 * is being made. A handler behind it ends with {@link #lead}, so that a page loaded anew sends
 * nothing twice.
 */
public final class WriteGate {
  /** The field of a form that holds the token. */
  static final String TOKEN = "token";

  /** No meaning: room for a large workbook; longer files go in by the command line. */
  static final int MOST_BYTES = 20 << 20;

  private static final Set<String> FORMS =
      Set.of("application/x-www-form-urlencoded", "multipart/form-data");

  private final String token;
  private final String closed;
  private final Set<String> paths = new HashSet<>();
  private final Semaphore turn = new Semaphore(1);

  private WriteGate(String token, String closed) {
    this.token = token;
    this.closed = closed;
  }

  /** A gate for an archive; closed when that cannot be written. */
  public static WriteGate of(Archive archive) {
    if (!archive.writable()) {
      return closed(
          "The archive's folder cannot be written: this explorer shows what it holds, and adds"
              + " nothing.");
    }
    byte[] random = new byte[32];
    new SecureRandom().nextBytes(random);
    return new WriteGate(HexFormat.of().formatHex(random), null);
  }

  /** A gate that lets nothing in, and says why. */
  public static WriteGate closed(String why) {
    return new WriteGate("", why);
  }

  /** Limits the memory that a form may take. */
  public static void limit(JavalinConfig config) {
    config.http.maxRequestSize = MOST_BYTES;
    config.jetty.multipartConfig.maxFileSize(MOST_BYTES, SizeUnit.BYTES);
    config.jetty.multipartConfig.maxTotalRequestSize(MOST_BYTES, SizeUnit.BYTES);
    config.jetty.multipartConfig.maxInMemoryFileSize(MOST_BYTES, SizeUnit.BYTES);
  }

  /** Whether changes may be made; forms that make them are shown only then. */
  public boolean isOpen() {
    return closed == null;
  }

  /** Why no changes can be made; null when they can. */
  public String whyClosed() {
    return closed;
  }

  /** What every form must hold in a hidden field named {@link #TOKEN}. */
  public String token() {
    return token;
  }

  /** Whether forms are sent to a path. */
  boolean takes(String path) {
    return paths.contains(path);
  }

  /** Adds a path that takes a form and changes nothing yet: a preview, say. */
  public void form(RoutesConfig routes, String path, Handler handler) {
    paths.add(path);
    routes.post(
        path,
        context -> {
          check(context);
          handler.handle(context);
        });
  }

  /** Adds a path that takes a form and changes the archive, one at a time. */
  public void write(RoutesConfig routes, String path, Handler handler) {
    form(
        routes,
        path,
        context -> {
          if (!turn.tryAcquire()) {
            throw new Gate.TurnedAway(
                409,
                "Another change to this archive is being made right now: send this one again when"
                    + " it is done; nothing was changed.");
          }
          try {
            handler.handle(context);
          } finally {
            turn.release();
          }
        });
  }

  /** Ends a change: the browser is led to a page, which can be loaded anew without harm. */
  public static void lead(Context context, String address) {
    context.redirect(address, io.javalin.http.HttpStatus.SEE_OTHER);
  }

  private void check(Context context) {
    refuseForeign(context);
    if (closed != null) {
      throw new Gate.TurnedAway(403, closed);
    }
    refuseLength(context);
    if (!holdsToken(context)) {
      throw new Gate.TurnedAway(
          403,
          "This form is not of the explorer that runs now: go back, load its page anew and send it"
              + " again; nothing was changed.");
    }
  }

  /** A browser says where a form came from; what does not say so is no browser. */
  private static void refuseForeign(Context context) {
    String site = context.header("Sec-Fetch-Site");
    String origin = context.header("Origin");
    boolean foreignSite = site != null && !site.equals("same-origin");
    boolean foreignOrigin =
        origin != null && !origin.equals(context.scheme() + "://" + context.host());
    if (foreignSite || foreignOrigin || site == null && origin == null) {
      throw new Gate.TurnedAway(
          403, "Only forms on pages of this explorer are taken; nothing was changed.");
    }
  }

  private static void refuseLength(Context context) {
    long length = context.req().getContentLengthLong();
    if (length < 0) {
      throw new Gate.TurnedAway(411, "A form must say how long it is (Content-Length).");
    }
    if (length > MOST_BYTES) {
      throw new Gate.TurnedAway(
          413,
          "The form holds %d MB; at most %d MB are taken here. Add a larger file with `griplore add`."
              .formatted((length + (1 << 20) - 1) >> 20, MOST_BYTES >> 20));
    }
  }

  private boolean holdsToken(Context context) {
    String type = context.contentType() == null ? "" : context.contentType().split(";")[0].strip();
    String given = null;
    if (FORMS.contains(type)) {
      try {
        given = context.formParam(TOKEN);
      } catch (Exception e) { // the library throws whatever its reader of parts throws
        throw new Gate.TurnedAway(400, "The form cannot be read: it is not whole.");
      }
    }
    return given != null
        && MessageDigest.isEqual(
            given.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
  }
}

package underfoot.cli;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicLong;
import underfoot.scenario.FactBook;

/**
 * Serves the interview as a page, to this machine only. The address holds a random word that other
 * programs and other pages cannot know; every request is checked for it, for the host it was sent
 * to and for the page it came from, and none may be large.
 */
final class PageServer implements AutoCloseable {
  private static final int TOKEN_BYTES = 18;

  /** What is too large is taken in so far and dropped, or the refusal would be lost on the way. */
  private static final int MOST_DROPPED = 4_000_000;

  private static final int BACKLOG = 16;

  /** More than a page keeps busy, so that one which thinks for long keeps no other from loading. */
  private static final int WORKERS = 64;

  /** Of so many pages and kinds of request the last is kept in mind. */
  private static final int MOST_PAGES = 300;

  /** A request that has not come whole by then is dropped, so that half ones hold no worker. */
  private static final String MOST_SECONDS_TO_ASK = "5";

  private static final int FINE = 200;
  private static final int REFUSED = 403;
  private static final int NOT_THERE = 404;
  private static final int WRONG_METHOD = 405;
  private static final int TOO_LARGE = 413;
  private static final int WRONG_KIND = 415;
  private static final int BROKEN = 500;

  /** Every file there is: nothing else can be asked for, whatever the path says. */
  private static final Map<String, Part> FILES =
      Map.of(
          "", new Part("page/page.html", "text/html"),
          "page.js", new Part("page/page.js", "text/javascript"),
          "plan.js", new Part("page/plan.js", "text/javascript"),
          "doors.js", new Part("page/doors.js", "text/javascript"),
          "page.css", new Part("page/page.css", "text/css"),
          "report.css", new Part("report/html/page.css", "text/css"));

  /** A file of the program, and what it holds. */
  private record Part(String file, String kind) {}

  /**
   * What is sent.
   *
   * @param kind what it is
   * @param text the text
   */
  record Sent(String kind, String text) {}

  /** Pages of another sort that are served in place of the interview. */
  interface Site {
    /** Whether there is such a page. */
    boolean has(String what);

    /** Where its forms may go. */
    String formsTo();

    /** A page. */
    Sent get(String what) throws UserError;

    /** Takes a form in. */
    Sent post(String what, String kind, byte[] body) throws UserError;
  }

  private final HttpServer server;
  private final ExecutorService workers = Executors.newFixedThreadPool(WORKERS, PageServer::worker);
  private final CountDownLatch stopped = new CountDownLatch(1);
  private final Semaphore heavy = new Semaphore(1, true);
  private final Map<String, AtomicLong> newest = new ConcurrentHashMap<>();
  private final PageApi desk;
  private final Site site;
  private final String token;
  private final int most;

  /**
   * Begins to serve.
   *
   * @param desk what answers
   * @param port the port; 0 for a free one
   * @param limits how much may be sent to it
   * @throws IOException if the port cannot be had
   */
  PageServer(PageApi desk, int port, FactBook limits) throws IOException {
    this(desk, null, port, limits);
  }

  /**
   * Begins to serve pages of another sort.
   *
   * @param site the pages
   * @param port the port; 0 for a free one
   * @param limits how much may be sent to it
   * @throws IOException if the port cannot be had
   */
  PageServer(Site site, int port, FactBook limits) throws IOException {
    this(null, site, port, limits);
  }

  private PageServer(PageApi desk, Site site, int port, FactBook limits) throws IOException {
    this.most = (int) limits.limit("largest-request");
    this.desk = desk;
    this.site = site;
    byte[] random = new byte[TOKEN_BYTES];
    new SecureRandom().nextBytes(random);
    this.token = HexFormat.of().formatHex(random);
    // Read once by Java, with its first server; Java waits for ever otherwise.
    System.setProperty("sun.net.httpserver.maxReqTime", MOST_SECONDS_TO_ASK);
    System.setProperty("jdk.httpserver.maxConnections", Integer.toString(2 * WORKERS));
    this.server =
        HttpServer.create(new InetSocketAddress(InetAddress.getByName("127.0.0.1"), port), BACKLOG);
    server.setExecutor(workers);
    server.createContext("/", this::handle);
    server.start();
  }

  private static Thread worker(Runnable work) {
    Thread thread = new Thread(work, "page");
    thread.setDaemon(true);
    return thread;
  }

  /** The address to open, with the random word in it. */
  String address() {
    return origin() + "/" + token + "/";
  }

  private String origin() {
    return "http://" + host();
  }

  private String host() {
    return "127.0.0.1:" + server.getAddress().getPort();
  }

  /** Waits until it is closed or the program is stopped. */
  void untilStopped() {
    try {
      stopped.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    server.stop(0);
    workers.shutdownNow();
    stopped.countDown();
  }

  private void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      try {
        answer(exchange);
      } catch (RuntimeException | UserError e) {
        send(exchange, BROKEN, "text/plain; charset=utf-8", "That could not be worked out.");
      }
    }
  }

  private void answer(HttpExchange exchange) throws IOException, UserError {
    String path = exchange.getRequestURI().getRawPath();
    String begins = "/" + token + "/";
    if (!host().equals(exchange.getRequestHeaders().getFirst("Host")) || !ofOurs(exchange)) {
      send(exchange, REFUSED, "text/plain; charset=utf-8", "Refused.");
      return;
    }
    if (path == null || path.length() < begins.length() || !same(path, begins)) {
      send(exchange, NOT_THERE, "text/plain; charset=utf-8", "There is nothing here.");
      return;
    }
    String what = path.substring(begins.length());
    if (site != null && site.has(what)) {
      visit(exchange, what);
    } else if (site == null && FILES.containsKey(what)) {
      file(exchange, what);
    } else if (site == null && PageApi.ASKED.contains(what)) {
      ask(exchange, what);
    } else {
      send(exchange, NOT_THERE, "text/plain; charset=utf-8", "There is nothing here.");
    }
  }

  /** Compared so that the time it takes tells nothing of the word. */
  private static boolean same(String path, String begins) {
    return MessageDigest.isEqual(
        path.substring(0, begins.length()).getBytes(StandardCharsets.UTF_8),
        begins.getBytes(StandardCharsets.UTF_8));
  }

  /** Whether a request comes from our own page, or was typed by the person. */
  private boolean ofOurs(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
    String from = headers.getFirst("Origin");
    String site = headers.getFirst("Sec-Fetch-Site");
    boolean get = exchange.getRequestMethod().equals("GET");
    boolean ownOrigin = from == null ? get : from.equals(origin());
    boolean ownSite = site == null || site.equals("same-origin") || get && site.equals("none");
    return ownOrigin && ownSite;
  }

  private static void file(HttpExchange exchange, String what) throws IOException {
    if (!exchange.getRequestMethod().equals("GET")) {
      send(exchange, WRONG_METHOD, "text/plain; charset=utf-8", "Only to be read.");
      return;
    }
    Part part = FILES.get(what);
    try (InputStream in = PageServer.class.getResourceAsStream("/underfoot/" + part.file())) {
      if (in == null) {
        throw new IllegalStateException("the page is missing from the program: " + part.file());
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      send(exchange, FINE, part.kind() + "; charset=utf-8", text);
    }
  }

  private void visit(HttpExchange exchange, String what) throws IOException, UserError {
    if (exchange.getRequestMethod().equals("GET")) {
      send(exchange, site.get(what));
      return;
    }
    String kind = exchange.getRequestHeaders().getFirst("Content-Type");
    if (!exchange.getRequestMethod().equals("POST")
        || kind == null
        || !kind.startsWith("application/x-www-form-urlencoded")) {
      send(exchange, WRONG_KIND, "text/plain; charset=utf-8", "A form is needed.");
      return;
    }
    byte[] body = body(exchange);
    if (body != null) {
      send(exchange, site.post(what, kind, body));
    }
  }

  /** The body of a request; null if it was too large, which is then answered. */
  private byte[] body(HttpExchange exchange) throws IOException {
    byte[] body = exchange.getRequestBody().readNBytes(most + 1);
    if (body.length <= most) {
      return body;
    }
    exchange.getRequestBody().readNBytes(MOST_DROPPED);
    send(exchange, TOO_LARGE, "text/plain; charset=utf-8", "That is too much.");
    return null;
  }

  private void send(HttpExchange exchange, Sent page) throws IOException {
    exchange
        .getResponseHeaders()
        .set(
            "Content-Security-Policy",
            "default-src 'none'; style-src 'unsafe-inline'; form-action "
                + site.formsTo()
                + "; frame-ancestors 'none'; base-uri 'none'");
    exchange.getResponseHeaders().set("Referrer-Policy", "same-origin"); // a form names its origin
    send(exchange, FINE, page.kind() + "; charset=utf-8", page.text());
  }

  private void ask(HttpExchange exchange, String what) throws IOException, UserError {
    if (!exchange.getRequestMethod().equals("POST")) {
      send(exchange, WRONG_METHOD, "text/plain; charset=utf-8", "Only to be asked.");
      return;
    }
    String kind = exchange.getRequestHeaders().getFirst("Content-Type");
    if (kind == null || !kind.startsWith("application/json")) {
      send(exchange, WRONG_KIND, "text/plain; charset=utf-8", "JSON is needed.");
      return;
    }
    byte[] body = body(exchange);
    if (body == null) {
      return;
    }
    StringWriter out = new StringWriter();
    if (what.equals("say")) {
      // What this page asked of an earlier state nobody waits for any more.
      PageApi.HEAVY.forEach(one -> newest(one, exchange).incrementAndGet());
    }
    if (PageApi.HEAVY.contains(what)) {
      // One after another: they use all cores as it is, and the advice must not wait for them. What
      // the same page asked before the last of its kind waits no longer.
      AtomicLong last = newest(what, exchange);
      long ticket = last.incrementAndGet();
      heavy.acquireUninterruptibly();
      try {
        if (ticket == last.get()) {
          desk.answer(what, body, () -> ticket != last.get(), out);
        } else {
          out.write("{\"late\":true}");
        }
      } finally {
        heavy.release();
      }
    } else {
      desk.answer(what, body, () -> false, out);
    }
    send(exchange, FINE, "application/json; charset=utf-8", out.toString());
  }

  /** Counts what one page asks of one kind; two pages do not wait for each other for ever. */
  private AtomicLong newest(String what, HttpExchange exchange) {
    String page = exchange.getRequestURI().getRawQuery();
    if (newest.size() > MOST_PAGES) {
      newest.clear(); // what is under way is then finished, though nobody may wait for it
    }
    return newest.computeIfAbsent(what + '?' + page, one -> new AtomicLong());
  }

  private static void send(HttpExchange exchange, int code, String kind, String text)
      throws IOException {
    Headers headers = exchange.getResponseHeaders();
    headers.set("Content-Type", kind);
    headers.set("Cache-Control", "no-store");
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("X-Frame-Options", "DENY");
    headers.putIfAbsent("Referrer-Policy", List.of("no-referrer"));
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.putIfAbsent(
        "Content-Security-Policy",
        List.of(
            "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self';"
                + " img-src 'self' data:; form-action 'none'; frame-ancestors 'none'; base-uri 'none'"));
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    exchange.sendResponseHeaders(code, bytes.length);
    exchange.getResponseBody().write(bytes);
  }
}

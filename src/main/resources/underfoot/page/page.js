"use strict";
// Shows the question the program asks and sends back what is said. What matters, what is understood
// and what is advised is thought out by the program; nothing is decided here.
const $ = (id) => document.getElementById(id);
const KEPT = "underfoot";

function make(tag, attributes, ...children) {
  const node = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes || {})) {
    if (name === "text") node.textContent = value;
    else if (name.startsWith("on")) node.addEventListener(name.slice(2), value);
    else if (value !== false) node.setAttribute(name, value === true ? "" : value);
  }
  node.append(...children.filter(Boolean));
  return node;
}

const capital = (words) => words.slice(0, 1).toUpperCase() + words.slice(1);
const tell = (words) => { $("told").textContent = words; };

// --- what is known: step by step, so that each can be taken back. It is kept in the browser.
// A step is what was known at it, which question was asked there ("" for the next one that
// matters), what had just been understood, and whether the rest was offered already.
let steps = [];
let at = 0;
let units = "";
const now = () => steps[at];
const blank = () => ({ answers: {}, taken: {}, ask: "", heard: [], offered: false, ends: false });

function keep() {
  try {
    localStorage.setItem(KEPT, JSON.stringify({ steps, at, units }));
  } catch {
    tell("This browser keeps nothing. Save your answers as a file before you leave.");
  }
}

function kept() {
  try {
    const found = JSON.parse(localStorage.getItem(KEPT));
    if (!found || !Array.isArray(found.steps) || !found.steps.length) return false;
    steps = found.steps.map((one) => ({ ...blank(), ...one }));
    at = Math.min(Math.max(0, found.at | 0), steps.length - 1);
    units = found.units || "";
    return true;
  } catch {
    return false;
  }
}

function step(more) {
  const last = { ...now() };
  steps = steps.slice(0, at + 1).concat({ ...last, ask: "", heard: [], ends: false, objection: "", ...more });
  at = steps.length - 1;
  keep();
  history.pushState({ at, deep: ((history.state && history.state.deep) || 0) + 1 }, "");
  shown();
}

function go(to) {
  at = Math.min(Math.max(0, to), steps.length - 1);
  keep();
  shown();
}

function back() {
  if (at === 0) { tell("This is the first question."); return; }
  if (history.state && history.state.deep > 0 && history.state.at === at) history.back();
  else { history.replaceState({ at: at - 1, deep: 0 }, ""); go(at - 1); }
}

window.addEventListener("popstate", (event) => { if (event.state && "at" in event.state) go(event.state.at); });
// Another tab went on: this one follows.
window.addEventListener("storage", (event) => {
  if (event.key !== KEPT || !kept()) return;
  history.replaceState({ at, deep: (history.state && history.state.deep) || 0 }, "");
  tell("Went on in another tab; this one shows the same.");
  shown();
});

// --- asking the program
const tab = Math.random().toString(36).slice(2, 12); // tells this tab's requests from another's
async function send(what, request) {
  const response = await fetch(what + "?" + tab, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify({ answers: now().answers, taken: now().taken, units, ...request }),
  });
  if (!response.ok) throw new Error(await response.text());
  return response.json();
}

let turn = 0; // counts what is shown; a reply to anything earlier is out of date
const lines = {};

// Each of these has at most one request under way; what is shown meanwhile is asked about after it.
function ask(what, show) {
  const line = (lines[what] = lines[what] || { under: false, again: false });
  if (line.under) { line.again = true; return; }
  line.under = true;
  line.again = false;
  const mine = turn;
  send(what, {}).then((reply) => {
    if (reply.late) line.again = true; // something else was asked after this
    else if (mine === turn) show(reply);
  }).catch(silent).finally(() => {
    line.under = false;
    if (line.again) ask(what, show);
  });
}

function silent(error) {
  tell("The program does not answer. Is it still running? Your answers are kept. " + error.message);
}

const tried = (work) => work().catch(silent);

// --- showing what is known now
function shown() {
  turn++;
  board = null;
  for (const mark of ["asked", "advised", "left", "settled"]) delete document.body.dataset[mark];
  heard(now().heard);
  $("left-count").textContent = "Working out what is still open …";
  $("old").hidden = false;
  if (now().ask) {
    const mine = turn;
    tried(async () => {
      const [one, next] = await Promise.all([send("question", { place: now().ask }), send("next", {})]);
      if (mine === turn) showNext({ ...next, question: one.question || next.question, finer: false });
    });
  } else ask("next", showNext);
  ask("advice", (reply) => {
    showAdvice(reply);
    ask("left", showLeft);
    ask("first", showFirst);
    if ($("whole").open) ask("report", showReport);
  });
}

function showNext(reply) {
  tell("");
  said(reply.said);
  if (now().ends || !reply.question) ended(reply.question ? reply.offer : "");
  else if (reply.finer && !now().offered) offered(reply);
  else card(reply.question);
  document.body.dataset.asked = String(turn);
}

const touch = () => matchMedia("(pointer: coarse)").matches;
let first = true;
function focusOn(input) {
  if (!first) (input && !touch() ? input : $("ask")).focus({ preventScroll: true });
  if (!first && touch()) $("talk").scrollIntoView({ block: "start" });
  first = false;
}

// --- the card: one question
function card(one) {
  const wrong = make("p", { class: "wrong", id: "wrong", role: "alert" });
  const means = make("div", { class: "row", id: "meant" });
  const input = make("input", { type: "text", id: "words", "aria-labelledby": "ask", "aria-describedby": "how wrong", autocapitalize: "off", spellcheck: "false" });
  const many = one.choices.length > 12;
  const choices = make("div", { class: "choices" + (many ? " many" : "") + (one.choices.some((c) => c.drawing) ? "" : " plain"), role: "group", "aria-labelledby": "ask" });
  for (const choice of one.choices) {
    const label = choice.value === "yes" || choice.value === "no" ? choice.value[0].toUpperCase() + choice.value.slice(1) : choice.value;
    choices.append(make("button", { type: "button", class: "choice", "data-value": choice.value, "aria-pressed": String(one.said === choice.value), onclick: () => choose(choice.value) },
      picture(choice.drawing, true), make("span", { class: "name", text: label }), choice.looks && make("span", { class: "looks", text: choice.looks })));
  }
  const picked = new Set();
  function choose(value) {
    if (one.kind !== "choices") { answer(one, value, ""); return; }
    if (picked.has(value)) picked.delete(value); else picked.add(value);
    choices.querySelectorAll("button").forEach((b) => b.setAttribute("aria-pressed", String(picked.has(b.dataset.value))));
    input.value = [...picked].join(", ");
  }
  const onPlan = one.plan === "doorway" ? doorway : ["points", "rectangle", "readings"].includes(one.kind) ? plan : null;
  const drawn = onPlan && onPlan(one, (text) => answer(one.plan ? { id: one.id.replace(/\[\]\.[^@]*/, "[].wall") } : one, text, ""));
  const known = one.said && one.said !== "unknown" ? one.said.replace(/\n/g, ", ") : "";
  if (known && (!drawn || one.plan)) input.value = known;
  const free = make("div", { class: "row free" },
    make("label", { for: "words", class: "or", text: one.choices.length ? "In your own words, or choose below" : "In your own words" }), input, make("button", { type: "submit", class: "main", id: "say", text: "Go on" }));
  const rest = make("div", { class: "row" },
    one.mayBeUnknown && make("button", { type: "button", id: "unknown", text: one.guess ? "Leave it at that guess" : "I do not know", onclick: () => answer(one, "", "") }),
    make("button", { type: "button", id: "back", text: "Back", onclick: back, disabled: at === 0 }));
  const because = make("ul", {});
  const why = make("details", { class: "help", ontoggle: () => why.open && tried(async () => {
    because.replaceChildren(make("li", { text: "Working it out …" }));
    const reply = await send("why", { place: one.id });
    because.replaceChildren(...reply.lines.map((line) => make("li", { text: line })));
  }) }, make("summary", { id: "why", text: "Why it is asked" }), because);
  const look = make("details", { class: "help" }, make("summary", { id: "look", text: "How to find out" }),
    make("p", { text: one.means + "." }), one.look && make("p", { text: one.look + "." }));
  show(
    make("p", { class: "part", text: one.part }),
    make("h2", { id: "ask", tabindex: "-1", text: one.ask }),
    one.guess && make("p", { class: "guess", text: `Taken as ${one.said}: ${one.guess}.` }),
    make("p", { class: "hint", id: "how", text: one.how }),
    picture(one.drawing, false),
    free, wrong, means,
    one.choices.length > 0 && choices,
    drawn && drawn.field,
    rest, make("div", { class: "helps" }, look, why));
  $("card").dataset.id = one.id;
  $("card").onsubmit = (event) => {
    event.preventDefault();
    if (input.value.trim()) answer(one, input.value.trim(), input.dataset.meant || "");
    else { wrong.textContent = one.mayBeUnknown ? "Say something, or press “I do not know”." : "Say something first."; input.focus(); }
  };
  if (now().objection) wrong.textContent = now().objection;
  board = drawn && { one, drawn };
  if (advised.turn === turn) onBoardNow();
  focusOn(input);
}

let board = null; // the plan on the card
let advised = { turn: 0, reply: null }; // what was last told of the floor, and when
/** Where the program says that everything in the room is, on the plan of the card. */
function onBoardNow() {
  if (!board) return;
  const { one, drawn } = board;
  const places = advised.reply.drawn || {};
  const around = Object.keys(places).filter((id) => id !== one.id && id.includes("@")).map((id) => ({ name: id.slice(id.indexOf("@") + 1), corners: places[id] }));
  drawn.drawn({ points: places[one.id] || [], room: places["room.outline"] || [], around, doors: advised.reply.doors || [] });
}

const show = (...nodes) => $("card").replaceChildren(...nodes.filter(Boolean));

// The program's own drawings, and nothing else, come as markup.
function picture(markup, small) {
  if (!markup) return null;
  const svg = new DOMParser().parseFromString(markup, "text/html").body.firstElementChild;
  if (small) svg.setAttribute("aria-hidden", "true");
  return make("div", { class: small ? "small" : "large" }, svg);
}

// One saying after another: what is said while another is on its way would lose it.
function answer(one, words, meant) {
  if ($("card").inert) return;
  $("card").inert = true;
  delete document.body.dataset.asked;
  tried(async () => {
    const reply = await send("say", { place: one.id, words, meant }).finally(() => { $("card").inert = false; });
    document.body.dataset.asked = String(turn);
    if (reply.command) { command(reply.command); return; }
    if (reply.answered || reply.told.length) {
      const unknown = reply.told.length === 1 && reply.told[0].value === "unknown";
      const heard = unknown ? [{ id: one.id, called: one.ask, value: "not known", unknown: true }] : reply.told;
      if (reply.answered) { step({ answers: reply.answers, taken: reply.taken, heard }); return; }
      step({ answers: reply.answers, taken: reply.taken, heard, ask: one.id, objection: reply.objection });
      return;
    }
    object(reply, words);
  });
}

function object(reply, words) {
  const input = $("words");
  $("wrong").textContent = reply.objection;
  input.setAttribute("aria-invalid", "true");
  input.value = words;
  $("meant").replaceChildren();
  if (reply.meant) {
    $("meant").append(make("button", { type: "button", class: "main", text: "Yes, " + reply.meant, onclick: () => answer({ id: $("card").dataset.id }, reply.meant, "") }));
    input.dataset.meant = reply.meant; // "yes" then means that
  }
  input.focus();
  input.select();
}

function command(word) {
  if (word === "back") back();
  else if (word === "help") $("look").parentElement.open = true;
  else if (word === "why") $("why").parentElement.open = true;
  else if (word === "enough") step({ ends: true, offered: true });
  else $("advice").focus();
  if ($("words")) $("words").value = "";
}

function offered(reply) {
  show(
    make("h2", { id: "ask", tabindex: "-1", text: "The rest makes it finer" }),
    make("p", { text: reply.offer }),
    make("div", { class: "row" },
      make("button", { type: "button", class: "main", id: "go-on", text: "Go on asking", onclick: () => step({ offered: true, heard: now().heard }) }),
      make("button", { type: "button", id: "enough", text: "That is enough", onclick: () => step({ offered: true, ends: true }) }),
      make("button", { type: "button", id: "back", text: "Back", onclick: back, disabled: at === 0 })));
  $("card").dataset.id = "";
  focusOn(null);
}

function ended(offer) {
  show(
    make("h2", { id: "ask", tabindex: "-1", text: offer ? "Enough for now" : "That is all" }),
    make("p", { text: offer || "No other answer would change the advice." }),
    make("div", { class: "row" },
      offer && make("button", { type: "button", class: "main", id: "go-on", text: "Go on asking", onclick: () => step({ offered: true }) }),
      make("button", { type: "button", text: "Sheet to build from", onclick: () => $("sheet").click() }),
      make("button", { type: "button", text: "List for the shop", onclick: () => $("list").click() }),
      make("button", { type: "button", text: "Save my answers", onclick: () => $("save").click() }),
      make("button", { type: "button", id: "back", text: "Back", onclick: back, disabled: at === 0 })),
    make("div", { id: "end-find", hidden: true }, make("h3", { text: "Find out first" }), make("ol", { id: "end-things" })));
  $("card").dataset.id = "";
  focusOn(null);
  if (found.turn === turn) things(found.reply);
}

const change = (id) => step({ ask: id });

// --- what was understood, what was said, what is open
function heard(list) {
  $("heard").hidden = list.length === 0;
  $("heard").replaceChildren();
  if (!list.length) return;
  const chips = list.map((one) => make("li", { class: one.guess ? "only" : "" },
    make("span", { text: one.unknown ? `${one.called} Not known.` : capital(`${one.called}: ${one.value.replace(/\n/g, ", ")}`) + (one.guess ? " (a guess)" : "") }),
    make("button", { type: "button", text: "Change", "aria-label": "Change: " + one.called, onclick: () => change(one.id) })));
  const cost = make("ul", { class: "hint", id: "cost" });
  $("heard").append(make("p", { class: "part", text: "Understood" }), make("ul", { class: "chips" }, ...chips));
  const reasons = new Set(list.filter((one) => one.guess && one.since).map((one) => one.since));
  cost.append(...[...reasons].map((since) => make("li", { text: "A guess: " + since + "." })));
  $("heard").append(cost);
  const mine = turn;
  if (list[0].unknown) tried(async () => {
    const reply = await send("cost", { place: list[0].id });
    if (mine === turn) cost.replaceChildren(...reply.lines.map((line) => make("li", { text: line })));
  });
}

function said(list) {
  $("course").hidden = false;
  const guesses = list.filter((one) => one.guess).length;
  const open = list.filter((one) => one.value === "unknown").length;
  $("said-count").textContent = `What you said (${list.length})` + (guesses ? `, ${guesses} of it a guess` : "") + (open ? `, ${open} not known` : "");
  $("said").replaceChildren(...list.map((one) => make("li", {},
    make("span", { text: `${capital(one.called)}: ${one.value === "unknown" ? "not known" : one.value.replace(/\n/g, ", ")}` + (one.guess ? " (a guess)" : "") }),
    make("button", { type: "button", text: "Change", "aria-label": "Change: " + one.ask, onclick: () => change(one.id) }))));
}

function showLeft(reply) {
  const parts = new Map();
  for (const one of reply.left) parts.set(one.part, [...(parts.get(one.part) || []), one]);
  const n = reply.left.length;
  $("left-count").textContent = n === 0 ? "Nothing is open any more" : n === 1 ? "One question is still open" : `${n} questions are still open`;
  $("left").replaceChildren(...[...parts].flatMap(([title, list]) => [
    make("h3", { text: title }),
    make("ul", { class: "said" }, ...list.map((one) => make("li", {}, make("span", { text: one.ask }), make("button", { type: "button", text: "Answer", "aria-label": "Answer: " + one.ask, onclick: () => change(one.id) })))),
  ]));
  document.body.dataset.left = String(turn);
}

// --- the advice
let style;
async function styled(host, markup) {
  // A report and its drawings keep their own style, and it keeps off the rest of the page.
  const root = host.shadowRoot || host.attachShadow({ mode: "open" });
  style = style || fetch("report.css").then((got) => got.text()).then((text) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(text);
    return sheet;
  });
  root.adoptedStyleSheets = [await style];
  root.replaceChildren(...new DOMParser().parseFromString(markup, "text/html").body.childNodes);
  return root;
}

const notes = (list) => (list || []).map((one) => make("li", {}, make("strong", { text: one.title + ". " }), one.text));

function showAdvice(reply) {
  advised = { turn, reply };
  onBoardNow();
  const there = Boolean(reply.verdict);
  $("answer").hidden = $("seen").hidden = $("whole").hidden = !there;
  $("waiting").hidden = there;
  for (const words of Object.values(reply.wrong || {})) tell(words);
  if (there) {
    const grave = [...reply.halts, ...reply.dangers];
    const danger = grave.length ? ` ${grave.length} ${grave.length === 1 ? "danger" : "dangers"}.` : "";
    $("preview").textContent = capital(reply.preview) + "." + danger;
    $("headline").textContent = reply.headline;
    $("headline").className = reply.verdict;
    $("now").replaceChildren(...reply.now.map((one) => make("li", { text: one })));
    $("do-now").hidden = reply.now.length === 0;
    $("gates").textContent = reply.gates;
    $("hurts").textContent = reply.hurts;
    $("verdict").textContent = reply.verdictWords;
    $("verdict").className = reply.verdict;
    $("summary").textContent = reply.summary;
    $("dangers").replaceChildren(...notes(grave));
    $("grave").hidden = grave.length === 0;
    styled($("cut"), reply.section || "<p>Nothing is to be built here.</p>");
    if (reply.levels) styled($("map"), reply.levels);
    $("level-part").hidden = !reply.levels;
    $("before").replaceChildren(...notes(reply.before));
    $("put").hidden = reply.before.length === 0;
  } else {
    const n = reply.missing.length;
    $("preview").textContent = `No advice yet: ${n} to answer first.`;
    $("put").hidden = $("find").hidden = true;
  }
  document.body.dataset.advised = String(turn);
}

let found = { turn: 0, reply: null }; // what is to be found out first, and when that was told
function things(reply) {
  // They stand in the advice; when all is asked they stand where the question stood as well.
  for (const [part, list] of [["find", "things"], ["end-find", "end-things"]]) {
    if (!$(part)) continue;
    $(list).replaceChildren(...reply.first.map((one) => make("li", {}, one.words + " ",
      make("button", { type: "button", class: "inline", text: "Answer it", onclick: () => change(one.id) }))));
    $(part).hidden = reply.first.length === 0;
  }
}
function showFirst(reply) {
  found = { turn, reply };
  things(reply);
  document.body.dataset.settled = String(turn);
}

async function showReport(reply) {
  if (reply.report) {
    const root = await styled($("report"), reply.report);
    root.querySelector(".skip").remove();
    // A browser looks for the targets of links in the page only, not in what keeps its own style.
    root.onclick = (event) => {
      const link = event.target.closest("a[href^='#']");
      const to = link && root.getElementById(link.getAttribute("href").slice(1));
      if (!to) return;
      event.preventDefault();
      for (let node = to; node; node = node.parentElement) if (node.tagName === "DETAILS") node.open = true;
      to.tabIndex = -1;
      to.scrollIntoView();
      to.focus({ preventScroll: true });
    };
  }
  $("old").hidden = Boolean(reply.report);
  document.body.dataset.reported = String(turn);
}

// --- files, paper, units
$("open").addEventListener("change", (event) => tried(async () => {
  const file = event.target.files[0];
  if (!file) return;
  if (file.size > 1000000) { tell("That file is too large to be a scenario."); return; }
  const reply = await send("open", { file: await file.text() });
  event.target.value = "";
  if (reply.wrong) { tell(reply.wrong); return; }
  step({ answers: reply.answers, taken: reply.taken, offered: false });
}));
function give(content, type, name) {
  const link = make("a", { href: URL.createObjectURL(new Blob([content], { type })), download: name });
  link.click();
  URL.revokeObjectURL(link.href);
  tell(`Saved as ${name}, where your browser puts files.`);
}
$("save").addEventListener("click", () => tried(async () => give((await send("file", {})).file, "application/yaml", "my-floor.yaml")));
// The sheet and the list are a page of paper each; the whole advice is one file that needs nothing else.
for (const what of ["sheet", "list", "share"]) {
  $(what).addEventListener("click", () => tried(async () => {
    if ($("answer").hidden) { tell("There is no advice yet. " + $("waiting").textContent); return; }
    tell("Being worked out …");
    const { name, kind, bytes } = await send(what, {});
    give(Uint8Array.from(atob(bytes), (one) => one.charCodeAt(0)), kind, "my-floor-" + name);
  }));
}
$("print").addEventListener("click", () => tried(async () => {
  if (!$("answer").hidden) await showReport(await send("report", {}));
  window.print();
}));
$("anew").addEventListener("click", () => tried(async () => {
  const reply = await send("begin", {});
  step({ ...blank(), answers: reply.answers, taken: reply.taken }); // Back brings the old answers again
}));
$("units").addEventListener("change", (event) => { units = event.target.value; keep(); shown(); });
$("whole").addEventListener("toggle", () => { if ($("whole").open) ask("report", showReport); });
window.addEventListener("beforeprint", () => { $("whole").open = $("old").hidden; });

tried(async () => {
  if (!kept()) {
    steps = [blank()];
    const reply = await send("begin", {});
    steps = [{ ...blank(), answers: reply.answers, taken: reply.taken }];
    at = 0;
    keep();
  }
  $("units").value = units;
  history.replaceState({ at, deep: (history.state && history.state.deep) || 0 }, "");
  shown();
});

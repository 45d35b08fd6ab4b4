"use strict";
// Shows the questions the program sends and sends the answers back. What matters, what is right
// and what is advised is thought out by the program; nothing is decided here.
const answers = {}; // what was said, by the question's id
const nodes = {}; // what stands on the page for a question, by its id
const $ = (id) => document.getElementById(id);

function make(tag, attributes, ...children) {
  const node = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes || {})) {
    if (name === "text") node.textContent = value;
    else if (name.startsWith("on")) node.addEventListener(name.slice(2), value);
    else if (value !== false) node.setAttribute(name, value === true ? "" : value);
  }
  node.append(...children);
  return node;
}

function tell(words) { $("told").textContent = words; }

// --- asking the program
async function send(what, request) {
  const response = await fetch(what, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(request),
  });
  if (!response.ok) throw new Error(await response.text());
  return response.json();
}

const PAUSE = 250; // ms without a key before the program is asked
let said = 0; // counts what was said; an answer to anything earlier is out of date
let timer = 0;

// Each of these has at most one request under way. What is said meanwhile is asked about when that
// one is back, once, however many keys were pressed.
const advice = line("advice", (reply) => { showAdvice(reply); questions.ask(); });
const questions = line("questions", (reply) => { showQuestions(reply); report.ask(); });
const report = line("report", showReport);

function line(what, show) {
  let under = false;
  let again = false;
  const ask = async () => {
    if (under) { again = true; return; }
    under = true;
    again = false;
    const mine = said;
    try {
      const reply = await send(what, { answers });
      if (reply.late) again = true; // another page asked after this one did
      else if (mine === said) show(reply);
    } catch (error) {
      $("busy").hidden = true;
      tell("The program does not answer. Is it still running? " + error.message);
    }
    under = false;
    if (again) ask();
  };
  return { ask };
}

function say(id, value) {
  if (nodes[id]) clearTimeout(nodes[id].patience);
  if (value === "") delete answers[id];
  else answers[id] = value;
  changed(PAUSE);
}

function changed(pause) {
  said++;
  delete document.body.dataset.advised;
  delete document.body.dataset.asked;
  delete document.body.dataset.settled;
  clearTimeout(timer);
  timer = setTimeout(advice.ask, pause);
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

const PATIENCE = 900; // ms: whoever has just begun to type a number has not forgotten its unit
function complain(node, wrong) {
  clearTimeout(node.patience);
  const show = () => {
    if (node.wrong.textContent !== wrong) node.wrong.textContent = wrong;
    node.inputs().forEach((input) => input.setAttribute("aria-invalid", String(wrong !== "")));
  };
  if (wrong && node.box.contains(document.activeElement)) node.patience = setTimeout(show, PATIENCE);
  else show();
}

function showAdvice(reply) {
  tell("");
  for (const [id, node] of Object.entries(nodes)) {
    complain(node, reply.wrong[id] || "");
    if (node.taken.textContent !== (reply.taken[id] || "")) node.taken.textContent = reply.taken[id] || "";
    if (node.drawn) node.drawn(reply.drawn[id] || []);
  }
  const there = Boolean(reply.verdict);
  $("answer").hidden = $("seen").hidden = $("whole").hidden = !there;
  $("old").hidden = false;
  document.body.dataset.advised = String(said);
  $("waiting").hidden = there;
  $("busy").hidden = false;
  $("preview").textContent = there ? reply.preview[0].toUpperCase() + reply.preview.slice(1) + "." : "No advice yet: " + reply.missing.length + " to answer first.";
  if (!there) {
    $("put").hidden = $("find").hidden = true;
    return;
  }
  const name = nodes.scenario && nodes.scenario.inputs()[0];
  if (name && !name.value) name.placeholder = reply.name;
  $("verdict").textContent = reply.verdictWords;
  $("verdict").className = reply.verdict;
  $("summary").textContent = reply.summary;
  styled($("cut"), reply.section || "<p>Nothing is to be built here.</p>");
  styled($("map"), reply.levels);
  $("map").hidden = !reply.levels;
  $("no-levels").hidden = Boolean(reply.levels);
  $("before").replaceChildren(...reply.before.map((one) => make("li", {}, make("strong", { text: one.title + ". " }), one.text)));
  $("put").hidden = reply.before.length === 0;
}

function showQuestions(reply) {
  $("busy").hidden = true;
  ask(reply.questions, reply.complete);
  $("things").replaceChildren(...reply.first.map((one) => {
    const item = make("li", {}, one.words + " ");
    if (nodes[one.id]) item.append(make("a", { href: "#" + nodes[one.id].box.id, text: "Answer it", "aria-label": "Answer it: " + nodes[one.id].ask, onclick: (event) => { event.preventDefault(); goTo(one.id); } }));
    return item;
  }));
  $("find").hidden = reply.first.length === 0;
  document.body.dataset.asked = String(said);
}

function goTo(id) {
  const { box, inputs } = nodes[id];
  box.closest("details").open = true;
  box.scrollIntoView({ block: "center" });
  inputs()[0].focus({ preventScroll: true });
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
      for (let at = to; at; at = at.parentElement) if (at.tagName === "DETAILS") at.open = true;
      to.tabIndex = -1;
      to.scrollIntoView();
      to.focus({ preventScroll: true });
    };
  }
  $("old").hidden = Boolean(reply.report);
  document.body.dataset.settled = String(said);
}

// --- the questions
function ask(list, complete) {
  const keep = new Set(list.map((one) => one.id));
  // While an answer that must be there is not, what else matters cannot be told: then nothing goes.
  if (complete) for (const id of Object.keys(nodes)) {
    if (!keep.has(id) && !nodes[id].box.contains(document.activeElement)) {
      nodes[id].box.remove();
      delete nodes[id];
    }
  }
  const parts = new Map();
  for (const one of list) {
    if (!parts.has(one.part)) parts.set(one.part, []);
    parts.get(one.part).push(one);
  }
  const form = $("form");
  let after = null;
  for (const [title, members] of parts) {
    let part = [...form.children].find((child) => child.dataset.part === title);
    if (!part) {
      const place = [...parts.keys()].indexOf(title);
      part = make("details", { "data-part": title, open: place < 2 },
        make("summary", {}, make("h2", { text: title }), make("span", { class: "count" })),
        make("div", { role: "group", "aria-label": title }));
    }
    if (part.previousElementSibling !== after || part.parentElement !== form) {
      if (after) after.after(part); else form.prepend(part);
    }
    const group = part.lastElementChild;
    let last = null;
    for (const one of members) {
      if (!nodes[one.id]) nodes[one.id] = question(one);
      const box = nodes[one.id].box;
      if (box.previousElementSibling !== last || box.parentElement !== group) {
        if (last) last.after(box); else group.prepend(box);
      }
      last = box;
    }
    const left = members.filter((one) => one.matters).length;
    part.querySelector(".count").textContent = left === 0 ? "answered" : left + " to answer";
    after = part;
  }
  for (const part of [...form.children]) if (!part.querySelector(".q")) part.remove();
}

function question(one) {
  const name = "q-" + one.id.replace(/[^a-z0-9]/gi, "-");
  const wrong = make("p", { class: "wrong", id: name + "-wrong", role: "alert" });
  const taken = make("p", { class: "taken", id: name + "-taken", role: "status" });
  const asked = make("div", { class: "asked", id: name + "-ask", text: one.ask });
  const hint = make("p", { class: "hint", id: name + "-hint", text: hinted(one) });
  const spoken = { "aria-describedby": [name + "-hint", name + "-wrong", name + "-taken"].join(" ") };
  const maker = { yes_no: yesNo, choice: choice, points: plan, readings: plan }[one.kind] || words;
  const made = maker(one, name, spoken);
  const label = maker === words || maker === choice ? make("label", { for: name, class: "asked", id: name + "-ask", text: one.ask }) : asked;
  const help = make("details", { class: "help" }, make("summary", { text: "How to tell", "aria-label": "How to tell: " + one.ask }), make("p", { class: "hint", text: one.means + "." }));
  if (one.look) help.append(make("p", { class: "hint", text: "To find out: " + one.look + "." }));
  if (one.picture) help.append(make("pre", { text: one.picture, tabindex: "0", role: "img", "aria-label": "A sketch in letters: " + one.means }));
  const because = make("ul", { class: "hint" });
  const why = make("details", { class: "help", ontoggle: async () => {
    if (!why.open) return;
    because.replaceChildren(make("li", { text: "Working it out …" }));
    try {
      const reply = await send("why", { place: one.id, answers });
      because.replaceChildren(...reply.because.map((line) => make("li", { text: line })));
    } catch (error) {
      because.replaceChildren(make("li", { text: "The program does not answer. " + error.message }));
    }
  } }, make("summary", { text: "Why it is asked", "aria-label": "Why it is asked: " + one.ask }), because);
  const box = make("div", { class: "q", id: name + "-box", "data-id": one.id }, label, hint, made.field, wrong, taken, make("div", { class: "helps" }, help, why));
  if (!hint.textContent) hint.remove();
  return { ...made, box, wrong, taken, ask: one.ask };
}

function hinted(one) {
  const loosely = one.choices.length || !one.loosely.length ? "" : " If you do not know it: " + one.loosely.join(", ") + ".";
  switch (one.kind) {
    case "quantity": return "With its unit, such as " + one.example + "." + loosely;
    case "list": return "Short names with commas between, or none.";
    case "choices": return "One or more of these, with commas between: " + one.choices.map((c) => c.value).join(", ") + ".";
    case "count": case "year": case "date": return "Such as " + one.example + ".";
    case "text": return one.id === "scenario" ? "May be left empty." : "Such as " + one.example + ".";
    default: return "";
  }
}

function unknownButton(one, then) {
  return make("button", { type: "button", text: "I do not know", "aria-label": "I do not know: " + one.ask, onclick: () => { then(); say(one.id, "unknown"); } });
}

function words(one, name, spoken) {
  const input = make("input", { type: "text", id: name, ...spoken, oninput: () => say(one.id, input.value.trim()) });
  input.value = (answers[one.id] || "").replace(/\n/g, ", ");
  const field = make("div", { class: "row" }, input);
  if (one.kind === "list") field.append(make("button", { type: "button", text: "None", "aria-label": "None: " + one.ask, onclick: () => { input.value = "none"; say(one.id, "none"); } }));
  if (one.mayBeUnknown) field.append(unknownButton(one, () => { input.value = "unknown"; }));
  return { field, inputs: () => [input] };
}

function choice(one, name, spoken) {
  const select = make("select", { id: name, ...spoken, onchange: () => say(one.id, select.value) });
  const option = (value, text) => make("option", { value, text });
  select.append(option("", "not said yet"));
  const known = one.choices.map((c) => option(c.value, c.value + (c.looks ? ": " + c.looks : "")));
  if (one.loosely.length) {
    select.append(make("optgroup", { label: "Known by and large" }, ...one.loosely.map((loose) => option(loose, loose))));
    select.append(make("optgroup", { label: "Known well" }, ...known));
  } else {
    select.append(...known);
  }
  if (one.mayBeUnknown) select.append(option("unknown", "I do not know"));
  select.value = answers[one.id] || "";
  return { field: make("div", { class: "row" }, select), inputs: () => [select] };
}

function yesNo(one, name, spoken) {
  const field = make("div", { class: "row", role: "radiogroup", "aria-labelledby": name + "-ask", ...spoken });
  const radios = [];
  for (const [value, text] of [["yes", "Yes"], ["no", "No"], ["unknown", "I do not know"]]) {
    if (value === "unknown" && !one.mayBeUnknown) continue;
    const radio = make("input", { type: "radio", name, value, id: name + "-" + value, onchange: () => say(one.id, value) });
    radio.checked = answers[one.id] === value;
    radios.push(radio);
    field.append(make("label", { class: "pick", for: radio.id }, radio, text));
  }
  return { field, inputs: () => radios };
}

// --- the plan: corners of the room, or spot levels in it; drawn with a pointer, with keys, or typed
const SVG = "http://www.w3.org/2000/svg";
const WIDE = 400;
const HIGH = 300;
const EDGE = 24;
const SNAP = 100; // mm

function draw(tag, attributes, text) {
  const node = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) node.setAttribute(name, value);
  if (text !== undefined) node.textContent = text;
  return node;
}

const metres = (mm) => (mm / 1000).toFixed(3).replace(/\.?0+$/, "") + " m";
const millimetres = (mm) => Number(mm.toFixed(2)) + " mm";

function plan(one, name, spoken) {
  const spots = one.kind === "readings";
  const what = spots ? "spot" : "corner";
  const least = spots ? 1 : 3;
  // Each point as it is written, and where the program says that is, in mm.
  let list = written(answers[one.id]);
  let cross = [0, 0];
  let keys = false;
  let dragged = -1;
  let frozen = 0;
  const svg = draw("svg", { class: "plan", viewBox: `0 0 ${WIDE} ${HIGH}`, tabindex: "0", role: "application", "aria-labelledby": name + "-ask", "aria-describedby": name + "-how", id: name });
  const how = make("p", { class: "hint", id: name + "-how", text: spots
    ? "Tap where you measured and type the height; up is positive. With keys: arrows move the cross (with Shift, further), Enter puts a spot, Backspace takes the last back."
    : "For any other shape tap its corners in order, and drag them into place. With keys: arrows move the cross (with Shift, further), Enter puts a corner, Backspace takes the last back." });
  const where = make("p", { class: "hint where", role: "status" });
  const typed = make("div", { class: "typed" });

  function written(text) {
    return [...(text || "").matchAll(/\[([^[\]]+)\]/g)].map((found) => {
      const texts = found[1].split(",").map((part) => part.trim());
      const mm = texts.map((part) => (/^-?[\d.]+ mm$/.test(part) ? parseFloat(part) : NaN));
      return { texts: texts.map((part, k) => (k < 2 && Number.isFinite(mm[k]) ? metres(mm[k]) : part)), mm };
    });
  }
  const placed = (p) => Number.isFinite(p.mm[0]) && Number.isFinite(p.mm[1]);
  const room = () => (spots ? (nodes["room.outline"] && nodes["room.outline"].corners()) || [] : list.filter(placed).map((p) => p.mm));
  const extent = () => frozen || Math.max(5000, ...[...room(), ...list.filter(placed).map((p) => p.mm)].map((p) => Math.max(p[0], (p[1] * (WIDE - 2 * EDGE)) / (HIGH - 2 * EDGE)) * 1.15));
  const scale = () => (WIDE - 2 * EDGE) / extent();
  const at = (p) => [EDGE + p[0] * scale(), HIGH - EDGE - p[1] * scale()];
  const snap = (mm) => Math.max(0, Math.round(mm / SNAP) * SNAP);

  function told() {
    const full = list.filter((p) => p.texts.every((text) => text !== ""));
    say(one.id, full.length < least ? "" : "[" + full.map((p) => "[" + p.texts.join(", ") + "]").join(", ") + "]");
    paint();
  }
  function paint() {
    svg.replaceChildren();
    for (let mm = 0; mm <= extent(); mm += 1000) {
      const [x, y] = at([mm, mm]);
      svg.append(draw("line", { class: "grid", x1: x, x2: x, y1: 8, y2: HIGH - EDGE }));
      if (y > 8) svg.append(draw("line", { class: "grid", x1: EDGE, x2: WIDE - 8, y1: y, y2: y }));
      svg.append(draw("text", { class: "scale", x, y: HIGH - 8, "text-anchor": "middle" }, mm / 1000 + (mm ? "" : " m")));
      if (mm && y > 14) svg.append(draw("text", { class: "scale", x: EDGE - 5, y: y + 4, "text-anchor": "end" }, String(mm / 1000)));
    }
    const corners = room();
    if (corners.length > 1) svg.append(draw("polygon", { class: "room", points: corners.map((p) => at(p).join(",")).join(" ") }));
    list.forEach((p, i) => {
      if (!placed(p)) return;
      const [x, y] = at(p.mm);
      svg.append(draw("circle", { cx: x, cy: y, r: 6, class: spots ? "spot" : "corner-dot" }));
      svg.append(draw("text", { x: x + 8, y: y - 7 }, spots && p.texts[2] ? i + 1 + ": " + p.texts[2] : String(i + 1)));
    });
    if (keys) {
      const [x, y] = at(cross);
      svg.append(draw("path", { class: "cross", d: `M${x - 10} ${y}H${x + 10}M${x} ${y - 10}V${y + 10}` }));
    }
  }
  function rows() {
    typed.replaceChildren(...list.map((p, i) => {
      const fields = p.texts.map((value, k) => {
        const field = make("input", { type: "text", ...spoken, "aria-label": (spots ? "Spot " : "Corner ") + (i + 1) + ", " + ["along", "across", "height in mm, up is positive"][k], placeholder: k === 2 ? "height, mm" : "", oninput: () => {
          p.texts[k] = k === 2 && /^-?[\d.]+$/.test(field.value.trim()) ? field.value.trim() + " mm" : field.value.trim();
          p.mm[k] = NaN; // until the program says what it is
          told();
        } });
        field.value = value;
        return field;
      });
      const remove = make("button", { type: "button", text: "×", "aria-label": "Remove " + what + " " + (i + 1), onclick: () => { list.splice(i, 1); rows(); told(); svg.focus(); } });
      return make("div", { class: "point" }, make("span", { text: String(i + 1) }), ...fields, remove);
    }));
    paint();
  }
  function put(mm) {
    list.push({ texts: spots ? [metres(mm[0]), metres(mm[1]), ""] : mm.map(metres), mm: spots ? [...mm, NaN] : [...mm] });
    rows();
    told();
    where.textContent = `Put ${what} ${list.length} at ${metres(mm[0])} along, ${metres(mm[1])} across.`;
    if (spots) typed.lastElementChild.querySelectorAll("input")[2].focus();
  }
  function fromPointer(event) {
    const box = svg.getBoundingClientRect();
    const x = ((event.clientX - box.left) * WIDE) / box.width;
    const y = ((event.clientY - box.top) * HIGH) / box.height;
    return [x, y];
  }
  const fromDrawing = ([x, y]) => [snap((x - EDGE) / scale()), snap((HIGH - EDGE - y) / scale())];
  svg.addEventListener("pointerdown", (event) => {
    const [x, y] = fromPointer(event);
    keys = false;
    dragged = list.findIndex((p) => placed(p) && Math.hypot(at(p.mm)[0] - x, at(p.mm)[1] - y) < 14);
    if (dragged < 0) return;
    frozen = extent();
    svg.setPointerCapture(event.pointerId);
    event.preventDefault();
  });
  svg.addEventListener("pointermove", (event) => {
    if (dragged < 0) return;
    const mm = fromDrawing(fromPointer(event));
    const p = list[dragged];
    if (p.mm[0] === mm[0] && p.mm[1] === mm[1]) return;
    p.mm.splice(0, 2, ...mm);
    p.texts.splice(0, 2, ...mm.map(metres));
    paint();
  });
  const drop = () => {
    if (dragged < 0) return false;
    dragged = -1;
    frozen = 0;
    rows();
    told();
    return true;
  };
  svg.addEventListener("pointerup", (event) => { if (!drop()) put(fromDrawing(fromPointer(event))); });
  svg.addEventListener("pointercancel", drop);
  svg.addEventListener("keydown", (event) => {
    const step = event.shiftKey ? 5 * SNAP : SNAP;
    const move = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, step], ArrowDown: [0, -step] }[event.key];
    if (move) {
      cross = cross.map((mm, k) => Math.min(k ? (extent() * (HIGH - 2 * EDGE)) / (WIDE - 2 * EDGE) : extent(), Math.max(0, mm + move[k])));
      where.textContent = `Cross at ${metres(cross[0])} along, ${metres(cross[1])} across.`;
    } else if (event.key === "Enter" || event.key === " ") {
      put(cross.map(snap));
    } else if ((event.key === "Backspace" || event.key === "Delete") && list.length) {
      list.pop();
      rows();
      told();
      where.textContent = `Took ${what} ${list.length + 1} back.`;
    } else {
      return;
    }
    keys = true;
    event.preventDefault();
    paint();
  });
  svg.addEventListener("blur", () => { keys = false; paint(); });
  const field = make("div", { role: "group", "aria-labelledby": name + "-ask" });
  if (!spots) {
    const side = (label, value) => make("label", { class: "side" }, label, make("input", { type: "text", ...spoken, oninput: both, placeholder: value }));
    const long = side("Length", "3.6 m");
    const wide = side("Breadth", "2.4 m");
    function both() {
      const [x, y] = [long, wide].map((label) => label.lastElementChild.value.trim());
      if (!x || !y) return;
      list = [];
      rows();
      say(one.id, x + " x " + y); // the program makes four corners of it
    }
    field.append(make("p", { class: "hint", text: "For a rectangle, its sides:" }), make("div", { class: "row" }, long, wide));
  }
  const add = make("button", { type: "button", text: "Type a " + what, onclick: () => {
    list.push({ texts: spots ? ["", "", ""] : ["", ""], mm: spots ? [NaN, NaN, NaN] : [NaN, NaN] });
    rows();
    typed.lastElementChild.querySelector("input").focus();
  } });
  const clear = make("button", { type: "button", text: "Clear", "aria-label": "Clear: " + one.ask, onclick: () => { list = []; rows(); told(); } });
  field.append(how, svg, where, typed, make("div", { class: "row" }, add, clear, unknownButton(one, () => { list = []; rows(); })));
  rows();
  return {
    field,
    inputs: () => [...field.querySelectorAll("input")].concat(svg),
    // Where the program says the points are.
    drawn(points) {
      const full = list.filter((p) => p.texts.every((text) => text !== ""));
      if (points.length && !list.length) {
        list = points.map((mm) => ({ mm: [...mm], texts: mm.map((value, k) => (k === 2 ? millimetres(value) : metres(value))) }));
        rows();
      } else if (points.length === full.length) {
        full.forEach((p, i) => { p.mm = [...points[i]]; });
      }
      paint();
    },
    corners: room,
  };
}

// --- files and paper
async function take(reply) {
  if (reply.wrong) { tell(reply.wrong); return; }
  for (const id of Object.keys(answers)) delete answers[id];
  Object.assign(answers, reply.answers);
  for (const id of Object.keys(nodes)) { nodes[id].box.remove(); delete nodes[id]; }
  tell("");
  changed(0);
}

async function tried(work) {
  try {
    await work();
  } catch (error) {
    tell("The program does not answer. Is it still running? " + error.message);
  }
}

$("open").addEventListener("change", (event) => tried(async () => {
  const file = event.target.files[0];
  if (!file) return;
  if (file.size > 1000000) tell("That file is too large to be a scenario.");
  else await take(await send("open", { file: await file.text() }));
  event.target.value = "";
}));
$("save").addEventListener("click", () => tried(async () => {
  const reply = await send("file", { answers });
  const link = make("a", { href: URL.createObjectURL(new Blob([reply.file], { type: "application/yaml" })), download: "my-floor.yaml" });
  link.click();
  URL.revokeObjectURL(link.href);
  const left = Object.keys(reply.wrong).length;
  tell("Saved as my-floor.yaml, where your browser puts files." + (left ? ` Left out, for it could not be understood: ${left === 1 ? "one answer" : left + " answers"}, marked below.` : ""));
}));
$("print").addEventListener("click", () => tried(async () => {
  if (!$("answer").hidden) await showReport(await send("report", { answers }));
  window.print();
}));
window.addEventListener("beforeprint", () => { $("whole").open = $("old").hidden; });
$("form").addEventListener("submit", (event) => event.preventDefault());
tried(async () => take(await send("begin", {})));

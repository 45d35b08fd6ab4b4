"use strict";
// Shows the questions the program sends and sends the answers back. What matters, and what is
// advised, is thought out by the program; nothing is decided here.
const answers = {};
const nodes = {};
let turn = 0;
let timer = 0;
const $ = (id) => document.getElementById(id);

function make(tag, attributes, ...children) {
  const node = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes || {})) {
    if (name === "text") node.textContent = value;
    else if (name.startsWith("on")) node.addEventListener(name.slice(2), value);
    else node.setAttribute(name, value);
  }
  node.append(...children);
  return node;
}

async function send(what, request) {
  const response = await fetch(what, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(request),
  });
  if (!response.ok) throw new Error(await response.text());
  return response.json();
}

function tell(words) { $("told").textContent = words; }

function say(id, value) {
  if (value === "") delete answers[id];
  else answers[id] = value;
  clearTimeout(timer);
  timer = setTimeout(think, 250);
}

async function think() {
  const mine = ++turn;
  try {
    show(await send("think", { how: "advice", answers }), mine);
    if (mine !== turn) return;
    show(await send("think", { how: "questions", answers }), mine);
    if (mine === turn) document.body.dataset.settled = String(mine);
  } catch (error) {
    tell("The program does not answer. Is it still running? " + error.message);
  }
}

function show(said, mine) {
  if (mine !== turn) return;
  tell("");
  if (said.questions) questions(said.questions);
  for (const [id, node] of Object.entries(nodes)) {
    node.wrong.textContent = said.wrong[id] || "";
    node.taken.textContent = said.taken[id] || "";
    if (node.input) node.input.setAttribute("aria-invalid", said.wrong[id] ? "true" : "false");
  }
  $("preview").textContent = said.complete ? said.preview : "A few answers are needed first.";
  $("verdict").hidden = $("whole").hidden = !said.complete;
  if (!said.complete) {
    $("summary").textContent = "";
    $("section").replaceChildren();
    $("put").hidden = true;
  } else {
    $("verdict").textContent = said.verdictWords;
    $("verdict").className = said.verdict;
    $("summary").textContent = said.summary;
    const drawn = new DOMParser().parseFromString(said.section || "<p/>", "image/svg+xml");
    $("section").replaceChildren(...(said.section ? [document.importNode(drawn.documentElement, true)] : []));
    fill("before", said.before);
    $("put").hidden = said.before.length === 0;
    $("report").textContent = said.report;
  }
  if (said.first) {
    fill("first", said.first);
    $("find").hidden = said.first.length === 0;
  }
}

function fill(id, lines) { $(id).replaceChildren(...lines.map((line) => make("li", { text: line }))); }

function questions(list) {
  const keep = new Set(list.map((one) => one.id));
  for (const id of Object.keys(nodes)) {
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
    let set = [...form.children].find((child) => child.dataset.part === title);
    if (!set) set = make("fieldset", { "data-part": title }, make("legend", { text: title }));
    if (set.previousElementSibling !== after || set.parentElement !== form) {
      if (after) after.after(set); else form.prepend(set);
    }
    let last = set.firstElementChild;
    for (const one of members) {
      if (!nodes[one.id]) nodes[one.id] = question(one);
      const box = nodes[one.id].box;
      if (box.previousElementSibling !== last) last.after(box);
      last = box;
    }
    after = set;
  }
  for (const set of [...form.children]) if (set.children.length < 2) set.remove();
}

function question(one) {
  const name = "q-" + one.id.replace(/[^a-z0-9]/gi, "-");
  const wrong = make("p", { class: "wrong", id: name + "-wrong", role: "alert" });
  const taken = make("p", { class: "taken", id: name + "-taken" });
  const because = make("ul", { class: "hint", "aria-live": "polite" });
  const why = make("button", { type: "button", text: "Why?", "aria-label": "Why do you ask: " + one.ask, onclick: async () => {
    const said = await send("why", { place: one.id, answers });
    because.replaceChildren(...said.because.map((line) => make("li", { text: line })));
  } });
  let input = null;
  let field;
  const described = name + "-wrong " + name + "-taken";
  if (one.kind === "points" || one.kind === "readings") {
    field = plan(one, name);
  } else if (one.choices.length > 0 && one.kind !== "choices") {
    input = make("select", { id: name, "aria-describedby": described, onchange: () => say(one.id, input.value) });
    input.append(make("option", { value: "", text: "not said yet" }));
    if (one.loosely.length) {
      const group = make("optgroup", { label: "I know it only by and large" });
      one.loosely.forEach((words) => group.append(make("option", { value: words, text: words })));
      input.append(group);
    }
    const group = one.loosely.length ? make("optgroup", { label: "I know it" }) : input;
    one.choices.forEach((choice) => group.append(make("option", { value: choice.value, text: choice.value + (choice.looks ? ": " + choice.looks : "") })));
    if (group !== input) input.append(group);
    if (!one.required) input.append(make("option", { value: "unknown", text: "I do not know" }));
  } else {
    const hint = { list: "names with commas between, or none", choices: one.choices.map((c) => c.value).join(", ") }[one.kind] || one.example;
    input = make("input", { type: "text", id: name, placeholder: "such as " + hint, "aria-describedby": described, oninput: () => say(one.id, input.value.trim()) });
  }
  if (input) {
    input.value = answers[one.id] || "";
    field = make("div", { class: "row" }, input);
    if (input.tagName === "INPUT" && !one.required) {
      field.append(make("button", { type: "button", text: "Don't know", "aria-label": "I do not know: " + one.ask, onclick: () => { input.value = "unknown"; say(one.id, "unknown"); } }));
    }
  }
  field.append(why);
  const help = make("details", {}, make("summary", { text: "How to tell" }), make("p", { class: "hint", text: one.means + "." }));
  if (one.look) help.append(make("p", { class: "hint", text: "To find out: " + one.look + "." }));
  if (one.picture) help.append(make("pre", { text: one.picture, tabindex: "0", "aria-label": "A picture in text" }));
  const label = input ? make("label", { for: name, text: one.ask }) : make("p", { class: "asked", id: name + "-ask", text: one.ask });
  const box = make("div", { class: "q", "data-id": one.id }, label, field, wrong, taken, because, help);
  return { box, input, wrong, taken };
}

// --- the plan: corners of the room, or spot levels in it, by click or by typing
const SVG = "http://www.w3.org/2000/svg";
function draw(tag, attributes, text) {
  const node = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) node.setAttribute(name, value);
  if (text !== undefined) node.textContent = text;
  return node;
}

function millimetres(text) {
  const found = /^\s*(-?[\d.]+)\s*(mm|cm|m)?\s*$/.exec(text);
  return found ? Number(found[1]) * { mm: 1, cm: 10, m: 1000 }[found[2] || "m"] : NaN;
}

function points(text) {
  return [...(text || "").matchAll(/\[([^[\]]+)\]/g)].map((one) => one[1].split(",").map(millimetres));
}

const metres = (mm) => (mm / 1000).toFixed(3).replace(/\.?0+$/, "") + " m";

function plan(one, name) {
  const spots = one.kind === "readings";
  let list = points(answers[one.id]).filter((p) => p.every(Number.isFinite));
  const shown = draw("svg", { class: "plan", role: "img", viewBox: "0 0 400 300", "aria-label": spots ? "Plan with spot levels; they can be typed below instead" : "Plan of the room; its corners can be typed below instead" });
  const typed = make("div", {});
  const room = () => (spots ? points(answers["room.outline"]) : list);
  const extent = () => Math.max(5000, ...room().map((p) => Math.max(p[0], p[1] * 400 / 300) * 1.15));
  const scale = () => 360 / extent();
  const at = (p) => [20 + p[0] * scale(), 280 - p[1] * scale()];
  function told() {
    const text = "[" + list.map((p) => "[" + metres(p[0]) + ", " + metres(p[1]) + (spots ? ", " + p[2] + " mm" : "") + "]").join(", ") + "]";
    say(one.id, list.length >= (spots ? 1 : 3) ? text : "");
    paint();
  }
  function paint() {
    shown.replaceChildren();
    for (let mm = 0; mm <= extent(); mm += 1000) {
      const x = 20 + mm * scale();
      const y = 280 - mm * scale();
      shown.append(draw("line", { class: "grid", x1: x, x2: x, y1: 10, y2: 280 }));
      if (y > 5) shown.append(draw("line", { class: "grid", x1: 20, x2: 390, y1: y, y2: y }));
    }
    const corners = room();
    if (corners.length > 1) shown.append(draw("polygon", { class: "room", points: corners.map((p) => at(p).join(",")).join(" ") }));
    list.forEach((p, i) => {
      const [x, y] = at(p);
      shown.append(draw("circle", { cx: x, cy: y, r: 5, class: spots ? "spot" : "" }));
      shown.append(draw("text", { x: x + 7, y: y - 6 }, spots ? p[2] + " mm" : String(i + 1)));
    });
  }
  function rows() {
    typed.replaceChildren(...list.map((p, i) => {
      const fields = p.map((value, k) => make("input", { type: "text", "aria-label": (spots ? "Spot " : "Corner ") + (i + 1) + ": " + ["along", "across", "height in mm"][k], value: k === 2 ? value + " mm" : metres(value), onchange: (event) => {
        const mm = millimetres(event.target.value);
        if (Number.isFinite(mm)) { p[k] = mm; told(); }
      } }));
      return make("div", { class: "corner" }, make("span", { text: String(i + 1) }), ...fields, make("button", { type: "button", text: "Remove", "aria-label": "Remove " + (spots ? "spot " : "corner ") + (i + 1), onclick: () => { list.splice(i, 1); rows(); told(); } }));
    }));
    paint();
  }
  shown.addEventListener("click", (event) => {
    const box = shown.getBoundingClientRect();
    const x = ((event.clientX - box.left) * 400) / box.width;
    const y = ((event.clientY - box.top) * 300) / box.height;
    const snapped = [(x - 20) / scale(), (280 - y) / scale()].map((mm) => Math.max(0, Math.round(mm / 100) * 100));
    list.push(spots ? [...snapped, 0] : snapped);
    rows();
    told();
  });
  const add = make("button", { type: "button", text: spots ? "Add a spot" : "Add a corner", onclick: () => {
    list.push(spots ? [0, 0, 0] : [0, 0]);
    rows();
    typed.lastElementChild.querySelector("input").focus();
  } });
  const field = make("div", { role: "group", "aria-labelledby": name + "-ask" });
  if (!spots) {
    const long = make("input", { type: "text", placeholder: "3.6 m", "aria-label": "Length of a rectangular room" });
    const wide = make("input", { type: "text", placeholder: "2.4 m", "aria-label": "Breadth of a rectangular room" });
    const both = () => {
      const x = millimetres(long.value);
      const y = millimetres(wide.value);
      if (x > 0 && y > 0) { list = [[0, 0], [x, 0], [x, y], [0, y]]; rows(); told(); }
    };
    long.addEventListener("change", both);
    wide.addEventListener("change", both);
    field.append(make("div", { class: "row" }, make("span", { text: "A rectangle:" }), long, make("span", { text: "by" }), wide));
    field.append(make("p", { class: "hint", text: "Or click the corners in order, or type them." }));
  } else {
    field.append(make("p", { class: "hint", text: "Click where you measured, then type the height; up is positive." }));
  }
  field.append(shown, typed, add, make("button", { type: "button", text: "Don't know", onclick: () => { list = []; rows(); say(one.id, "unknown"); } }));
  rows();
  return field;
}

// --- files
async function take(said) {
  if (said.wrong) { tell(said.wrong); return; }
  for (const id of Object.keys(answers)) delete answers[id];
  Object.assign(answers, said.answers);
  for (const id of Object.keys(nodes)) { nodes[id].box.remove(); delete nodes[id]; }
  await think();
}

$("open").addEventListener("change", async (event) => {
  const file = event.target.files[0];
  if (!file) return;
  if (file.size > 1000000) { tell("That file is too large to be a scenario."); return; }
  await take(await send("open", { file: await file.text() }));
  event.target.value = "";
});
$("save").addEventListener("click", async () => {
  const said = await send("file", { answers });
  const link = make("a", { href: URL.createObjectURL(new Blob([said.file], { type: "application/yaml" })), download: "my-floor.yaml" });
  link.click();
  URL.revokeObjectURL(link.href);
  tell("Saved as my-floor.yaml, where your browser puts files.");
});
$("print").addEventListener("click", () => { $("whole").open = true; window.print(); });
$("form").addEventListener("submit", (event) => event.preventDefault());
send("begin", {}).then(take);

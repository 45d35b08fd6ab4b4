"use strict";
// --- the plan: corners of the room or of a part of it, where a thing stands, or spot levels; drawn with a pointer, with keys, or typed
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
// Only to draw by; the program reads what was written.
function inMillimetres(text) {
  const found = /^(-?[\d.]+) ?(mm|cm|m)$/.exec(text);
  return found ? parseFloat(found[1]) * { mm: 1, cm: 10, m: 1000 }[found[2]] : NaN;
}

/** Where places of a room stand on the board, so that all of it is seen, and back. */
function view(room, frozen = () => 0) {
  const share = (WIDE - 2 * EDGE) / (HIGH - 2 * EDGE);
  const extent = () => frozen() || Math.max(5000, ...room().map((p) => Math.max(p[0], p[1] * share) * 1.15));
  const scale = () => (WIDE - 2 * EDGE) / extent();
  return {
    extent,
    at: (p) => [EDGE + p[0] * scale(), HIGH - EDGE - p[1] * scale()],
    back: ([x, y]) => [(x - EDGE) / scale(), (HIGH - EDGE - y) / scale()],
  };
}
function grid(svg, extent, at) {
  for (let mm = 0; mm <= extent; mm += 1000) {
    const [x, y] = at([mm, mm]);
    svg.append(draw("line", { class: "grid", x1: x, x2: x, y1: 8, y2: HIGH - EDGE }));
    if (y > 8) svg.append(draw("line", { class: "grid", x1: EDGE, x2: WIDE - 8, y1: y, y2: y }));
    svg.append(draw("text", { class: "scale", x, y: HIGH - 8, "text-anchor": "middle" }, mm / 1000 + (mm ? "" : " m")));
    if (mm && y > 14) svg.append(draw("text", { class: "scale", x: EDGE - 5, y: y + 4, "text-anchor": "end" }, String(mm / 1000)));
  }
}
const polygon = (at, points, name) => draw("polygon", { class: name, points: points.map((p) => at(p).join(",")).join(" ") });
// Two opposite corners are those of a rectangle.
const shape = (points) => (points.length === 2 ? [points[0], [points[1][0], points[0][1]], points[1], [points[0][0], points[1][1]]] : points);
/** What else lies or stands in the room, each with its name. */
function named(svg, at, parts) {
  for (const part of parts) {
    const points = shape(part.corners);
    svg.append(polygon(at, points, "part"));
    const [x, y] = at([Math.min(...points.map((p) => p[0])), Math.max(...points.map((p) => p[1]))]);
    svg.append(draw("text", { x: x + 4, y: y + 14, class: "name" }, part.name));
  }
}
/** Where on the board a pointer is. */
function onBoard(svg, event) {
  const box = svg.getBoundingClientRect();
  return [((event.clientX - box.left) * WIDE) / box.width, ((event.clientY - box.top) * HIGH) / box.height];
}
const isUndo = (event) => event.key === "Backspace" || event.key === "Delete" || ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "z");

// take: what is done with the plan once it is finished, written as a scenario writes it.
function plan(one, take) {
  const name = "plan";
  const spots = one.kind === "readings";
  const box = one.kind === "rectangle";
  // What lies in the room is drawn within its outline, which is known.
  const inside = spots || box || one.id !== "room.outline";
  const what = spots ? "spot" : "corner";
  const least = spots ? 1 : box ? 2 : 3;
  // Each point as it is written, and where the program says that is, in mm.
  let list = written(one.said);
  let cross = [0, 0];
  let keys = false;
  let dragged = -1;
  let frozen = 0;
  let before = []; // the list as it was when a field was entered
  let outline = [];
  let around = [];
  let doors = [];
  const past = []; // what the list was before each change
  const svg = draw("svg", { class: "plan", viewBox: `0 0 ${WIDE} ${HIGH}`, tabindex: "0", role: "application", "aria-labelledby": "ask", "aria-describedby": name + "-how", id: name });
  const how = make("p", { class: "hint", id: name + "-how", text: spots
    ? "Tap where you measured and type the height; up is positive. With keys: arrows move the cross (with Shift, further), Enter puts a spot, Backspace undoes."
    : box
    ? "Tap two opposite corners of where it stands, and drag them into place. With keys: arrows move the cross (with Shift, further), Enter puts a corner, Backspace undoes."
    : inside
    ? "Tap the corners of this part in order, and drag them into place. With keys: arrows move the cross (with Shift, further), Enter puts a corner, Backspace undoes."
    : "For any other shape tap its corners in order, and drag them into place. With keys: arrows move the cross (with Shift, further), Enter puts a corner, Backspace undoes." });
  const where = make("p", { class: "hint where", role: "status" });
  const typed = make("div", { class: "typed" });

  function written(text) {
    return [...(text || "").matchAll(/\[([^[\]]+)\]/g)].map((found) => {
      const texts = found[1].split(",").map((part) => part.trim());
      const mm = texts.map(inMillimetres);
      return { texts: texts.map((part, k) => (k < 2 && Number.isFinite(mm[k]) ? metres(mm[k]) : part)), mm };
    });
  }
  const placed = (p) => Number.isFinite(p.mm[0]) && Number.isFinite(p.mm[1]);
  const own = () => list.filter(placed).map((p) => p.mm);
  const room = () => (inside ? outline : own());
  const { extent, at, back } = view(() => [...room(), ...list.filter(placed).map((p) => p.mm)], () => frozen);
  const snap = (mm) => Math.max(0, Math.round(mm / SNAP) * SNAP);

  const copied = () => list.map((p) => ({ texts: [...p.texts], mm: [...p.mm] }));
  const remember = () => past.push(copied());
  function undo() {
    if (!past.length) return;
    list = past.pop();
    rows();
    told();
    where.textContent = "Undone.";
  }

  const full = () => list.filter((p) => p.texts.every((text) => text !== ""));
  const text = () => "[" + full().map((p) => "[" + p.texts.join(", ") + "]").join(", ") + "]";
  function told() {
    use.disabled = full().length < least;
    undone.disabled = past.length === 0;
    paint();
  }
  function paint() {
    svg.replaceChildren();
    grid(svg, extent(), at);
    const corners = room();
    if (corners.length > 1) svg.append(polygon(at, corners, "room"));
    if (corners.length > 2) doors.forEach((door) => drawDoor(svg, at, corners, door, "other"));
    named(svg, at, around);
    if (inside && !spots && own().length > 1) svg.append(polygon(at, shape(own()), "own"));
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
        const field = make("input", { type: "text", "aria-label": (spots ? "Spot " : "Corner ") + (i + 1) + ", " + ["along", "across", "height in mm, up is positive"][k], placeholder: k === 2 ? "height, mm" : "", oninput: () => {
          p.texts[k] = k === 2 && /^-?[\d.]+$/.test(field.value.trim()) ? field.value.trim() + " mm" : field.value.trim();
          p.mm[k] = inMillimetres(p.texts[k]);
          told();
        } });
        field.value = value;
        field.addEventListener("focus", () => { before = copied(); });
        field.addEventListener("change", () => { past.push(before); before = copied(); told(); });
        return field;
      });
      const remove = make("button", { type: "button", text: "×", "aria-label": "Remove " + what + " " + (i + 1), onclick: () => { remember(); list.splice(i, 1); rows(); told(); svg.focus(); } });
      return make("div", { class: "point" }, make("span", { text: String(i + 1) }), ...fields, remove);
    }));
    paint();
  }
  function put(mm) {
    remember();
    if (box && list.length === 2) list = []; // a third begins anew
    list.push({ texts: spots ? [metres(mm[0]), metres(mm[1]), ""] : mm.map(metres), mm: spots ? [...mm, NaN] : [...mm] });
    rows();
    told();
    where.textContent = `Put ${what} ${list.length} at ${metres(mm[0])} along, ${metres(mm[1])} across.`;
    if (spots) typed.lastElementChild.querySelectorAll("input")[2].focus();
  }
  const fromPointer = (event) => onBoard(svg, event);
  const fromDrawing = (p) => back(p).map(snap);
  svg.addEventListener("pointerdown", (event) => {
    const [x, y] = fromPointer(event);
    keys = false;
    dragged = list.findIndex((p) => placed(p) && Math.hypot(at(p.mm)[0] - x, at(p.mm)[1] - y) < 14);
    if (dragged < 0) return;
    remember();
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
    } else if (isUndo(event)) {
      undo();
    } else {
      return;
    }
    keys = true;
    event.preventDefault();
    paint();
  });
  svg.addEventListener("blur", () => { keys = false; paint(); });
  const field = make("details", { class: "drawing-board" }, make("summary", { text: spots ? "Put the levels on a plan" : inside ? "Draw it on the plan of the room" : "Draw another shape" }));
  const add = make("button", { type: "button", text: "Type a " + what, onclick: () => {
    remember();
    list.push({ texts: spots ? ["", "", ""] : ["", ""], mm: spots ? [NaN, NaN, NaN] : [NaN, NaN] });
    rows();
    typed.lastElementChild.querySelector("input").focus();
  } });
  const clear = make("button", { type: "button", text: "Clear", "aria-label": "Clear: " + one.ask, onclick: () => { remember(); list = []; rows(); told(); } });
  const undone = make("button", { type: "button", id: "undo", text: "Undo", disabled: true, onclick: undo });
  const use = make("button", { type: "button", class: "main", text: "Take this plan", disabled: true, onclick: () => take(text()) });
  field.open = inside || list.length > 0;
  field.append(how, svg, where, typed, make("div", { class: "row" }, add, undone, clear, use));
  rows();
  return {
    field,
    // Where the program says the points are, the corners of the room, and what else lies in it.
    drawn({ points, room: corners, around: others, doors: ways }) {
      outline = corners;
      around = others;
      doors = ways;
      if (points.length === full().length) full().forEach((p, i) => { p.mm = [...points[i]]; });
      told();
    },
  };
}

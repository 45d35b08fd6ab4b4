"use strict";
// --- doors on the plan: where each is in its wall and how its leaf swings; drawn with a pointer, with keys, or typed

const turnsLeft = (corners) => corners.reduce((sum, a, i) => {
  const b = corners[(i + 1) % corners.length];
  return sum + a[0] * b[1] - b[0] * a[1];
}, 0) > 0;

/** A wall: where it begins, its direction and length, and the direction into the room. */
function wallOf(corners, number) {
  const a = corners[number];
  const b = corners[(number + 1) % corners.length];
  if (!a || !b) return null;
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const u = [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
  return { a, long, u, into: turnsLeft(corners) ? [-u[1], u[0]] : [u[1], -u[0]] };
}
const along = (wall, mm) => [wall.a[0] + wall.u[0] * mm, wall.a[1] + wall.u[1] * mm];

// A door as it is known: its opening in the wall, its leaf open, and what the leaf sweeps.
function drawDoor(svg, at, corners, door, kind) {
  const wall = wallOf(corners, door.wall);
  if (!wall || !(door.width > 0) || !(door.from >= 0)) return;
  const line = (name, points) => svg.append(draw("polyline", { class: name, points: points.map((p) => at(p).join(",")).join(" ") }));
  const sides = [along(wall, door.from), along(wall, door.from + door.width)];
  line("opening", sides);
  line("sill " + kind, sides);
  if (door.hinge && door.opens && door.opens !== "sliding") {
    // Seen from inside the room, a wall runs from right to left where the room lies to its left.
    const end = (door.hinge === "left") === turnsLeft(corners);
    const side = door.opens === "into the room" ? 1 : -1;
    const swept = [];
    for (let i = 0; i <= 12; i++) {
      const turn = (Math.PI / 2) * (i / 12);
      const way = door.width * (end ? 1 - Math.sin(turn) : Math.sin(turn));
      const [x, y] = along(wall, door.from + way);
      const off = door.width * Math.cos(turn) * side;
      swept.push([x + wall.into[0] * off, y + wall.into[1] * off]);
    }
    line("swept", swept);
    line("leaf " + kind, [sides[end ? 1 : 0], swept[0]]);
  }
  const [x, y] = at(along(wall, door.from + door.width / 2));
  svg.append(draw("text", { x: x - wall.into[0] * 8, y: y + wall.into[1] * 12 + 4, class: "name", "text-anchor": "middle" }, door.name));
}

// take: what is done with the door once it is finished, in words as a person says them.
function doorway(one, take) {
  const name = one.id.slice(one.id.indexOf("@") + 1);
  let corners = [];
  let parts = [];
  let others = [];
  let door = { wall: "", from: "", width: "", hinge: "", opens: "" }; // as it is written
  let begun = null; // the first side of an opening, put and waiting for the other
  let cross = { wall: 0, mm: 0 };
  let keys = false;
  let moved = ""; // the side that is being dragged
  let known = false;
  const past = [];
  const svg = draw("svg", { class: "plan", viewBox: `0 0 ${WIDE} ${HIGH}`, tabindex: "0", role: "application", "aria-labelledby": "ask", "aria-describedby": "plan-how", id: "plan" });
  const how = make("p", { class: "hint", id: "plan-how", text: "Tap one side of the opening on its wall, then the other, and drag them into place. With keys: arrows move along the walls (with Shift, further), Enter puts a side, H hangs it on the other side, O opens it the other way, Backspace undoes." });
  const where = make("p", { class: "hint where", role: "status" });
  const select = (label, word, choices) => make("select", { "aria-label": label, onchange: (event) => changed(() => { door[word] = event.target.value; }) },
    make("option", { value: "", text: label }), ...choices.map(([value, text]) => make("option", { value, text })));
  const walls = select("Which wall", "wall", []);
  const typing = (label, word) => make("input", { type: "text", placeholder: label, "aria-label": label, onchange: (event) => changed(() => { door[word] = event.target.value.trim(); }) });
  const from = typing("From the corner", "from");
  const width = typing("How wide", "width");
  const hinge = select("Hinges, seen from inside", "hinge", [["left", "hinges on the left"], ["right", "hinges on the right"]]);
  const opens = select("Which way it opens", "opens", [["into the room", "opens into the room"], ["out of the room", "opens out of the room"], ["sliding", "slides"]]);
  const undo = make("button", { type: "button", id: "undo", text: "Undo", onclick: back });
  const use = make("button", { type: "button", class: "main", text: "Take this door", onclick: () => take(words()) });
  const none = make("p", { class: "hint", text: "A door is drawn on the walls of the room. Give its shape first." },
    make("button", { type: "button", class: "inline", text: "Give the shape of the room", onclick: () => change("room.outline") }));
  const field = make("details", { class: "drawing-board", open: true }, make("summary", { text: "Draw it on the plan of the room" }));
  const board = make("div", {}, how, svg, where, make("div", { class: "row typed" }, walls, from, width, opens, hinge), make("div", { class: "row" }, undo, use));
  field.append(none, board);

  const words = () => `wall ${door.wall}, ${door.from} from the corner, ${door.width} wide`
    + (door.opens === "sliding" ? ", sliding" : door.opens ? `, opens ${door.opens}` : "")
    + (door.hinge && door.opens !== "sliding" ? `, hinges on the ${door.hinge}` : "");
  const inMm = () => ({ name, wall: door.wall === "" ? -1 : +door.wall, from: inMillimetres(door.from), width: inMillimetres(door.width), opens: door.opens, hinge: door.hinge });
  const { at, back: toRoom, extent } = view(() => corners);

  function changed(work) {
    past.push({ door: { ...door }, begun });
    work();
    told();
  }
  function back() {
    const last = past.pop();
    if (!last) return;
    ({ door, begun } = last);
    where.textContent = "Undone.";
    told();
  }
  function told() {
    walls.value = door.wall;
    for (const [input, word] of [[from, "from"], [width, "width"], [hinge, "hinge"], [opens, "opens"]]) input.value = door[word];
    hinge.hidden = door.opens === "sliding";
    use.disabled = [door.wall, door.from, door.width].some((text) => text === "");
    undo.disabled = past.length === 0;
    paint();
  }
  function paint() {
    none.hidden = corners.length > 2;
    board.hidden = !none.hidden;
    svg.replaceChildren();
    if (corners.length < 3) return;
    grid(svg, extent(), at);
    svg.append(polygon(at, corners, "room"));
    named(svg, at, parts);
    corners.forEach((corner, i) => {
      const wall = wallOf(corners, i);
      const [x, y] = at(along(wall, wall.long / 2));
      svg.append(draw("text", { class: "wall", x: x + wall.into[0] * 14, y: y - wall.into[1] * 14 + 4, "text-anchor": "middle" }, String(i)));
    });
    others.forEach((other) => drawDoor(svg, at, corners, other, "other"));
    drawDoor(svg, at, corners, inMm(), "own");
    for (const [x, y] of sides().map(at)) svg.append(draw("circle", { cx: x, cy: y, r: 6, class: "corner-dot" }));
    if (keys) {
      const [x, y] = at(along(wallOf(corners, cross.wall), cross.mm));
      svg.append(draw("path", { class: "cross", d: `M${x - 10} ${y}H${x + 10}M${x} ${y - 10}V${y + 10}` }));
    }
  }
  /** The sides of the opening that are there, the one nearer the wall's first corner first. */
  function sides() {
    if (begun) return [along(wallOf(corners, begun.wall), begun.mm)];
    const one = inMm();
    const wall = wallOf(corners, one.wall);
    return wall && one.width > 0 && one.from >= 0 ? [along(wall, one.from), along(wall, one.from + one.width)] : [];
  }
  const on = (wall, mm) => Math.min(wall.long, Math.max(0, Math.round(mm / (SNAP / 2)) * (SNAP / 2)));
  /** The place on a wall that lies nearest to where the pointer is. */
  function nearest([x, y], only) {
    let best = null;
    corners.forEach((corner, i) => {
      const wall = wallOf(corners, i);
      const mm = on(wall, (x - wall.a[0]) * wall.u[0] + (y - wall.a[1]) * wall.u[1]);
      const [nearX, nearY] = along(wall, mm);
      const off = Math.hypot(nearX - x, nearY - y);
      if ((only === undefined || only === i) && (!best || off < best.off)) best = { wall: i, mm, off };
    });
    return best;
  }
  function put(place) {
    if (begun && begun.wall === place.wall && begun.mm !== place.mm) {
      span(begun.wall, begun.mm, place.mm);
      begun = null;
      where.textContent = `The opening is in wall ${door.wall}, ${door.from} from its corner and ${door.width} wide.`;
    } else {
      begun = { wall: place.wall, mm: place.mm };
      door = { ...door, wall: "", from: "", width: "" };
      where.textContent = `One side at ${metres(place.mm)} along wall ${place.wall}. Now the other.`;
    }
  }
  function span(wall, one, other) {
    door = { ...door, wall: String(wall), from: metres(Math.min(one, other)), width: metres(Math.abs(one - other)) };
    door.opens = door.opens || "into the room";
    door.hinge = door.hinge || "left";
  }
  svg.addEventListener("pointerdown", (event) => {
    keys = false;
    const mine = onBoard(svg, event);
    const found = begun ? -1 : sides().map(at).findIndex((p) => Math.hypot(p[0] - mine[0], p[1] - mine[1]) < 14);
    if (found < 0) return;
    moved = found ? "end" : "start";
    past.push({ door: { ...door }, begun });
    svg.setPointerCapture(event.pointerId);
    event.preventDefault();
  });
  svg.addEventListener("pointermove", (event) => {
    if (!moved) return;
    const { mm } = nearest(toRoom(onBoard(svg, event)), +door.wall);
    const now = inMm();
    const stays = moved === "end" ? now.from : now.from + now.width;
    if ((mm - stays) * (moved === "end" ? 1 : -1) >= SNAP) span(+door.wall, stays, mm);
    told();
  });
  const drop = () => {
    const was = moved;
    moved = "";
    return was !== "";
  };
  svg.addEventListener("pointerup", (event) => {
    if (drop()) told();
    else changed(() => put(nearest(toRoom(onBoard(svg, event)), undefined)));
  });
  svg.addEventListener("pointercancel", drop);
  const next = { H: ["hinge", ["left", "right"]], O: ["opens", ["into the room", "out of the room", "sliding"]] };
  svg.addEventListener("keydown", (event) => {
    const step = (event.shiftKey ? 5 * SNAP : SNAP) * ({ ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[event.key] || 0);
    const turn = next[event.key.toUpperCase()];
    if (step) {
      const wall = wallOf(corners, cross.wall);
      const mm = cross.mm + step;
      const n = corners.length;
      // Past the end of a wall the next begins.
      if (mm > wall.long) cross = { wall: (cross.wall + 1) % n, mm: 0 };
      else if (mm < 0) cross = { wall: (cross.wall + n - 1) % n, mm: wallOf(corners, (cross.wall + n - 1) % n).long };
      else cross.mm = mm;
      where.textContent = `${metres(cross.mm)} along wall ${cross.wall}.`;
    } else if (event.key === "Enter" || event.key === " ") {
      changed(() => put({ ...cross }));
    } else if (isUndo(event)) {
      back();
    } else if (turn && !event.ctrlKey && !event.metaKey) {
      const [word, all] = turn;
      changed(() => { door[word] = all[(all.indexOf(door[word]) + 1) % all.length]; });
      where.textContent = word === "hinge" ? `Hinges on the ${door.hinge}, seen from inside.` : door.opens === "sliding" ? "It slides." : `It opens ${door.opens}.`;
    } else {
      return;
    }
    keys = true;
    event.preventDefault();
    paint();
  });
  svg.addEventListener("blur", () => { keys = false; paint(); });
  told();
  return {
    field,
    /** What the program knows of the room and of its doors. */
    drawn({ room, around, doors }) {
      corners = room;
      parts = around;
      others = doors.filter((other) => other.name !== name);
      const mine = doors.find((other) => other.name === name);
      walls.replaceChildren(walls.firstChild, ...corners.map((corner, i) => make("option", { value: String(i), text: `wall ${i}, ${metres(wallOf(corners, i).long)}` })));
      if (mine && !known && past.length === 0) {
        const text = (mm) => (mm === undefined ? "" : metres(mm));
        door = { wall: mine.wall === undefined ? "" : String(mine.wall), from: text(mine.from), width: text(mine.width), hinge: mine.hinge || "", opens: mine.opens || "" };
      }
      known = true;
      told();
    },
  };
}

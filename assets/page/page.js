// The phone's side of the page: joins with the code, waits for what is new, shows it as text, sends
// ticks. Text from the table is only ever set as text, never as markup.
"use strict";

const $ = id => document.getElementById(id);
const kept = {
  get: name => { try { return localStorage.getItem(name) || ""; } catch { return ""; } },
  set: (name, value) => { try { localStorage.setItem(name, value); } catch { /* private window */ } },
};
let key = kept.get("key"), who = kept.get("who"), table = null, toldTimer = 0;
let last = null; // this phone's last tick: quilt, zone and kind; it can be taken back
const sending = new Map(); // quilt, zone and kind → the id of a tick that is on its way

// Sentences in {{}} come in the language of the tablet.
const fill = (form, ...values) => form.replace(/%(\d)/g, (_, place) => values[place - 1]);
const stages = { waiting: "{{waiting}}", dotted: "{{dotted}}", open: "{{open}}", closed: "{{closed}}" };

const discs = ["#56b4e9", "#e69f00", "#009e73", "#f0e442", "#cc79a7", "#0072b2", "#d55e00"];

function make(name, className, text) {
  const element = document.createElement(name);
  if (className) element.className = className;
  if (text !== undefined) element.textContent = text;
  return element;
}

// A person's mark as on the tablet: colour and pattern round, the letter on plain ground within.
function disc(mark, letter) {
  const svg = "http://www.w3.org/2000/svg";
  const shape = (name, attributes, text) => {
    const element = document.createElementNS(svg, name);
    for (const [a, value] of Object.entries(attributes)) element.setAttribute(a, value);
    if (text !== undefined) element.textContent = text;
    return element;
  };
  const picture = shape("svg", { viewBox: "0 0 40 40", class: "disc", "aria-hidden": "true" });
  const look = mark < 0 ? 0 : mark % discs.length;
  picture.append(shape("circle", { cx: 20, cy: 20, r: 18, fill: discs[look], stroke: "#14212b", "stroke-width": 2 }));
  const strokes = [[], [45], [0], [45, 135], [90], [135], [0, 90]][look];
  for (const angle of strokes)
    for (const at of [8, 14, 20, 26, 32])
      picture.append(shape("line", { x1: 6, x2: 34, y1: at, y2: at, stroke: "#14212b", "stroke-width": 1.4,
        transform: `rotate(${angle} 20 20)` }));
  picture.append(shape("circle", { cx: 20, cy: 20, r: 11.5, fill: "#ffffff", stroke: "#14212b", "stroke-width": 1 }));
  picture.append(shape("text", { x: 20, y: 26, "text-anchor": "middle", "font-size": letter.length > 1 ? 12 : 17,
    "font-weight": 700, fill: "#14212b" }, letter));
  return picture;
}

function show(name) {
  for (const part of ["joining", "choosing", "table"]) $(part).hidden = part !== name;
}

function tell(sentence) {
  clearTimeout(toldTimer);
  $("told").textContent = sentence;
  $("told").hidden = !sentence;
  if (sentence) toldTimer = setTimeout(() => tell(""), 6000);
}

function trouble(sentence) {
  $("trouble").textContent = sentence;
  $("trouble").hidden = !sentence;
}

// With this phone's key; no answer stays in the browser's store.
function send(path, how = {}) {
  return fetch(path, { ...how, headers: { Authorization: "Bearer " + key, ...how.headers },
    credentials: "omit", cache: "no-store", redirect: "error" });
}

async function ask(method, path, body) {
  const headers = body ? { "Content-Type": "application/json" } : {};
  const answer = await send(path, { method, headers, body: body && JSON.stringify(body) });
  if (answer.status === 204) return { status: 204 };
  let content = {};
  try { content = await answer.json(); } catch { /* no content */ }
  return { status: answer.status, content };
}

async function join(code) {
  try {
    const answer = await ask("POST", "/join", { code });
    if (answer.status !== 200) return tell(answer.content.told || "{{That did not work. Try again.}}");
    key = answer.content.key;
    kept.set("key", key);
    tell("");
    follow();
  } catch {
    tell("{{The tablet does not answer. Are you on the same network?}}");
  }
}

function leave(sentence) {
  key = "";
  kept.set("key", "");
  table = null;
  trouble("");
  show("joining");
  tell(sentence);
}

// One request waits at the tablet until something changes there.
let following = false;
async function follow() {
  if (following || !key) return;
  following = true;
  let pause = 500;
  while (key) {
    try {
      const answer = await ask("GET", "/table?after=" + (table ? table.at : "") + "&who=" + encodeURIComponent(who));
      if (answer.status === 401) {
        leave("{{The code has changed. Scan the one on the tablet.}}");
        break;
      }
      if (answer.status === 200) {
        table = answer.content;
        trouble("");
        pause = 500;
        draw();
      } else if (answer.status === 204) {
        trouble("");
      } else {
        throw new Error(String(answer.status));
      }
    } catch {
      trouble("{{No word from the tablet. What you see may be old; trying again.}}");
      await new Promise(done => setTimeout(done, pause));
      pause = Math.min(pause * 2, 5000);
    }
  }
  following = false;
}

function newId() {
  const b = crypto.getRandomValues(new Uint8Array(16));
  b[6] = (b[6] & 0x0f) | 0x40;
  b[8] = (b[8] & 0x3f) | 0x80;
  const hex = [...b].map(n => n.toString(16).padStart(2, "0")).join("");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}

// The same id until the tablet has answered, so that what is sent twice counts once.
async function send(name, path, body, failed) {
  if (sending.has(name)) return false;
  sending.set(name, body.id = newId());
  draw();
  let counts = false;
  for (let attempt = 0; ; ++attempt) {
    try {
      const answer = await ask("POST", path, body);
      if (answer.status === 429 && attempt < 5) throw new Error("busy");
      if (answer.status === 401) leave(answer.content.told);
      else if (answer.status !== 200) tell(answer.content.told || "{{That did not work.}}");
      else counts = true;
      break;
    } catch {
      if (attempt >= 5) {
        tell(failed);
        break;
      }
      await new Promise(done => setTimeout(done, 1000));
    }
  }
  sending.delete(name);
  return counts;
}

async function tick(quilt, zone) {
  const name = [quilt, zone.zone, zone.next].join(" ");
  const body = { quilt, zone: zone.zone, kind: zone.next, person: who };
  if (await send(name, "/tick", body, fill("{{%1 could not be ticked. Tell the person at the tablet.}}", called(zone))))
    last = { quilt, zone: zone.zone, kind: zone.next, pass: table.quilts[quilt].number };
  draw();
}

async function takeBack() {
  if (await send("undo", "/undo", { person: who }, "{{That did not work. Try again.}}")) last = null;
  draw();
}

function draw() {
  if (!table) return;
  if (!table.open) {
    show("table");
    for (const id of ["standing", "finish", "now"]) $(id).textContent = "";
    for (const id of ["mine", "quilts", "crew", "self"]) $(id).replaceChildren();
    $("state").textContent = "{{No session is open on the tablet. This page goes on by itself.}}";
    $("state").hidden = false;
    return;
  }
  const self = table.people.find(p => p.name === who);
  if (!self) return drawChoice();
  show("table");
  document.title = table.title;
  $("self").replaceChildren(disc(self.mark, self.letter));
  $("standing").textContent = `${self.name} · ${table.progress}`;
  $("finish").textContent = table.finish;
  $("state").textContent = table.ended ? "{{The session has ended. Thank you.}}" : "{{On a break. Ticks wait until it is over.}}";
  $("state").hidden = !(table.ended || table.paused);
  const line = [self.now, self.next].filter(Boolean).join(" › ");
  $("now").textContent = !line ? "" : self.waits ? line : fill("{{Now: %1}}", line);
  drawMine();
  drawQuilts();
  drawCrew();
}

function drawChoice() {
  $("people").replaceChildren(...table.people.map(person => {
    const button = make("button", "person");
    button.append(disc(person.mark, person.letter), make("span", "strong", person.name));
    button.addEventListener("click", () => {
      who = person.name;
      kept.set("who", who);
      draw();
    });
    return button;
  }));
  show("choosing");
}

// What people call a zone within its pass: "A2" of "p1.A2".
const called = zone => zone.zone.slice(zone.zone.lastIndexOf(".") + 1);

const isOwn = zone => zone.ready && (zone.hands.includes(who) || zone.hands.length === 0);

// Every zone of one's own keeps its row as long as the pass is on the table: nothing slides under
// the finger. What its call has not come for is told and cannot be ticked.
function drawMine() {
  const rows = [];
  table.quilts.forEach((quilt, index) => {
    for (const zone of quilt.zones) {
      if (!(zone.crew.includes(who) || (zone.ready && zone.hands.length === 0)) || table.ended) continue;
      const row = make("div", "row");
      const button = make("button", "tick " + zone.stage);
      const isSent = sending.has([index, zone.zone, zone.next].join(" "));
      const mayTick = isOwn(zone) && !table.paused;
      if (isSent) button.classList.add("sending");
      button.disabled = isSent || !mayTick;
      const what = make("span", "what", mayTick ? `${zone.verb} · ${zone.points}` : stages[zone.stage]);
      if (zone.rows) what.append(make("br"), make("span", "quiet", zone.rows));
      if (table.quilts.length > 1) what.append(make("br"), make("span", "quiet", quilt.name));
      button.append(make("span", "zone", called(zone)), what, make("span", "box", mayTick ? "" : zone.stage === "closed" ? "✓" : "·"));
      button.setAttribute("aria-label", mayTick ? fill("{{Tick %1: %2}}", called(zone), zone.verb)
                                                : `${called(zone)}: ${stages[zone.stage]}`);
      button.addEventListener("click", () => tick(index, zone));
      row.append(button);
      if (last && last.quilt === index && last.zone === zone.zone && last.pass === quilt.number && zone.next !== last.kind) {
        const back = make("button", "undo", "{{Undo}}");
        back.setAttribute("aria-label", fill("{{Take back the tick of %1}}", called(zone)));
        back.disabled = sending.has("undo");
        back.addEventListener("click", takeBack);
        row.append(back);
      }
      rows.push(row);
    }
  });
  $("mine").replaceChildren(...rows);
  if (!rows.length)
    $("mine").append(make("p", "quiet", "{{None at the moment. The next step at the table is below.}}"));
}

// What the tops look like: asked for once each, drawn under the zones when it has come.
const cloths = new Map(); // name → a picture, or null while it is on its way
async function fetchCloth(name, quilt) {
  cloths.set(name, null);
  try {
    const answer = await send("/cloth?quilt=" + quilt);
    if (answer.status !== 200) throw new Error(String(answer.status));
    cloths.set(name, await createImageBitmap(await answer.blob()));
    draw();
  } catch {
    setTimeout(() => cloths.delete(name), 10000); // the next news after that asks for it again
  }
}

// The zone's part of the top; what waits is pale, what is closed has rows of stitches.
function clothOf(picture, zone) {
  const [x, y, w, h] = zone.area;
  const canvas = make("canvas");
  canvas.width = 240;
  canvas.height = Math.max(1, Math.round(240 * (h * picture.height) / (w * picture.width)));
  canvas.setAttribute("aria-hidden", "true");
  const pen = canvas.getContext("2d");
  pen.drawImage(picture, x * picture.width, y * picture.height, w * picture.width, h * picture.height,
    0, 0, canvas.width, canvas.height);
  if (zone.stage === "waiting" || zone.stage === "dotted") {
    pen.fillStyle = "rgba(243, 239, 230, 0.6)";
    pen.fillRect(0, 0, canvas.width, canvas.height);
  }
  if (zone.stage === "closed")
    for (let row = 8; row < canvas.height; row += 16)
      for (const [colour, width] of [["#141a28", 4], ["#fffdf6", 2]]) {
        pen.strokeStyle = colour;
        pen.lineWidth = width;
        pen.beginPath();
        for (let at = 4; at < canvas.width; at += 16) {
          pen.moveTo(at, row);
          pen.lineTo(at + 10, row);
        }
        pen.stroke();
      }
  return canvas;
}

function drawQuilts() {
  $("quilts").replaceChildren(...table.quilts.map((quilt, index) => {
    const part = make("div");
    if (!cloths.has(quilt.cloth)) fetchCloth(quilt.cloth, index);
    const picture = cloths.get(quilt.cloth);
    part.append(make("h2", "", `${quilt.name} · ${quilt.pass}`));
    if (!table.ended) {
      const call = make("p", "call");
      call.append(make("span", "strong", quilt.call));
      if (quilt.nextCall) call.append(make("span", "", " › " + quilt.nextCall));
      part.append(call);
    }
    if (quilt.step) {
      const step = make("p", "step");
      step.append(make("span", "strong", quilt.step));
      if (quilt.stepWho) step.append(" · " + quilt.stepWho);
      if (quilt.caution) step.append(make("br"), make("span", "", quilt.caution));
      part.append(step);
    }
    if (quilt.edges[0]) part.append(make("p", "edge", quilt.edges[0]));
    if (quilt.edges[1] || quilt.edges[3]) {
      const sides = make("p", "edge sides");
      sides.append(make("span", "", quilt.edges[3]), make("span", "", quilt.edges[1]));
      part.append(sides);
    }
    const cloth = make("div", "cloth");
    cloth.style.gridTemplateColumns = `repeat(${Number(quilt.columns)}, minmax(0, 1fr))`;
    for (const zone of quilt.zones) {
      const tile = make("div", "tile " + zone.stage + (isOwn(zone) && zone.hands.length ? " own" : ""));
      tile.style.gridColumn = Number(zone.column) + 1;
      tile.style.gridRow = Number(zone.row) + 1;
      const tag = make("span", "tag");
      tag.append(make("span", "strong", called(zone)), " ", make("span", "", zone.stage === "closed" ? "✓" : zone.letter));
      if (picture) tile.append(clothOf(picture, zone));
      tile.append(tag);
      tile.title = `${called(zone)}: ${stages[zone.stage] || zone.stage}`;
      cloth.append(tile);
    }
    part.append(cloth);
    if (quilt.edges[2]) part.append(make("p", "edge", quilt.edges[2]));
    return part;
  }));
}

function drawCrew() {
  $("crew").replaceChildren(...table.people.map(person => {
    const row = make("div", "person");
    const words = make("div");
    words.append(make("span", "strong", person.name), make("span", "", " · " + person.now));
    if (person.next) words.append(make("br"), make("span", "quiet", "› " + person.next));
    row.append(disc(person.mark, person.letter), words);
    return row;
  }));
}

$("join").addEventListener("submit", event => {
  event.preventDefault();
  join($("code").value);
});
$("self").addEventListener("click", () => {
  who = "";
  draw();
});

// The code scanned stands behind the "#"; it is taken out of the address bar at once.
function joinAsScanned() {
  const code = decodeURIComponent(location.hash.slice(1));
  if (!code) return false;
  history.replaceState(null, "", location.pathname);
  join(code);
  return true;
}
window.addEventListener("hashchange", joinAsScanned); // scanned while the page is open

show("joining");
if (!joinAsScanned()) follow();

// The page of `ask --page`, used as a person uses it: with a pointer, with keys alone, on a phone and on
// paper. The program runs as it is shipped; it is started here and ended here.
import { test, before, after } from 'node:test';
import assert from 'node:assert/strict';
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, request } from 'node:http';
import { createInterface } from 'node:readline';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { launched, writingThatIsFaint } from './looking.js';

const root = resolve(dirname(fileURLToPath(import.meta.url)), '../../..');
const jar = join(root, 'target/underfoot.jar');
const PATIENCE = 180_000; // only so that a page that never answers fails

let folder;
let browser;
let program;
let address;
let silent = false; // the program did not answer once: it is not waited for again and again

before(async () => {
  assert.ok(existsSync(jar), 'build the program first: mvn package');
  folder = mkdtempSync(join(tmpdir(), 'underfoot-live-'));
  program = spawn('java', ['-jar', jar, 'ask', '--page'], { stdio: ['ignore', 'pipe', 'inherit'] });
  for await (const line of createInterface({ input: program.stdout })) {
    if (line.startsWith('http://127.0.0.1:')) {
      address = line.trim();
      break;
    }
  }
  assert.ok(address, 'the program tells no address');
  browser = await launched();
});

after(async () => {
  await browser?.close();
  program?.kill();
  if (folder) rmSync(folder, { recursive: true });
});

/** A page with nothing answered yet, and a look at it. It may neither complain nor fetch elsewhere. */
async function opened(options, look) {
  assert.ok(!silent, 'the program no longer answers');
  try {
    await lookedAt(options, look);
  } catch (fault) {
    silent = program.exitCode !== null || fault.message.includes('ERR_CONNECTION_REFUSED');
    throw fault;
  }
}

async function lookedAt(options, look) {
  const context = await browser.newContext({ acceptDownloads: true, ...options });
  context.setDefaultTimeout(PATIENCE);
  const page = await context.newPage();
  const complaints = [];
  const requests = [];
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('dialog', (dialog) => {
    complaints.push('a dialog: ' + dialog.message());
    dialog.dismiss();
  });
  page.on('request', (one) => requests.push(one.url()));
  await page.goto(address);
  await asked(page);
  await look(page);
  assert.deepEqual(complaints, [], 'the browser complains');
  assert.ok(requests.length > 3);
  const elsewhere = requests.filter((url) => !/^(blob|data):/.test(url) && !url.startsWith(address));
  assert.deepEqual(elsewhere, [], 'the page fetches from elsewhere');
  await context.close();
}

/** Waits until the page shows what it was asked to show: the question, the advice, what is open, what to find out. */
const asked = (page) => page.waitForSelector('body[data-asked]');
const advised = (page) => page.waitForSelector('body[data-advised]');
const left = (page) => page.waitForSelector('body[data-left]');
const settled = (page) => page.waitForSelector('body[data-settled]');

const question = (page) => page.getAttribute('#card', 'data-id');

/** Says something in one's own words to the question that stands there. */
async function say(page, words) {
  await page.fill('#words', words);
  await page.click('#say');
  await asked(page);
}
async function choose(page, value) {
  await page.click(`.choice[data-value="${value}"]`);
  await asked(page);
}
async function unknown(page) {
  await page.click('#unknown');
  await asked(page);
}

/** Somebody who knows only: old wooden floor, upstairs bathroom, big tiles. */
const NEWCOMER = 'old wooden floor, upstairs bathroom, big tiles';

/** Takes up one of the questions that are open. */
async function takeUp(page, words) {
  await left(page);
  await page.evaluate(() => (document.getElementById('left-part').open = true));
  await page.getByRole('button', { name: 'Answer: ' + words }).click();
  await asked(page);
}

/** Asks once more what was answered. */
async function takeBack(page, words) {
  await page.evaluate(() => (document.getElementById('said-part').open = true));
  await page.getByRole('button', { name: 'Change: ' + words }).click();
  await asked(page);
}

const ROOM = 'What shape and size is the room?';
const SPOTS = 'Have you measured spot heights over the floor?';

/** Where a plan has so many metres along and across. */
async function put(page, along, across) {
  const svg = page.locator('#plan');
  await svg.scrollIntoViewIfNeeded();
  return svg.evaluate(
    (node, [x, y]) => {
      // The scale as the drawing itself writes it: the places of the figures 0 and 1.
      const writing = [...node.querySelectorAll('.scale')];
      const place = (words) => writing.find((one) => one.textContent === words);
      const metre = place('1').getAttribute('x') - place('0 m').getAttribute('x');
      const lines = [...node.querySelectorAll('.grid')];
      const foot = Math.max(...lines.map((one) => +one.getAttribute('y2')));
      const start = Math.min(...lines.map((one) => +one.getAttribute('x1')));
      const shape = node.getBoundingClientRect();
      const scale = shape.width / node.viewBox.baseVal.width;
      return [shape.left + (start + x * metre) * scale, shape.top + (foot - y * metre) * scale];
    },
    [along, across],
  );
}
async function tap(page, along, across) {
  const [x, y] = await put(page, along, across);
  await page.mouse.click(x, y);
}

async function tools(page) {
  await page.evaluate(() => (document.getElementById('tools').open = true));
}
async function saved(page, name) {
  await tools(page);
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
  const file = join(folder, name);
  await download.saveAs(file);
  return file;
}

const drawn = (page, id) => page.evaluate((one) => document.getElementById(one).shadowRoot?.innerHTML ?? '', id);

test('a newcomer who knows next to nothing comes to a cautious advice that can be printed', async () => {
  await opened({}, async (page) => {
    assert.ok(await page.isVisible('#waiting'));
    assert.ok(await page.isHidden('#answer'));
    await say(page, NEWCOMER);
    await advised(page);
    assert.ok(await page.isVisible('#answer'), 'one sentence is enough for a first advice');
    for (let n = 0; n < 4; n++) await unknown(page);
    await settled(page);
    const things = page.locator('#things > li');
    assert.equal(await things.count(), 3);
    assert.match(await things.nth(0).textContent(), /square-edged boards/);
    assert.match((await things.allTextContents()).join(' '), /asbestos/);
    assert.equal(await page.getAttribute('#verdict', 'class'), 'sound-once-put-right');
    // What can hurt stands before everything else.
    const order = await page.evaluate(() => {
      const top = (id) => document.getElementById(id).getBoundingClientRect().top;
      return [top('verdict'), top('grave'), top('summary'), top('find'), top('seen'), top('put')];
    });
    assert.deepEqual([...order].sort((a, b) => a - b), order);
    assert.match(await page.textContent('#dangers'), /cables/);
    assert.ok((await page.locator('#before > li').count()) >= 5);
    await page.evaluate(() => {
      window.print = () => (document.body.dataset.printed = 'yes');
    });
    await tools(page);
    await page.click('#print');
    await page.waitForSelector('body[data-printed]');
    await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
    await page.emulateMedia({ media: 'print' });
    assert.ok(await page.isHidden('#card'));
    assert.ok(await page.isHidden('#bar'));
    assert.ok(await page.isVisible('#things'));
    assert.ok(await page.isHidden('#seen'), 'the drawing is printed twice');
    assert.ok(await page.locator('#report #answer').isVisible());
    assert.ok(await page.locator('#report #build-up svg:not(.true-size)').isVisible());
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    const pages = pdf.match(/\/Type\s*\/Page[^s]/g).length;
    assert.ok(pages >= 5 && pages <= 30, `${pages} pages`);
    assert.match(pdf, /\/MediaBox\s*\[\s*0\s+0\s+59[45][\d.]*\s+84[12]/);
  });
});

test('one question stands on the page, with choices that are drawn, and what is understood changes with one tap', async () => {
  await opened({}, async (page) => {
    assert.equal(await question(page), 'room.use');
    assert.equal(await page.locator('#card h2').count(), 1);
    assert.equal(await page.locator('.choice svg').count(), 9);
    await say(page, 'a bath room upstairs, over the garage');
    assert.deepEqual(await page.locator('.chips li span').allTextContents(), ['Use: bathroom', 'Storey: upper floor']);
    assert.equal(await question(page), 'subfloor.deck');
    assert.ok((await page.locator('.choice svg').count()) > 15);
    await page.getByRole('button', { name: 'Change: use' }).click();
    await asked(page);
    assert.equal(await question(page), 'room.use');
    await choose(page, 'kitchen');
    assert.equal(await question(page), 'subfloor.deck');
    const yaml = readFileSync(await saved(page, 'changed.yaml'), 'utf8');
    assert.match(yaml, /use: kitchen/);
    assert.match(yaml, /storey: upper floor/);
  });
});

test('how to find out and why it is asked are told, also when they are asked for in words', async () => {
  await opened({}, async (page) => {
    await say(page, NEWCOMER);
    await page.fill('#words', 'why do you ask?');
    await page.click('#say');
    await page.locator('.help[open] li').filter({ hasText: /the work stops/ }).waitFor();
    await page.click('#look');
    assert.ok(await page.getByText('Ask for the report').first().isVisible());
    await page.fill('#words', 'go back');
    await page.click('#say');
    await page.waitForFunction(() => document.getElementById('card').dataset.id === 'room.use');
  });
});

test('what cannot be understood is said beside the answer, and a yes to its guess is taken', async () => {
  await opened({}, async (page) => {
    await say(page, 'bathroom');
    await say(page, 'something brown');
    assert.match(await page.textContent('#wrong'), /not understood/);
    assert.equal(await page.getAttribute('#words', 'aria-invalid'), 'true');
    assert.equal(await page.inputValue('#words'), 'something brown');
    assert.equal(await question(page), 'subfloor.deck');
    assert.doesNotMatch(await page.textContent('#wrong'), /Exception|null|\[\]|undefined/);
    await say(page, 'floating borad flor');
    if ((await question(page)) === 'subfloor.deck') {
      assert.match(await page.textContent('#wrong'), /Did you mean/);
      await say(page, 'yes');
    }
    assert.notEqual(await question(page), 'subfloor.deck');
    assert.match(await page.textContent('#heard'), /floating board floor/);
  });
});

test('nothing is lost: refreshed, gone back in the browser and on the page, closed and opened again', async () => {
  await opened({}, async (page) => {
    await say(page, 'kitchen on the ground floor');
    await say(page, 'concrete');
    const here = await question(page);
    await page.reload();
    await asked(page);
    assert.equal(await question(page), here);
    await page.goBack();
    await page.waitForFunction(() => document.getElementById('card').dataset.id === 'subfloor.deck');
    await page.goForward();
    await page.waitForFunction((id) => document.getElementById('card').dataset.id === id, here);
    await page.click('#back');
    await page.waitForFunction(() => document.getElementById('card').dataset.id === 'subfloor.deck');
    await asked(page);
    await say(page, 'old vinyl tiles on concrete');
    await page.evaluate(() => (document.getElementById('said-part').open = true));
    assert.match(await page.textContent('#said'), /Deck: old vinyl tiles/);
    const again = await page.context().newPage();
    again.setDefaultTimeout(PATIENCE);
    await again.goto(address);
    await asked(again);
    assert.match(await again.textContent('#said'), /Deck: old vinyl tiles/);
    // Two tabs: what is said in one stands in the other.
    await say(again, 'porcelain 600 x 600');
    await page.waitForFunction(() => /porcelain/.test(document.getElementById('said').textContent));
    await asked(page);
    assert.equal(await question(page), await question(again));
    // Begun anew, the old answers can still be brought back.
    await tools(page);
    await page.click('#anew');
    await page.waitForFunction(() => document.getElementById('card').dataset.id === 'room.use');
    await asked(page);
    await page.click('#back');
    await page.waitForFunction(() => /porcelain/.test(document.getElementById('said').textContent));
    await again.close();
  });
});

test('what is saved is advised on in the same way, and opens again with its guesses still guesses', async () => {
  let first;
  let verdict;
  await opened({}, async (page) => {
    await say(page, NEWCOMER);
    await say(page, 'clear');
    await takeUp(page, ROOM);
    await say(page, '11 ft 6 in x 2.4 m');
    await advised(page);
    first = await saved(page, 'my-floor.yaml');
    verdict = await page.getAttribute('#verdict', 'class');
  });
  const yaml = readFileSync(first, 'utf8');
  assert.match(yaml, /# Not certain; taken so/);
  const run = spawnSync('java', ['-jar', jar, 'advise', first, '--json'], { encoding: 'utf8' });
  assert.ok(run.status === 0 || run.status === 4, run.stderr);
  assert.equal(JSON.parse(run.stdout).verdict, verdict);
  await opened({}, async (page) => {
    await tools(page);
    await page.setInputFiles('#open', first);
    await page.waitForFunction(() => /square-edged boards \(a guess\)/.test(document.getElementById('said').textContent));
    await advised(page);
    assert.equal(await page.getAttribute('#verdict', 'class'), verdict);
    const again = readFileSync(await saved(page, 'again.yaml'), 'utf8');
    const exact = (text) => text.replace('3505.2 mm', '11 ft 6 in').replace(/outline: .*/, '');
    assert.equal(exact(again), exact(yaml));
  });
});

test('a file with faults is refused with its lines, and what was said stays', async () => {
  await opened({}, async (page) => {
    await say(page, 'hall');
    await tools(page);
    const bad = join(folder, 'bad.yaml');
    writeFileSync(bad, 'scenario: x\nroom: {use: pond}\ntile: {length: 600}\n');
    await page.setInputFiles('#open', bad);
    await page.waitForFunction(() => /pond/.test(document.getElementById('told').textContent));
    const told = await page.textContent('#told');
    assert.match(told, /2:\d+: .*pond/);
    assert.match(told, /3:\d+: .*unit/);
    assert.match(await page.textContent('#said'), /Use: hall/);
    await page.setInputFiles('#open', { name: 'x.yaml', mimeType: 'text/plain', buffer: Buffer.from([0, 1, 255, 10, 123]) });
    await page.waitForFunction((old) => !['', old].includes(document.getElementById('told').textContent), told);
    assert.doesNotMatch(await page.textContent('#told'), /Exception|java/);
  });
});

test('a room is drawn with a pointer, its corners are dragged, and it is taken', async () => {
  await opened({}, async (page) => {
    await say(page, NEWCOMER);
    await takeUp(page, ROOM);
    await page.click('.drawing-board > summary');
    for (const [x, y] of [[0, 0], [3, 0], [3, 1], [2, 1], [2, 2], [0, 2]]) await tap(page, x, y);
    assert.equal(await page.locator('#plan .corner-dot').count(), 6);
    const [fromX, fromY] = await put(page, 2, 2);
    const [toX, toY] = await put(page, 2, 2.5);
    await page.mouse.move(fromX, fromY);
    await page.mouse.down();
    await page.mouse.move(toX, toY, { steps: 5 });
    await page.mouse.up();
    assert.equal(await page.locator('#plan .corner-dot').count(), 6, 'dragging put a new corner');
    await page.getByRole('button', { name: 'Take this plan' }).click();
    await asked(page);
    const yaml = readFileSync(await saved(page, 'drawn.yaml'), 'utf8');
    assert.ok(yaml.includes('outline: [[0 m, 0 m], [3 m, 0 m], [3 m, 1 m], [2 m, 1 m], [2 m, 2.5 m], [0 m, 2 m]]'), yaml);
  });
});

test('a room is drawn and its levels are put with keys alone, and the level map follows', async () => {
  await opened({}, async (page) => {
    await say(page, NEWCOMER);
    await takeUp(page, ROOM);
    await page.focus('.drawing-board > summary');
    await page.keyboard.press('Enter');
    await page.focus('#plan');
    const press = async (key, times) => {
      for (let n = 0; n < times; n++) await page.keyboard.press(key);
    };
    await press('Enter', 1);
    await press('Shift+ArrowRight', 6);
    await press('Enter', 1);
    await press('ArrowUp', 3);
    assert.match(await page.textContent('#card .where'), /3 m along, 0\.3 m across/);
    await press('Shift+ArrowUp', 3);
    await press('Enter', 1);
    await press('Shift+ArrowLeft', 6);
    await press('Enter', 1);
    await press('Enter', 1);
    await press('Backspace', 1);
    await page.getByRole('button', { name: 'Take this plan' }).press('Enter');
    await asked(page);
    await takeUp(page, SPOTS);
    for (const [along, across, height] of [[0.2, 0.2, '0'], [2.8, 0.3, '-4 mm'], [0.5, 1.5, '-9']]) {
      await tap(page, along, across);
      await page.keyboard.type(height);
    }
    await page.getByRole('button', { name: 'Take this plan' }).press('Enter');
    await asked(page);
    await advised(page);
    assert.ok(await page.isVisible('#map svg'));
    const yaml = readFileSync(await saved(page, 'spots.yaml'), 'utf8');
    assert.ok(yaml.includes('outline: [[0 m, 0 m], [3 m, 0 m], [3 m, 1.8 m], [0 m, 1.8 m]]'), yaml);
    assert.match(yaml, /readings: \[\[0\.2 m, 0\.2 m, 0 mm\], \[2\.8 m, 0\.3 m, -4 mm\], \[0\.5 m, 1\.5 m, -9 mm\]\]/);
    assert.match(await drawn(page, 'map'), /<svg/);
  });
});

const HALL = [
  'scenario: Hall', 'practice: uk',
  'room: {use: hall, storey: ground floor, outline: [[0 m, 0 m], [4 m, 0 m], [4 m, 2 m], [0 m, 2 m]], doors: [{name: front door, wall: 0}, {name: kitchen door, wall: 2, from: 0.5 m, width: 762 mm, opens: into the room, hinge: left}]}',
  'subfloor: {deck: square-edged boards}', 'tile: {material: porcelain, length: 600 mm, width: 300 mm}',
].join('\n');
const DOOR = 'room.doors[].wall@front door';

/** The hall with a door whose place is asked, and the plan of it. */
async function atTheDoor(page) {
  await page.setInputFiles('#open', { name: 'hall.yaml', mimeType: 'text/plain', buffer: Buffer.from(HALL) });
  await page.waitForFunction(() => /front door/.test(document.getElementById('said').textContent));
  await takeBack(page, 'front door: Which wall is it in?');
  assert.equal(await question(page), DOOR);
  await page.waitForSelector('#plan .room');
  assert.equal(await page.locator('#plan .leaf.other').count(), 1, 'the other door is drawn with its leaf');
}
const doorOf = (yaml, name) => yaml.split(/(?=- name: )/).find((one) => one.includes(`- name: ${name}`)).replace(/ *#.*\n/g, '');

test('a door is drawn on its wall with a pointer, with its swing, undone and dragged, kept in the file and read back', async () => {
  let file;
  await opened({}, async (page) => {
    await atTheDoor(page);
    const take = page.getByRole('button', { name: 'Take this door' });
    assert.ok(await take.isDisabled());
    await tap(page, 3.9, 0.5);
    await tap(page, 3.9, 1.4);
    assert.equal(await page.locator('#plan .leaf.own').count(), 1);
    assert.equal(await page.locator('#plan .swept').count(), 2);
    await page.click('#undo');
    assert.ok(await take.isDisabled(), 'the second side is taken back');
    await tap(page, 3.9, 1.3);
    const [fromX, fromY] = await put(page, 4, 1.3);
    const [toX, toY] = await put(page, 4, 1.5);
    await page.mouse.move(fromX, fromY);
    await page.mouse.down();
    await page.mouse.move(toX, toY, { steps: 5 });
    await page.mouse.up();
    assert.equal(await page.inputValue('input[aria-label="How wide"]'), '1 m');
    await page.selectOption('select[aria-label="Which way it opens"]', 'out of the room');
    await page.selectOption('select[aria-label="Hinges, seen from inside"]', 'right');
    await page.fill('input[aria-label="How wide"]', '838 mm');
    await page.keyboard.press('Tab');
    await take.click();
    await page.waitForFunction((id) => document.getElementById('card').dataset.id !== id, DOOR);
    await asked(page);
    const chips = (await page.locator('.chips li span').allTextContents()).sort();
    assert.deepEqual(chips, ['Door from: 0.5 m', 'Door hinge: right', 'Door wall: 1', 'Door width: 838 mm', 'Opens: out of the room']);
    file = await saved(page, 'door.yaml');
  });
  const door = doorOf(readFileSync(file, 'utf8'), 'front door');
  for (const said of [/wall: 1\n/, /from: 0\.5 m\n/, /width: 838 mm\n/, /opens: out of the room\n/, /hinge: right\n/]) assert.match(door, said);
  await opened({}, async (page) => {
    await page.setInputFiles('#open', file);
    await page.waitForFunction(() => /Door hinge, front door: right/.test(document.getElementById('said').textContent));
    await page.reload();
    await asked(page);
    await takeBack(page, 'front door: Which wall is it in?');
    await page.waitForSelector('#plan .leaf.own', { state: 'attached' }); // a line along a wall has no height
    assert.equal(await page.inputValue('select[aria-label="Hinges, seen from inside"]'), 'right');
  });
});

test('a door is put, hung, turned and undone with keys alone; where another stands it is refused', async () => {
  await opened({}, async (page) => {
    await atTheDoor(page);
    await page.focus('#plan');
    const press = async (key, times = 1) => {
      for (let n = 0; n < times; n++) await page.keyboard.press(key);
    };
    const where = () => page.textContent('#card .where');
    await press('Shift+ArrowLeft', 1);
    assert.match(await where(), /2 m along wall 3/);
    await press('Shift+ArrowLeft', 2);
    await press('Enter');
    await press('ArrowLeft', 8);
    await press('Enter');
    assert.match(await where(), /in wall 3, 0\.2 m from its corner and 0\.8 m wide/);
    await press('o');
    assert.match(await where(), /opens out of the room/);
    await press('h');
    assert.match(await where(), /Hinges on the right/);
    await press('Backspace');
    await press('Control+z');
    assert.equal(await page.inputValue('select[aria-label="Which way it opens"]'), 'into the room');
    await page.fill('#words', 'wall 2, 0.4 m from the corner, 0.8 m wide');
    await press('Enter');
    await page.waitForFunction(() => /same place as/.test(document.getElementById('wrong').textContent));
    assert.equal(await question(page), DOOR);
    await page.getByRole('button', { name: 'Take this door' }).press('Enter');
    await page.waitForFunction((id) => document.getElementById('card').dataset.id !== id, DOOR);
    await asked(page);
    const door = doorOf(readFileSync(await saved(page, 'keys.yaml'), 'utf8'), 'front door');
    for (const said of [/wall: 3\n/, /from: 0\.2 m\n/, /width: 0\.8 m\n/, /opens: into the room\n/, /hinge: left\n/]) assert.match(door, said);
  });
});

test('what is drawn is undone step by step, also what was dragged, cleared and typed', async () => {
  await opened({}, async (page) => {
    await say(page, NEWCOMER);
    await takeUp(page, ROOM);
    await page.click('.drawing-board > summary');
    assert.ok(await page.isDisabled('#undo'));
    for (const [x, y] of [[0, 0], [3, 0], [3, 2]]) await tap(page, x, y);
    await page.getByRole('button', { name: 'Clear' }).click();
    assert.equal(await page.locator('#plan .corner-dot').count(), 0);
    await page.click('#undo');
    assert.equal(await page.locator('#plan .corner-dot').count(), 3);
    await page.fill('input[aria-label="Corner 2, along"]', '3.5 m');
    await page.keyboard.press('Tab');
    await page.click('#undo');
    assert.equal(await page.inputValue('input[aria-label="Corner 2, along"]'), '3 m');
    await page.focus('#plan');
    await page.keyboard.press('Control+z');
    assert.equal(await page.locator('#plan .corner-dot').count(), 2);
  });
});

test('the sheet, the list and the whole advice are taken along', async () => {
  await opened({}, async (page) => {
    await say(page, NEWCOMER);
    await advised(page);
    for (const [what, name, begins] of [['sheet', 'my-floor-sheet.pdf', '%PDF'], ['list', 'my-floor-list.pdf', '%PDF'], ['share', 'my-floor-advice.html', '<!DOCTYPE html>']]) {
      if (what === 'share') await tools(page);
      const [download] = await Promise.all([page.waitForEvent('download'), page.click('#' + what)]);
      assert.equal(download.suggestedFilename(), name);
      const file = join(folder, name);
      await download.saveAs(file);
      const text = readFileSync(file, 'latin1');
      assert.ok(text.startsWith(begins), text.slice(0, 40));
    }
  });
});

test('a part of the room is drawn beside what stands there, and its floor is asked', async () => {
  await opened({}, async (page) => {
    const hall = [
      'scenario: Hall', 'practice: uk',
      'room: {use: bathroom, storey: ground floor, outline: [[0 m, 0 m], [4 m, 0 m], [4 m, 2 m], [0 m, 2 m]], heavy items: [{item: bath, mass: 280 kg, at: [[0.1 m, 1.1 m], [1.8 m, 1.8 m]]}]}',
      'subfloor: {deck: square-edged boards}', 'tile: {material: porcelain, length: 600 mm, width: 300 mm}',
      'zones: [{name: old hearth}]',
    ].join('\n');
    await page.setInputFiles('#open', { name: 'hall.yaml', mimeType: 'text/plain', buffer: Buffer.from(hall) });
    await page.waitForSelector('#card[data-id="zones[].outline@old hearth"]');
    await page.waitForSelector('#plan .part');
    assert.equal(await page.textContent('#plan .name'), 'bath');
    for (const [x, y] of [[1.2, 0], [2.4, 0], [2.4, 0.5], [1.2, 0.5]]) await tap(page, x, y);
    assert.equal(await page.locator('#plan .own').count(), 1);
    await page.getByRole('button', { name: 'Take this plan' }).click();
    await page.waitForSelector('#card[data-id="zones[old hearth].subfloor.deck"]');
    assert.match(await page.textContent('#ask'), /^old hearth: /);
    await choose(page, 'concrete slab');
    const yaml = readFileSync(await saved(page, 'parts.yaml'), 'utf8');
    assert.match(yaml, /- name: old hearth\n(?: *#.*\n)* +outline: \[\[1\.2 m, 0 m\], \[2\.4 m, 0 m\], \[2\.4 m, 0\.5 m\], \[1\.2 m, 0\.5 m\]\]\n(?: *#.*\n)* +deck: concrete slab/);
    assert.match(yaml, /at: \[\[100 mm, 1100 mm\], \[1800 mm, 1800 mm\]\]/);
    await page.reload();
    await asked(page);
    assert.match(await page.textContent('#said'), /old hearth/);
  });
});

test('the units one likes are remembered', async () => {
  await opened({}, async (page) => {
    await say(page, NEWCOMER);
    await tools(page);
    await page.selectOption('#units', 'imperial');
    await asked(page);
    await takeUp(page, 'How thick is a joist, side to side?');
    assert.match(await page.textContent('#how'), / in\./);
    await page.reload();
    await asked(page);
    assert.equal(await page.inputValue('#units'), 'imperial');
    assert.match(await page.textContent('#how'), / in\./);
  });
});

test('keys alone are enough', async () => {
  await opened({}, async (page) => {
    const at = () =>
      page.evaluate(() => {
        const one = document.activeElement;
        const ring = getComputedStyle(one.matches('.unseen') ? one.nextElementSibling : one);
        return { id: one.id, words: one.textContent, ring: ring.outlineStyle !== 'none' && parseFloat(ring.outlineWidth) >= 2 };
      });
    const to = async (id) => {
      for (let n = 0; n < 80; n++) {
        await page.keyboard.press('Tab');
        const here = await at();
        assert.ok(here.ring, `focus cannot be seen on ${here.id || here.words}`);
        if (here.id === id) return;
      }
      assert.fail(`${id} cannot be reached with the Tab key`);
    };
    await page.keyboard.press('Tab');
    assert.match((await at()).words, /To the advice/);
    await to('words');
    await page.keyboard.type(NEWCOMER);
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.getElementById('card').dataset.id === 'building.asbestos survey');
    // The next answer is typed where the last was.
    await page.waitForFunction(() => document.activeElement.id === 'words');
    await to('unknown');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.getElementById('card').dataset.id === 'room.dwelling');
    await page.keyboard.type('house');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => !['room.dwelling', 'building.asbestos survey'].includes(document.getElementById('card').dataset.id));
    await advised(page);
    assert.ok(await page.isVisible('#answer'));
    // Nothing holds the focus: with Tab it comes to the end of the page and out of it.
    let out = false;
    for (let n = 0; n < 300 && !out; n++) {
      await page.keyboard.press('Tab');
      out = await page.evaluate(() => document.activeElement === document.body || document.activeElement.className === 'skip');
    }
    assert.ok(out, 'the focus is held');
  });
});

test('every control has a name, every id stands once, and headings follow each other', async () => {
  await opened({}, async (page) => {
    await say(page, NEWCOMER);
    await takeUp(page, ROOM);
    await page.click('.drawing-board > summary');
    await tap(page, 1, 1);
    await settled(page);
    await tools(page);
    const session = await page.context().newCDPSession(page);
    const { nodes } = await session.send('Accessibility.getFullAXTree');
    const controls = ['textbox', 'combobox', 'radio', 'radiogroup', 'button', 'link', 'application', 'form', 'region', 'DisclosureTriangle', 'image', 'img', 'checkbox'];
    const looked = nodes.filter((one) => !one.ignored && controls.includes(one.role?.value));
    assert.ok(looked.length > 40, `only ${looked.length} controls`);
    const nameless = looked.filter((one) => !one.name?.value?.trim());
    assert.deepEqual(nameless.map((one) => JSON.stringify([one.role, one.backendDOMNodeId])), []);
    const faults = await page.evaluate(() => {
      const found = [];
      const ids = [...document.querySelectorAll('[id]')].map((one) => one.id);
      ids.filter((id, n) => ids.indexOf(id) !== n).forEach((id) => found.push('an id twice: ' + id));
      document.querySelectorAll('[aria-describedby],[aria-labelledby]').forEach((one) => {
        const named = ((one.getAttribute('aria-labelledby') ?? '') + ' ' + (one.getAttribute('aria-describedby') ?? '')).split(' ').filter(Boolean);
        if (named.some((id) => !document.getElementById(id))) found.push('named by nothing: ' + one.id);
      });
      const levels = [...document.querySelectorAll('h1,h2,h3')].map((one) => +one.tagName[1]);
      levels.reduce((last, level) => {
        if (level > last + 1) found.push(`a heading jumps from ${last} to ${level}`);
        return level;
      }, 0);
      return found;
    });
    assert.deepEqual(faults, []);
  });
});

for (const width of [360, 390]) {
  test(`it fits a phone of ${width} px, what is tapped is large enough, and the advice is one tap away`, async () => {
    await opened({ viewport: { width, height: 844 }, hasTouch: true, isMobile: true }, async (page) => {
      const fits = async (where) => {
        const { wide, out, small } = await page.evaluate(() => ({
          wide: document.documentElement.scrollWidth,
          out: [...document.querySelectorAll('main *')]
            .filter((one) => one.getBoundingClientRect().right > innerWidth + 1)
            .map((one) => one.outerHTML.slice(0, 80)),
          small: [...document.querySelectorAll('button,.button,select,input[type=text]')]
            .filter((one) => one.getBoundingClientRect().height > 0 && one.getBoundingClientRect().height < 40)
            .map((one) => one.outerHTML.slice(0, 80)),
        }));
        assert.deepEqual(out, [], where);
        assert.equal(wide, width, where);
        assert.deepEqual(small, [], where);
      };
      await fits('the first question');
      await say(page, 'bathroom');
      await fits('what the floor is made of');
      await say(page, NEWCOMER);
      await takeUp(page, ROOM);
      await page.click('.drawing-board > summary');
      await tap(page, 1, 1);
      await settled(page);
      await page.evaluate(() => document.querySelectorAll('details').forEach((one) => (one.open = true)));
      await page.waitForSelector('body[data-reported]');
      await fits('all of it unfolded');
      assert.ok(await page.isVisible('#bar'));
      await page.click('#bar a');
      await page.waitForFunction(() => document.getElementById('advice').getBoundingClientRect().top < 200);
    });
  });
}

for (const colorScheme of ['light', 'dark']) {
  test(`all writing on the page stands out from its ground, ${colorScheme}`, async () => {
    await opened({ colorScheme }, async (page) => {
      await say(page, 'bathroom upstairs');
      await say(page, 'something brown');
      const first = await page.evaluate(writingThatIsFaint);
      assert.deepEqual(first.found, []);
      await say(page, 'old wooden floor');
      await say(page, 'big tiles');
      await settled(page);
      await page.evaluate(() => document.querySelectorAll('details').forEach((one) => (one.open = true)));
      await page.waitForSelector('body[data-reported]');
      const faint = await page.evaluate(writingThatIsFaint);
      assert.ok(faint.looked > 200, `only ${faint.looked} pieces of writing`);
      assert.deepEqual(faint.found, []);
    });
  });
}

test('words of a person stay words', async () => {
  await opened({}, async (page) => {
    await say(page, NEWCOMER);
    await takeUp(page, 'Which doors and openings has the room? Name each');
    await say(page, `<img src=x onerror="document.title='broken'">, <b onclick=alert(1)>door</b>`);
    await advised(page);
    await page.evaluate(() => (document.getElementById('whole').open = true));
    await page.waitForSelector('body[data-reported]');
    assert.match(await page.title(), /^Underfoot/);
    assert.match(await page.textContent('#said'), /<b onclick/);
    assert.equal(await page.locator('main img, main script, main b, #report img, #report script').count(), 0);
  });
});

// --- others than the page

const port = () => new URL(address).port;
const word = () => new URL(address).pathname;

/** A request as it goes over the wire; nothing is tidied. */
function raw(method, path, headers, body = '') {
  return new Promise((done, failed) => {
    const going = request(
      { host: '127.0.0.1', port: port(), method, path, headers: { Host: `127.0.0.1:${port()}`, ...headers } },
      (reply) => {
        let text = '';
        reply.on('data', (part) => (text += part));
        reply.on('end', () => done({ status: reply.statusCode, text, headers: reply.headers }));
      },
    );
    going.on('error', failed);
    going.end(body);
  });
}

test('strangers are refused', async () => {
  const own = `http://127.0.0.1:${port()}`;
  const json = { 'Content-Type': 'application/json' };
  const post = (headers, body = '{}', what = 'advice') => raw('POST', word() + what, { ...json, ...headers }, body);
  assert.equal((await post({ Origin: own })).status, 200);
  const refused = [
    ['another origin', await post({ Origin: 'http://evil.example' }), 403],
    ['another port', await post({ Origin: `http://127.0.0.1:${+port() + 1}` }), 403],
    ['no origin', await post({}), 403],
    ['an origin of null', await post({ Origin: 'null' }), 403],
    ['a site across', await post({ Origin: own, 'Sec-Fetch-Site': 'cross-site' }), 403],
    ['a foreign host', await raw('GET', word(), { Host: 'evil.example' }), 403],
    ['a host by another name', await raw('GET', word(), { Host: `localhost:${port()}` }), 403],
    ['a host without its port', await raw('GET', word(), { Host: '127.0.0.1' }), 403],
    ['no word', await raw('GET', '/', {}), 404],
    ['a wrong word', await raw('GET', `/${'0'.repeat(36)}/`, {}), 404],
    ['part of the word', await raw('GET', word().slice(0, -3) + '/', {}), 404],
    ['a path that climbs', await raw('GET', word() + '../page.js', {}), 404],
    ['a path that climbs in code', await raw('GET', word() + '%2e%2e%2fpage.js', {}), 404],
    ['a file of the machine', await raw('GET', word() + '..%2f..%2f..%2fetc%2fpasswd', {}), 404],
    ['a backslash', await raw('GET', word() + '..%5cpage.js', {}), 404],
    ['another class of the program', await raw('GET', word() + 'PageServer.class', {}), 404],
    ['reading what is only asked', await raw('GET', word() + 'advice', {}), 405],
    ['another method', await raw('DELETE', word(), { Origin: own }), 405],
    ['a form', await raw('POST', word() + 'advice', { Origin: own, 'Content-Type': 'application/x-www-form-urlencoded' }, 'a=b'), 415],
    ['a body that is too large', await post({ Origin: own }, ' '.repeat(1_300_000)), 413],
  ];
  for (const [who, reply, status] of refused) {
    assert.equal(reply.status, status, who);
    assert.doesNotMatch(reply.text, /root:|<script|Exception|underfoot\./, who);
  }
  const odd = ['{"answers":{"room.use":{"a":{"b":{"c":{}}}}}}', '[[[[[[', '{"answers":["x"]}', '\u0000', '{"answers":{"__proto__":"x","no such":"y"}}'];
  for (const body of odd) {
    const reply = await post({ Origin: own }, body);
    assert.equal(reply.status, 200, body);
    assert.doesNotMatch(reply.text, /Exception/);
  }
});

test('another page in the same browser can neither read nor show it', async () => {
  const stranger = createServer((_, reply) => reply.end('<!DOCTYPE html><title>stranger</title>')).listen(0, '127.0.0.1');
  await new Promise((done) => stranger.once('listening', done));
  const context = await browser.newContext();
  try {
    const page = await context.newPage();
    await page.goto(`http://127.0.0.1:${stranger.address().port}/`);
    const got = await page.evaluate(async (url) => {
      const tried = async (what, options) => {
        try {
          const reply = await fetch(url + what, options);
          return reply.type + ' ' + (await reply.text());
        } catch {
          return 'refused';
        }
      };
      const frame = document.createElement('iframe');
      frame.src = url;
      const loaded = new Promise((done) => frame.addEventListener('load', done));
      document.body.append(frame);
      await loaded;
      let inside = 'shut';
      try {
        inside = frame.contentDocument?.body.textContent ?? 'shut';
      } catch {
        // not ours to read
      }
      return [
        await tried('', {}),
        await tried('advice', { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: '{}' }),
        await tried('advice', { method: 'POST', mode: 'no-cors', body: '{}' }),
        inside,
      ];
    }, address);
    assert.deepEqual(got.slice(0, 2), ['refused', 'refused']);
    assert.ok(['opaque ', 'refused'].includes(got[2]), got[2]);
    assert.equal(got[3], 'shut');
  } finally {
    await context.close();
    stranger.close();
  }
});

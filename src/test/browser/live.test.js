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
    silent = fault.name === 'TimeoutError';
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

/** Waits until the advice answers what was said last; the questions, too; the whole advice, too. */
const advised = (page) => page.waitForSelector('body[data-advised]');
const asked = (page) => page.waitForSelector('body[data-asked]');
const settled = (page) => page.waitForSelector('body[data-settled]');

const box = (page, id) => page.locator(`.q[data-id="${id}"]`);

/** Somebody who knows only: old wooden floor, upstairs bathroom, big tiles. */
async function newcomer(page) {
  await page.selectOption('#q-room-use', 'bathroom');
  await page.selectOption('#q-subfloor-deck', 'old wooden floor');
  await page.selectOption('#q-tile-material', 'big tiles');
  await page.fill('#q-tile-length', 'big');
  await page.fill('#q-tile-width', 'big');
}

/** The same with the tile known, and every part unfolded. */
async function unfolded(page) {
  await newcomer(page);
  await asked(page);
  await page.evaluate(() => document.querySelectorAll('#form > details').forEach((d) => (d.open = true)));
}

/** Clicks on a plan at so many metres along and across. */
async function put(page, plan, along, across) {
  const svg = page.locator(plan);
  await svg.scrollIntoViewIfNeeded();
  const at = await svg.evaluate(
    (node, [x, y]) => {
      // The scale as the drawing itself writes it: the places of the figures 0 and 1.
      const writing = [...node.querySelectorAll('.scale')];
      const place = (words) => writing.find((one) => one.textContent === words);
      const metre = place('1').getAttribute('x') - place('0 m').getAttribute('x');
      const lines = [...node.querySelectorAll('.grid')];
      const foot = Math.max(...lines.map((one) => +one.getAttribute('y2')));
      const left = Math.min(...lines.map((one) => +one.getAttribute('x1')));
      const shape = node.getBoundingClientRect();
      const scale = shape.width / node.viewBox.baseVal.width;
      return [shape.left + (left + x * metre) * scale, shape.top + (foot - y * metre) * scale];
    },
    [along, across],
  );
  return at;
}
async function tap(page, plan, along, across) {
  const [x, y] = await put(page, plan, along, across);
  await page.mouse.click(x, y);
}

async function saved(page, name) {
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
  const file = join(folder, name);
  await download.saveAs(file);
  return file;
}

async function rectangle(page, length, breadth) {
  await page.getByLabel('Length', { exact: true }).fill(length);
  await page.getByLabel('Breadth', { exact: true }).fill(breadth);
}

const drawn = (page, id) => page.evaluate((one) => document.getElementById(one).shadowRoot?.innerHTML ?? '', id);

test('a newcomer who knows next to nothing comes to a cautious advice that can be printed', async () => {
  await opened({}, async (page) => {
    assert.ok(await page.isVisible('#waiting'));
    assert.ok(await page.isHidden('#answer'));
    await newcomer(page);
    await asked(page);
    const things = page.locator('#things > li');
    assert.equal(await things.count(), 3);
    assert.match(await things.nth(0).textContent(), /square-edged boards/);
    assert.match((await things.allTextContents()).join(' '), /asbestos/);
    for (let n = 0; n < 5; n++) {
      // The next question that says nothing yet, whatever it is, is not known either.
      const left = page.locator('#form > details[open] .q').filter({ hasNot: page.locator(':checked:not([value=""])') });
      const next = left.filter({ has: page.locator('input[type=radio][value=unknown], option[value=unknown]') }).first();
      if (await next.locator('select').count()) await next.locator('select').selectOption('unknown');
      else await next.getByText('I do not know', { exact: true }).click();
      await advised(page);
    }
    await asked(page);
    assert.equal(await page.getAttribute('#verdict', 'class'), 'sound-once-put-right');
    assert.equal(await things.count(), 3);
    assert.ok((await page.locator('#before > li').count()) >= 5);
    assert.match(await page.textContent('#before'), /pipe/);
    assert.match(await page.textContent('#before'), /timber/);
    await page.evaluate(() => {
      window.print = () => (document.body.dataset.printed = 'yes');
    });
    await page.click('#print');
    await page.waitForSelector('body[data-printed]');
    await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
    await page.emulateMedia({ media: 'print' });
    assert.ok(await page.isHidden('#form'));
    assert.ok(await page.isHidden('#bar'));
    assert.ok(await page.isVisible('#things'));
    assert.ok(await page.isHidden('#seen'), 'the drawing is printed twice');
    assert.ok(await page.locator('#report #answer').isVisible());
    assert.ok(await page.locator('#report #build-up svg').isVisible());
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    const pages = pdf.match(/\/Type\s*\/Page[^s]/g).length;
    assert.ok(pages >= 5 && pages <= 30, `${pages} pages`);
    assert.match(pdf, /\/MediaBox\s*\[\s*0\s+0\s+59[45][\d.]*\s+84[12]/);
  });
});

test('what is to be found out first leads to its question', async () => {
  await opened({}, async (page) => {
    await newcomer(page);
    await asked(page);
    await page.evaluate(() => document.querySelectorAll('#form > details').forEach((d) => (d.open = false)));
    await page.locator('#things > li').nth(1).getByRole('link').click();
    const here = await page.evaluate(() => document.activeElement.closest('.q')?.dataset.id);
    assert.equal(here, 'building.asbestos survey');
    assert.ok(await box(page, here).isVisible());
  });
});

test('every sort of question can be answered', async () => {
  await opened({}, async (page) => {
    await unfolded(page);
    const text = page.locator('#q-scenario');
    await text.fill('The small bathroom');
    await advised(page);
    await box(page, 'subfloor.condition.rot').getByText('No', { exact: true }).click(); // yes or no
    await page.fill('#q-subfloor-thickness', '22 mm'); // a number with its unit
    await page.selectOption('#q-building-asbestos-survey', 'clear'); // a choice
    await page.fill('#q-priorities', 'height, cost'); // choices in order
    await page.fill('#q-room-doors', 'landing door'); // a list
    await asked(page);
    const gap = page.locator('.q[data-id^="room.doors[].gap under leaf@"]');
    assert.match(await gap.textContent(), /landing door/);
    await gap.getByRole('textbox').fill('about 20 mm');
    await box(page, 'room.heavy items').getByRole('button', { name: 'None' }).click();
    await box(page, 'room.stairs').getByText('I do not know', { exact: true }).click();
    await advised(page);
    assert.deepEqual(await page.locator('.wrong:not(:empty)').allTextContents(), []);
    const yaml = readFileSync(await saved(page, 'sorts.yaml'), 'utf8');
    for (const line of [
      'scenario: The small bathroom',
      'rot: no',
      'thickness: 22 mm',
      'asbestos survey: clear',
      'priorities: [height, cost]',
      '- name: landing door',
      'gap under leaf: 20 mm',
      'heavy items: none',
      'stairs: unknown',
      'deck: square-edged boards',
    ]) {
      assert.ok(yaml.includes(line), `${line} is not in\n${yaml}`);
    }
    assert.match(yaml, /# Not certain; taken so/);
    // Sorts that are asked on other floors: a year and a day.
    const other = join(folder, 'other.yaml');
    const aged = yaml.replace('asbestos survey: clear', 'built: 1930\n  asbestos survey: clear');
    writeFileSync(other, aged + 'site: {start: 2026-05-04}\n');
    await page.setInputFiles('#open', other);
    await asked(page);
    assert.equal(await page.inputValue('#q-building-built'), '1930');
    assert.equal(await page.inputValue('#q-site-start'), '2026-05-04');
  });
});

test('a room is drawn with a pointer, its corners are dragged, and it is saved', async () => {
  await opened({}, async (page) => {
    await unfolded(page);
    const plan = '#q-room-outline';
    for (const [x, y] of [[0, 0], [3, 0], [3, 1], [2, 1], [2, 2]]) await tap(page, plan, x, y);
    await tap(page, plan, 0, 2);
    await asked(page);
    assert.equal(await page.locator(`${plan} .corner-dot`).count(), 6);
    assert.equal(await page.locator(`${plan} polygon`).count(), 1);
    let yaml = readFileSync(await saved(page, 'drawn.yaml'), 'utf8');
    assert.ok(yaml.includes('outline: [[0 m, 0 m], [3 m, 0 m], [3 m, 1 m], [2 m, 1 m], [2 m, 2 m], [0 m, 2 m]]'), yaml);
    const [fromX, fromY] = await put(page, plan, 2, 2);
    const [toX, toY] = await put(page, plan, 2, 2.5);
    await page.mouse.move(fromX, fromY);
    await page.mouse.down();
    await page.mouse.move(toX, toY, { steps: 5 });
    await page.mouse.up();
    yaml = readFileSync(await saved(page, 'dragged.yaml'), 'utf8');
    assert.match(yaml, /\[2 m, 2\.5 m\], \[0 m, 2 m\]\]/);
    assert.equal(await page.locator(`${plan} .corner-dot`).count(), 6, 'dragging put a new corner');
  });
});

test('a room is drawn with keys alone, and a corner is taken back', async () => {
  await opened({}, async (page) => {
    await unfolded(page);
    await page.focus('#q-room-outline');
    const press = async (key, times) => {
      for (let n = 0; n < times; n++) await page.keyboard.press(key);
    };
    await press('Enter', 1);
    await press('Shift+ArrowRight', 6);
    await press('Enter', 1);
    await press('ArrowUp', 3);
    assert.match(await box(page, 'room.outline').locator('.where').textContent(), /3 m along, 0\.3 m across/);
    await press('Shift+ArrowUp', 3);
    await press('Enter', 1);
    await press('Shift+ArrowLeft', 6);
    await press('Enter', 1);
    await press('Enter', 1);
    await press('Backspace', 1);
    const yaml = readFileSync(await saved(page, 'keys.yaml'), 'utf8');
    assert.ok(yaml.includes('outline: [[0 m, 0 m], [3 m, 0 m], [3 m, 1.8 m], [0 m, 1.8 m]]'), yaml);
  });
});

test('spot levels are placed, and the section and the level map follow what is said', async () => {
  await opened({}, async (page) => {
    await unfolded(page);
    assert.ok(await page.isVisible('#cut svg'));
    assert.ok(await page.isVisible('#no-levels'));
    const thick = await drawn(page, 'cut');
    await page.fill('#q-tile-thickness', '8 mm');
    await advised(page);
    const thin = await drawn(page, 'cut');
    assert.notEqual(thin, thick, 'the section does not follow the tile');
    assert.match(thin, /8 mm/);
    await rectangle(page, '3.6 m', '2.4');
    await page.getByLabel('Breadth', { exact: true }).fill('2.4 m');
    await asked(page);
    const plan = '#q-levels-readings';
    await tap(page, plan, 0.2, 0.2);
    await page.keyboard.type('0');
    await tap(page, plan, 3, 0.3);
    await page.keyboard.type('-4 mm');
    await page.focus(plan);
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Shift+ArrowUp');
    await page.keyboard.press('Shift+ArrowUp');
    await page.keyboard.press('Shift+ArrowUp');
    await page.keyboard.press('Enter');
    await page.keyboard.type('-9');
    await asked(page);
    assert.ok(await page.isVisible('#map svg'));
    assert.ok(await page.isHidden('#no-levels'));
    const before = await drawn(page, 'map');
    const height = page.getByLabel('Spot 3, height in mm, up is positive');
    assert.equal(await height.inputValue(), '-9');
    await height.fill('-2');
    await advised(page);
    const now = await drawn(page, 'map');
    assert.ok(now.includes('<svg') && now !== before, 'the map does not follow the heights');
    const yaml = readFileSync(await saved(page, 'spots.yaml'), 'utf8');
    assert.match(yaml, /readings: \[\[0\.2 m, 0\.2 m, 0 mm\], \[3 m, 0\.3 m, -4 mm\], \[0\.5 m, 1\.5 m, -2 mm\]\]/);
    // A spot whose height nobody typed yet is no reading of 0 mm.
    await tap(page, plan, 2, 2);
    assert.ok(!readFileSync(await saved(page, 'open.yaml'), 'utf8').includes('[2 m, 2 m'));
  });
});

test('while somebody types, one request of a sort is under way, and late answers are dropped', async () => {
  await opened({}, async (page) => {
    await unfolded(page);
    const under = {};
    const most = {};
    let sent = 0;
    let held;
    let hold = false;
    await page.route(/\/(advice|questions|report)$/, async (route) => {
      const what = route.request().url().split('/').pop();
      under[what] = (under[what] ?? 0) + 1;
      most[what] = Math.max(most[what] ?? 0, under[what]);
      if (what === 'advice') sent++;
      const reply = await route.fetch();
      if (what === 'advice' && hold) {
        hold = false;
        await new Promise((let_go) => (held = let_go));
      }
      under[what]--;
      await route.fulfill({ response: reply });
    });
    hold = true;
    await page.fill('#q-tile-thickness', '8 mm');
    while (!held) await page.waitForTimeout(20);
    await page.fill('#q-tile-thickness', '');
    await page.locator('#q-tile-thickness').pressSequentially('20 mm', { delay: 5 });
    held();
    await settled(page);
    assert.match(await drawn(page, 'cut'), /20 mm/);
    assert.doesNotMatch(await drawn(page, 'cut'), /(^|\D)8 mm · top/);
    assert.ok(sent <= 4, `${sent} requests for twelve keys`);
    assert.deepEqual(most, { advice: 1, questions: 1, report: 1 });
    await page.unrouteAll({ behavior: 'wait' });
  });
});

test('what is saved is advised on in the same way, and opens again', async () => {
  let first;
  let said;
  await opened({}, async (page) => {
    await unfolded(page);
    await page.fill('#q-scenario', 'Top floor: "the" bathroom #1');
    await rectangle(page, '11 ft 6 in', '2.4 m');
    await page.fill('#q-room-doors', 'landing door');
    await page.selectOption('#q-subfloor-services-below', 'unknown');
    await settled(page);
    first = await saved(page, 'my-floor.yaml');
    said = {
      verdict: await page.getAttribute('#verdict', 'class'),
      layers: await page.locator('#report ol.layers summary strong').allTextContents(),
    };
  });
  const run = spawnSync('java', ['-jar', jar, 'advise', first, '--json'], { encoding: 'utf8' });
  assert.ok(run.status === 0 || run.status === 4, run.stderr);
  const advice = JSON.parse(run.stdout);
  assert.equal(advice.scenario, 'Top floor: "the" bathroom #1');
  assert.equal(advice.verdict, said.verdict);
  assert.deepEqual(advice.layers.map((one) => `${one.order} ${one.name}`), said.layers);
  await opened({}, async (page) => {
    await page.setInputFiles('#open', first);
    await page.waitForFunction(() => document.getElementById('q-scenario')?.value);
    await asked(page);
    assert.equal(await page.getAttribute('#verdict', 'class'), said.verdict);
    assert.equal(await page.inputValue('#q-scenario'), 'Top floor: "the" bathroom #1');
    assert.equal(await page.inputValue('#q-room-doors'), 'landing door');
    assert.equal(await page.locator('#q-room-outline .corner-dot').count(), 4);
    const again = await saved(page, 'again.yaml');
    const plain = (file) => readFileSync(file, 'utf8').split('\n').filter((line) => !/^\s*#/.test(line)).join('\n');
    const exact = (yaml) => yaml.replace('3505.2 mm', '11 ft 6 in');
    assert.equal(exact(plain(again)).replace(/outline: .*/, ''), plain(first).replace(/outline: .*/, ''));
  });
});

test('a file with faults is refused with its lines, and what was said stays', async () => {
  await opened({}, async (page) => {
    await page.selectOption('#q-room-use', 'hall');
    const bad = join(folder, 'bad.yaml');
    writeFileSync(bad, 'scenario: x\nroom: {use: pond}\ntile: {length: 600}\n');
    await page.setInputFiles('#open', bad);
    await page.waitForFunction(() => document.getElementById('told').textContent);
    const told = await page.textContent('#told');
    assert.match(told, /2:\d+: .*pond/);
    assert.match(told, /3:\d+: .*unit/);
    assert.equal(await page.inputValue('#q-room-use'), 'hall');
    await page.setInputFiles('#open', { name: 'x.yaml', mimeType: 'text/plain', buffer: Buffer.from([0, 1, 255, 10, 123]) });
    await page.waitForFunction((old) => !['', old].includes(document.getElementById('told').textContent), told);
    assert.doesNotMatch(await page.textContent('#told'), /Exception|java/);
  });
});

test('what cannot be understood is said beside its field in plain words', async () => {
  await opened({}, async (page) => {
    await unfolded(page);
    const wrong = async (id, input, words, expected) => {
      await input.fill(words);
      const said = box(page, id).locator('.wrong');
      await said.filter({ hasText: /\S/ }).waitFor();
      assert.match(await said.textContent(), expected);
      assert.equal(await input.getAttribute('aria-invalid'), 'true');
      const described = await input.getAttribute('aria-describedby');
      assert.ok(described.split(' ').includes(await said.getAttribute('id')));
      assert.equal(await said.getAttribute('role'), 'alert');
      assert.doesNotMatch(await said.textContent(), /Exception|null|\[\]|undefined/);
    };
    await wrong('tile.length', page.locator('#q-tile-length'), '600', /"600" has no unit\. Write: 600 mm/);
    await wrong('tile.width', page.locator('#q-tile-width'), '-3 mm', /-3 mm/);
    await wrong('subfloor.thickness', page.locator('#q-subfloor-thickness'), 'banana', /does not begin with a number/);
    await wrong('priorities', page.locator('#q-priorities'), 'beauty', /beauty/);
    await page.getByRole('button', { name: 'Type a spot' }).click();
    for (const [n, words] of ['1 m', '1 m', 'low'].entries()) {
      await box(page, 'levels.readings').locator('.typed input').nth(n).fill(words);
    }
    await box(page, 'levels.readings').locator('.wrong').filter({ hasText: /low/ }).waitFor();
    await rectangle(page, '3.6 m', 'wide');
    await box(page, 'room.outline').locator('.wrong').filter({ hasText: /wide/ }).waitFor();
    assert.match(await page.textContent('#preview'), /No advice yet: 2 to answer/);
    await page.click('#save');
    await page.waitForFunction(() => /Left out/.test(document.getElementById('told').textContent));
    await page.fill('#q-tile-length', '600 mm');
    await page.fill('#q-tile-width', '600 mm');
    await advised(page);
    assert.equal(await box(page, 'tile.length').locator('.wrong').textContent(), '');
    assert.equal(await page.getAttribute('#q-tile-length', 'aria-invalid'), 'false');
    assert.ok(await page.isVisible('#answer'));
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
      for (let n = 0; n < 200; n++) {
        await page.keyboard.press('Tab');
        const here = await at();
        assert.ok(here.ring, `focus cannot be seen on ${here.id || here.words}`);
        if (here.id === id) return;
      }
      assert.fail(`${id} cannot be reached with the Tab key`);
    };
    await page.keyboard.press('Tab');
    assert.match((await at()).words, /To the advice/);
    await to('open');
    await to('q-room-use');
    await page.keyboard.type('bathroom');
    await to('q-subfloor-deck');
    await page.keyboard.type('old wooden');
    await to('q-tile-material');
    await page.keyboard.type('big');
    await to('q-tile-length');
    await page.keyboard.type('600 mm');
    await to('q-tile-width');
    await page.keyboard.type('600 mm');
    await asked(page);
    assert.ok(await page.isVisible('#answer'));
    await to('q-subfloor-condition-rot-yes');
    await page.keyboard.press('ArrowRight');
    await asked(page);
    assert.ok(await page.isChecked('#q-subfloor-condition-rot-no'));
    // A part that is folded opens with a key.
    const folded = await page.locator('#form > details:not([open]) > summary').first().elementHandle();
    await folded.focus();
    await page.keyboard.press('Enter');
    assert.equal(await folded.evaluate((one) => one.parentElement.open), true);
    // Nothing holds the focus: with Tab it comes to the end of the page and out of it.
    let out = false;
    for (let n = 0; n < 400 && !out; n++) {
      await page.keyboard.press('Tab');
      out = await page.evaluate(() => document.activeElement === document.body || document.activeElement.className === 'skip');
    }
    assert.ok(out, 'the focus is held');
  });
});

test('every control has a name, every id stands once, and headings follow each other', async () => {
  await opened({}, async (page) => {
    await unfolded(page);
    await rectangle(page, '3.6 m', '2.4 m');
    await page.getByRole('button', { name: 'Type a spot' }).click();
    await page.fill('#q-room-doors', 'landing door, cupboard');
    await asked(page);
    const session = await page.context().newCDPSession(page);
    const { nodes } = await session.send('Accessibility.getFullAXTree');
    const controls = ['textbox', 'combobox', 'radio', 'radiogroup', 'button', 'link', 'application', 'group', 'form', 'region', 'DisclosureTriangle', 'image', 'img', 'checkbox'];
    const looked = nodes.filter((one) => !one.ignored && controls.includes(one.role?.value));
    assert.ok(looked.length > 100, `only ${looked.length} controls`);
    const nameless = looked.filter((one) => !one.name?.value?.trim() && one.role.value !== 'group');
    assert.deepEqual(nameless.map((one) => JSON.stringify([one.role, one.backendDOMNodeId])), []);
    const faults = await page.evaluate(() => {
      const found = [];
      const ids = [...document.querySelectorAll('[id]')].map((one) => one.id);
      ids.filter((id, n) => ids.indexOf(id) !== n).forEach((id) => found.push('an id twice: ' + id));
      document.querySelectorAll('[aria-describedby],[aria-labelledby]').forEach((one) => {
        const named = (one.getAttribute('aria-labelledby') ?? '').split(' ').filter(Boolean);
        if (named.some((id) => !document.getElementById(id))) found.push('named by nothing: ' + one.id);
      });
      const levels = [...document.querySelectorAll('h1,h2,h3')].map((one) => +one.tagName[1]);
      levels.reduce((last, level) => {
        if (level > last + 1) found.push(`a heading jumps from ${last} to ${level}`);
        return level;
      }, 0);
      const questions = [...document.querySelectorAll('.q .asked')].map((one) => one.textContent);
      questions.filter((words, n) => questions.indexOf(words) !== n).forEach((words) => found.push('asked twice: ' + words));
      return found;
    });
    assert.deepEqual(faults, []);
  });
});

test('it fits a phone of 360 px, and what is tapped is large enough', async () => {
  await opened({ viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true }, async (page) => {
    await unfolded(page);
    await rectangle(page, '3.6 m', '2.4 m');
    await page.locator('#q-levels-readings').scrollIntoViewIfNeeded();
    await page.locator('#q-levels-readings').tap({ position: { x: 100, y: 100 } });
    await page.keyboard.type('-3');
    await page.fill('#q-room-doors', 'a door with a name that is very long and goes on');
    await settled(page);
    await page.evaluate(() => {
      const unfold = (root) => {
        root.querySelectorAll('details').forEach((one) => (one.open = true));
        root.querySelectorAll('*').forEach((one) => one.shadowRoot && unfold(one.shadowRoot));
      };
      unfold(document);
    });
    await page.waitForTimeout(200);
    const { wide, out, small } = await page.evaluate(() => ({
      wide: document.documentElement.scrollWidth,
      out: [...document.querySelectorAll('main *')]
        .filter((one) => one.getBoundingClientRect().right > 361 && !one.closest('pre'))
        .map((one) => one.outerHTML.slice(0, 80)),
      small: [...document.querySelectorAll('button,.button,select,input[type=text],.pick')]
        .filter((one) => one.getBoundingClientRect().height < 40)
        .map((one) => one.outerHTML.slice(0, 80)),
    }));
    assert.deepEqual(out, []);
    assert.equal(wide, 360);
    assert.deepEqual(small, []);
    assert.ok(await page.isVisible('#bar'));
    await page.click('#bar a');
    assert.equal(await page.evaluate(() => document.getElementById('advice').getBoundingClientRect().top < 200), true);
  });
});

for (const colorScheme of ['light', 'dark']) {
  test(`all writing on the page stands out from its ground, ${colorScheme}`, async () => {
    await opened({ colorScheme }, async (page) => {
      await unfolded(page);
      await rectangle(page, '3.6 m', 'wide');
      await page.fill('#q-subfloor-thickness', 'thick');
      await page.locator('.wrong:not(:empty)').nth(1).waitFor();
      await settled(page);
      await page.evaluate(() => document.querySelectorAll('details').forEach((one) => (one.open = true)));
      const faint = await page.evaluate(writingThatIsFaint);
      assert.ok(faint.looked > 300, `only ${faint.looked} pieces of writing`);
      assert.deepEqual(faint.found, []);
    });
  });
}

test('words of a person stay words', async () => {
  await opened({}, async (page) => {
    await unfolded(page);
    const words = `<img src=x onerror="document.title='broken'"></title><script>alert(1)</script> & 'q'`;
    await page.fill('#q-scenario', words);
    await page.fill('#q-room-doors', '<b onclick=alert(1)>door</b>');
    await settled(page);
    assert.match(await page.title(), /^Underfoot/);
    assert.equal(await page.locator('#report h1').textContent(), words);
    assert.equal(await page.locator('main img, main script, #report img, #report script, #form b').count(), 0);
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

// The page with drawings, looked at by a real browser: nothing is fetched, nothing complains, it fits
// a phone, it prints, it can be read by those who do not see it, and a scenario's own words stay words.
import { test, before, after } from 'node:test';
import assert from 'node:assert/strict';
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { launched, writingThatIsFaint } from './looking.js';

const here = dirname(fileURLToPath(import.meta.url));
const root = resolve(here, '../../..');
const jar = join(root, 'target/underfoot.jar');
const breakOut = join(here, 'scenarios/names-that-try-to-break-out.yaml');
const scenarios = readdirSync(join(root, 'scenarios'))
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => join(root, 'scenarios', name));
const fullest = scenarios.find((name) => name.includes('chimney-breast'));

let folder;
let browser;

function made(scenario) {
  const file = join(folder, basename(scenario) + '.html');
  if (!existsSync(file)) {
    const run = spawnSync('java', ['-jar', jar, 'advise', scenario, '--html', file], {
      encoding: 'utf8',
    });
    assert.ok(run.status === 0 || run.status === 4, `${scenario}: ${run.stdout}${run.stderr}`);
  }
  return file;
}

async function opened(scenario, options, look) {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const complaints = [];
  const requests = [];
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('dialog', (dialog) => {
    complaints.push('a dialog: ' + dialog.message());
    dialog.dismiss();
  });
  page.on('request', (request) => requests.push(request.url()));
  const url = pathToFileURL(made(scenario)).href;
  await page.goto(url);
  await look(page);
  assert.deepEqual(complaints, [], 'the browser complains');
  assert.deepEqual(requests, [url], 'the page fetches something');
  await context.close();
}

before(async () => {
  assert.ok(existsSync(jar), 'build the program first: mvn package');
  folder = mkdtempSync(join(tmpdir(), 'underfoot-pages-'));
  browser = await launched();
});

after(async () => {
  await browser?.close();
  if (folder) rmSync(folder, { recursive: true });
});

for (const scenario of [...scenarios, breakOut]) {
  test(`${basename(scenario, '.yaml')}: fits a phone, and has names and headings`, async () => {
    await opened(scenario, { viewport: { width: 360, height: 740 } }, async (page) => {
      await page.evaluate(() => document.querySelectorAll('details').forEach((d) => (d.open = true)));
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      assert.ok(wide <= 360, `it is ${wide} px wide`);
      const faults = await page.evaluate(() => {
        const found = [];
        const levels = [...document.querySelectorAll('h1,h2,h3,h4')].map((h) => +h.tagName[1]);
        if (levels.filter((level) => level === 1).length !== 1) found.push('not one first heading');
        levels.reduce((last, level) => {
          if (level > last + 1) found.push(`a heading jumps from ${last} to ${level}`);
          return level;
        }, 0);
        document.querySelectorAll('h1,h2,h3,h4,summary,caption,th,a').forEach((one) => {
          if (!one.textContent.trim()) found.push('nothing said: ' + one.outerHTML.slice(0, 80));
        });
        document.querySelectorAll('section').forEach((one) => {
          const by = document.getElementById(one.getAttribute('aria-labelledby'));
          if (!by?.textContent.trim()) found.push('a part without a name: ' + one.id);
        });
        document.querySelectorAll('svg').forEach((one) => {
          const ids = (one.getAttribute('aria-labelledby') ?? '').split(' ');
          if (one.getAttribute('role') !== 'img' || ids.length !== 2) found.push('svg not named');
          ids.forEach((id) => {
            if (!document.getElementById(id)?.textContent.trim()) found.push('svg not named: ' + id);
          });
        });
        document.querySelectorAll('input').forEach((one) => {
          if (!one.closest('label')?.textContent.trim()) found.push('a box without a name');
        });
        const ids = [...document.querySelectorAll('[id]')].map((one) => one.id);
        ids.forEach((id, i) => {
          if (ids.indexOf(id) !== i) found.push('an id twice: ' + id);
        });
        document.querySelectorAll('a[href]').forEach((one) => {
          const href = one.getAttribute('href');
          if (!href.startsWith('#') || !document.getElementById(href.slice(1))) {
            found.push('a link leads nowhere: ' + href);
          }
        });
        document.querySelectorAll('svg text').forEach((one) => {
          const box = one.getBoundingClientRect();
          const svg = one.closest('svg').getBoundingClientRect();
          if (box.left < svg.left - 1 || box.right > svg.right + 1) {
            found.push('writing runs out of a drawing: ' + one.textContent);
          }
        });
        if (document.documentElement.lang !== 'en-GB') found.push('no language');
        for (const landmark of ['header', 'main', 'footer', 'nav']) {
          if (!document.querySelector(landmark)) found.push('no ' + landmark);
        }
        return found;
      });
      assert.deepEqual(faults, []);
    });
  });
}

/** Run in a page: what of the answer's first things lies outside the first screen or over another. */
function outOfFirstScreen() {
  const found = [];
  const screen = window.innerHeight;
  let last = 0;
  for (const one of document.querySelectorAll('.headline,.answer .verdict,.do-now,.gates,.hurts')) {
    const box = one.getBoundingClientRect();
    if (box.height === 0) found.push('hidden: ' + one.className);
    if (box.bottom > screen) found.push(`${one.className} ends at ${Math.round(box.bottom)} of ${screen}`);
    if (box.top < last - 1) found.push('lies over what stands above it: ' + one.className);
    if (one.closest('details')) found.push('folded: ' + one.className);
    last = box.bottom;
  }
  const danger = document.querySelector('#danger');
  const built = document.querySelector('#build-up');
  if (danger && built && danger.getBoundingClientRect().top > built.getBoundingClientRect().top) {
    found.push('the dangers stand below the build-up');
  }
  return found;
}

for (const [width, height] of [[1280, 800], [390, 844]]) {
  test(`what is danger or gate is on the first screen of every scenario, ${width} by ${height}`, async () => {
    const all = {};
    for (const scenario of scenarios) {
      await opened(scenario, { viewport: { width, height } }, async (page) => {
        const faults = await page.evaluate(outOfFirstScreen);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        if (wide > width) faults.push(`it is ${wide} px wide`);
        if (faults.length) all[basename(scenario, '.yaml')] = faults;
      });
    }
    assert.deepEqual(all, {});
  });
}

for (const colorScheme of ['light', 'dark']) {
  test(`all writing stands out from its ground, ${colorScheme}`, async () => {
    await opened(fullest, { viewport: { width: 900, height: 900 }, colorScheme }, async (page) => {
      await page.evaluate(() => document.querySelectorAll('details').forEach((d) => (d.open = true)));
      const faint = await page.evaluate(writingThatIsFaint);
      assert.ok(faint.looked > 300);
      assert.deepEqual(faint.found, []);
    });
  });
}

test('it prints on A4, folded parts open, the drawings whole', async () => {
  await opened(fullest, { viewport: { width: 900, height: 900 } }, async (page) => {
    await page.emulateMedia({ media: 'print' });
    const shut = await page.evaluate(
      () =>
        [...document.querySelectorAll('details.more')].filter(
          (one) => one.getBoundingClientRect().height < one.firstElementChild.scrollHeight + 8,
        ).length,
    );
    assert.equal(shut, 0, 'folded parts that stay shut on paper');
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    const pages = pdf.match(/\/Type\s*\/Page[^s]/g).length;
    assert.ok(pages >= 4 && pages <= 14, `${pages} pages`);
    assert.match(pdf, /\/MediaBox\s*\[\s*0\s+0\s+59[45][\d.]*\s+84[12]/);
  });
});

test('it needs no script', async () => {
  await opened(fullest, { javaScriptEnabled: false }, async (page) => {
    assert.match(await page.textContent('#answer'), /Sound once put right/);
    await page.click('.layer summary >> nth=0');
    assert.ok(await page.isVisible('.layer .spec >> nth=0'));
  });
});

test('words of a scenario stay words', async () => {
  await opened(breakOut, {}, async (page) => {
    const seen = await page.evaluate(() => ({
      title: document.title,
      heading: document.querySelector('h1').textContent,
      strangers: document.querySelectorAll('script,img,iframe,object,[onload],[onerror]').length,
      doors: [...document.querySelectorAll('svg text')].filter((one) => one.textContent.includes('</text>'))
        .length,
    }));
    assert.match(seen.heading, /^<\/title><script>document\.title='broken'<\/script> & "quoted"/);
    assert.match(seen.heading, /עברית العربية 🧱🏠/);
    assert.match(seen.title, /^<\/title><script>/);
    assert.equal(seen.strangers, 0);
    assert.ok(seen.doors > 0, 'the name of a door is written in a drawing');
  });
});

test('the set-out is there to work from', async () => {
  await opened(fullest, {}, async (page) => {
    const page_ = await page.evaluate(() => document.body.textContent);
    for (const part of ['Where to start', 'Cuts at each wall', 'Cut list', 'Markers, to take to site']) {
      assert.ok(page_.includes(part), part);
    }
    assert.equal(await page.locator('#tiles svg').count(), 1);
    assert.equal(await page.locator('#boards .kept > figure svg').count(), 1);
    assert.ok((await page.locator('#boards .sketches svg').count()) > 0);
    assert.equal(await page.locator('#levels svg').count(), 1);
    assert.ok((await page.locator('#checklist input[type=checkbox]').count()) > 5);
  });
});

test('the PDF has pages and words', async () => {
  const file = join(folder, 'page.pdf');
  execFileSync('java', ['-jar', jar, 'advise', fullest, '--pdf', file]);
  assert.ok(statSync(file).size > 20_000);
});

// The rule book, looked at by a real browser: its one script finds, nothing is fetched, it fits a phone, it prints.
import { test, before, after } from 'node:test';
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { launched } from './looking.js';

const root = resolve(dirname(fileURLToPath(import.meta.url)), '../../..');
const jar = join(root, 'target/underfoot.jar');
let folder;
let browser;
let url;

before(async () => {
  folder = mkdtempSync(join(tmpdir(), 'underfoot-book-'));
  const book = process.env.BOOK ?? join(folder, 'book.html');
  if (!process.env.BOOK) {
    assert.ok(existsSync(jar), 'build the program first: mvn package');
    const run = spawnSync('java', ['-jar', jar, 'rules', '--html', book], { encoding: 'utf8' });
    assert.equal(run.status, 0, run.stdout + run.stderr);
  }
  url = pathToFileURL(book).href;
  browser = await launched();
});

after(async () => {
  await browser?.close();
  if (folder) rmSync(folder, { recursive: true });
});

async function opened(options, look) {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const complaints = [];
  const requests = [];
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('request', (request) => requests.push(request.url()));
  await page.goto(url);
  await look(page);
  assert.deepEqual(complaints, [], 'the browser complains');
  assert.deepEqual([...new Set(requests)], [url], 'the book fetches something');
  await context.close();
}

for (const [width, height] of [[1280, 800], [390, 844]]) {
  test(`words are found in rules and figures, and lead to them, ${width} by ${height}`, async () => {
    await opened({ viewport: { width, height } }, async (page) => {
      await page.fill('#asked', 'asbestos sampled');
      await page.waitForSelector('#found li');
      const titles = await page.locator('#found li').allTextContents();
      assert.ok(titles.length > 1 && titles.length <= 60, `${titles.length} entries`);
      assert.match(await page.textContent('#found-count'), /entries/);
      const to = await page.locator('#found a').first().getAttribute('href');
      await page.locator('#found a').first().click();
      assert.equal(await page.evaluate(() => location.hash), to);
      const top = await page.evaluate(
        (id) => document.getElementById(id.slice(1)).getBoundingClientRect().top,
        to,
      );
      assert.ok(top >= -1 && top < height, `the entry stands at ${top}`);
      await page.fill('#asked', 'qqqq');
      await page.waitForFunction(() => /No entry/.test(document.getElementById('found-count').textContent));
      assert.equal(await page.locator('#found li').count(), 0);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      assert.ok(wide <= width, `it is ${wide} px wide`);
    });
  });
}

test('without a script the search is not shown, and the indexes by question, base and danger are', async () => {
  await opened({ javaScriptEnabled: false }, async (page) => {
    assert.equal(await page.isVisible('#search'), false);
    for (const index of ['by-question', 'by-base', 'by-danger', 'by-word']) {
      assert.ok(await page.isVisible('#' + index), index);
    }
    const bare = await page
      .locator('section.rule h3')
      .evaluateAll((heads) => heads.filter((h) => /^[A-Z0-9-]+$/.test(h.firstChild.textContent.trim())).length);
    assert.equal(bare, 0, 'headings that are bare ids');
  });
});

test('printed, neither search nor figures stand in it', async () => {
  await opened({}, async (page) => {
    await page.emulateMedia({ media: 'print' });
    assert.equal(await page.isVisible('#search'), false);
    assert.equal(await page.isVisible('nav'), false);
  });
});

// What the tests that look at pages share.
import assert from 'node:assert/strict';
import { existsSync } from 'node:fs';
import { chromium } from 'playwright-core';

/** The system's Chromium, started. */
export async function launched() {
  const known = [process.env.CHROMIUM, '/usr/bin/chromium', '/usr/bin/chromium-browser'];
  const found = known.find((path) => path && existsSync(path));
  assert.ok(found, 'no Chromium is installed; name one in CHROMIUM');
  return chromium.launch({ executablePath: found, args: ['--no-sandbox', '--disable-gpu'] });
}

/** Run in a page: what writing stands out too little from its ground, and how much was looked at. */
export function writingThatIsFaint() {
  const parse = (colour) => {
    const n = colour.match(/[\d.]+/g).map(Number);
    return { rgb: n.slice(0, 3), a: n[3] ?? 1 };
  };
  const light = (rgb) => {
    const [r, g, b] = rgb.map((c) => {
      const s = c / 255;
      return s <= 0.03928 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const ratio = (a, b) => {
    const [x, y] = [light(a), light(b)].sort((p, q) => q - p);
    return (x + 0.05) / (y + 0.05);
  };
  const ground = (element) => {
    for (let at = element; at; at = at.parentElement ?? at.getRootNode().host) {
      const { rgb, a } = parse(getComputedStyle(at).backgroundColor);
      if (a === 1) return rgb;
    }
    return [255, 255, 255];
  };
  const found = [];
  let looked = 0;
  const look = (root) => {
    const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT);
    while (walker.nextNode()) {
      const node = walker.currentNode;
      if (node.nodeType === Node.ELEMENT_NODE) {
        if (node.shadowRoot) look(node.shadowRoot);
        continue;
      }
      const parent = node.parentElement;
      if (!parent || !node.data.trim() || parent.closest('title,desc,.halo,option,[hidden]')) continue;
      const style = getComputedStyle(parent);
      const inSvg = parent.closest('svg');
      const ink = parse(inSvg ? style.fill : style.color).rgb;
      const size = parseFloat(style.fontSize);
      const large = size >= 24 || (size >= 18.66 && +style.fontWeight >= 700);
      const value = ratio(ink, ground(parent));
      looked++;
      if (value < (large && !inSvg ? 3 : 4.5)) {
        found.push(`${value.toFixed(2)}: ${node.data.trim().slice(0, 40)}`);
      }
    }
  };
  look(document.body);
  return { found, looked };
}

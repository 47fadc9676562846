/**
 * Draws public/icon.svg into the PNG files that home screens ask for. Run it by hand after a change
 * of the drawing: npm run icons. CHROMIUM names a browser other than Playwright's own.
 */
import { readFile } from 'node:fs/promises';
import { chromium } from 'playwright';

const here = (file) => new URL(`public/${file}`, import.meta.url);
const svg = await readFile(here('icon.svg'), 'utf8');
const [, ground] = /<rect [^>]*fill="(#[0-9a-f]{6})"/.exec(svg) ?? [];

/** A maskable icon may lose all but the middle four fifths to the phone's own shape. */
const SAFE = 0.8;

const icons = [
  { file: 'icon-192.png', size: 192, part: 1 },
  { file: 'icon-512.png', size: 512, part: 1 },
  { file: 'icon-maskable-512.png', size: 512, part: SAFE },
];

const { CHROMIUM } = process.env;
const browser = await chromium.launch(CHROMIUM ? { executablePath: CHROMIUM } : {});
for (const { file, size, part } of icons) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(
    `<style>svg { display: block; overflow: visible; inline-size: ${part * 100}vw }</style>
     <body style="margin: 0; display: grid; place-items: center; height: 100vh; overflow: hidden;
                  background: ${ground}">${svg}`,
  );
  await page.screenshot({ path: here(file).pathname });
  await page.close();
}
await browser.close();

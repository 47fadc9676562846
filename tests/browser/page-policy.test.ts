import { readFileSync } from 'node:fs';
import { Coach } from './coach.ts';
import { expect, type Page, test } from './test.ts';

/** Names that would be something else than names, wherever they are not taken for text. */
const NAMES = [
  '<img src=x onerror=alert(1)>',
  '</script><script>alert(2)</script>',
  '=HYPERLINK("http://x.example","y")',
  '"><b onmouseover=alert(3)>Q',
];
/** The same as cells of a table, written out by hand: quoted by RFC 4180, and no formula. */
const CELLS = [
  '<img src=x onerror=alert(1)>',
  '</script><script>alert(2)</script>',
  `"'=HYPERLINK(""http://x.example"",""y"")"`,
  '"""><b onmouseover=alert(3)>Q"',
];
const SCREENS = [
  ...['', 'squad', 'block', 'players', 'week', 'settings', 'drill', 'drill/mini-rally', 'coverage'],
  ...['propose', 'tempo', 'review', 'sheet', 'wall', 'help', 'court', 'nowhere', 'handover'],
  ...['numbers', 'glance', 'neglected', 'together', 'sizes', 'season'],
  ...['handover/show', 'handover/read', 'handover/club', 'handover/card/none'],
];

/** Everything that the page asked of another origin, or its policy forbade, or a dialog opened. */
async function watch(page: Page, baseURL: string | undefined): Promise<string[]> {
  const wrong: string[] = [];
  await page.exposeFunction('sawViolation', (what: string) => wrong.push(`violation: ${what}`));
  await page.addInitScript(() => {
    const told = window as unknown as { sawViolation(what: string): void };
    addEventListener('securitypolicyviolation', (event) =>
      told.sawViolation(`${event.effectiveDirective} ${event.blockedURI} ${event.sourceFile}`),
    );
  });
  page.context().on('request', (request) => {
    const { protocol, origin } = new URL(request.url());
    if (!/^(data|blob):$/.test(protocol) && origin !== new URL(baseURL ?? '').origin) {
      wrong.push(`request: ${request.url()}`);
    }
  });
  page.on('dialog', (dialog) => {
    wrong.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  return wrong;
}

async function lookAtAll(page: Page, more: readonly string[] = []): Promise<void> {
  for (const screen of [...SCREENS, ...more]) {
    await new Coach(page).visit(screen);
    await expect(page.locator('main'), screen).toBeVisible();
    // Nothing that a name might have become.
    await expect(page.locator('img, b[onmouseover], body script')).toHaveCount(0);
  }
}

test.use({ serviceWorkers: 'allow' });

test('no screen asks anything of another origin, or does what the content policy forbids', async ({
  page,
  baseURL,
}) => {
  const wrong = await watch(page, baseURL);
  await page.goto('./');
  await page.evaluate(() => navigator.serviceWorker.ready);
  await lookAtAll(page);
  await page.goto('./#/');
  await new Coach(page).loadDemo('Look around with an invented squad');
  await lookAtAll(page);
  expect(wrong).toEqual([]);
});

test('the policy stands in the page, and it bites: no inline script, no text as script, no other origin', async ({
  page,
}) => {
  await page.goto('./');
  const bitten = await page.evaluate(async () => {
    const seen: string[] = [];
    const connecting = new Promise<void>((resolve) =>
      addEventListener('securitypolicyviolation', ({ effectiveDirective }) => {
        seen.push(effectiveDirective);
        if (effectiveDirective === 'connect-src') resolve();
      }),
    );
    const script = document.createElement('script');
    try {
      script.textContent = 'window.ran = true';
      document.body.append(script);
    } catch {
      seen.push('thrown');
    }
    try {
      document.body.insertAdjacentHTML('beforeend', '<i>text</i>');
    } catch {
      seen.push('thrown');
    }
    await fetch('http://127.0.0.1:9/').catch(() => {});
    await connecting;
    return { seen, ran: 'ran' in window };
  });
  expect(bitten.ran).toBe(false);
  expect(bitten.seen).toContain('require-trusted-types-for');
  expect(bitten.seen).toContain('connect-src');
});

test('names are shown as text on every screen, on paper and in the table', async ({
  page,
  baseURL,
}) => {
  await page.addInitScript(() =>
    Object.defineProperty(Navigator.prototype, 'canShare', { value: undefined }),
  );
  const wrong = await watch(page, baseURL);
  const coach = new Coach(page);
  const quoted = NAMES.map((name) => `"${name.replaceAll('"', '""')}"`);
  await coach.pasteSquad(`name\n${quoted.join('\n')}`);
  await expect(page.getByText('4 players were added.')).toBeVisible();
  await coach.visit('');
  await coach.button('Everyone is here').tap();
  await coach.planBlock([{ name: 'Mini rally' }]);
  await coach.button('Go to the court').tap();
  await coach.start();
  for (const name of NAMES)
    await expect(page.getByText(name, { exact: true }).first()).toBeVisible();
  await coach.mark(NAMES[0] ?? '');
  await coach.stop();
  await coach.button('Put counts right').tap();
  await expect(page.getByRole('main')).toContainText(NAMES[1] ?? '');
  await coach.button('Done').tap();
  await page.goto('./#/players');
  await expect(page.locator('a[href^="#/player/"]')).toHaveCount(NAMES.length);
  const players = await page
    .locator('a[href^="#/player/"]')
    .evaluateAll((links) => links.map((link) => link.getAttribute('href')?.slice(2) ?? ''));
  expect(players).toHaveLength(NAMES.length);
  await lookAtAll(page, players);

  await coach.visit('week');
  await coach.unfold();
  const download = page.waitForEvent('download');
  await coach.button(/Share the week/).tap();
  const table = readFileSync(await (await download).path(), 'utf8');
  for (const cell of CELLS) expect(table).toContain(`,${cell},`);
  await page.emulateMedia({ media: 'print' });
  for (const name of NAMES) await expect(page.getByRole('main')).toContainText(name);
  await expect(page.locator('img, b[onmouseover], body script')).toHaveCount(0);
  expect(wrong).toEqual([]);
});

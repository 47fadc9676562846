import { Coach } from './coach.ts';
import { OtherPhone } from './other-phone.ts';
import { expect, type Page, test } from './test.ts';

/* A file reaches the app in every way that a phone has, and is known by what is in it. */

const theirs = async (page: Page, name = 'IMG_0007.pdf') => {
  const other = new OtherPhone('helperxQ7k', await page.evaluate(() => Date.now()));
  other.write({ kind: 'player-added', player: 'odile', name: 'Odile' });
  return { ...other.file(), name };
};

test('a file is known by its content, whatever it is called', async ({ page }) => {
  const coach = new Coach(page);
  await coach.visit('handover');
  await page.getByLabel('Import a file from this app').setInputFiles(await theirs(page));
  await expect(page.getByText('New players: Odile.')).toBeVisible();
});

test('a page of HTML in place of the file is refused with a sentence', async ({ page }) => {
  await new Coach(page).visit('handover');
  await page.getByLabel('Import a file from this app').setInputFiles({
    name: 'rally-ledger.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from('<!doctype html>\n<html><body>Sign in to the network</body></html>\n'),
  });
  await expect(page.getByRole('alert')).toContainText('Line 1: this is no file from this app.');
});

test('a file can be dropped on the page', async ({ page }) => {
  await new Coach(page).visit('handover');
  const text = (await theirs(page)).buffer.toString('utf8');
  const data = await page.evaluateHandle((text) => {
    const data = new DataTransfer();
    data.items.add(new File([text], 'any-name'));
    return data;
  }, text);
  await page
    .getByLabel('Import a file from this app')
    .dispatchEvent('drop', { dataTransfer: data });
  await expect(page.getByText('New players: Odile.')).toBeVisible();
});

test.describe('an installed app', () => {
  test.use({ serviceWorkers: 'allow' });

  test('takes a file that the share sheet hands it, once, and shows what comes', async ({
    page,
  }) => {
    const coach = new Coach(page);
    await coach.open();
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
      if (navigator.serviceWorker.controller) return;
      await new Promise((resolve) =>
        navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
      );
    });
    const text = (await theirs(page)).buffer.toString('utf8');
    // As a browser posts a share: to the address in the manifest, under the name that stands there.
    await page.evaluate(async (text) => {
      const manifest = await (await fetch('manifest.webmanifest')).json();
      const { action, params } = manifest.share_target;
      const form = new FormData();
      form.append(params.files[0].name, new File([text], 'shared.txt', { type: 'text/plain' }));
      await fetch(action, { method: 'POST', body: form });
    }, text);
    await coach.visit('handover');
    await expect(page.getByText('New players: Odile.')).toBeVisible();
    await page.reload();
    await expect(page.getByRole('heading', { name: 'Other phones' })).toBeVisible();
    await expect(page.getByText('New players: Odile.')).toHaveCount(0);
  });
});

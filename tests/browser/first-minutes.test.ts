import { Coach } from './coach.ts';
import { expect, test } from './test.ts';

/** Touches that a coach has for it, once the names are in. */
const MOST_TOUCHES = 20;

test(`a first block is running at most ${MOST_TOUCHES} touches after the names, and every screen of an empty app says what to do next`, async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.open();
  await expect(page.getByText('Add the players of your squad first')).toBeVisible();
  // Each of these says so in a sentence of its own and leads on.
  for (const [address, next] of [
    ['court', 'No round is planned'],
    ['players', 'squad'],
    ['week', 'week'],
    ['block', 'Tap drills below'],
  ] as const) {
    await coach.visit(address);
    await expect(page.getByRole('main')).toContainText(next);
  }

  await coach.pasteSquad('Pip\nJuno\nOdile\nBram\nSuki\nTeo\nWren');
  let touches = 0;
  const touch = async (name: string | RegExp) => {
    await coach.button(name).first().tap();
    touches += 1;
  };
  await touch('On to today’s practice');
  await touch('Everyone is here');
  await touch('Choose drills');
  for (const drill of ['Mini rally', 'Volley to volley', 'Lob and overhead', 'Straight serves']) {
    await touch(`Add ${drill}`);
    await touch(`Rounds of ${drill} +`);
  }
  await touch('Done');
  await touch('Go to the court');
  await touch(/^Start/);
  await expect(page.getByRole('timer')).toBeVisible();
  console.log(`${touches} touches from the names to a running block of eight rounds`);
  expect(touches).toBeLessThanOrEqual(MOST_TOUCHES);
});

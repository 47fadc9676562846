import { afterEach, beforeAll } from 'vitest';
import { builtApp } from './built.ts';
import { Coach } from './coach.ts';
import { Phone } from './phone.ts';

/** Makes phones for the tests of a file, each with the app opened on it, and ends them after each test. */
export function playing(): { phone(now: string, seed?: number): Promise<Coach> } {
  let script: string;
  const phones: Phone[] = [];
  beforeAll(async () => {
    script = await builtApp();
  });
  afterEach(() => {
    for (const phone of phones.splice(0)) phone.end();
  });
  return {
    async phone(now, seed) {
      const phone = new Phone(script, now, seed);
      phones.push(phone);
      return new Coach(phone, await phone.open());
    },
  };
}

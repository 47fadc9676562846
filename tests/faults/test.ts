import { test as base } from '../browser/test.ts';
import { Phone } from './phone.ts';
import { Host } from './served.ts';

/** Each test has a host of its own, and a phone with a profile folder where it asks for one. */
export const test = base.extend<{ host: Host; phone: Phone }>({
  // biome-ignore lint/correctness/noEmptyPattern: the fixture needs none, and must say so this way
  host: async ({}, use) => {
    const host = await Host.of();
    await use(host);
    await host.close();
  },
  baseURL: ({ host }, use) => use(host.address),
  phone: async ({ host }, use) => {
    const phone = new Phone(host.address);
    await use(phone);
    await phone.discard();
  },
});

export { expect, type Page } from '../browser/test.ts';

import { expect, test } from 'vitest';
import { pickVoice } from '../../../app/device/voice.ts';

const voice = (lang: string, localService: boolean, isDefault = false) => ({
  lang,
  localService,
  default: isDefault,
});

test('a voice that would need a network is never picked', () => {
  expect(pickVoice([voice('en-GB', false, true)], 'en')).toBeUndefined();
});

test('a voice of another language is never picked', () => {
  expect(pickVoice([voice('fr-FR', true, true), voice('eng-x', true)], 'en')).toBeUndefined();
});

test("the phone's default voice is picked before others of its language", () => {
  const own = voice('en-GB', true, true);
  expect(pickVoice([voice('en-US', true), own], 'en')).toBe(own);
});

test('without a default one the first of the language is picked, however it is written', () => {
  const own = voice('fr_FR', true);
  expect(pickVoice([voice('en-US', true, true), own, voice('fr-CA', true)], 'fr')).toBe(own);
});

test('a phone without voices has none to pick', () => {
  expect(pickVoice([], 'en')).toBeUndefined();
});

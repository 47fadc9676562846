import { describe, expect, test } from 'vitest';
import { Id, isReserved } from '../../core/id.ts';

const isId = (value: unknown) => Id.safeParse(value).success;

describe('an id', () => {
  test('is made of letters, digits, - and _, up to forty of them', () => {
    expect(['p', 'V1StGXR8_Z', 'practice-1', 'x'.repeat(40)].filter((id) => !isId(id))).toEqual([]);
    expect(['', 'x'.repeat(41), 'a/b', 'a b', 'é', 'a\n', 7, undefined].filter(isId)).toEqual([]);
  });

  test('is never the name of a field that every object has from its birth', () => {
    expect(['__proto__', 'constructor', 'prototype'].filter(isId)).toEqual([]);
    expect(['__proto__', 'constructor', 'prototype', 'name'].map(isReserved)).toEqual([
      true,
      true,
      true,
      false,
    ]);
  });
});

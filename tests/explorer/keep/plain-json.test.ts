// What is looked for in JSON from outside before anything else looks at it.

import { describe, expect, it } from 'vitest';
import { faultInJson } from '../../../explorer/keep/plain-json.js';

/** So many lists inside each other. */
const nested = (levels: number): unknown => JSON.parse('['.repeat(levels) + ']'.repeat(levels));

describe('JSON from outside', () => {
  it('may go thirty-two levels deep and no deeper', () => {
    expect(faultInJson(nested(32))).toBeUndefined();
    expect(faultInJson({ a: nested(31) })).toBeUndefined();
    expect(faultInJson(nested(33))).toBe('goes more than 32 levels deep');
    expect(faultInJson({ a: nested(32) })).toBe('goes more than 32 levels deep');
  });

  it.each([
    '__proto__',
    '__defineGetter__',
    '__defineSetter__',
    '__lookupGetter__',
    '__lookupSetter__',
    'constructor',
    'hasOwnProperty',
    'isPrototypeOf',
    'propertyIsEnumerable',
    'prototype',
    'toLocaleString',
    'toString',
    'valueOf',
  ])('may not use the name %s, wherever it stands', (name) => {
    const inside = JSON.parse(`{"a": [{"b": 1}, {"${name}": 1}]}`) as unknown;
    expect(faultInJson(inside)).toBe(`uses the name ‘${name}’, which no notebook does`);
    expect(faultInJson({ a: name })).toBeUndefined();
  });

  it('may be anything else', () => {
    for (const value of [null, 1, 'text', true, [], {}, { a: [1, { b: null }] }])
      expect(faultInJson(value)).toBeUndefined();
  });
});

// What is wrong with the layout of a file, in words: where, what stands there, and what would be right.

import * as v from 'valibot';

/** Where, and why. */
export function faultOfLayout(issue: v.BaseIssue<unknown>): [where: string, why: string] {
  return [v.getDotPath(issue) ?? '', whyOf(issue)];
}

function whyOf({ type, expected, received, requirement, input }: v.BaseIssue<unknown>): string {
  if (expected === 'never') return 'this is an unknown field';
  if (received === 'undefined') return 'this field is missing';
  if (type === 'max_length') {
    const what = typeof input === 'string' ? 'letters' : 'parts';
    return `at most ${String(requirement)} ${what} are allowed, and ${received} stand there`;
  }
  return `${short(expected ?? 'something else')} is expected, ${short(received)} stands there`;
}

function short(words: string): string {
  return words.length > 60 ? `${words.slice(0, 60)}…` : words;
}

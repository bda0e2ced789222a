// Where in the typed text a part of the tree stands. mathjs' trees do not say; names come in the tree in the order
// they were typed, so the nth node of a name is its nth mention in the text.

import type { MathNode } from 'mathjs';
import { childrenOf, definedBy, isDefining } from './nodes.js';
import type { Place } from './sheet.js';

export type Places = ReadonlyMap<MathNode, Place>;

/** The place of every name in the tree, and of every part that has names in it. */
export function placesIn(text: string, root: MathNode): Places {
  const mentions = mentionsIn(text);
  const places = new Map<MathNode, Place>();
  const next = (name: string): Place | null => mentions.get(name)?.shift() ?? null;
  const visit = (node: MathNode): Place | null => {
    const known = places.get(node);
    if (known !== undefined) return known; // 'a + 5%' holds a twice
    const own = definedBy(node).map(next);
    if (node.type === 'SymbolNode') own.push(next((node as MathNode & { name: string }).name));
    if (node.type === 'FunctionNode') own.push(visit((node as MathNode & { fn: MathNode }).fn));
    const inside = childrenOf(node).map(visit);
    // Of a definition, what is defined.
    const place = spanning(isDefining(node) ? own : [...own, ...inside]);
    if (place !== null) places.set(node, place);
    return place;
  };
  visit(root);
  return places;
}

/** Places of each name in the text, the first first. */
function mentionsIn(text: string): Map<string, Place[]> {
  const mentions = new Map<string, Place[]>();
  const code = text.replace(/#.*/u, '');
  for (const match of code.matchAll(/(?<![\p{L}\d_$°])[\p{L}_$°][\p{L}\d_$°]*|(?<=\d)[\p{L}_$°][\p{L}\d_$°]*/gu)) {
    const place = { from: match.index, to: match.index + match[0].length };
    mentions.set(match[0], [...(mentions.get(match[0]) ?? []), place]);
  }
  return mentions;
}

function spanning(places: readonly (Place | null)[]): Place | null {
  const found = places.filter((place) => place !== null);
  if (found.length === 0) return null;
  return { from: Math.min(...found.map(({ from }) => from)), to: Math.max(...found.map(({ to }) => to)) };
}

/** The first mention of a name in a tree. */
export function placeOfName(name: string, root: MathNode, places: Places): Place | null {
  const called = (root as MathNode & { fn?: MathNode }).fn;
  for (const node of [root, ...(root.type === 'FunctionNode' && called !== undefined ? [called] : [])]) {
    if (node.type === 'SymbolNode' && (node as MathNode & { name: string }).name === name)
      return places.get(node) ?? null;
  }
  for (const child of childrenOf(root)) {
    const place = placeOfName(name, child, places);
    if (place !== null) return place;
  }
  return null;
}

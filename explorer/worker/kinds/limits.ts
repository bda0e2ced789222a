// What the limits of a still need; loaded when they are first asked for: the first page does without.

export { limitsOf } from '#lib/index.js';

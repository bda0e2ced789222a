// The formula engine off the page's thread. It tells what it works on, so that the page knows what to stop, and listens
// every few milliseconds while it draws: what is no longer wanted is laid down.

import { listedFunctions } from './functions/registry.js';
import type { ToPage, ToWorker } from './formula-client.js';
import { Memory } from './memory.js';
import { Work } from './work.js';

const post = (message: ToPage): void => (self as unknown as Worker).postMessage(message);
const work = new Work({ post, memory: new Memory(), now: () => performance.now(), rest: turnOfOthers() });

addEventListener('message', ({ data }: MessageEvent<ToWorker>) => work.take(data));

post({ is: 'ready', functions: listedFunctions });

/** Lets whatever has arrived be read first. A timer would wait four milliseconds each time. */
function turnOfOthers(): (go: () => void) => void {
  const { port1, port2 } = new MessageChannel();
  let next: () => void = () => undefined;
  port1.onmessage = () => next();
  return (go) => {
    next = go;
    port2.postMessage(null);
  };
}

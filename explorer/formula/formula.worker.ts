// The formula engine off the page's thread. It tells what it works on, so that the page knows what to stop.

import { answer } from './answer.js';
import { listedFunctions } from './functions/registry.js';
import type { ToPage, ToWorker } from './formula-client.js';

const post = (message: ToPage): void => (self as unknown as Worker).postMessage(message);

addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
  const reply = answer(data.ask, (key) => post({ is: 'began', turn: data.turn, key }));
  post({ is: 'reply', turn: data.turn, reply });
});

post({ is: 'ready', functions: listedFunctions });

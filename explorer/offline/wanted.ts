// What was asked for and cannot go on, since a part of the explorer could not be loaded: it waits, the frame says so
// with a word to try again, and it goes on once the part is there. A network that comes back tries by itself.

/** All that waits under one sentence. */
export interface Waiting {
  /** What is missing for want of it. */
  readonly says: string;
  /** Tries all of it again. */
  readonly again: () => void;
}

interface Group {
  readonly attempts: Set<() => void>;
  /** Whether it was tried again in vain. */
  again: boolean;
}

type Tell = (waiting: readonly Waiting[]) => void;

const groups = new Map<string, Group>();
const listeners = new Set<Tell>();

/** Calls `tell` whenever something begins or ceases to wait, or was tried in vain. */
export function whileWaiting(tell: Tell): void {
  if (listeners.size === 0) addEventListener('online', () => [...groups.keys()].forEach(again));
  listeners.add(tell);
}

/** What `load` comes to, however often it has to be tried. `says` is what the reader is told meanwhile: what is missing. */
export function wanted<Part>(says: string, load: () => Promise<Part>): Promise<Part> {
  return new Promise((resolve) => {
    const attempt = (): void => {
      load().then(
        (part) => {
          arrived(says, attempt);
          resolve(part);
        },
        (error: unknown) => {
          console.warn(error);
          failed(says, attempt);
        },
      );
    };
    attempt();
  });
}

/** Why something could not be loaded, as far as this device knows. */
export function whyNotLoaded(): string {
  return navigator.onLine ? 'The host did not send it.' : 'This device has no network.';
}

function failed(says: string, attempt: () => void): void {
  const group = groups.get(says) ?? { attempts: new Set(), again: false };
  group.again ||= group.attempts.has(attempt);
  group.attempts.add(attempt);
  groups.set(says, group);
  tell();
}

function arrived(says: string, attempt: () => void): void {
  const group = groups.get(says);
  if (group?.attempts.delete(attempt) !== true) return;
  if (group.attempts.size === 0) groups.delete(says);
  tell();
}

function again(says: string): void {
  for (const attempt of [...(groups.get(says)?.attempts ?? [])]) attempt();
}

function tell(): void {
  const waiting = [...groups].map(([says, group]) => ({
    says: `${says} ${whyNotLoaded()}${group.again ? ' It was tried again, without success; loading the whole page anew may help.' : ''}`,
    again: () => again(says),
  }));
  for (const listener of listeners) listener(waiting);
}

// Starts all that has to do with keeping, once the first figure stands: opens what was open last, keeps it as it
// changes, takes files that are dropped, and starts the service worker. Nothing of it is needed to read a page.

import type { Notebook as Frame } from '../components/frame/kp-notebook.js';
import type { KpNotice } from '../components/frame/kp-notice.js';
import { watchVersions, type NewVersion } from '../offline/watch.js';
import { writeAddress } from '../state/address.js';
import type { NotebookState } from '../state/notebook.js';
import { addPage, freePageName } from '../state/page-acts.js';
import type { KeptState } from './autosave.js';
import { Keeping, type Book } from './keeping.js';
import './kp-keeping-words.js';
import { pageKey, unpackPage } from './page-in-address.js';
import { browserShelves } from './storage.js';
import { stateWords } from './words.js';

/** `address` is what stood behind the # when the explorer was opened. */
export async function startKeeping(book: Book, frame: Frame, notice: KpNotice, address: string): Promise<Keeping> {
  const keeping = new Keeping(book, browserShelves());
  // Where this part came late, what has been done since is not put away.
  if (book.store.get().history.past.length === 0) await keeping.restore(address);
  await takePage(book, address);
  const words = Object.assign(document.createElement('kp-keeping-words'), { keeping });
  const follow = ({ page, history: { now } }: NotebookState): void =>
    void Object.assign(words, { page, shelfAddress: writeAddress('notebooks', now.scenario) });
  book.store.subscribe(follow);
  follow(book.store.get());
  frame.keeping = words;
  const show = (): void => {
    const { name } = keeping.notebook;
    frame.notebookName = name;
    // Beside the name of the book on paper.
    document.documentElement.style.setProperty('--notebook-printed', name === '' ? "''" : JSON.stringify(` · ${name}`));
    notice.show(
      'keeping',
      noticeOf(keeping.state, () => book.goTo('notebooks')),
    );
  };
  keeping.addEventListener('change', show);
  show();
  addEventListener('pagehide', () => keeping.flush());
  document.addEventListener('visibilitychange', () => document.hidden && keeping.flush());
  addEventListener('hashchange', () => void takePage(book, location.hash));
  addEventListener('storage', () => keeping.shelfChanged());
  const take = takerOf(keeping, book);
  takeDroppedFiles(take);
  takeFilesOfTheSystem(take, () => {
    keeping.unreadable('The file');
    book.goTo('notebooks');
  });
  if (import.meta.env.PROD) {
    const ready = (take: () => Promise<void>, says: string): void =>
      notice.show('version', {
        says,
        word: 'Take it now',
        act: () => {
          keeping.flush();
          const failed =
            'The new version could not be taken: the host does not send all of it. The one you have goes on.';
          take().catch(() => ready(take, failed));
        },
      });
    const told = {
      newVersion: ({ take }: NewVersion) => ready(take, 'A new version of Kettle & Plate lies ready.'),
      opensOffline: (does: boolean) => void (frame.opensOffline = does),
    };
    void watchVersions(new URL('service-worker.js', document.baseURI), told).catch(() => told.opensOffline(false));
  }
  return keeping;
}

/** What the reader has to know now; `look` leads to where something can be done about it. */
function noticeOf(state: KeptState, look: () => void): { says: string; word: string; act: () => void } | null {
  if (state.kind !== 'not-kept' && state.kind !== 'parted') return null;
  return { says: stateWords(state), word: 'See to it', act: look };
}

/** A page of someone's own that came with the address. */
async function takePage({ act, store, goTo, readyPages }: Book, address: string): Promise<void> {
  const packed = new URLSearchParams(address.split('?', 2)[1] ?? '').get(pageKey);
  if (packed === null) return;
  const page = await unpackPage(packed, readyPages);
  if (page === undefined) {
    store.set({ complaints: ['The page in this address is damaged. Ask for it as a file.'] });
    return;
  }
  const name = freePageName(store.get().history.now);
  act({
    next: (notebook) => addPage(notebook, { ...page, name }),
    deed: { says: 'page taken from the address', page: null, leads: name },
  });
  store.set({ complaints: [] });
  goTo(name);
  history.replaceState(null, '', writeAddress(name, store.get().history.now.scenario));
}

/** Brings a file in; where it is refused the reader is led to where that is said. */
function takerOf(keeping: Keeping, { goTo }: Book): (file: File) => void {
  return (file) =>
    void keeping.bringIn(file.name, file).then((good) => {
      if (!good) goTo('notebooks');
    });
}

function takeDroppedFiles(take: (file: File) => void): void {
  const holdsFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') === true;
  const mark = (on: boolean): void => void document.documentElement.classList.toggle('drop-here', on);
  addEventListener('dragover', (event) => {
    if (!holdsFiles(event)) return;
    event.preventDefault();
    mark(true);
  });
  addEventListener('dragleave', (event) => {
    if (event.relatedTarget === null) mark(false);
  });
  addEventListener('drop', (event) => {
    mark(false);
    const file = event.dataTransfer?.files[0];
    if (!holdsFiles(event)) return;
    event.preventDefault();
    if (file !== undefined) take(file);
  });
}

/** What some systems hand to an installed explorer when a notebook's file is opened. */
interface LaunchQueue {
  setConsumer(take: (launch: { readonly files: readonly { getFile(): Promise<File> }[] }) => void): void;
}

function takeFilesOfTheSystem(take: (file: File) => void, lost: () => void): void {
  const { launchQueue } = globalThis as { launchQueue?: LaunchQueue };
  launchQueue?.setConsumer(({ files }) => {
    void files[0]?.getFile().then(take, lost);
  });
}

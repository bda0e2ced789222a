// Starts all that has to do with keeping, once the first figure stands: opens what was open last, keeps it as it
// changes, takes files that are dropped, and starts the service worker. Nothing of it is needed to read a page.

import type { Notebook as Frame } from '../components/frame/kp-notebook.js';
import type { KpNotice } from '../components/frame/kp-notice.js';
import { watchVersions, type NewVersion } from '../offline/watch.js';
import { writeAddress } from '../state/address.js';
import type { NotebookState } from '../state/notebook.js';
import { addPage, freePageName } from '../state/page-acts.js';
import { scenarioOn } from '../state/page-scenario.js';
import type { KeptState } from './autosave.js';
import { Keeping, type Book } from './keeping.js';
import './kp-keeping-words.js';
import { pageKey, unpackPage } from './page-in-address.js';
import { takeOver, type OldStorage } from './old-storage.js';
import { gatherLastWords } from './last-words.js';
import type { Records } from './records.js';
import { recordsInBrowser } from './records-in-browser.js';
import { recordsInMemory } from './records-in-memory.js';
import { stateWords } from './words.js';

type Word = readonly [word: string, act: () => void];

/** `address` is what stood behind the # when the explorer was opened; `saveWord` saves the notebook as a file. */
export async function startKeeping(
  book: Book,
  frame: Frame,
  notice: KpNotice,
  address: string,
  saveWord: Word,
): Promise<Keeping> {
  const keeping = new Keeping(book, await records(book.firstWords.key));
  addEventListener('pagehide', () => keeping.leave());
  addEventListener('pageshow', () => keeping.back());
  book.firstWords.handOver();
  await keeping.restore(address);
  await takePage(book, address);
  const words = Object.assign(document.createElement('kp-keeping-words'), { keeping });
  const follow = ({ page, history: { now } }: NotebookState): void =>
    void Object.assign(words, { page, shelfAddress: writeAddress('notebooks', scenarioOn(now, 'notebooks')) });
  book.store.subscribe(follow);
  follow(book.store.get());
  frame.keeping = words;
  const told = new Map<string, string>();
  /** Once for each thing there is to say: what was answered does not come again. */
  const tell = (about: string, says: string, ...words: readonly Word[]): void => {
    if ((told.get(about) ?? '') === says) return;
    told.set(about, says);
    const seeToIt = ['See to it', (): void => book.goTo('notebooks')] as const;
    notice.show(about, says === '' ? null : { says, words: [...words, seeToIt] });
  };
  const show = (): void => {
    const { name } = keeping.notebook;
    frame.notebookName = name;
    // Beside the name of the book on paper.
    document.documentElement.style.setProperty('--notebook-printed', name === '' ? "''" : JSON.stringify(` · ${name}`));
    tell('keeping', noticeOf(keeping.state), ...(keeping.state.kind === 'not-kept' ? [saveWord] : []));
    tell('opening', keeping.said);
  };
  keeping.addEventListener('change', show);
  show();
  void keeping.shelf.refresh();
  document.addEventListener(
    'visibilitychange',
    () => void (document.hidden ? keeping.flush() : keeping.shelf.refresh()),
  );
  addEventListener('beforeunload', (event) => keeping.state.kind === 'not-kept' && event.preventDefault());
  addEventListener('hashchange', () => void takePage(book, location.hash));
  const take = takerOf(keeping, book);
  takeDroppedFiles(take);
  takeFilesOfTheSystem(take, () => {
    keeping.unreadable('The file');
    book.goTo('notebooks');
  });
  if (import.meta.env.PROD) {
    const notTaken = 'The new version could not be taken: the host does not send all of it. The one you have goes on.';
    const ready = (take: () => Promise<void>, says: string): void =>
      notice.show('version', {
        says,
        words: [
          [
            'Take it now',
            () =>
              void keeping
                .flush()
                .then(take)
                .catch(() => ready(take, notTaken)),
          ],
        ],
      });
    const told = {
      newVersion: ({ take }: NewVersion) => ready(take, 'A new version of Kettle & Plate lies ready.'),
      opensOffline: (does: boolean) => void (frame.opensOffline = does),
    };
    void watchVersions(new URL('service-worker.js', document.baseURI), told).catch(() => told.opensOffline(false));
  }
  return keeping;
}

/** Where notebooks are kept, with what earlier versions and windows left for it. */
async function records(mine: string): Promise<Records> {
  let all: Records;
  try {
    all = await recordsInBrowser();
  } catch (error) {
    console.warn(error);
    all = recordsInMemory();
  }
  try {
    await takeOver(all, oldStorage(), mine);
    await gatherLastWords(all);
  } catch (error) {
    console.warn(error); // it stays where it is, for next time
  }
  return all;
}

function oldStorage(): OldStorage | undefined {
  try {
    return localStorage;
  } catch {
    return undefined;
  }
}

/** What the reader has to know now; empty where all is well. */
function noticeOf(state: KeptState): string {
  return state.kind === 'not-kept' || state.kind === 'parted' ? stateWords(state) : '';
}

/** A page of someone's own that came with the address. */
async function takePage({ act, store, goTo, readyPages }: Book, address: string): Promise<void> {
  const fields = new URLSearchParams(address.split('?', 2)[1] ?? '');
  const packed = fields.get(pageKey);
  if (packed === null) return;
  const page = await unpackPage(packed, readyPages, fields.get('v') === '1');
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
  history.replaceState(null, '', writeAddress(name, scenarioOn(store.get().history.now, name)));
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

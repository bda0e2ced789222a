// The one place where things are wired: address and kept units -> store -> page; what the reader does -> history ->
// store -> address. Nothing is computed here.

import './components/frame/kp-notebook.js';
import { KpNotice } from './components/frame/kp-notice.js';
import { saveFile } from './components/hand/hand-over.js';
import { FirstWords } from './keep/first-words.js';
import { mediaType } from './keep/format.js';
import type { Keeping } from './keep/keeping.js';
import { afterFirstFigure, mustStartFirst, rememberAddress } from './keep/when.js';
import { notebookFile, notebookFileName } from './keep/write-file.js';
import { decideTypefaces } from './offline/typefaces.js';
import { wanted, whileWaiting } from './offline/wanted.js';
import type { Act } from './pages/act-event.js';
import type { PageElement } from './pages/page-element.js';
import { OpenPages } from './pages/open-pages.js';
import { whyNot } from './pages/refused-act.js';
import { pages, readyEntries } from './pages/registry.js';
import { undoKey } from './pages/undo-keys.js';
import { setValue } from './state/acts.js';
import { readAddress, writeAddress } from './state/address.js';
import { done, redone, startHistory, undone, type History, type Step } from './state/history.js';
import { newNotebook, workOn, type Notebook } from './state/notebook-record.js';
import { isUnitSystemName, keepUnits, keptUnits, type NotebookState } from './state/notebook.js';
import { inputAt } from './state/inputs.js';
import { scenarioOn, withScenario } from './state/page-scenario.js';
import { sameNumbers } from './state/scenario.js';
import { createStore } from './state/store.js';
import { unitSystems } from './text/unit-systems.js';
import { startSolver } from './worker/solver-client.js';

/** Rest after the last change before the address is written, ms; browsers limit how often it may be. */
const addressRest_ms = 300;

void decideTypefaces();

const first = pages[0]!.name;
const listed = pages.filter(({ apart }) => apart !== true);
const frame = document.querySelector('kp-notebook')!;
const notice = new KpNotice();
frame.after(notice);
const asked = location.hash;
const opened = readAddress(asked, namesIn(newNotebook));
const store = createStore<NotebookState>({
  page: opened.page ?? first,
  history: startHistory(withScenario(newNotebook, opened.page ?? first, opened.scenario)),
  complaints: opened.complaints,
  units: keptUnits(),
});
const open = new OpenPages(startSolver(), () => show(store.get()));

/** Names of all pages, in the order of the contents list. */
function namesIn({ pages: own }: Notebook): readonly string[] {
  return [...pages, ...own].map(({ name }) => name);
}

function nextPage({ page, history: { now } }: NotebookState): PageElement['next'] {
  const next = listed[listed.findIndex(({ name }) => name === page) + 1];
  const ready = listed.some(({ name }) => name === page);
  return !ready || next === undefined
    ? null
    : { title: next.title, address: writeAddress(next.name, scenarioOn(now, next.name)) };
}

function show(state: NotebookState): void {
  const { now } = state.history;
  const record = now.pages.find(({ name }) => name === state.page);
  const page = open.get(state.page, record);
  if (page !== undefined) {
    const units = unitSystems[state.units];
    const scenario = scenarioOn(now, state.page);
    Object.assign(page, { scenario, units, next: nextPage(state), work: workOn(now, state.page), notebook: now });
    if (record !== undefined) Object.assign(page, { record });
  }
  frame.page = page ?? null;
  frame.trouble = open.again(state.page) ?? null;
  frame.current = state.page;
  frame.complaints = state.complaints;
  frame.unitsInUse = state.units;
  frame.undo = state.history.past.at(-1)?.says ?? null;
  frame.redo = state.history.future[0]?.says ?? null;
  frame.entries = [
    ...listed.map(({ name, title, group }) => ({ name, title, ...(group === undefined ? {} : { group }) })),
    ...now.pages.map(({ name, title }) => ({ name, title: title === '' ? 'Untitled' : title, group: 'Your pages' })),
  ].map((entry) => ({ ...entry, address: writeAddress(entry.name, scenarioOn(now, entry.name)) }));
  const { title } = [...frame.entries, ...pages].find(({ name }) => name === state.page)!;
  document.title = `${title} · Kettle & Plate`;
}

/** Does what the reader wants, so that it can be undone. */
function act({ next, deed }: Act): void {
  const { history: before } = store.get();
  const notebook = next(before.now);
  frame.refused = whyNot(notebook, before.now) ?? '';
  if (frame.refused !== '') {
    show(store.get()); // so that a field shows again what is kept
    return;
  }
  const after = done(before, notebook, { ...deed, at: performance.now() });
  if (after === before) return;
  goOn(after, deed.leads);
  if (deed.together === undefined) frame.say(deed.says);
}

/** Undoes or redoes one step, on the page where it was done. */
function step(way: 'undo' | 'redo'): void {
  const { history: before } = store.get();
  const back = way === 'undo';
  const deed: Step | undefined = back ? before.past.at(-1) : before.future[0];
  if (deed === undefined) return;
  goOn(back ? undone(before) : redone(before), (back ? undefined : deed.leads) ?? deed.page);
  frame.say(`${back ? 'Undone' : 'Redone'}: ${deed.says}`);
  open.get(store.get().page, undefined)?.show?.(deed.entry);
}

/** Goes on with a history on a page, if there is one of this name; on the first where the one shown is gone. */
function goOn(after: History, wish: string | null | undefined): void {
  const { page: shown, complaints } = store.get();
  const names = namesIn(after.now);
  const page = typeof wish === 'string' && names.includes(wish) ? wish : names.includes(shown) ? shown : first;
  if (page !== shown) history.pushState(null, '', writeAddress(page, scenarioOn(after.now, page)));
  store.set({ history: after, page, complaints: page === shown ? complaints : [] });
  if (page !== shown) scrollTo(0, 0);
}

let addressTimer: ReturnType<typeof setTimeout> | undefined;

store.subscribe((state, before) => {
  show(state);
  if (state.units !== before.units) keepUnits(state.units);
  clearTimeout(addressTimer);
  addressTimer = setTimeout(() => {
    const address = writeAddress(state.page, scenarioOn(state.history.now, state.page));
    if (location.hash !== address) history.replaceState(null, '', address);
    rememberAddress(location.hash);
  }, addressRest_ms);
});

frame.addEventListener('kp-change', ({ detail: { key, value } }) => {
  const row = inputAt(key);
  if (row === undefined) return;
  const { page } = store.get();
  const next: Act['next'] = (notebook) => setValue(notebook, page, row.key, value);
  act({ next, deed: { says: `${row.label} changed`, page: null, together: `number:${row.key}` } });
});
frame.addEventListener('kp-act', ({ detail }) => act(detail));
frame.addEventListener('kp-step', ({ detail }) => step(detail.way));

const making = (): Promise<typeof import('./pages/editing/page-making.js')> =>
  wanted(
    'Your page could not be begun: what makes it could not be loaded.',
    () => import('./pages/editing/page-making.js'),
  );
frame.addEventListener('kp-blank-page', () => {
  void making().then(({ blankPageAct }) => act(blankPageAct(store.get())));
});
frame.addEventListener('kp-copy-page', ({ detail }) => {
  void making().then(({ copyPageAct }) => act(copyPageAct(store.get(), detail)));
});
frame.addEventListener('kp-units', ({ detail }) => {
  if (isUnitSystemName(detail.name)) store.set({ units: detail.name });
});
addEventListener('keydown', (event) => {
  const way = undoKey(event);
  if (way === undefined) return;
  event.preventDefault();
  step(way);
});
addEventListener('hashchange', () => {
  const { page: shown, history: past } = store.get();
  const { page: asked, scenario, complaints } = readAddress(location.hash, namesIn(past.now));
  const page = asked ?? first;
  const next: Act['next'] = (notebook) =>
    sameNumbers(scenarioOn(notebook, page), scenario) ? notebook : withScenario(notebook, page, scenario);
  store.set({ page, complaints });
  act({ next, deed: { says: 'numbers taken from the address', page: null } });
  if (store.get().page !== shown) scrollTo(0, 0);
});

const firstWords = new FirstWords(() => {
  const { now, past } = store.get().history;
  return past.length > 0 ? now : undefined;
});
let started: Promise<Keeping> | undefined;
const notKept = 'Nothing you do is kept: what keeps it could not be loaded.';

/** The way that is left where nothing is kept; it needs nothing that is loaded later. */
const saveWord = [
  'Save the notebook as a file',
  (): void => {
    const { now } = store.get().history;
    saveFile(notebookFileName(now.name), new Blob([notebookFile(now, new Date())], { type: mediaType }));
  },
] as const;

/** Keeping and sharing, with all that is loaded for it. */
function keeping(): Promise<Keeping> {
  const goTo = (page: string): void => goOn(store.get().history, page);
  const book = { store, act, goTo, readyPages: pages.map(({ name }) => name), readyEntries, firstWords };
  started ??= wanted(notKept, () => import('./keep/start.js'))
    .then(({ startKeeping }) => startKeeping(book, frame, notice, asked, saveWord))
    .catch((error: unknown) => {
      notice.show('keeping', {
        says: 'Nothing you do is kept: keeping did not start.',
        words: [saveWord],
        stays: true,
      });
      throw error;
    });
  return started;
}

frame.addEventListener('kp-keeping-wanted', ({ detail }) => void keeping().then(detail.take));
store.subscribe((state, before) => {
  if (state.history !== before.history) void keeping();
});

/** Says what waits for a part that could not be loaded; resolves when something first does. */
const firstTrouble = new Promise<void>((resolve) => {
  let said: readonly string[] = [];
  whileWaiting((waiting) => {
    resolve();
    document.documentElement.classList.toggle('part-missing', waiting.length > 0);
    for (const about of said) notice.show(about, null);
    said = waiting.map(({ says }) => says);
    for (const { says, again } of waiting) {
      const tryAgain = ['Try again', again] as const;
      notice.show(says, { says, words: says.startsWith(notKept) ? [tryAgain, saveWord] : [tryAgain], stays: true });
    }
  });
});

/** A page of the notebook that was open last is known only once that has been opened. */
function showKeptPage(): void {
  const { page } = readAddress(asked, namesIn(store.get().history.now));
  if (opened.page === undefined && page !== undefined && store.get().page === first)
    store.set({ page, complaints: [] });
}

// All is wired: what the page says of a script that does not come is not needed.
document.querySelector('.not-started')?.remove();
frame.units = Object.values(unitSystems).map(({ name, label }) => ({ name, label }));
// A page that is not known yet can only be one of the notebook that is kept.
if (mustStartFirst(asked) || (opened.page === undefined && asked.length > 1)) {
  await Promise.race([keeping().then(showKeptPage, () => undefined), firstTrouble]);
} else afterFirstFigure(frame, () => void keeping());
show(store.get());

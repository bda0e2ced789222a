// The one place where things are wired: address and kept units -> store -> page; events of the reader ->
// store -> address. Nothing is computed here.

import './components/frame/kp-notebook.js';
import type { PageElement } from './pages/notebook-page.js';
import { pages } from './pages/registry.js';
import { readAddress, writeAddress } from './state/address.js';
import { isUnitSystemName, keepUnits, keptUnits, type NotebookState } from './state/notebook.js';
import { parameters } from './state/parameters.js';
import { withNumber } from './state/scenario.js';
import { createStore } from './state/store.js';
import { unitSystems } from './text/unit-systems.js';
import { startSolver } from './worker/solver-client.js';

/** Rest after the last change before the address is written, ms; browsers limit how often it may be. */
const addressRest_ms = 300;

const names = pages.map(({ name }) => name);
const solver = startSolver();
const store = createStore<NotebookState>({ ...fromAddress(), units: keptUnits() });
const notebook = document.querySelector('kp-notebook')!;
const open = new Map<string, PageElement>();
const loading = new Set<string>();

function fromAddress(): Pick<NotebookState, 'page' | 'scenario' | 'complaints'> {
  const { page, scenario, complaints } = readAddress(location.hash, names);
  return { page: page ?? names[0]!, scenario, complaints };
}

/** The page's element where it has been loaded; else it is shown as soon as it is. */
function pageElement(name: string): PageElement | undefined {
  const known = open.get(name);
  if (known === undefined && !loading.has(name)) {
    loading.add(name);
    void pages
      .find((page) => page.name === name)!
      .load()
      .then((element) => {
        element.solver = solver;
        open.set(name, element);
        show(store.get());
      });
  }
  return known;
}

function nextPage({ page, scenario }: NotebookState): PageElement['next'] {
  const next = pages[names.indexOf(page) + 1];
  return next === undefined ? null : { title: next.title, address: writeAddress(next.name, scenario) };
}

function show(state: NotebookState): void {
  const page = pageElement(state.page);
  if (page !== undefined) {
    page.scenario = state.scenario;
    page.units = unitSystems[state.units];
    page.next = nextPage(state);
  }
  notebook.page = page ?? null;
  notebook.current = state.page;
  notebook.complaints = state.complaints;
  notebook.unitsInUse = state.units;
  notebook.entries = pages.map(({ name, title, group }) => ({
    name,
    title,
    address: writeAddress(name, state.scenario),
    ...(group === undefined ? {} : { group }),
  }));
  document.title = `${pages.find(({ name }) => name === state.page)!.title} · Kettle & Plate`;
}

let addressTimer: ReturnType<typeof setTimeout> | undefined;

store.subscribe((state, before) => {
  show(state);
  if (state.units !== before.units) keepUnits(state.units);
  clearTimeout(addressTimer);
  addressTimer = setTimeout(() => {
    const address = writeAddress(state.page, state.scenario);
    if (location.hash !== address) history.replaceState(null, '', address);
  }, addressRest_ms);
});

notebook.addEventListener('kp-change', ({ detail }) => {
  const key = parameters.find((parameter) => parameter.key === detail.key)?.key;
  if (key !== undefined) store.set({ scenario: withNumber(store.get().scenario, key, detail.value) });
});
notebook.addEventListener('kp-units', ({ detail }) => {
  if (isUnitSystemName(detail.name)) store.set({ units: detail.name });
});
addEventListener('hashchange', () => {
  const before = store.get().page;
  store.set(fromAddress());
  if (store.get().page !== before) scrollTo(0, 0);
});

notebook.units = Object.values(unitSystems).map(({ name, label }) => ({ name, label }));
show(store.get());

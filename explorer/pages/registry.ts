// The pages that exist, in the order of the contents list. A new page is one file and one line here; it is
// loaded when it is first opened.

import type { EntryRecord, PageRecord } from '../state/notebook-record.js';
import type { Path } from '../state/inputs.js';
import type { PageElement } from './page-element.js';

export interface PageEntry {
  /** In the address. */
  readonly name: string;
  readonly title: string;
  /** Under which heading of the contents list; 'Pages' where none is named. */
  readonly group?: 'Course';
  /** Reached by words of its own; not in the contents list. */
  readonly apart?: boolean;
  readonly load: () => Promise<PageElement>;
}

/** What stands on a ready page, and which number has the ruler at first. */
interface Ready {
  readonly record: PageRecord;
  readonly first: Path;
}

/** Records that have been loaded, by name. */
const atHand = new Map<string, PageRecord>();
const records = new Map<string, () => Promise<Ready>>();

function ready(name: string, title: string, load: () => Promise<Ready>, group?: 'Course'): PageEntry {
  const loaded = async (): Promise<Ready> => {
    const page = await load();
    atHand.set(name, page.record);
    return page;
  };
  records.set(name, loaded);
  const element = async (): Promise<PageElement> => {
    const { record, first } = await loaded();
    return new (await import('./entries-page.js')).EntriesPage(record, first);
  };
  return { name, title, load: element, ...(group === undefined ? {} : { group }) };
}

function course(name: string, title: string): PageEntry {
  const lesson = async (): Promise<Ready> => {
    const [{ lessons }, { lessonPage }] = await Promise.all([
      import('./course/lessons.js'),
      import('./course/records.js'),
    ]);
    const found = lessons.find((one) => one.name === name)!;
    return { record: lessonPage(found), first: found.inFocus };
  };
  return ready(name, title, lesson, 'Course');
}

export const pages: readonly PageEntry[] = [
  ready('the-ceiling', 'The ceiling', async () => {
    return { record: (await import('./the-ceiling/record.js')).theCeiling, first: 'still.column.count' };
  }),
  ready('one-charge-three-stills', 'One charge, three stills', async () => {
    const { oneChargeThreeStills } = await import('./one-charge-three-stills/record.js');
    return { record: oneChargeThreeStills, first: 'asked.strength' };
  }),
  ready('the-doubler', 'The doubler', async () => {
    return { record: (await import('./the-doubler/record.js')).theDoubler, first: 'doublerCharges[0].charge.strength' };
  }),
  ready('the-stills-limits', 'The still’s limits', async () => {
    return { record: (await import('./the-stills-limits/record.js')).theStillsLimits, first: 'still.kettle.power_W' };
  }),
  ready('what-the-gauges-say', 'What the gauges say', async () => {
    return {
      record: (await import('./what-the-gauges-say/record.js')).whatTheGaugesSay,
      first: 'still.air.pressure_Pa',
    };
  }),
  ready('down-to-strength', 'Down to strength', async () => {
    return { record: (await import('./down-to-strength/record.js')).downToStrength, first: 'charge.volume_m3' };
  }),
  ready('the-books', 'The books', async () => {
    return { record: (await import('./the-books/record.js')).theBooks, first: 'charge.volume_m3' };
  }),
  course('what-boils', 'What boils'),
  course('one-plate-more', 'One plate more'),
  course('reflux', 'Reflux'),
  course('why-it-stops', 'Why it stops'),
  {
    name: 'words',
    title: 'Words',
    group: 'Course',
    load: async () => new (await import('./course/glossary-page.js')).GlossaryPage(),
  },
  {
    name: 'notebooks',
    title: 'Notebooks',
    apart: true,
    load: async () => new (await import('../keep/notebooks-page.js')).NotebooksPage(),
  },
];

/** A ready page that has been loaded. */
export function readyPageAtHand(name: string): PageRecord | undefined {
  return atHand.get(name);
}

/** What stands on a ready page; undefined where it is none made of entries. */
export async function readyEntries(name: string): Promise<readonly EntryRecord[] | undefined> {
  return (await records.get(name)?.())?.record.entries;
}

// The pages that exist, in the order of the contents list. A new page is one file and one line here; it is
// loaded when it is first opened.

import type { PageRecord } from '../state/notebook-record.js';
import type { ParameterKey } from '../state/scenario.js';
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

const ready = async (record: PageRecord, first: ParameterKey): Promise<PageElement> =>
  new (await import('./entries-page.js')).EntriesPage(record, first);
const lesson = async (name: string): Promise<PageElement> => {
  const [{ lessons }, { lessonPage }] = await Promise.all([
    import('./course/lessons.js'),
    import('./course/records.js'),
  ]);
  const found = lessons.find((one) => one.name === name)!;
  return ready(lessonPage(found), found.inFocus);
};
const course = (name: string, title: string): PageEntry => ({ name, title, group: 'Course', load: () => lesson(name) });

export const pages: readonly PageEntry[] = [
  {
    name: 'the-ceiling',
    title: 'The ceiling',
    load: async () => ready((await import('./ready/the-ceiling.js')).theCeiling, 'plates'),
  },
  {
    name: 'one-charge-three-stills',
    title: 'One charge, three stills',
    load: async () =>
      ready((await import('./ready/one-charge-three-stills.js')).oneChargeThreeStills, 'wantedStrength'),
  },
  {
    name: 'the-doubler',
    title: 'The doubler',
    load: async () => ready((await import('./ready/the-doubler.js')).theDoubler, 'doublerStrength'),
  },
  {
    name: 'the-stills-limits',
    title: 'The still’s limits',
    load: async () => ready((await import('./ready/the-stills-limits.js')).theStillsLimits, 'heat'),
  },
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

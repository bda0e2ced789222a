// A part of a lesson as an entry: the opening, what to try, why it is so, or what a leader listens for. Guess,
// questions and own words are entries of their own kinds between them.

import { nothing } from 'lit';
import { plainProse } from '../../components/term/prose.js';
import type { Lesson } from '../../pages/course/lesson.js';
import { lessons } from '../../pages/course/lessons.js';
import type { Json } from '../../state/notebook-record.js';
import '../../styles/course.css';
import type { Asks } from '../../worker/questions.js';
import { anyKind, good, wrong, type Checked, type EntryKind, type Here } from '../entry.js';
import { leaderLooksOn } from '../leader.js';
import { leadersListen } from './leaders-view.js';
import { numbersNow } from './numbers-now.js';
import { opening } from './opening.js';
import { tries } from './tries.js';
import { why } from './why.js';

const parts = ['opening', 'tries', 'why', 'listen'] as const;
type Part = (typeof parts)[number];

export interface LessonData {
  readonly lesson: string;
  readonly part: Part;
}

export const lesson: EntryKind = anyKind<LessonData, Asks>({
  name: 'lesson',
  title: 'Part of a lesson',
  about: 'a part of a page of the course',
  start: { lesson: lessons[0]!.name, part: 'why' },
  check,
  label: ({ lesson: name, part }) => `${lessonNamed(name).title}: ${part}`,
  asks: ({ lesson: name, part }, scenario) =>
    part === 'tries' || part === 'why' ? lessonNamed(name).asks(scenario) : noAsks,
  whole: true,
  view,
  words,
});

const noAsks: Asks = {};

function view(here: Here<LessonData>): unknown {
  const about = lessonNamed(here.data.lesson);
  switch (here.data.part) {
    case 'opening':
      return opening(about, here);
    case 'tries':
      return tries(about, here);
    case 'why':
      return why(about, here);
    case 'listen':
      return leaderLooksOn() ? leadersListen(about) : nothing;
  }
}

function words(here: Here<LessonData>): string {
  const about = lessonNamed(here.data.lesson);
  const { title, goal, opening: texts, steps } = about;
  switch (here.data.part) {
    case 'opening':
      return [`After this page you can ${goal}`, ...texts].map(plainProse).join('\n\n');
    case 'tries':
      return [...(numbersNow(about, here)?.tries.words ?? []), ...steps].map(plainProse).join('\n\n');
    case 'why':
      return numbersNow(about, here)?.why.map(plainProse).join('\n\n') ?? title;
    case 'listen':
      return '';
  }
}

function lessonNamed(name: string): Lesson {
  return lessons.find((one) => one.name === name)!;
}

function check(data: Json): Checked<LessonData> {
  const { lesson: name, part } = (data ?? {}) as { lesson?: Json; part?: Json };
  const known = lessons.find((one) => one.name === name);
  const named = parts.find((one) => one === part);
  if (known !== undefined && named !== undefined) return good({ lesson: known.name, part: named });
  const names = lessons.map((one) => one.name).join(', ');
  return wrong(`a part of a lesson needs \`lesson\`, one of ${names}, and \`part\`, one of ${parts.join(', ')}`);
}
